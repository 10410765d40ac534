"""Where a weekday and a date are named as one day: 'Friday the thirteenth', 'May 3, a Monday'."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from afterdraft.reading.time_words import DAYS, FIRSTS, MONTHS, ONES, TENS, month, number, year

_WEEKDAY = rf"(?P<weekday>{'|'.join(day.capitalize() for day in DAYS)})"
_LONG_FIRST = sorted(FIRSTS, key=len, reverse=True)
_ORDINAL = (
    rf"(?:(?:{'|'.join(TENS)})[\s-](?:{'|'.join(list(FIRSTS)[:9])})|(?:{'|'.join(_LONG_FIRST)})"
    r"|(?:[12]?\d|3[01])(?:st|nd|rd|th))"
)
SHORT_DAY = r"(?:Mon|Tues?|Weds?|Thurs?|Thu|Fri|Sat|Sun)\b\.?"
_SHORT = "Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sept?|Oct|Nov|Dec"
_MONTH = rf"(?P<month>{'|'.join(name.capitalize() for name in MONTHS)}|(?:{_SHORT})\b\.?)"
_YEAR = (
    r"(?:,?\s(?:in\s|of\s)?(?:the\syear\s)?(?P<year>1[5-9]\d\d|20\d\d"
    rf"|(?:eighteen|nineteen)\s?(?:hundred(?:\sand)?[\s-])?(?:(?:{'|'.join(TENS)})(?:[\s-](?:{'|'.join(ONES)}))?|\w+teen|ten|eleven|twelve)))?"
)
_PART = r"(?:,?\s(?:in\sthe\s)?(?:morning|afternoon|evening|night))"
_LINKED = r",?\s(?:(?:a|being|on|which\swas|it\swas|which\sis|was|is|fell|falls)\s){0,3}(?:the\s)?"
_NUMBER = r"(?P<day>(?:[12]?\d|3[01])(?:st|nd|rd|th)?)"
_ABBREVIATED = _WEEKDAY.replace(">", f">{SHORT_DAY}|", 1)
_CALLED = r"\sof\s(?P<called>[A-Z][a-z]+)\b(?![’'-]|\s[A-Z])"
_IS = r",?\s(?:(?:that|which|it)\s)?(?:is|was|will\sbe|would\sbe|fell\son|falls\son|being)\s"
_PATTERNS = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b{_WEEKDAY}{_PART}?,?\s(?:being\s)?(?:the\s)?(?P<day>{_ORDINAL}|[12]?\d|3[01])(?:\sday)?(?:\sof)?\s{_MONTH}(?!\w){_YEAR}",
        rf"\b{_WEEKDAY}{_PART}?,?\s(?:the\s)?{_MONTH}\s(?:the\s)?(?P<day>{_ORDINAL}|[12]?\d|3[01])\b(?!:){_YEAR}",
        rf"\b(?P<day>{_ORDINAL}|[12]?\d|3[01])(?:\sday)?(?:\sof)?\s{_MONTH}(?!\w){_YEAR}{_LINKED}{_WEEKDAY}\b",
        rf"\b{_MONTH}\s(?:the\s)?(?P<day>{_ORDINAL}|[12]?\d|3[01])\b{_YEAR}{_LINKED}{_WEEKDAY}\b",
        rf"\b{_WEEKDAY}{_PART}?,?\sthe\s(?P<day>{_ORDINAL})(?!\s(?:{'|'.join(DAYS)}|week|day|of|time|one)\b)(?!\w)",
        rf"\b[Tt]he\s(?P<day>{_ORDINAL}),\s(?:a|the)\s{_WEEKDAY}\b",
        rf"^{_WEEKDAY},\s(?P<day>(?:[12]?\d|3[01])(?:st|nd|rd|th)?)(?=[.,—])",
        rf"\b{_ABBREVIATED}\s(?:the\s)?{_NUMBER}(?:\sof)?\s{_MONTH}(?!\w){_YEAR}",
        rf"\b{_ABBREVIATED},?\s{_MONTH}\s{_NUMBER}\b(?!:){_YEAR}",
        rf"\b{_ABBREVIATED}{_PART}?,?\s(?:the\s)?(?P<day>[12]?\d(?:st|nd|rd|th)|3[01](?:st|nd|rd|th))\b",
        rf"\b{_WEEKDAY}{_PART}?,?\s(?:being\s)?the\s(?P<day>{_ORDINAL}){_CALLED}",
        rf"\b{_WEEKDAY}(?:\sweek)?{_IS}the\s(?P<day>{_ORDINAL})(?:\sof\s{_MONTH}(?!\w){_YEAR}|{_CALLED}|(?=[,.;:!?—]))",
        rf"\b[Tt]he\s(?!(?:first|second|third),?\s(?:that|which|it|is|was))(?P<day>{_ORDINAL})(?:{_CALLED})?{_IS}(?:an?\s)?{_WEEKDAY}\b(?![’'])",
        rf"\b[Tt]he\s(?P<day>{_ORDINAL}){_CALLED},?\s(?:a\s|the\s)?{_WEEKDAY}\b(?![’'])",
    )
)


@dataclass(frozen=True, slots=True)
class NamedDay:
    paragraph: int
    start: int
    end: int
    weekday: int  # 1 is Monday
    day: int
    month: int | None  # None where the page does not say
    year: int | None
    called: str = ""  # a month of no calendar of ours, in small letters: 'the tenth of Wrack'

    @property
    def own(self) -> date | None:
        """The day itself, where the page says all of it and there is such a day."""
        if not (self.year and self.month):
            return None
        try:
            return date(self.year, self.month, self.day)
        except ValueError:
            return None


def named_days(paragraphs: Sequence[str]) -> Iterator[NamedDay]:
    """Of one scene, in order of their places; each stretch of words is read once, as much of it as can be."""
    for number_, text in enumerate(paragraphs):
        if not _ANY.search(text):
            continue
        found: list[NamedDay] = []
        for pattern in _PATTERNS:
            for match in pattern.finditer(text):
                start, end = match.span()
                if not any(start < one.end and one.start < end for one in found) and (one := _read(number_, match)):
                    found.append(one)
        yield from sorted(found, key=lambda one: one.start)


def _read(paragraph: int, match: re.Match[str]) -> NamedDay | None:
    parts = match.groupdict()
    day = number(parts["day"])
    if not day or day > 31:
        return None
    said = year(parts["year"]) if parts.get("year") else ""
    called = (parts.get("called") or "").lower()
    own = MONTHS.get(called)  # 'the first of May' is a month of ours
    return NamedDay(
        paragraph,
        *match.span(),
        weekday=next(number for name, number in DAYS.items() if name.startswith(parts["weekday"][:3].lower())),
        day=day,
        month=month(parts["month"]) if parts.get("month") else own,
        year=int(said) if said.isdecimal() else None,
        called="" if own else called,
    )


_ANY = re.compile(rf"\b(?:{'|'.join(day[:3].capitalize() for day in DAYS)})")
