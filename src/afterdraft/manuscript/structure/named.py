"""Chapters that bear names and no numbers: the best group of short lines in one look."""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence, Set
from typing import NamedTuple

from afterdraft.manuscript.structure.lines import Line, Shape, ends_sentence, is_speech, speaks, title_case, uncapped
from afterdraft.manuscript.structure.rank import (
    MOST,
    NAME_LINES,
    PART_WORDS,
    Book,
    Heading,
    heads,
    parts,
    runs_on,
    stops,
)
from afterdraft.manuscript.structure.sections import sections
from afterdraft.manuscript.structure.sureness import KIND, NAMED, PART
from afterdraft.manuscript.structure.titles import goes_on
from afterdraft.manuscript.structure.vocabulary import back_kind, ends_book, front_kind
from afterdraft.manuscript.structure.wording import ALONE

APART = 500  # words: named chapters stand at least so far apart, in the median (common practice)
OWN_WORDS = 60  # a line with fewer words before the next of its kind heads nothing: a title page's line
WORTH = 1.0  # least look of a line that can head a chapter
NEVER = -2
THIRD = 2  # index of a line under a title and an author's name
BY_LINE = re.compile(r"(a (novel|novella|story) )?by\b", re.IGNORECASE)  # ends a title page
DEDICATED = re.compile(r"(to|for)\s(my|our|the memory)\b|in (loving )?memory\b|dedicated to\b", re.IGNORECASE)
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
        return above + (_alone(book) or _only_one(book))
    loudest = max((group for group in sound if _covers(book, group, best)), key=_loudness)
    if _are_parts(book, loudest, best):
        above = above + [Heading(line.index, "part", sure=PART) for line in loudest]
    else:
        best = loudest
    places = {line.index for line in [*best, *_sayings(book, best)]} | {heading.at for heading in _alone(book)}
    places -= {heading.at for heading in above}
    headings = above + [Heading(at, "chapter", sure=NAMED) for at in places]
    headings.sort(key=lambda heading: heading.at)
    return headings + sections(book, headings)


def groups(book: Book, above: Set[int]) -> list[list[Line]]:
    """Short lines by look, those groups only that could head chapters; `above` are lines known as headings."""
    openers = list(_openers(book, above))
    looks: defaultdict[Look, list[Line]] = defaultdict(list)
    for line in openers:
        looks[_look(line)].append(line)
        if line.shape.caps:  # capitals may be what tells chapters from sections
            looks[Look(line.shape, line.turn, line.wide > 1)].append(line)
    sound = [kept for group in looks.values() if (kept := _with_text(book, group)) and _apart(book, kept)]
    return [_undedicated(_untitled(book, [*_very_first(book, openers, group), *group])) for group in sound]


def _untitled(book: Book, group: Sequence[Line]) -> Sequence[Line]:
    """Without the book's title: the file's first line, where an author's name stands under it in the same look, and
    under none of the others stands such a line."""
    first, *others = group
    if first.index or len(group) <= FEW or any(_has_second(book, line) for line in others):
        return group
    return others if _has_second(book, first) else group


def _has_second(book: Book, line: Line) -> bool:
    after = book.lines[line.index + 1] if line.index + 1 < len(book.lines) else None
    return after is not None and after.shape == line.shape and heads(after) and not after.turn and not after.mark


def _undedicated(group: Sequence[Line]) -> list[Line]:
    """Without a dedication at its head, which is often set as names of chapters are."""
    return list(group[1:] if len(group) > FEW and DEDICATED.match(group[0].text) else group)


def _covers(book: Book, group: Sequence[Line], best: Sequence[Line]) -> bool:
    """The group divides the book as a whole: it is the best one, or begins no later and reaches as far."""
    if group is best:
        return True
    early = book.told[group[0].index] <= book.told[best[0].index] + EARLY * book.told[-1]
    late = book.told[group[-1].index] >= book.told[-1] * LATE
    return len(group) >= FEW and early and late


def _are_parts(book: Book, outer: Sequence[Line], inner: Sequence[Line]) -> bool:
    """The outer lines have no text of their own, and what lies between the inner ones is as long as chapters."""
    heads = {line.index for line in outer}
    below = {line.index for line in inner} - heads
    if len(below) <= len(outer):
        return False
    direct = sum(any(place + more in below for more in range(1, NAME_LINES + 1)) for place in heads)
    words = book.words(min(below), len(book.lines)) / len(below)
    return direct >= MOST * len(outer) and words >= PART_WORDS


def _loudness(group: Sequence[Line]) -> float:
    """What one line of the group shows, on average: chapters are set louder than what lies within them."""
    return sum(_worth(line) for line in group) / len(group)


def _very_first(book: Book, openers: Sequence[Line], group: Sequence[Line]) -> list[Line]:
    """The last line before the group that looks like it but for the gap above: the first chapter begins at the
    file's first line, or on a page of its own, or with more space, where the others do not."""
    look, start = _face(group[0]), group[0].index
    caps = all(line.shape.caps for line in group)
    alike = (line for line in openers if _face(line) == look and (line.shape.caps or not caps))
    before = [line for line in alike if line.index < start]
    first = before[-1] if before else None
    if first is None or not _tells(book, first.index + 1, start):
        return []
    return [first] if first.index == 0 or _gap(first) >= _gap(group[0]) else []


def _face(line: Line) -> Shape:
    """The look, without the name of the style: one for "centred" and one for "centred, new page" look alike."""
    return uncapped(line)._replace(style="")


def _gap(line: Line) -> int:
    """How much a line stands apart from what is above it: a page's turn most of all."""
    return 3 if line.turn else min(line.wide, 2)


def _sayings(book: Book, group: Sequence[Line]) -> list[Line]:
    """Titles that are something said, “Who Was It, Then?”: lines amid or after the group that look just like it.

    Only where the look tells headings from text, and the words are a title's or begin a page.
    """
    look, caps = _look(group[-1]), all(line.shape.caps for line in group)
    if group[-1].weight < WORTH:
        return []
    known = frozenset(line.index for line in group)
    found = [
        line
        for line in _openers(book, known, said=True)
        if line.index > group[0].index
        and _look(line) == look
        and (line.shape.caps or not caps)
        and (line.turn or title_case(line.text))
    ]
    return _with_text(book, found)


def _look(line: Line) -> Look:
    return Look(uncapped(line), line.turn, line.wide > 1)


def _openers(book: Book, above: Set[int], *, said: bool = False) -> Iterator[Line]:
    """Lines with a title's look that do not stand directly under another such line; `said`: those that are speech."""
    before = NEVER
    for line in book.lines:
        if line.index in book.skip or line.index in above or not _could_head(book, line) or not _worth(line):
            continue
        if line.index and book.lines[line.index - 1].mark and line.weight < WORTH and not line.turn:
            continue  # a typed break above it: what it heads, if anything, is a scene
        if BY_LINE.match(line.text):
            before = NEVER
            continue
        if ends_book(line.text) or front_kind(line.text) or back_kind(line.text) or line.shape.right:
            continue
        if (runs_on(book.lines, line) and not _unfinished(book, line)) or is_speech(line.text) != said or _strays(line):
            continue
        if line.index > before + 1 or line.turn or line.wide > 1 or _ends_title_page(book, line):
            yield line
        before = line.index


def _ends_title_page(book: Book, line: Line) -> bool:
    """The third line of a file, right over the text: the book's title, its author, and the first chapter's name."""
    if line.index != THIRD or len(book.lines) == THIRD + 1:
        return False
    after = book.lines[THIRD + 1]
    return not after.short or (not after.weight and (speaks(after.text) or ends_sentence(after.text)))


def _could_head(book: Book, line: Line) -> bool:
    return heads(line) or (line.short and _unfinished(book, line))


def _unfinished(book: Book, line: Line) -> bool:
    """The first line of a long title in the middle, that goes on in the next."""
    after = book.lines[line.index + 1 : line.index + 2]
    return line.text.endswith(",") and bool(after) and goes_on(line, after[0])


def _strays(line: Line) -> bool:
    """Nothing but its size sets the line apart, and it reads like text: pasted in from elsewhere."""
    shape = line.shape
    apart = shape.level or shape.centred or shape.bold or shape.caps or line.turn or line.wide
    return shape.big and not apart and not title_case(line.text)


def _worth(line: Line) -> float:
    worth = line.weight + 2.0 * line.turn + min(1.5, 0.75 * line.wide)
    worth += 0.5 * (line.wide > 0 and title_case(line.text))
    return worth if worth >= WORTH else 0.0


def _with_text(book: Book, group: Sequence[Line]) -> list[Line]:
    """Those that have text under them."""
    ends = stops([line.index for line in group], len(book.lines))
    return [line for line, end in zip(group, ends, strict=True) if _tells(book, line.index + 1, end)]


def _tells(book: Book, start: int, end: int) -> bool:
    """The lines hold text: what is set apart, and what a heading of front matter stands over, is none."""
    words = 0
    for line in book.lines[start:end]:
        if line.short and front_kind(line.text) and _worth(line):
            return False
        words += line.words if line.weight < 1 else 0
        if words >= OWN_WORDS:
            return True
    return False


def _apart(book: Book, group: Sequence[Line]) -> bool:
    ends = stops([line.index for line in group], len(book.lines))
    words = sorted(book.words(line.index, end) for line, end in zip(group, ends, strict=True))
    return len(group) > 1 and words[len(words) // 2] >= APART


def _score(group: Sequence[Line]) -> float:
    return sum(_worth(line) - WORTH / 2 for line in group)


def _only_one(book: Book) -> list[Heading]:
    """A name on a page of its own, or far below what is above it, set apart, over the whole text."""
    openers = [line for line in _openers(book, frozenset()) if line.index and _gap(line) > 1 and line.weight >= WORTH]
    early = [line for line in openers if book.told[line.index] <= EARLY * book.told[-1]]
    last = early[-1] if early else None
    if last is None or len(early) < len(openers) or not _tells(book, last.index + 1, last.index + 1 + NAME_LINES):
        return []
    if _gap(book.lines[last.index + 1]) >= _gap(last):
        return []  # the text begins a page as well: a dedication, or a title page
    return [Heading(last.index, "chapter", sure=NAMED)]


def _alone(book: Book) -> list[Heading]:
    """ "Prologue", "Epilogue" in a book that has no other heading."""
    return [
        Heading(line.index, "chapter", sure=KIND)
        for line in book.lines
        if line.index not in book.skip
        and line.name.kind in ALONE
        and line.name.number is None
        and (line.turn or line.weight >= 1 or line.wide)
    ]
