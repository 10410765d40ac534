"""An arrangement held against the draft's own order: what became of each card, and of each chapter."""

from bisect import bisect_right
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from afterdraft.desk.arrangement import Arrangement, Laid, Row
from afterdraft.desk.arranging import everything

Became = Literal["moved", "new", "joined", "split", "set aside"]


@dataclass(frozen=True, slots=True)
class Compared:
    """What became of one card. As it was: nothing."""

    became: tuple[Became, ...] = ()
    origin: str | None = None  # id of the draft's chapter that it comes from, where it is moved or set aside


@dataclass(frozen=True, slots=True)
class Level:
    """Chapters that lie on a level with one of the draft's: itself, where it kept its place, and what follows it."""

    chapter: str | None  # id of the draft's; None for what lies before all of them
    rows: tuple[Row, ...]


def compared(own: Arrangement, other: Arrangement) -> dict[str, Compared]:
    """What became of each card of `other`, by id; `own` is the draft's own order.

    As few cards as possible count as moved: those outside the longest run of cards that lie in the order they are told
    in (method: longest increasing subsequence; Knuth, The Art of Computer Programming 3, 5.1.4, from memory), and those
    in another chapter.
    """
    order = {scene: n for n, card in enumerate(own.cards()) for scene in card.scenes}
    home = {scene: row.chapter for row in own.rows for card in row.cards for scene in card.scenes}
    lying = [card for card in other.cards() if _told(card, order)]
    kept = _in_order([order[_told(card, order)] for card in lying])
    in_place = {lying[n].id for n in kept}
    chapters = {row.id: row.chapter for row in other.rows}
    shared = _shared(other)
    return {
        card.id: _compared(card, home.get(_told(card, order)), chapters, in_place, shared) for card in everything(other)
    }


def levelled(own: Arrangement, other: Arrangement) -> tuple[Level, ...]:
    """The chapters of `other` beside the draft's: one level for each of the draft's, in its order, and one before."""
    order = {row.chapter: n for n, row in enumerate(own.rows)}
    known = [row for row in other.rows if row.chapter in order]
    kept = {known[n].id for n in _in_order([order[row.chapter] for row in known])}
    levels: dict[str | None, list[Row]] = {None: [], **{row.chapter: [] for row in own.rows}}
    here: str | None = None
    for row in other.rows:
        if row.id in kept:
            here = row.chapter
        levels[here].append(row)
    return tuple(Level(chapter, tuple(rows)) for chapter, rows in levels.items())


def _compared(
    card: Laid, home: str | None, chapters: dict[str, str | None], in_place: set[str], shared: frozenset[str]
) -> Compared:
    if home is None:
        return Compared(("new",) if card.row else ("new", "set aside"))
    became: list[Became] = []
    if card.row is None:
        became.append("set aside")
    elif card.id not in in_place or chapters[card.row] != home:
        became.append("moved")
    origin = home if became else None
    if len(card.scenes) > 1:
        became.append("joined")
    if shared & set(card.scenes):
        became.append("split")
    return Compared(tuple(became), origin)


def _told(card: Laid, order: dict[str, int]) -> str:
    """The first of its scenes that is in the draft; "" for none."""
    return next((scene for scene in card.scenes if scene in order), "")


def _shared(arrangement: Arrangement) -> frozenset[str]:
    """Scenes that more than one card stands for."""
    scenes = Counter(scene for card in everything(arrangement) for scene in card.scenes)
    return frozenset(scene for scene, cards in scenes.items() if cards > 1)


def _in_order(numbers: Sequence[int]) -> list[int]:
    """Places of a longest run of numbers that does not fall, in order."""
    tops: list[int] = []  # the smallest last number of a run of each length
    ends: list[int] = []  # where it stands
    before: list[int] = []  # place of the one before, for each number
    for place, number in enumerate(numbers):
        length = bisect_right(tops, number)
        before.append(ends[length - 1] if length else -1)
        tops[length:] = [number] if length == len(tops) else [number, *tops[length + 1 :]]
        ends[length:] = [place] if length == len(ends) else [place, *ends[length + 1 :]]
    run: list[int] = []
    place = ends[-1] if ends else -1
    while place >= 0:
        run.append(place)
        place = before[place]
    return run[::-1]
