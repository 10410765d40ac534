"""Chapters that bear names and no numbers: the best group of short lines in one look."""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence, Set
from typing import NamedTuple

from afterdraft.manuscript.structure.lines import Line, Shape, title_case
from afterdraft.manuscript.structure.rank import Book, Heading, heads, parts, runs_on, stops
from afterdraft.manuscript.structure.sections import sections
from afterdraft.manuscript.structure.vocabulary import back_kind, ends_book, front_kind
from afterdraft.manuscript.structure.wording import ALONE

APART = 500  # words: named chapters stand at least so far apart, in the median (common practice)
OWN_WORDS = 60  # a line with fewer words before the next of its kind heads nothing: a title page's line
WORTH = 1.0  # least look of a line that can head a chapter
NEVER = -2
BY_LINE = re.compile(r"(a (novel|novella|story) )?by\b", re.IGNORECASE)  # ends a title page
FEW = 3  # lines that divide a book
EARLY = 0.05  # share of the book's words that may stand before the first heading
LATE = 0.6  # share of the book's words after which the last heading of a whole book stands
GOOD = 3.0  # two lines with a page's turn, or three with one sign each


class Look(NamedTuple):
    shape: Shape
    turn: bool
    wide: bool  # more than one blank above


def named(book: Book) -> list[Heading]:
    """Chapter headings by look alone; empty where no group of lines makes sense as such."""
    above = parts(book)
    sound = groups(book, frozenset(heading.at for heading in above))
    best = max(sound, key=_score, default=[])
    if not best or _score(best) < GOOD:
        return above + _alone(book)
    best = max((group for group in sound if _covers(book, group, best)), key=_loudness)
    places = {line.index for line in best} | {heading.at for heading in _alone(book)}
    headings = above + [Heading(at, "chapter", sure=0.8) for at in places]
    headings.sort(key=lambda heading: heading.at)
    return headings + sections(book, headings)


def groups(book: Book, above: Set[int]) -> list[list[Line]]:
    """Short lines by look, those groups only that could head chapters; `above` are lines known as headings."""
    openers = list(_openers(book, above))
    looks: defaultdict[Look, list[Line]] = defaultdict(list)
    for line in openers:
        looks[Look(line.shape._replace(caps=False), line.turn, line.wide > 1)].append(line)
    sound = [kept for group in looks.values() if (kept := _with_text(book, group)) and _apart(book, kept)]
    return [[*_very_first(book, openers, group), *group] for group in sound]


def _covers(book: Book, group: Sequence[Line], best: Sequence[Line]) -> bool:
    """The group divides the book as a whole: it is the best one, or begins no later and reaches as far."""
    if group is best:
        return True
    early = book.told[group[0].index] <= book.told[best[0].index] + EARLY * book.told[-1]
    late = book.told[group[-1].index] >= book.told[-1] * LATE
    return len(group) >= FEW and early and late


def _loudness(group: Sequence[Line]) -> float:
    """What one line of the group shows, on average: chapters are set louder than what lies within them."""
    return sum(_worth(line) for line in group) / len(group)


def _very_first(book: Book, openers: Sequence[Line], group: Sequence[Line]) -> list[Line]:
    """The file's first line, if it looks like the group: it needs no new page or space above to begin a chapter."""
    first = openers[0]
    alike = first.index == 0 < group[0].index and first.shape == group[0].shape
    return [first] if alike and book.words(1, group[0].index) >= OWN_WORDS else []


def _openers(book: Book, above: Set[int]) -> Iterator[Line]:
    """Lines with a title's look that do not stand directly under another such line."""
    before = NEVER
    for line in book.lines:
        if line.index in book.skip or line.index in above or not heads(line) or not _worth(line):
            continue
        if ends_book(line.text) or front_kind(line.text) or back_kind(line.text) or line.shape.right:
            continue
        if runs_on(book.lines, line):
            continue
        if line.index > before + 1 or line.turn:
            yield line
        before = NEVER if BY_LINE.match(line.text) else line.index


def _worth(line: Line) -> float:
    worth = line.weight + 2.0 * line.turn + min(1.5, 0.75 * line.wide)
    worth += 0.5 * (line.wide > 0 and title_case(line.text))
    return worth if worth >= WORTH else 0.0


def _with_text(book: Book, group: Sequence[Line]) -> list[Line]:
    """Those that have text under them."""
    ends = stops([line.index for line in group], len(book.lines))
    return [line for line, end in zip(group, ends, strict=True) if book.words(line.index + 1, end) >= OWN_WORDS]


def _apart(book: Book, group: Sequence[Line]) -> bool:
    ends = stops([line.index for line in group], len(book.lines))
    words = sorted(book.words(line.index, end) for line, end in zip(group, ends, strict=True))
    return len(group) > 1 and words[len(words) // 2] >= APART


def _score(group: Sequence[Line]) -> float:
    return sum(_worth(line) - WORTH / 2 for line in group)


def _alone(book: Book) -> list[Heading]:
    """ "Prologue", "Epilogue" in a book that has no other heading."""
    return [
        Heading(line.index, "chapter", sure=0.8)
        for line in book.lines
        if line.index not in book.skip
        and line.name.kind in ALONE
        and line.name.number is None
        and (line.turn or line.weight >= 1 or line.wide)
    ]
