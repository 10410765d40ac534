"""Sun and moon over a real place, by the astronomy library astral (offline; imported when first needed)."""

import re
from datetime import UTC, date, datetime
from functools import cache

from afterdraft.desk.ground import Ground

MONTH = 28.0  # the library counts a month of the moon from 0 to 28, full at 14
_DEGREES = re.compile(r"(-?\d{1,2}(?:[.,]\d+)?)\s*[,; ]\s*(-?\d{1,3}(?:[.,]\d+)?)")
_MOST_NORTH, _MOST_EAST = 90, 180


@cache
def places() -> tuple[str, ...]:
    """Towns that are known by name, as ‘Norwich, England’, in order."""
    from astral.geocoder import all_locations, database

    return tuple(sorted({f"{one.name}, {one.region}" for one in all_locations(database())}))


def located(words: str) -> tuple[str, float, float] | None:
    """Of a town's name, or of degrees north and east (‘52.6, 1.3’): what it is called, and the degrees; None where
    neither is known.

    >>> located("52.6, 1.3"), located("Nowhere at all")
    (('52.6, 1.3', 52.6, 1.3), None)
    """
    if match := _DEGREES.fullmatch(words.strip()):
        north, east = (float(part.replace(",", ".")) for part in match.groups())
        known = abs(north) < _MOST_NORTH and abs(east) <= _MOST_EAST
        return (f"{north:g}, {east:g}", north, east) if known else None
    from astral.geocoder import all_locations, database

    wanted = " ".join(words.casefold().split())
    for one in all_locations(database()):
        if wanted in (f"{one.name}, {one.region}".casefold(), one.name.casefold()):
            return f"{one.name}, {one.region}", one.latitude, one.longitude
    return None


def sun(ground: Ground, day: date) -> tuple[int, int] | None:
    """Minutes after midnight at which it rises and sets, by the sun's own clock there (mean time); None where it does
    not that day."""
    from astral import Observer
    from astral.sun import sunrise, sunset

    where = Observer(ground.north, ground.east)
    try:
        rise, down = (_minutes(of(where, day, tzinfo=UTC), ground) for of in (sunrise, sunset))
    except ValueError:
        return None
    return rise, down


def _minutes(at: datetime, ground: Ground) -> int:
    return round(at.hour * 60 + at.minute + 4 * ground.east) % (24 * 60)  # four minutes to a degree


def moon(day: date) -> float:
    """Days since new moon, of a month of 28."""
    from astral.moon import phase

    return float(phase(day))
