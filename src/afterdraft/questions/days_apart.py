"""How many days may lie between two days that are named with their weekdays."""

from afterdraft.questions.named_days import NamedDay

MONTH_DAYS = (31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
LENGTHS = (28, 29, 30, 31)  # days that a month whose name is not said may have
YEAR = 366  # as the months above have it


def forward(one: NamedDay, other: NamedDay) -> tuple[int, ...]:
    """Days from the one to the other, taken to come after it: within a year where both months are said."""
    if one.month and other.month:
        return _between(one.month, one.day, other.month, other.day)
    if other.day >= one.day or (one.called and one.called == other.called):
        return (other.day - one.day,)
    return tuple(length + other.day - one.day for length in LENGTHS)


def either_way(one: NamedDay, other: NamedDay) -> set[int]:
    """Days from the one to the other, before or after it: of a month that is not said, what it may be near the other's,
    less than a month away where that one's is not said either; none where one is of a month that no calendar has, and
    the other of another."""
    if in_other_calendars(one, other):
        return set()
    if one.month and other.month:
        near = _between(one.month, one.day, other.month, other.day)
        return {min((days - YEAR, days, days + YEAR), key=abs) for days in near}
    if one.month:
        months = (one.month + step for step in (-1, 0, 1))
        return {days for month in months for days in _near(one.month, one.day, month, other.day)}
    if other.month:
        return {-days for days in either_way(other, one)}
    here = other.day - one.day
    if one.called and other.called:
        return {here}
    return {here} | {days for sign in (-1, 1) for length in LENGTHS if abs(days := here + sign * length) < LENGTHS[0]}


def in_other_calendars(one: NamedDay, other: NamedDay) -> bool:
    """Whether both months are said, and at least one is none of ours, and not that of the other."""
    both = bool(one.month or one.called) and bool(other.month or other.called)
    return both and one.called != other.called


def may_fit(one: NamedDay, other: NamedDay, most: int) -> bool | None:
    """Whether their weekdays agree with some of these days; None where they are further apart than `most`, if the
    nearest of them is taken."""
    days = either_way(one, other)
    if not days or min(map(abs, days)) > most:
        return None
    return any(not amiss(one, other, count) for count in days)


def is_one_step_off(one: NamedDay, other: NamedDay) -> bool:
    """Whether it is the same weekday and the number beside, or the same number and the weekday beside."""
    if one.called != other.called or (one.month and other.month and one.month != other.month):
        return False
    off = (one.weekday - other.weekday) % 7
    return {abs(one.day - other.day), min(off, 7 - off)} == {0, 1}


def amiss(one: NamedDay, other: NamedDay, days: int) -> int:
    """By how many days of the week the other is off, if it lies so many days after."""
    return (one.weekday + days - other.weekday) % 7


def _between(month: int, day: int, other: int, last: int) -> tuple[int, ...]:
    whole = sum(MONTH_DAYS[: other - 1]) + last - sum(MONTH_DAYS[: month - 1]) - day
    if month <= 2 < other:
        return (whole - 1, whole)
    return (whole, whole + 1) if other <= 2 < month else (whole,)


def _near(month: int, day: int, other: int, last: int) -> tuple[int, ...]:
    """Where the other month may be 0 or 13, of the year beside."""
    if 1 <= other <= 12:
        return _between(month, day, other, last)
    return (last - day - 31,) if other < 1 else (last - day + 31,)  # December and January have 31
