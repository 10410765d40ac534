"""Which lines are headings, and of what rank: the one decision taken over the whole file.

Where the author used heading styles, their levels are the ranks (`styled`). Otherwise the families of
numbered lines compete (`patterned`): the best sequence is the chapters, what numbers parts lies above it,
what restarts within it are sections; lines that look just like its members are headings without a
number. Where nothing is numbered, the best group of short lines in one look heads the chapters (`named`).
"""

from collections.abc import Sequence, Set

from afterdraft.manuscript.structure.lines import Line
from afterdraft.manuscript.structure.named import named
from afterdraft.manuscript.structure.patterned import patterned
from afterdraft.manuscript.structure.rank import Heading, book_of
from afterdraft.manuscript.structure.styled import styled


def rank_headings(lines: Sequence[Line], skip: Set[int]) -> tuple[Heading, ...]:
    """First lines of headings in order; `skip` are lines of contents pages."""
    book = book_of(lines, skip)
    headings = styled(book) or patterned(book) or named(book)
    return tuple(sorted(headings, key=lambda heading: heading.at))
