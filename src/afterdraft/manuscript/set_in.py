"""What is set apart from the story's own words: letters, reports, and what is quoted or thought in italics."""

from collections import Counter
from collections.abc import Mapping, Sequence

from afterdraft.manuscript.blocks import Block

IN = 9.0  # points farther in than the text, from which a paragraph is set in; an eighth of an inch
SOME = 0.3  # share of a manuscript's paragraphs up to which they are set in from the others


def set_in(blocks: Sequence[Block]) -> frozenset[int]:
    """Indices of the paragraphs that are set in, or in italics, as a whole, and no headings or centred; none where that
    is no exception. Common practice of typesetters; the measures are our own.

    >>> from afterdraft.manuscript.blocks import Look
    >>> set_in([Block("It rained."), Block("Dear Ada,", look=Look(left=36.0)), Block("She went."), Block("He sat.")])
    frozenset({1})
    """
    looks = {at: one.look for at, one in enumerate(blocks)}
    prose = {at: one for at, one in looks.items() if one.level is None and one.align != "center"}
    if not prose:
        return frozenset()
    usual = Counter(one.left for one in prose.values()).most_common(1)[0][0]
    found = frozenset(at for at, one in prose.items() if one.left >= usual + IN or one.italic)
    return found if len(found) <= SOME * len(prose) else frozenset()


def in_italics(blocks: Sequence[Block]) -> Mapping[int, tuple[tuple[int, int], ...]]:
    """By index of the paragraph, where it stands in italics, in code points, in order; none where that is no exception.

    >>> from afterdraft.manuscript.blocks import Run
    >>> letter = Block("She read it again: I was here.", (Run(19, 30, "italic"), Run(0, 3, "bold")))
    >>> in_italics([Block("It rained all day."), letter])
    {1: ((19, 30),)}
    """
    found = {at: some for at, one in enumerate(blocks) if (some := _in_italics(one))}
    slanted = sum(end - start for some in found.values() for start, end in some)
    return found if slanted <= SOME * sum(len(one.text) for one in blocks) else {}


def _in_italics(block: Block) -> tuple[tuple[int, int], ...]:
    if block.look.italic:
        return ((0, len(block.text)),)
    return tuple(sorted((one.start, one.end) for one in block.runs if one.kind == "italic"))
