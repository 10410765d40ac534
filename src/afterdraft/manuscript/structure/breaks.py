"""Scene breaks within a chapter: ornaments, rules, extra space, page turns."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from afterdraft.manuscript.division import Began
from afterdraft.manuscript.structure.lines import Line, runs_over, speaks
from afterdraft.manuscript.structure.sureness import PAGED, SPACED
from afterdraft.manuscript.structure.titles import Titled
from afterdraft.manuscript.structure.vocabulary import ends_book

SELDOM = 0.1  # share of the gaps between paragraphs above which extra space is layout, not a break (common practice)
INSET = 6  # paragraphs of a quoted letter at most; a scene is longer (common practice)
CLOSERS = ("”", "’", '"', "'", "»")
LEADS_ON = (":", ",")  # what stands at the end of a paragraph that introduces a quotation
PAGES = 400  # words: page turns nearer than that, in the mean, are those of a print-out (a page holds 250–350)


@dataclass(frozen=True, slots=True)
class Break:
    at: int  # first paragraph of the scene, its marks included
    began: Began
    sure: float
    title: str = ""


@dataclass(frozen=True, slots=True)
class Passage:
    """One chapter's lines below its heading, with the headed sections among them by their first line."""

    start: int
    end: int
    sections: Mapping[int, Titled]


def find_breaks(lines: Sequence[Line], passages: Sequence[Passage]) -> tuple[Break, ...]:
    """How each scene begins, in order: for each passage its opening, at the passage's start, and its breaks."""
    spaced = _space_breaks(lines, passages)
    paged = _page_breaks(lines, passages)
    return tuple(one for passage in passages for one in _in_passage(lines, passage, spaced=spaced, paged=paged))


def is_mark(line: Line) -> bool:
    """A typed scene break, or the line that says the story is over."""
    return line.mark or (line.short and ends_book(line.text))


def _in_passage(lines: Sequence[Line], passage: Passage, *, spaced: bool, paged: bool) -> Iterator[Break]:
    opening = Break(passage.start, "none", 1.0)
    waiting: Break | None = opening  # a beginning under which nothing is told yet
    place = passage.start
    while place < passage.end:
        line, section = lines[place], passage.sections.get(place)
        if section:
            at = waiting.at if waiting else place
            waiting = Break(at, "heading", section.sure, section.title)
            place = section.told
            continue
        if is_mark(line):
            waiting = waiting or Break(place, "mark", 1.0)
        else:
            begun = waiting or _by_gap(lines, line, spaced=spaced, paged=paged)
            if begun:
                yield begun
            waiting = None
        place += 1
    if waiting and (waiting.at == passage.start or waiting.began == "heading"):
        yield waiting


def _by_gap(lines: Sequence[Line], line: Line, *, spaced: bool, paged: bool) -> Break | None:
    if line.rule:
        return Break(line.index, "mark", 1.0)
    if line.turn and paged and not runs_over(lines[line.index - 1].text):
        return Break(line.index, "page", PAGED)
    if line.wide and spaced and _both_told(lines, line):
        return Break(line.index, "space", SPACED)
    return None


def _both_told(lines: Sequence[Line], line: Line) -> bool:
    """Text above and below the gap: space around a letter, a verse or a notice is layout."""
    before = lines[line.index - 1] if line.index else None
    if not line.plain or "\n" in line.text or _ends_inset(lines, line) or _begins_inset(lines, line):
        return False
    return before is None or (before.plain and "\n" not in before.text and not before.text.endswith(LEADS_ON))


def _begins_inset(lines: Sequence[Line], line: Line) -> bool:
    """Something quoted stands between this gap and the next, a few paragraphs on: a letter, a note."""
    if not speaks(line.text):
        return False
    ends = (after for after in lines[line.index + 1 : line.index + 1 + INSET] if after.wide)
    end = next(ends, None)
    return end is not None and not speaks(end.text) and _is_quoted(lines[line.index : end.index])


def _ends_inset(lines: Sequence[Line], line: Line) -> bool:
    """The gap closes what `_begins_inset` opens."""
    if speaks(line.text):
        return False
    above = reversed(lines[max(0, line.index - INSET) : line.index])
    start = next((before for before in above if before.wide), None)
    return start is not None and speaks(start.text) and _is_quoted(lines[start.index : line.index])


def _is_quoted(told: Sequence[Line]) -> bool:
    """One quotation: it opens anew in each paragraph, or is not closed in the first; else it is talk in a scene."""
    return not told[0].text.endswith(CLOSERS) or all(speaks(line.text) for line in told)


def _space_breaks(lines: Sequence[Line], passages: Sequence[Passage]) -> bool:
    """Extra space is so seldom that it must mean something."""
    gaps = [line for passage in passages for line in lines[passage.start + 1 : passage.end]]
    return sum(line.wide > 0 for line in gaps) <= max(1.0, SELDOM * len(gaps))


def _page_breaks(lines: Sequence[Line], passages: Sequence[Passage]) -> bool:
    """Page turns within chapters are the writer's own, not those of pages that were full."""
    told = [line for passage in passages for line in lines[passage.start : passage.end]]
    turns = sum(line.turn for line in told)
    return turns > 0 and sum(line.words for line in told) / turns >= PAGES
