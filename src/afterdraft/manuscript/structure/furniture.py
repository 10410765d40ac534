"""Running heads and page numbers that were typed into the text, or came there when a print-out was read in.

They stand amid the story, alike but for a number that grows, about a page apart, from one end of the file to the
other. They are no headings and no breaks, and what stands before and after them belongs together: structure is
recovered as if they were not there.
"""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.structure.wording import DRESSING, KINDS

LONGEST = 80  # characters of a typed line (common practice)
FEWEST = 6  # lines that make a habit
LEAST, MOST_WORDS = 60, 700  # words between two of them, in the median: a page holds 250 to 500 (common practice)
STEADY = 1.8  # the middle half of the distances lies within this factor: pages are alike, chapters are not
SPAN = 0.7  # share of the file's words that they reach over
STEP = 3  # a page or two may have lost its line
TURNED = 0.3  # share of them that may begin a page, as numbers of chapters do
NUMBER = re.compile(r"\d{1,4}")


class Place(NamedTuple):
    at: int
    number: int
    told: int  # words before it
    turn: bool


def furniture(blocks: Sequence[Block]) -> frozenset[int]:
    """Indices of the paragraphs that are page furniture; never the first."""
    families: defaultdict[str, list[Place]] = defaultdict(list)
    told = 0
    for index, block in enumerate(blocks):
        found = NUMBER.search(block.text) if index and len(block.text) <= LONGEST and not block.look.level else None
        if found:
            rest = block.text[: found.start()] + "#" + block.text[found.end() :]
            turn = block.gap.turn != "none"
            families[" ".join(rest.split()).casefold()].append(Place(index, int(found[0]), told, turn))
        else:
            told += len(block.text.split())
    lines = [family for text, family in families.items() if not _names_a_unit(text)]
    return frozenset(place.at for family in lines for place in _pages(family, told))


def _names_a_unit(text: str) -> bool:
    """'CHAPTER #' heads no page: it is a chapter, short as it may be."""
    return text.replace("#", "").strip(DRESSING) in KINDS


def _pages(family: Sequence[Place], total: int) -> Iterator[Place]:
    run = _longest_run(family)
    if len(run) < FEWEST or run[-1].told - run[0].told < SPAN * total:
        return
    gaps = sorted(after.told - before.told for before, after in pairwise(run))
    quarter, middle, three = (gaps[len(gaps) * part // 4] for part in (1, 2, 3))
    steady = LEAST <= middle <= MOST_WORDS and three <= STEADY * max(1, quarter)
    if steady and sum(place.turn for place in run) <= TURNED * len(run):
        yield from run


def _longest_run(family: Sequence[Place]) -> list[Place]:
    """The longest run of numbers that grow by one or a little more."""
    length: dict[int, int] = {}  # by number: of the longest run that ends with it
    lengths: list[int] = []
    last: dict[int, int] = {}
    came: list[int | None] = []
    for place, one in enumerate(family):
        before = max(range(one.number - STEP, one.number), key=lambda number: length.get(number, 0))
        came.append(last.get(before))
        lengths.append(length.get(before, 0) + 1)
        if lengths[-1] >= length.get(one.number, 0):
            length[one.number], last[one.number] = lengths[-1], place
    run: list[Place] = []
    at: int | None = max(range(len(family)), key=lengths.__getitem__)
    while at is not None:
        run.append(family[at])
        at = came[at]
    return run[::-1]
