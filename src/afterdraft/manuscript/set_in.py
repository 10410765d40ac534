"""Paragraphs that are set apart from the others: letters, reports, messages within the story."""

from collections import Counter
from collections.abc import Sequence

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
