"""Words for numbers, months, days and feasts, and what they come to."""

import re
from collections.abc import Mapping

_ONES = (
    "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen "
    "eighteen nineteen"
)
_TENS = "twenty thirty forty fifty sixty seventy eighty ninety"
_FIRSTS = (
    "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth "
    "sixteenth seventeenth eighteenth nineteenth twentieth thirtieth"
)
ONES: Mapping[str, int] = {word: number for number, word in enumerate(_ONES.split(), 1)}
TENS: Mapping[str, int] = {word: 10 * number for number, word in enumerate(_TENS.split(), 2)}
FIRSTS: Mapping[str, int] = dict(zip(_FIRSTS.split(), [*range(1, 21), 30], strict=True))
VAGUE: Mapping[str, int] = {"couple": 2, "few": 3, "some": 3, "several": 5, "many": 10}  # 'P3D~': about that
_MONTHS = "january february march april may june july august september october november december"
_DAYS = "monday tuesday wednesday thursday friday saturday sunday"
MONTHS: Mapping[str, int] = {word: number for number, word in enumerate(_MONTHS.split(), 1)}
DAYS: Mapping[str, int] = {word: number for number, word in enumerate(_DAYS.split(), 1)}
PARTS: Mapping[str, str] = {
    "dawn": "T04:00/T07:00",
    "daybreak": "T04:00/T07:00",
    "sunrise": "T04:00/T08:00",
    "morning": "T05:00/T12:00",
    "forenoon": "T08:00/T12:00",
    "afternoon": "T12:00/T18:00",
    "sunset": "T16:00/T22:00",
    "dusk": "T16:00/T22:00",
    "twilight": "T16:00/T22:00",
    "evening": "T17:00/T23:00",
    "nightfall": "T17:00/T22:00",
    "night": "T20:00/T06:00",
}  # hours that a part of the day may lie in; common practice, wide enough for a northern summer and winter
SEASONS: Mapping[str, int] = {"spring": 21, "summer": 22, "autumn": 23, "fall": 23, "winter": 24}  # EDTF level 1
UNITS: Mapping[str, tuple[int, str]] = {
    "minute": (1, "M"),
    "hour": (1, "H"),
    "day": (1, "D"),
    "night": (1, "D"),
    "week": (1, "W"),
    "fortnight": (2, "W"),
    "month": (1, "MO"),
    "year": (1, "Y"),
}
FEASTS: Mapping[str, str] = {
    "new year’s eve": "12-31",
    "new year’s day": "01-01",
    "twelfth night": "01-05",
    "epiphany": "01-06",
    "candlemas": "02-02",
    "valentine’s day": "02-14",
    "lady day": "03-25",
    "all fools’ day": "04-01",
    "may day": "05-01",
    "midsummer’s eve": "06-23",
    "midsummer eve": "06-23",
    "midsummer day": "06-24",
    "lammas": "08-01",
    "michaelmas": "09-29",
    "hallowe’en": "10-31",
    "halloween": "10-31",
    "all hallows’ eve": "10-31",
    "all souls’ day": "11-02",
    "martinmas": "11-11",
    "christmas eve": "12-24",
    "christmas day": "12-25",
    "christmas": "12-25",
    "boxing day": "12-26",
}  # fixed feasts of the Western calendar, common knowledge
MOVABLE: Mapping[str, int] = {
    "shrove tuesday": -47,
    "ash wednesday": -46,
    "palm sunday": -7,
    "maundy thursday": -3,
    "good friday": -2,
    "easter eve": -1,
    "easter monday": 1,
    "easter sunday": 0,
    "easter": 0,
    "whit monday": 50,
    "whit sunday": 49,
    "whitsunday": 49,
    "trinity sunday": 56,
}  # days from Easter Sunday, common knowledge


def number(words: str) -> int | None:
    """
    >>> number("twenty-seven"), number("Forty third"), number("15th"), number("a"), number("half a"), number("some")
    (27, 43, 15, 1, None, 3)
    """
    total = 0
    for word in re.split(r"[\s-]+", words.strip().lower()):
        if digits := re.match(r"\d+", word):
            return int(digits.group())
        known = ONES.get(word) or FIRSTS.get(word) or TENS.get(word) or VAGUE.get(word)
        total += known or (1 if word in ("a", "an", "the") else 0)
        if word == "half":
            return None
    return total - 1 if re.match(r"a\s+(few|couple|good many)", words.strip().lower()) else total or None


def month(word: str) -> int:
    """By the first three letters: `Sept.` is 9."""
    return next(value for name, value in MONTHS.items() if name.startswith(word.lower()[:3]))


def year(words: str) -> str:
    """Four digits, with X for a century that is not said.

    >>> year("eighteen hundred and forty-nine"), year("’forty-nine"), year("1893"), year("’93")
    ('1849', 'XX49', '1893', 'XX93')
    """
    small = words.lower().lstrip("‘’'")
    if small.isdigit():
        return small if len(small) == 4 else f"XX{small}"
    century, hundred, rest = small.partition("hundred")
    if not hundred:
        first, _, rest = small.replace(" ", "-", 1).partition("-")
        if 15 <= (number(first) or 0) <= 20 and (number(rest) or 0) >= 10:  # nineteen-twelve
            return f"{number(first)}{number(rest)}"
        return f"XX{number(small):02}"
    return f"{number(century) or 0:02}{number(rest.replace('and ', '')) or 0:02}"
