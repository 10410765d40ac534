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
from afterdraft.reading.times import times

REFORM = 1753  # first whole year of the Gregorian calendar in Britain and its colonies
FITTING = 3  # days of years before it that fit a calendar, for one that fits none; chosen by hand
BEFORE = 3  # scenes in which the last date with its year is looked for, the day's own among them; chosen by hand
YEAR_NEAR = 120  # days from that date up to which its year is taken, likewise
_EVERY = range(2000, 2028)  # years with which weekdays come again in all ways
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
    calendar of its own."""
    known = [(one, *told) for one in found if (told := _day_near(seen, one))]
    off = Counter((day.isoweekday() - one.day.weekday) % 7 for one, day, _ in known)
    for one, day, near in known:
        days = (day.isoweekday() - one.day.weekday) % 7
        if days and off[days] == 1 and not _is_of_another_year(found, one, day.year):
            yield Amiss(one, day, near, 0.8)


def _is_of_another_year(found: Sequence[Placed], one: Placed, year: int) -> bool:
    """Whether the book's other days agree with it in some year, and none of them with that one, which is then another
    time's."""
    others = [it.day for it in found if (it.day.month, it.day.day) != (one.day.month, one.day.day)]
    beside = any(_is_right(one.day, other) and _is_right(it, other) for it in others for other in _EVERY)
    return beside and not any(_is_right(it, year) for it in others)


def _is_right(day: NamedDay, year: int) -> bool:
    own = replace(day, year=year).own
    return own is not None and own.isoweekday() == day.weekday


def _day_near(seen: Seen, one: Placed) -> tuple[date, Span] | None:
    """The day in the year of the last date before it that has a year and a month, if that lies near; and that date.
    None where a year that its scene says would make it right."""
    here = {int(year) for text in seen.texts[one.scene] for year in _FIGURES.findall(text)}
    own = (it for year in here if (it := replace(one.day, year=year).own))
    if any(it.isoweekday() == one.day.weekday for it in own):
        return None
    for number in range(one.scene, max(-1, one.scene - BEFORE), -1):
        scene = seen.texts[number]
        spoken = speech(scene)
        for place in range(one.day.paragraph if number == one.scene else len(scene) - 1, -1, -1):
            if YEAR.search(scene[place]) and (said := _dates_with_year(scene[place])):
                near, start, end = said[-1]
                back = _ELSEWHEN.search(seen.sentence(seen.span(number, place, start, end)).quote)
                if back or spoken(place, start):
                    return None  # what is looked back on, read out or talked of says no year of what is told
                day = _nearest(one.day, near)
                return (day, seen.span(number, place, start, end)) if day else None
    return None


def _dates_with_year(text: str) -> list[tuple[date, int, int]]:
    """In order, with where they stand; of a month its middle."""
    found = []
    for one in times(text, 0):
        if one.kind == "date" and one.value.replace("-", "").isdecimal() and len(one.value) >= len("1893-05"):
            with suppress(ValueError):  # the thirty-first of June
                found.append((date.fromisoformat((one.value + "-15")[: len("1893-05-03")]), one.start, one.end))
    return found


def _nearest(day: NamedDay, near: date) -> date | None:
    years = (near.year - 1, near.year, near.year + 1)
    known = [it for year in years if (it := replace(day, year=year).own)]
    best = min(known, key=lambda it: abs(it - near), default=None)
    return best if best and abs((best - near).days) <= YEAR_NEAR and best.year >= REFORM else None
