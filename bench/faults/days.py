"""Days as novels print them. Imports nothing of the program."""

from datetime import date, timedelta
from random import Random

from bench.faults.listed import listed

MONTHS = listed("January February March April May June July August September October November December")
WEEKDAYS = listed("Monday Tuesday Wednesday Thursday Friday Saturday Sunday")
COUNTS = listed("one two three four five six seven eight nine ten eleven twelve")
_FIRSTS = listed(
    "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth "
    "fifteenth sixteenth seventeenth eighteenth nineteenth twentieth"
)
STYLES = ("the 3rd of May", "the third of May", "May 3", "May 3rd", "3 May")
YEARS = range(1840, 1940)


def some_day(random: Random) -> date:
    return date(random.choice(YEARS), 1, 1) + timedelta(days=random.randrange(365))


def weekday(day: date) -> str:
    return WEEKDAYS[day.weekday()]


def another_weekday(day: date, random: Random) -> str:
    return random.choice([one for one in WEEKDAYS if one != weekday(day)])


def said(day: date, style: str) -> str:
    """
    >>> [said(date(1887, 5, 23), style) for style in STYLES]
    ['the 23rd of May', 'the twenty-third of May', 'May 23', 'May 23rd', '23 May']
    """
    month = MONTHS[day.month - 1]
    return {
        "the 3rd of May": f"the {_short(day.day)} of {month}",
        "the third of May": f"the {_long(day.day)} of {month}",
        "May 3": f"{month} {day.day}",
        "May 3rd": f"{month} {_short(day.day)}",
        "3 May": f"{day.day} {month}",
    }[style]


def _short(number: int) -> str:
    ending = {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th") if number not in (11, 12, 13) else "th"
    return f"{number}{ending}"


def _long(number: int) -> str:
    if number <= len(_FIRSTS):
        return _FIRSTS[number - 1]
    tens, ones = divmod(number, 10)
    if not ones:
        return "thirtieth"
    return f"{('twenty', 'thirty')[tens - 2]}-{_FIRSTS[ones - 1]}"
