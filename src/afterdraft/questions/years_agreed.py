"""Whether the days that a book names with their weekdays are of another year than the one told near them."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date

from afterdraft.questions.named_days import NamedDay
from afterdraft.questions.seen import Seen
from afterdraft.reading.time_words import DAYS, FEASTS

HALF = 183  # days
LINE = 30  # characters of a sentence up to which it may head what follows; chosen by hand
_EVERY = range(2000, 2028)  # years with which weekdays come again in all ways
_FEAST = "|".join(sorted((re.escape(name).replace("’", "[’']") for name in FEASTS), key=len, reverse=True))
_WEEKDAY = rf"(?P<weekday>{'|'.join(day.capitalize() for day in DAYS)})"
_FEASTS = (
    re.compile(
        rf"\b(?P<feast>{_FEAST})(?:,|\s(?:was|is|fell|falls|being)\b)(?:\sthat\syear,?)?(?:\son)?\s(?:an?|the)\s{_WEEKDAY}\b",
        re.IGNORECASE,
    ),
    re.compile(rf"\b{_WEEKDAY},?\s(?:which\swas\s|it\swas\s|the\s)?(?P<feast>{_FEAST})\b", re.IGNORECASE),
)
_PASSED = re.compile(
    r"\b(?:first|second|third|fourth|fifth|next|following|other|last|many|some|several|few|an?|two|three|four|five|six"
    r"|seven|eight|nine|ten|twenty|thirty|\d+|every|each|those)\syears?\b(?!\sold)"
    r"|\byears?\s(?:later|after|before|ago|since|earlier)\b"
    r"|\b(?:second|third|fourth|next|following|other)\s(?:spring|summer|autumn|fall|winter|christmas)\b",
    re.IGNORECASE,
)
_OF_LIVES = re.compile(
    r"\b(?:appointed|born|built|rebuilt|founded|established|published|printed|patented|invented|died|dead|killed|buried"
    r"|married|ordained|elected|enlisted|demobbed|retired|graduated|qualified|emigrated|restored|taught|lived|belonged"
    r"|first\s(?:came|went|met|saw|heard|set)|moved\s(?:to|in|into)|came\sto\s(?:live|work|teach)|bought|inherited|named"
    r"|dates?\sfrom|closed|opened\sin|began\sas|joined|took\sup|trained|apprenticed"
    r"|said|says|reads?|stamped|marked|inscribed|engraved|dated|plate|plaque|lease|deed|copyright|edition)\b",
    re.IGNORECASE,
)
_BY = re.compile(r"\b(?:by|from|to|until|till|since)\s(?:the\s)?$", re.IGNORECASE)
_IT_WAS = re.compile(
    r"\W*(?:(?:and|but|so|now)\s)?(?:it|this|that)(?:\s(?:was|is)\b|[’']s\b)(?!\s(?:in|on)\b)", re.IGNORECASE
)


def is_background(sentence: str, front: str, *, alone: bool) -> bool:
    """Whether a sentence tells of lives and houses, as a story does before it begins ('In 1961 I was appointed'), or
    what is written; `front` stands before the year. Where it stands alone, all but 'It was the May of 1961'."""
    said = _IT_WAS.match(sentence) or len(sentence) <= LINE
    return bool(_OF_LIVES.search(sentence) or _BY.search(front) or (alone and not said))


def years_pass(texts: Sequence[str]) -> bool:
    """Whether what stands between a year and a day speaks of years or of another winter."""
    return any(_PASSED.search(text) for text in texts)


def are_of_another_year(days: Sequence[NamedDay], told: date) -> bool:
    """Whether more of the days, two at least, agree on some other year than on that of the day told."""
    here = _agreeing(days, told.year, told)
    most = max(_agreeing(days, year, told) for year in _EVERY)
    return most > max(1, here)


def feast_days(seen: Seen) -> Iterator[NamedDay]:
    """'Christmas Day was a Tuesday': of feasts that have their date."""
    for scene in seen.texts:
        for place, text in enumerate(scene):
            for match in (match for pattern in _FEASTS for match in pattern.finditer(text)):
                month, day = map(int, FEASTS[match["feast"].lower().replace("'", "’")].split("-"))
                weekday = DAYS[match["weekday"].lower()]
                yield NamedDay(place, *match.span(), weekday=weekday, day=day, month=month, year=None)


def _agreeing(days: Sequence[NamedDay], year: int, told: date) -> int:
    """How many are of their weekday in the year that has the month and day told, or right before or after it."""
    return sum(any(it.isoweekday() == one.weekday for it in _near(one, year, told)) for one in days)


def _near(day: NamedDay, year: int, told: date) -> Iterator[date]:
    """The day itself, where it lies within half a year of the one told, put into that year."""
    middle = date(year, told.month, min(told.day, 28))
    for one in (replace(day, year=near).own for near in (year - 1, year, year + 1)):
        if one and abs((one - middle).days) <= HALF:
            yield one
