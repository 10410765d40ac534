"""`story_time`: when scenes happen, as far as their words say it.

Each scene, and within a scene each entry under a date of its own, is a point of a temporal network. What the writer has
said comes first, then datelines and headings, then dates in openings, then intervals from the scene before. Scenes that
say nothing are no earlier than the one told before them. What cannot be true beside what was taken in before is left
out, and told as a contradiction.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from itertools import pairwise

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.time import Time
from afterdraft.whole.calendar import DAY, day_of, edtf
from afterdraft.whole.durations import shift
from afterdraft.whole.network import Bound, Network
from afterdraft.whole.parts_of_day import PartOfDay, part_of_day
from afterdraft.whole.story_points import HERS, Point, Said, dated, points
from afterdraft.whole.weekdays import weekday_slips

ORIGIN = 0  # the network's point for the beginning of the calendar
EARLY = 120  # characters of a scene's first paragraph in which 'three days later' tells of the scene; common practice
FIRST = 8  # likewise where it must be the beginning itself


@dataclass(frozen=True, slots=True)
class SceneTime:
    """Bounds of when a scene happens, EDTF: `XXXX` for a year that no page says; "" where nothing binds it."""

    earliest: str
    latest: str
    part_of_day: PartOfDay
    rests_on: tuple[Said, ...]
    flashback: bool  # it lies wholly before a scene told earlier
    days: tuple[int | None, int | None]  # whole days since the book's first scene, least and most


@dataclass(frozen=True, slots=True)
class Dated:
    """An entry under its own date."""

    said: Said
    first: str  # EDTF
    last: str


@dataclass(frozen=True, slots=True)
class Contradiction:
    """What is said in these places cannot all be true: `weekday` against date, or one `time` against others."""

    what: str
    said: tuple[Said, ...]


@dataclass(frozen=True, slots=True)
class StoryTime:
    scenes: tuple[SceneTime, ...]  # one each, in telling order
    dated: tuple[Dated, ...]  # scenes and entries under a date of their own, in telling order
    contradictions: tuple[Contradiction, ...]


def story_time(
    scenes: Sequence[SceneFacts], heads: Sequence[Sequence[str]] = (), hers: Mapping[int, str] | None = None
) -> StoryTime:
    """`heads` has for each scene the lines of the heading right over it; `hers` the writer's own words for when a scene
    happens, by scene."""
    found, year_said = dated(points(scenes, heads, hers or {}))
    network: Network[Said] = Network(len(found) + 1)
    slips = [*_dates(network, found), *_intervals(network, found)]
    _telling(network, found)
    slips += [Contradiction("weekday", said) for said in weekday_slips(scenes, _years(found, len(scenes), year_said))]
    return StoryTime(
        tuple(_scenes(network, found, year_said=year_said)),
        tuple(
            Dated(
                one.said(one.date),
                edtf(one.span[0], last=False, year_said=year_said),
                edtf(one.span[1], last=True, year_said=year_said),
            )
            for one in found
            if one.headed and one.date and one.span
        ),
        tuple(slips),
    )


def _dates(network: Network[Said], found: Sequence[Point]) -> Iterator[Contradiction]:
    """The surest first."""
    order = sorted(range(len(found)), key=lambda place: (not _is_hers(found[place]), not found[place].headed))
    for place in order:
        one = found[place]
        if one.span and one.date:
            yield from _tell(network, ORIGIN, place + 1, one.span, one.said(one.date))


def _intervals(network: Network[Said], found: Sequence[Point]) -> Iterator[Contradiction]:
    for place, one in enumerate(found):
        if place and (said := _step(one)):
            yield from _tell(network, place, place + 1, shift(said.value) or (0, 0), one.said(said))
            if day := _day_after(network, place, said):
                yield from _tell(network, ORIGIN, place + 1, day, one.said(said))


def _step(one: Point) -> Time | None:
    """What its first words say of how long it is since the scene before. 'Yesterday', 'two years ago' are mostly told
    in passing; 'Two years before' at the very beginning is not."""
    if one.headed:
        return None
    for said in one.opening:
        if said.kind != "interval" or said.lasting or not shift(said.value) or said.paragraph > 0:
            continue
        if said.value.startswith("-"):
            moves = said.start <= FIRST and said.value != "-P1D"
        else:
            moves = said.start <= (FIRST if one.span else EARLY)
        if moves:
            return said
    return None


def _day_after(network: Network[Said], place: int, said: Time) -> tuple[int, int] | None:
    """Where all before lies in one known day, 'the next day' is the whole of the next."""
    least, most = network.earliest(ORIGIN)[place], network.latest(ORIGIN)[place]
    if said.value[-1] != "D" or least is None or most is None or least // DAY != most // DAY:
        return None
    first = least // DAY * DAY + int(said.value.replace("P", "")[:-1]) * DAY
    return first, first + DAY - 1


def _telling(network: Network[Said], found: Sequence[Point]) -> None:
    """What no words place is no earlier than what is told before it, where that can be."""
    for place, (_, one) in enumerate(pairwise(found), 1):
        if not one.span and not _step(one):
            network.tell(Bound(place + 1, place, 0, Said(one.scene, 0, 0, 0)))
    for place, (one, after) in enumerate(pairwise(found), 1):
        if not one.span and after.span and not _is_back(network, place, after):
            network.tell(Bound(place + 1, place, 0, Said(after.scene, 0, 0, 0)))


def _is_back(network: Network[Said], place: int, after: Point) -> bool:
    """Whether the dated point behind `place` lies before what was told: then the telling has gone back."""
    least = network.earliest(ORIGIN)[place]
    return least is not None and after.span is not None and after.span[1] < least


def _tell(network: Network[Said], tail: int, head: int, within: tuple[int, int], said: Said) -> Iterator[Contradiction]:
    least, most = within
    for bound in (Bound(tail, head, most, said), Bound(head, tail, -least, said)):
        if circle := network.tell(bound):
            yield Contradiction("time", tuple(dict.fromkeys(one.why for one in circle)))
            return


def _scenes(network: Network[Said], found: Sequence[Point], *, year_said: bool) -> Iterator[SceneTime]:
    if not found:
        return
    least, most, rests = network.earliest(ORIGIN), network.latest(ORIGIN), network.rests_on(ORIGIN)
    since, until = network.earliest(1), network.latest(1)
    front: int | None = None  # the furthest that telling has come
    for scene in range(found[-1].scene + 1):
        own = [place for place, one in enumerate(found, 1) if one.scene == scene]
        low, high = _all(least, own, min), _all(most, own, max)
        begins = most[own[0]]
        yield SceneTime(
            earliest=edtf(low, last=False, year_said=year_said),
            latest=edtf(high, last=True, year_said=year_said),
            part_of_day=part_of_day(found[own[0] - 1].opening),
            rests_on=tuple(dict.fromkeys(b.why for place in own for b in rests[place] if b.why.end)),
            flashback=front is not None and begins is not None and begins < front,
            days=(_days(_all(since, own, min)), _days(_all(until, own, max))),
        )
        told = [at for place in own if (at := least[place]) is not None]
        front = max([*told, *([] if front is None else [front])], default=None)


def _all(values: Sequence[int | None], own: Sequence[int], pick: Callable[[list[int]], int]) -> int | None:
    """Over the points of a scene; None where one of them is free."""
    known = [at for place in own if (at := values[place]) is not None]
    return pick(known) if len(known) == len(own) else None


def _days(minutes: int | None) -> int | None:
    return None if minutes is None else minutes // DAY


def _years(found: Sequence[Point], scenes: int, year_said: bool) -> list[date | None]:
    """For each scene a day of the year that it lies in, of its own or the last before that has one."""
    own = {one.scene: day_of(one.span[0]) for one in found if one.span and year_said}
    near: list[date | None] = []
    for scene in range(scenes):
        near.append(own.get(scene, near[-1] if near else None))
    return near


def _is_hers(one: Point) -> bool:
    return one.date is not None and one.date.paragraph == HERS
