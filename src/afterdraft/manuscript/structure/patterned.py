"""Ranks of headings from numbering alone, where the author used no heading styles."""

from bisect import bisect_right
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from afterdraft.manuscript.structure.families import Families
from afterdraft.manuscript.structure.lines import Line, Shape, is_speech
from afterdraft.manuscript.structure.named import groups
from afterdraft.manuscript.structure.rank import (
    GOOD,
    MOST,
    NUMBERS,
    Book,
    Heading,
    Rank,
    believed,
    parts,
    runs_on,
    titular,
)
from afterdraft.manuscript.structure.sections import nested, sections
from afterdraft.manuscript.structure.sequence import Candidate, Chain, best_chain
from afterdraft.manuscript.structure.vocabulary import back_kind, ends_book, front_kind
from afterdraft.manuscript.structure.wording import ALONE

LABELS = ("chapter", "letter")
NAME_LINES = 3  # a name, a title, a line under it: so far above its first number a name may stand
PAGE_TITLE_WORDS = 8  # longest line that a new page alone makes a heading
PART_WORDS = 1200  # words: sections within chapters are mostly shorter, chapters longer (common practice)


def patterned(book: Book) -> list[Heading]:
    """Parts, chapters and sections by their numbers; empty where no numbers make a sequence."""
    headings = parts(book)
    upper, chapters = _chapters(book, [heading.at for heading in headings])
    if not chapters:
        return []
    headings += [Heading(place, "part", sure=0.8) for place in upper]
    headings += [Heading(place, "chapter") for place in chapters]
    headings += _alike(book, headings)
    headings.sort(key=lambda heading: heading.at)
    return headings + sections(book, headings)


def _chapters(book: Book, above: Sequence[int]) -> tuple[Sequence[int], Sequence[int]]:
    """Places of upper headings without a label of their own, and of chapters; `above` are those of parts."""
    found = book.families(above)
    labelled = {kind: chain for kind in LABELS if believed(chain := best_chain(found.get(kind, ())))}
    places = sorted(place for chain in labelled.values() for place in chain.places)
    if "chapter" in labelled:
        return (), places
    upper, numbered = _by_numbers(book, found, above)
    return upper, sorted({*places, *numbered})


def _by_numbers(book: Book, found: Families, above: Sequence[int]) -> tuple[Sequence[int], Sequence[int]]:
    """The same where chapters have no label: the best run of numbers, or what stands over it."""
    runs = [chain for chain in _runs(found) if len(chain.found) > 1 and chain.score >= GOOD]
    if not runs:
        return (), ()
    best = _steadiest(runs, max(runs, key=lambda chain: chain.score))
    return _over_numbers(book, runs, best, in_parts=bool(above)) or ((), _over_names(book, best, above) or best.places)


def _over_numbers(
    book: Book, runs: Sequence[Chain], best: Chain, *, in_parts: bool
) -> tuple[Sequence[int], Sequence[int]] | None:
    """Numbers above the best run's: chapters whose sections those are, or parts of those chapters."""
    over = [one for one in runs if _lies_over(one, best)]
    if not over:
        return None
    outer = max(over, key=lambda chain: chain.score)
    if not in_parts and _are_parts(book, outer, best):
        return outer.places, best.places
    return (), outer.places


def _over_names(book: Book, best: Chain, above: Sequence[int]) -> Sequence[int]:
    """Names above numbers that begin anew directly under them; none where the numbers run on by themselves."""
    ones = [one.line.index for one in best.found if one.number == 1]
    for group in groups(book, frozenset((*above, *best.places))):
        places = [line.index for line in group]
        under = sum(any(place in places for place in range(one - NAME_LINES, one)) for one in ones)
        if len(ones) > 1 and under >= MOST * len(ones) and under > 1:
            return places
    return ()


def _steadiest(runs: Sequence[Chain], best: Chain) -> Chain:
    """Most of the best run, if those share a look or a page's turn and no number is missing: the rest are sections."""
    within = set(best.places)
    steady = [
        one
        for one in runs
        if MOST * len(best.found) <= len(one.found) < len(best.found)
        and within.issuperset(one.places)
        and _is_whole(one)
    ]
    return max(steady, key=lambda chain: chain.score, default=best)


def _is_whole(chain: Chain) -> bool:
    """Every number is one, or one more than the number before."""
    numbers = [0, *(one.number for one in chain.found)]
    return all(after in (1, before + 1) for before, after in pairwise(numbers))


def _runs(found: Families) -> Iterator[Chain]:
    """Each number family as a whole, and those of its members that share a look, a page's turn, or space."""
    for family in NUMBERS:
        members = found.get(family, ())
        yield best_chain(members)
        for some in _looks(members):
            if 1 < len(some) < len(members):
                yield best_chain(some)


def _looks(members: Sequence[Candidate]) -> Iterator[list[Candidate]]:
    looks: defaultdict[object, list[Candidate]] = defaultdict(list)
    for one in members:
        looks[_uncapped(one.line)].append(one)
        if one.line.turn:
            looks["turn"].append(one)
        if one.line.wide:
            looks["wide"].append(one)
    yield from looks.values()


def _lies_over(outer: Chain, inner: Chain) -> bool:
    rest = [one for one in inner.found if one.line.index not in set(outer.places)]
    if len(outer.found) >= len(rest) or not rest:
        return False
    covered = {bisect_right(outer.places, one.line.index) for one in rest} - {0}
    return len(covered) >= MOST * len(outer.found) and nested(outer.places, Chain(tuple(rest)))


def _are_parts(book: Book, outer: Chain, inner: Chain) -> bool:
    """The outer run has no text of its own, and what lies between the inner headings is as long as chapters."""
    places = set(outer.places)
    rest = [place for place in inner.places if place not in places]
    words = book.words(rest[0], len(book.lines)) / len(rest)
    direct = [place for place in outer.places if place + 1 in rest or place + 2 in rest]
    return words >= PART_WORDS and len(direct) >= MOST * len(outer.found)


@dataclass(frozen=True, slots=True)
class Habit:
    """What the chapters' headings have in common."""

    shape: Shape
    weight: float  # capitals left out
    caps: bool  # nothing but capitals tells them from text
    turn: bool
    wide: int  # least extra space before them; 0 where some have none


def _alike(book: Book, headings: Sequence[Heading]) -> list[Heading]:
    """Headings without a number, known by the look they share with the chapters'."""
    chapters = [book.lines[heading.at] for heading in headings if heading.rank == "chapter"]
    habit = _habit(chapters)
    known = {heading.at for heading in headings}
    first, last = chapters[0].index, chapters[-1].index
    found: list[Heading] = []
    zone = -2  # the last line of a heading's run of lines
    for line in book.lines:
        if line.index in known or (zone == line.index - 1 and line.short and not line.turn and line.weight > 0):
            zone = line.index
        elif (
            line.index not in book.skip
            and (line.turn or zone != line.index - 1)
            and titular(line)
            and not runs_on(book.lines, line)
        ):
            rank = _rank_alike(line, habit, first, last)
            if rank:
                found.append(Heading(line.index, rank, sure=0.8))
                zone = line.index
    return found


def _habit(chapters: Sequence[Line]) -> Habit:
    shape, _ = Counter(_uncapped(line) for line in chapters).most_common(1)[0]
    members = [line for line in chapters if _uncapped(line) == shape]
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


def _uncapped(line: Line) -> Shape:
    return line.shape._replace(caps=False)


def _rank_alike(line: Line, habit: Habit, first: int, last: int) -> Rank | None:
    unadorned = habit.weight < 1 and not habit.wide and not habit.turn
    set_apart = line.turn or line.weight >= 1 or line.wide > 0 or unadorned
    if line.name.kind in ALONE and line.name.number is None and set_apart:
        return "chapter"
    if line.index < first or front_kind(line.text) or ends_book(line.text):
        return None
    if line.index > last and back_kind(line.text):
        return None
    if habit.turn and line.turn and line.words <= PAGE_TITLE_WORDS and not is_speech(line.text):
        return "chapter"
    return "chapter" if _fits(line, habit) else None


def _fits(line: Line, habit: Habit) -> bool:
    """The line shows all that the chapters' headings have in common, and that is enough to tell them by."""
    if _uncapped(line) != habit.shape or line.wide < habit.wide or (habit.turn and not line.turn):
        return False
    if habit.caps and not line.shape.caps:
        return False
    if habit.weight >= 1 or habit.caps:
        return True
    return habit.wide > 1 and not is_speech(line.text)
