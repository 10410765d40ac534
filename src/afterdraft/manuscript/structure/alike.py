"""Headings without a number, known by the look they share with the numbered ones."""

from collections import Counter
from collections.abc import Iterator, Sequence, Set
from dataclasses import dataclass

from afterdraft.manuscript.structure.lines import Line, Shape, is_speech, uncapped
from afterdraft.manuscript.structure.rank import MOST, PART_WORDS, Book, Heading, heads, runs_on, stops
from afterdraft.manuscript.structure.sureness import ALIKE
from afterdraft.manuscript.structure.vocabulary import back_kind, ends_book, front_kind
from afterdraft.manuscript.structure.wording import ALONE

NEVER = -2
PAGE_TITLE_WORDS = 8  # longest line that a new page alone makes a heading
FEW = 3  # unnumbered chapters that any book may have
HALF = 0.5  # share of the chapters from which it is their habit to hold sections
MANY = 0.3  # share of the numbered chapters above which unnumbered lines in their look are sections


@dataclass(frozen=True, slots=True)
class Habit:
    """What the chapters' headings have in common."""

    shape: Shape
    weight: float  # capitals left out
    caps: bool  # nothing but capitals tells them from text
    turn: bool
    wide: int  # least extra space before them; 0 where some have none


def alike(book: Book, headings: Sequence[Heading]) -> list[Heading]:
    """Further chapters; none but prologues and the like where there are so many that they must be sections, and those
    in the look of names that parts bear: they stand beside them."""
    chapters = [book.lines[heading.at] for heading in headings if heading.rank == "chapter"]
    parts = {heading.at for heading in headings if heading.rank == "part"}
    beside = {uncapped(book.lines[heading.at]) for heading in headings if heading.rank == "part" and heading.sure < 1}
    lines = list(_lines(book, {heading.at for heading in headings}, parts, chapters, beside))
    alone = [line for line in lines if _stands_alone(line) or uncapped(line) in beside]
    named = [line for line in lines if line not in alone]
    if len(named) > max(FEW, MANY * len(chapters)) and not _stand_beside(book, named, chapters):
        lines = alone
    return [Heading(line.index, "chapter", sure=ALIKE) for line in lines]


def _stand_beside(book: Book, named: Sequence[Line], chapters: Sequence[Line]) -> bool:
    """The names head stretches as long as chapters, and most chapters have none before the next number: documents of
    one piece beside numbered ones, or statements that end the book. Sections would lie in most chapters."""
    places = sorted([line.index for line in (*named, *chapters)])
    ends = dict(zip(places, stops(places, len(book.lines)), strict=True))
    words = sum(book.words(line.index, ends[line.index]) for line in named) / len(named)
    holding = {line.index for line in named}.intersection(ends[line.index] for line in chapters)
    return words >= PART_WORDS and len(holding) < HALF * len(chapters)


def _lines(
    book: Book, known: Set[int], parts: Set[int], chapters: Sequence[Line], beside: Set[Shape]
) -> Iterator[Line]:
    habit = _habit(chapters)
    zone = NEVER  # the last line of a heading's run of lines
    for line in book.lines:
        under = zone == line.index - 1 and not line.turn
        if under and zone in parts and _stands_alone(line):
            under = False  # a part's first chapter is its prologue
        if under and zone in parts and book.lines[zone].name.kind == "part" and uncapped(line) in beside:
            under = False  # or it has a name as parts within it have
        if line.index in known or (under and line.short and line.weight > 0):
            zone = line.index
        elif line.index in book.skip or under or not heads(line) or runs_on(book.lines, line):
            continue
        elif _heads_chapter(line, habit, chapters[0].index, chapters[-1].index):
            yield line
            zone = line.index


def _stands_alone(line: Line) -> bool:
    return line.name.kind in ALONE and line.name.number is None


def _habit(chapters: Sequence[Line]) -> Habit:
    shape, _ = Counter(uncapped(line) for line in chapters).most_common(1)[0]
    members = [line for line in chapters if uncapped(line) == shape]
    weight = min(line.weight - line.shape.caps for line in members)
    turns = sum(line.turn for line in members[1:])
    wides = sorted(line.wide for line in members[1:])
    return Habit(
        shape=shape,
        weight=weight,
        caps=weight < 1 and all(line.shape.caps for line in members),
        turn=len(members) > 1 and turns >= MOST * (len(members) - 1),
        wide=wides[len(wides) // 10] if wides else 0,
    )


def _heads_chapter(line: Line, habit: Habit, first: int, last: int) -> bool:
    unadorned = habit.weight < 1 and not habit.wide and not habit.turn
    if _stands_alone(line) and (line.turn or line.weight >= 1 or line.wide > 0 or unadorned):
        return True
    if line.index < first or front_kind(line.text) or ends_book(line.text):
        return False
    if line.index > last and back_kind(line.text):
        return False
    if habit.turn and line.turn and line.words <= PAGE_TITLE_WORDS and not is_speech(line.text):
        return True
    return _fits(line, habit)


def _fits(line: Line, habit: Habit) -> bool:
    """The line shows all that the chapters' headings have in common, and that is enough to tell them by."""
    gap = line.turn or line.wide >= habit.wide
    if uncapped(line) != habit.shape or not gap or (habit.turn and not line.turn):
        return False
    if habit.caps and not line.shape.caps:
        return False
    if habit.weight >= 1 or habit.caps:
        return True
    return habit.wide > 1 and not is_speech(line.text)
