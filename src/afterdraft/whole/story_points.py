"""The points of a book's story time: its scenes, and the entries under a date of their own within them."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.time import Time
from afterdraft.reading.times import UNSAID, times
from afterdraft.whole.calendar import DAY, Span, day_of, span
from afterdraft.whole.parts_of_day import hours

OPENING = 2  # paragraphs of a scene or entry in which its time is looked for; common practice: readers are told early
NEAR = 240  # characters of a paragraph, likewise
PREAMBLE = 3  # paragraphs before a scene's first dateline that are its heading: whose journal, which letter, where
BESIDE = 16  # characters behind a date in which its clock or part of day stands
AHEAD, AHEAD_MONTH = 137, 10  # days from the date before to the middle of those that may be meant: half of a year, and
# of a month, less what telling goes back in passing: chosen by hand
HEADING, HERS = -1, -2  # paragraphs of what stands in a scene's heading, and in the writer's own words


@dataclass(frozen=True, slots=True, order=True)
class Said:
    """Words of a scene that a time rests on; `paragraph` may be `HEADING` or `HERS`."""

    scene: int
    paragraph: int
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Point:
    """A scene, or an entry of it."""

    scene: int
    opening: tuple[Time, ...]  # what its first words say of time, outside speech
    date: Time | None  # what dates it: the writer's own, a dateline, a heading, a date in its opening
    headed: bool = False  # by a dateline or heading, and not in passing
    span: Span | None = None  # minutes that the date allows
    begins: bool = False  # its scene

    def said(self, one: Time) -> Said:
        return Said(self.scene, one.paragraph, one.start, one.end)


def points(scenes: Sequence[SceneFacts], heads: Sequence[Sequence[str]], hers: Mapping[int, str]) -> list[Point]:
    """In telling order; each scene has at least one."""
    return [point for number, scene in enumerate(scenes) for point in _scene(number, scene, heads, hers)]


def dated(found: Sequence[Point]) -> tuple[list[Point], bool]:
    """The points with their spans, and whether any year is said at all.

    Years that are not said are taken to lie nearest to the date before; of a date in passing, and of a month that is
    not said, a little ahead of it: stories go on, and only headings are known to go back."""
    near = next((_first(point.date, None) for point in found if point.date and _year_said(point.date)), None)
    known, told = near is not None, False
    made = []
    for point in found:
        if point.date and (within := span(point.date, _about(point, near, told=told))):
            made.append(_spanned(point, within))
            first = day_of(within[0])
            near = first if point.headed or near is None or first > near or not told else near
            told = True
        else:
            made.append(point)
    return made, known


def _about(point: Point, near: date | None, *, told: bool) -> date | None:
    """What a date whose year or month is not said lies nearest to."""
    ahead = AHEAD_MONTH if point.date and point.date.value.startswith(f"{UNSAID}-XX") else AHEAD
    if near is None or (point.headed and ahead != AHEAD_MONTH):
        return near
    return near + timedelta(days=ahead if told else -ahead)


def _scene(number: int, scene: SceneFacts, heads: Sequence[Sequence[str]], hers: Mapping[int, str]) -> Iterator[Point]:
    if words := hers.get(number):
        said = times(words, HERS)
        yield Point(number, said, next((one for one in said if one.kind == "date"), None), True, begins=True)
        return
    lines = [one for line in (heads[number] if heads else ()) for one in times(line, HEADING)]
    starts = [one for one in scene.times if one.dateline]
    if not starts or starts[0].paragraph >= PREAMBLE:
        opening = (*lines, *_opening(scene, 0, starts[0].paragraph if starts else scene.paragraphs))
        head = next((one for one in lines if one.kind == "date" and len(one.value) >= len("XXXX-05-03")), None)
        inside = next((one for one in opening if one.kind == "date" and _is_day(one) and not one.aside), None)
        year = _year_of(lines) if not head else None
        told = _in_year(inside, year) if inside and year else head or inside or year
        yield Point(number, opening, told, bool(head or year), begins=True)
    ends = [one.paragraph for one in starts[1:]] + [scene.paragraphs]
    for place, (start, end) in enumerate(zip(starts, ends, strict=False)):
        opening = _opening(scene, start.paragraph, max(end, start.paragraph + 1))
        yield Point(number, opening, start, True, begins=not place and start.paragraph < PREAMBLE)


def _year_of(lines: Sequence[Time]) -> Time | None:
    """The one year, or month of a year, that a heading says: 'Part Two: 1926'."""
    years = [one for one in lines if one.kind == "date" and _year_said(one)]
    return years[0] if len(years) == 1 else None


def _in_year(inside: Time, year: Time) -> Time:
    """A day whose year is not said, in that of its heading; the year alone where it has no such day."""
    if _year_said(inside):
        return inside
    day = replace(inside, value=year.value[:4] + inside.value[4:])
    return day if span(day, None) else year


def _opening(scene: SceneFacts, first: int, end: int) -> tuple[Time, ...]:
    return tuple(
        one
        for one in scene.times
        if first <= one.paragraph < min(end, first + OPENING) and one.start < NEAR and (not one.spoken or one.dateline)
    )


def _spanned(point: Point, within: Span) -> Point:
    """Narrowed to the clock or part of day right behind a date of one day."""
    one = point.date
    if one and within[1] - within[0] < DAY:
        for other in point.opening:
            beside = other.paragraph == one.paragraph and 0 <= other.start - one.end < BESIDE
            if beside and (clock := hours(other)):
                within = within[0] + clock[0], within[0] + min(clock[1], DAY - 1)
                break
    return Point(point.scene, point.opening, one, point.headed, within, point.begins)


def _is_day(one: Time) -> bool:
    return len(one.value.split("/")[0]) == len("XXXX-05-03")


def _year_said(one: Time) -> bool:
    return one.value[:4].isdecimal()


def _first(one: Time, near: date | None) -> date | None:
    within = span(one, near)
    return day_of(within[0]) if within else None
