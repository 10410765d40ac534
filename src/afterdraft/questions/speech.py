"""Whether words of a scene are spoken."""

from collections.abc import Callable, Sequence

from afterdraft.reading.quotations import quotations


def speech(paragraphs: Sequence[str]) -> Callable[[int, int], bool]:
    """Of the paragraphs of one scene: tells of a paragraph and a character of it whether somebody speaks there.

    >>> spoken = speech(["“Come in,” she said."])
    >>> spoken(0, 1), spoken(0, 11)
    (True, False)
    """
    found: list[list[range]] = [[] for _ in paragraphs]
    for quote in quotations(paragraphs):
        found[quote.paragraph].append(range(quote.start, quote.end))
    return lambda paragraph, start: any(start in stretch for stretch in found[paragraph])
