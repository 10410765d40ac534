"""Days named with their weekdays whose year is known, and of which weekday the calendar says that they are."""

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace
from datetime import date

from afterdraft.questions.named_days import NamedDay
from afterdraft.questions.question import Span
from afterdraft.questions.running_days import Placed
from afterdraft.questions.seen import Seen
from afterdraft.questions.speech import speech
from afterdraft.questions.years_agreed import are_of_another_year, feast_days, is_background, years_pass
from afterdraft.reading.times import times

REFORM = 1753  # first whole year of the Gregorian calendar in Britain and its colonies
FITTING = 3  # days of years before it that fit a calendar, for one that fits none; chosen by hand
BEFORE = 3  # scenes in which the last date with its year is looked for, the day's own among them; chosen by hand
BESIDE = 3  # paragraphs from a month and year without a day, from which only 'It was' tells what year it is, likewise
YEAR_NEAR = 120  # days from that date up to which its year is taken, likewise
YEAR = re.compile(r"\b(?:1[7-9]\d\d|20\d\d)\b|\b[Ee]ighteen\b|\b[Nn]ineteen\b")
_FIGURES = re.compile(r"\b(?:1[5-9]|20)\d\d\b")
_ELSEWHEN = re.compile(r"\b(?:had|when|since|ago|until|till|before|after)\b|[’']d\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Amiss:
    """A day that the calendar gives another weekday."""

    named: Placed
    own: date
    near: Span | None  # what tells its year, where the day does not
    sure: float


def amiss_in_known_years(seen: Seen, found: Sequence[Placed]) -> Iterator[Amiss]:
    yield from _by_calendar(found)
    yield from _before_reform(found)
    yield from _by_year_near(seen, [it for it in found if it.day.month and not it.day.year])


def _by_calendar(found: Sequence[Placed]) -> Iterator[Amiss]:
    for one in found:
        own = one.day.own
        if own and own.year >= REFORM and own.isoweekday() != one.day.weekday:
            yield Amiss(one, own, None, 0.97)


def _before_reform(found: Sequence[Placed]) -> Iterator[Amiss]:
    """Of either calendar, where the book's other days of those years keep to one or the other."""
    old = [(one, own) for one in found if (own := one.day.own) and own.year < REFORM]
    amiss = [(one, own) for one, own in old if one.day.weekday not in (own.isoweekday(), julian(own))]
    if len(old) - len(amiss) >= FITTING * len(amiss):
        yield from (Amiss(one, own, None, 0.8) for one, own in amiss)


def julian(day: date) -> int:
    """Weekday of the day of that name in the Julian calendar, from 1 for Monday. Up to February a leap day that only
    that calendar has, at the turn of a century, is not yet behind.

    >>> julian(date(1649, 1, 30)), julian(date(1746, 9, 30)), julian(date(1700, 2, 1)), julian(date(1700, 3, 1))
    (2, 2, 4, 5)
    """
    year = day.year - (day.month <= 2)  # years that begin in March
    behind = year // 100 - year // 400 - 2
    return (day.isoweekday() - 1 + behind) % 7 + 1


def _by_year_near(seen: Seen, found: Sequence[Placed]) -> Iterator[Amiss]:
    """Days of a named month whose year stands a page or two before. Where several are off by the same, the book has a
    calendar of its own; where more agree on another year, that one is of another time."""
    known = [(one, *told) for one in found if (told := _day_near(seen, one))]
    off = Counter((day.isoweekday() - one.day.weekday) % 7 for one, day, _ in known)
    days = list({(it.day.month, it.day.day, it.day.weekday): it.day for it in found}.values()) if any(off) else []
    feasts = list(feast_days(seen)) if days else []
    for one, day, near in known:
        others = [it for it in (*days, *feasts) if (it.month, it.day) != (one.day.month, one.day.day)]
        amiss = (day.isoweekday() - one.day.weekday) % 7
        if amiss and off[amiss] == 1 and not are_of_another_year([one.day, *others], day):
            yield Amiss(one, day, near, 0.8)


def _day_near(seen: Seen, one: Placed) -> tuple[date, Span] | None:
    """The day in the year of the last date before it that has a year and a month, if that lies near; and that date.
    None where a year that its scene says would make it right, or years pass between."""
    here = {int(year) for text in seen.texts[one.scene] for year in _FIGURES.findall(text)}
    own = (it for year in here if (it := replace(one.day, year=year).own))
    if any(it.isoweekday() == one.day.weekday for it in own):
        return None
    between: list[str] = []
    for number, place in _before(seen, one):
        text = seen.texts[number][place]
        ends = one.day.start if (number, place) == (one.scene, one.day.paragraph) and not one.heading else len(text)
        if YEAR.search(text) and (said := _dates_with_year(text)):
            near, whole, start, end = said[-1]
            told = seen.span(number, place, start, end)
            alone = not whole and len(between) >= BESIDE
            if _is_of_then(seen, told, alone=alone) or years_pass([*between, text[end:ends]]):
                return None
            day = _nearest(one.day, near)
            return (day, told) if day else None
        between.append(text[:ends])
    return None


def _is_of_then(seen: Seen, told: Span, *, alone: bool) -> bool:
    """Whether a year is looked back on, read out, talked of or in the background: it says no year of what is told.
    `alone` is a month and year without a day and not right before: how a story tells what was before it."""
    one = seen.sentence(told)
    spoken = speech(seen.texts[told.scene])(told.paragraph, told.start)
    front = one.quote[: told.start - one.start]
    return spoken or is_background(one.quote, front, alone=alone) or bool(_ELSEWHEN.search(one.quote))


def _before(seen: Seen, one: Placed) -> Iterator[tuple[int, int]]:
    """Scenes and paragraphs from its own backwards, as far as a year is looked for."""
    for number in range(one.scene, max(-1, one.scene - BEFORE), -1):
        last = one.day.paragraph if number == one.scene else len(seen.texts[number]) - 1
        yield from ((number, place) for place in range(last, -1, -1))


def _dates_with_year(text: str) -> list[tuple[date, bool, int, int]]:
    """In order, whether they have their day, and where they stand; of a month its middle."""
    found = []
    for one in times(text, 0):
        if one.kind == "date" and one.value.replace("-", "").isdecimal() and len(one.value) >= len("1893-05"):
            with suppress(ValueError):  # the thirty-first of June
                near = date.fromisoformat((one.value + "-15")[: len("1893-05-03")])
                found.append((near, len(one.value) == len("1893-05-03"), one.start, one.end))
    return found


def _nearest(day: NamedDay, near: date) -> date | None:
    years = (near.year - 1, near.year, near.year + 1)
    known = [it for year in years if (it := replace(day, year=year).own)]
    best = min(known, key=lambda it: abs(it - near), default=None)
    return best if best and abs((best - near).days) <= YEAR_NEAR and best.year >= REFORM else None
