"""Intervals as minutes: how far apart two scenes are when one is 'three days later'."""

import re

MINUTES = {"M": 1, "H": 60, "D": 1440, "W": 10_080, "MO": 43_830, "Y": 525_960}  # mean month and year, Gregorian
SLACK = {"M": 1, "H": 30, "D": 1439, "W": 2 * 1440, "MO": 10 * 1440, "Y": 90 * 1440}
# what the words leave open on either side: a day later is any hour of the day after; others common practice
ISO = re.compile(r"(-?)P(T?)(\d+)([MHDWY])(~?)")


def shift(value: str) -> tuple[int, int] | None:
    """Least and most minutes of an ISO 8601 duration as prose means it; below 0 where it goes back. 'About' that long
    is from half to twice as long.

    >>> shift("P3D"), shift("-PT2H"), shift("P0D")
    ((2881, 5759), (-150, -90), (-1439, 1439))
    """
    match = ISO.fullmatch(value)
    if not match:
        return None
    back, clock, count, letter, about = match.groups()
    unit = letter if clock or letter != "M" else "MO"
    long, slack = int(count) * MINUTES[unit], SLACK[unit]
    least, most = (long // 2, 2 * long) if about else (long - slack, long + slack)
    return (-most, -least) if back else (least, most)
