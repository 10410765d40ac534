"""From what a page says of a date to minutes of one calendar, and back to EDTF.

Minutes count from the first of January of the year 1, Gregorian, as the standard library counts days.
"""

from calendar import isleap, monthrange
from datetime import date, timedelta
from itertools import product

from afterdraft.reading.time import Time

DAY = 1440  # minutes
ANY_YEAR = 2000  # stands for a year that no page says; a leap year, so that every date is one
SEASONS = {"21": 3, "22": 6, "23": 9, "24": 12}  # EDTF's code to the first month: northern, meteorological
Span = tuple[int, int]  # first and last minute


def easter(year: int) -> date:
    """Easter Sunday, Western (the anonymous Gregorian computus, after Meeus, *Astronomical Algorithms*).

    >>> easter(1897), easter(2000)
    (datetime.date(1897, 4, 18), datetime.date(2000, 4, 23))
    """
    golden, (century, rest) = year % 19, divmod(year, 100)
    leaps, odd = divmod(century, 4)
    lunar = (century - (century + 8) // 25 + 1) // 3
    moon = (19 * golden + century - leaps - lunar + 15) % 30
    fours, ones = divmod(rest, 4)
    week = (32 + 2 * odd + 2 * fours - moon - ones) % 7
    late = (golden + 11 * moon + 22 * week) // 451
    month, day = divmod(moon + week - 7 * late + 114, 31)
    return date(year, month, day + 1)


def span(one: Time, near: date | None) -> Span | None:
    """The minutes that a date, month, season, year or feast may lie in. What is not said of it (a year, a century, a
    month) is taken so that it lies nearest to `near`. None for no date, or one that no calendar has."""
    found = [_span(value, near) for value in one.value.split("/")]
    if one.movable and found[0]:
        return min(
            (_day(easter(year) + timedelta(days=int(one.movable))) for year in _years(one.value, near)),
            key=lambda day: _far(day, near),
        )
    known = [one for one in found if one]
    return (known[0][0], known[-1][1]) if len(known) == len(found) else None


def day_of(minute: int) -> date:
    return date.fromordinal(minute // DAY)


def edtf(minute: int | None, *, last: bool, year_said: bool) -> str:
    """A bound as EDTF, "" where there is none; its clock only where it is not the end of a day."""
    if minute is None or not 1 <= minute // DAY <= date.max.toordinal():
        return ""
    day, clock = day_of(minute).isoformat(), minute % DAY
    shown = day if year_said else f"XXXX{day[4:]}"
    return shown if clock == (DAY - 1 if last else 0) else f"{shown}T{clock // 60:02}:{clock % 60:02}"


def _span(value: str, near: date | None) -> Span | None:
    year, _, rest = value.partition("-")
    month, _, day = rest.partition("-")
    months = [int(month)] if month.isdecimal() else range(1, 13) if month else [0]
    spans = (_of(*numbers, int(day or 0)) for numbers in product(_years(year, near), months))
    return min((one for one in spans if one), key=lambda one: _far(one, near), default=None)


def _years(value: str, near: date | None) -> list[int]:
    """The years that may be meant, of which the nearest is."""
    year = value[:4]
    if year.isdecimal():
        return [int(year)]
    about = near.year if near else ANY_YEAR
    if year[2:].isdecimal():
        return [about // 100 * 100 + int(year[2:]) + century for century in (-100, 0, 100)]
    return [about - 1, about, about + 1] if near else [about]


def _of(year: int, month: int, day: int) -> Span | None:
    if not month:
        return _whole(date(year, 1, 1), 365 + isleap(year))
    if start := SEASONS.get(str(month)):
        return _whole(date(year, start, 1), 92)
    days = monthrange(year, month)[1]
    if day > days:
        return None
    return _day(date(year, month, day)) if day else _whole(date(year, month, 1), days)


def _day(day: date) -> Span:
    return _whole(day, 1)


def _whole(first: date, days: int) -> Span:
    return first.toordinal() * DAY, (first.toordinal() + days) * DAY - 1


def _far(one: Span, near: date | None) -> int:
    at = near.toordinal() * DAY if near else 0
    return max(one[0] - at, at - one[1], 0)
