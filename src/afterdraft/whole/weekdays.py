"""Weekdays against dates: the standard library's calendar where the year is known, one another's where it is not."""

from collections.abc import Iterator, Sequence
from datetime import date
from itertools import pairwise

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.time import Time
from afterdraft.whole.calendar import day_of, span
from afterdraft.whole.story_points import Said

BESIDE = 8  # characters between a weekday and its date: 'Sunday the', ', '


def weekday_slips(scenes: Sequence[SceneFacts], near: Sequence[date | None]) -> Iterator[tuple[Said, ...]]:
    """Places where a weekday and a date that stand together cannot both be. `near` has for each scene a day of the year
    that it lies in, None where the book says no year: then pairs are held against the first pair of the book."""
    first: tuple[int, tuple[Said, ...]] | None = None
    for number, scene in enumerate(scenes):
        for weekday, one in _pairs(scene.times):
            said = tuple(Said(number, time.paragraph, time.start, time.end) for time in (weekday, one))
            within = span(one, near[number])
            if not within:
                continue
            day, told = day_of(within[0]), int(weekday.value[-1])
            if near[number] or one.value[:4].isdecimal():
                if day.isoweekday() != told:
                    yield said
            elif day.month > 2:  # before, a leap day may stand between
                off = (day.isoweekday() - told) % 7
                if first and first[0] != off:
                    yield (*first[1], *said)
                first = first or (off, said)


def _pairs(said: Sequence[Time]) -> Iterator[tuple[Time, Time]]:
    for one, other in pairwise(said):
        if one.paragraph == other.paragraph and 0 <= other.start - one.end <= BESIDE:
            kinds = (one.kind, other.kind)
            if kinds == ("weekday", "date") and len(other.value) == len("XXXX-05-03"):
                yield one, other
            elif kinds == ("date", "weekday") and len(one.value) == len("XXXX-05-03"):
                yield other, one
