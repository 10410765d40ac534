"""When a scene happens, as read, in words."""

from afterdraft.web.told import When

MONTHS = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)


def when_told(when: When) -> str:
    """ "3 May 1893, morning", "between 3 and 9 May", "evening"; "" where nothing is known."""
    day = _days(when.earliest, when.latest)
    told = ", ".join(filter(None, (day, when.part_of_day)))
    return f"{told}; told back" if told and when.flashback else told


def day_told(date: str) -> str:
    """ "3 May 1893" of "1893-05-03"; "3 May" of "XXXX-05-03"; other EDTF as it stands."""
    year, _, rest = date.partition("-")
    month, _, day = rest.partition("-")
    if not (month.isdecimal() and 1 <= int(month) <= len(MONTHS)):
        return date
    said = ([str(int(day))] if day.isdecimal() else []) + [MONTHS[int(month) - 1]]
    return " ".join([*said, year] if year.isdecimal() else said)


def _days(earliest: str, latest: str) -> str:
    """Of a day known on one side only nothing is said: before the first date of a book everything is before it."""
    if not (earliest and latest):
        return ""
    return day_told(earliest) if earliest == latest else f"between {day_told(earliest)} and {day_told(latest)}"
