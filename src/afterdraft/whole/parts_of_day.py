"""Parts of the day: which one a clock time lies in, and which hours each may have."""

from collections.abc import Iterable
from typing import Literal, get_args

from afterdraft.reading.time import Time
from afterdraft.reading.time_words import PARTS

PartOfDay = Literal["dawn", "morning", "afternoon", "dusk", "evening", "night", ""]
_BEGIN: tuple[tuple[str, PartOfDay], ...] = (
    ("05:00", "night"),
    ("12:00", "morning"),
    ("18:00", "afternoon"),
    ("22:00", "evening"),
    ("24:00", "night"),
)  # until when each part lasts; common practice
_NAMES: dict[str, PartOfDay] = {PARTS[name]: name for name in get_args(PartOfDay) if name}


def part_of_day(said: Iterable[Time]) -> PartOfDay:
    """Of the first that tells one; a clock of twelve hours tells none by itself but noon and midnight."""
    for one in said:
        if one.kind == "part of day":
            return _NAMES.get(one.value, "morning" if one.value < "T12" else "evening")
        if one.kind == "clock" and not one.twelve:
            return next(part for end, part in _BEGIN if one.value[1:] < end)
    return ""


def hours(one: Time) -> tuple[int, int] | None:
    """First and last minute of its day that a clock time or part of day allows; None where it says neither or runs
    over midnight."""
    if one.kind == "clock" and not one.twelve:
        return _minute(one.value), _minute(one.value)
    first, _, last = one.value.partition("/")
    if one.kind == "part of day" and first < last:
        return _minute(first), _minute(last)
    return None


def _minute(clock: str) -> int:
    """
    >>> _minute("T18:30")
    1110
    """
    return int(clock[1:3]) * 60 + int(clock[4:6])
