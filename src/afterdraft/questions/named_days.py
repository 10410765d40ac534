"""Where a weekday and a date are named as one day: 'Friday the thirteenth', 'May 3, a Monday'."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from afterdraft.reading.time_words import DAYS, FIRSTS, MONTHS, ONES, TENS, month, number, year

_CAPITALS = (
    f"{'|'.join(day.capitalize() for day in DAYS)}|{'|'.join(day.upper() for day in DAYS)}"  # as notices have it
)
_WEEKDAY = rf"(?P<weekday>{_CAPITALS})"
_LONG_FIRST = sorted(FIRSTS, key=len, reverse=True)
_ORDINAL = (
    rf"(?:(?:{'|'.join(TENS)})[\s-](?:{'|'.join(list(FIRSTS)[:9])})|(?:{'|'.join(_LONG_FIRST)})"
    r"|(?:[12]?\d|3[01])(?:st|nd|rd|th))"
)
SHORT_DAY = r"(?:Mon|Tues?|Weds?|Thurs?|Thu|Fri|Sat|Sun)\b\.?"
_SHORT = "Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sept?|Oct|Nov|Dec"
_MONTHS = f"{'|'.join(name.capitalize() for name in MONTHS)}|{'|'.join(name.upper() for name in MONTHS)}"
_MONTH = rf"(?P<month>{_MONTHS}|(?:{_SHORT})\b\.?)"
_YEAR = (
    r"(?:,?\s(?:in\s|of\s)?(?:the\syear\s)?(?P<year>1[5-9]\d\d|20\d\d"
    rf"|(?:eighteen|nineteen)\s?(?:hundred(?:\sand)?[\s-])?(?:(?:{'|'.join(TENS)})(?:[\s-](?:{'|'.join(ONES)}))?|\w+teen|ten|eleven|twelve)))?"
)
_PART = r"(?:,?\s(?:in\sthe\s)?(?:morning|afternoon|evening|night))"
_LINKED = r",?\s(?:(?:a|being|on|which\swas|it\swas|which\sis|was|is|fell|falls)\s){0,3}(?:the\s)?"
_NUMBER = r"(?P<day>(?:[12]?\d|3[01])(?:st|nd|rd|th)?)"
_ANY_NUMBER = rf"(?P<day>{_ORDINAL}|[12]?\d|3[01])"
_APART = r"(?::\s|\s?[—–]\s?|\s\()"
_AND_A = (
    r"(?:\.\s(?=A\s|\w+\.)(?:A\s)?|,?\sand\s(?:it\swas\s)?a\s|\s(?:was|fell),\sth(?:at|is)\syear,\s(?:on\s)?a\s)"
    rf"{_WEEKDAY}\b(?![’'])"
)  # '14 March. Tuesday.', 'the fourteenth of March, and a Tuesday'
_ABBREVIATED = _WEEKDAY.replace(">", f">{SHORT_DAY}|", 1)
_CALLED = r"\sof\s(?P<called>[A-Z][a-z]+)\b(?![’'-]|\s[A-Z])"
_ONCE_NAMED = rf"(?:(?!{_CAPITALS}|{_MONTHS}|\d)[\s\S]){{0,300}}?"  # behind a day, with none other between
_THIS_YEAR = r"\b(?:[Tt]his|[Tt]hat)\syear,?\s(?:it\s|that\s)?(?:had\s)?(?:was|is|been|falls?|fell|fallen)\s(?:on\s)?"
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
        rf"\b{_WEEKDAY}{_APART}(?:the\s)?{_ANY_NUMBER}(?:\sof)?\s{_MONTH}(?!\w){_YEAR}",
        rf"\b{_WEEKDAY}{_APART}{_MONTH}\s(?:the\s)?{_ANY_NUMBER}\b(?!:){_YEAR}",
        rf"\b{_ANY_NUMBER}(?:\sday)?(?:\sof)?\s{_MONTH}(?!\w){_YEAR}{_AND_A}",
        rf"\b{_MONTH}\s(?:the\s)?{_ANY_NUMBER}\b(?!:){_YEAR}{_AND_A}",
        rf"\b{_WEEKDAY}\s(?:in|of)\s{_MONTH},\sthe\s(?P<day>{_ORDINAL})\b",
        rf"\bthe\s(?P<day>{_ORDINAL})\sof\s{_MONTH}\b(?!\s\d){_ONCE_NAMED}(?P<said>{_THIS_YEAR}(?:an?\s)?{_WEEKDAY}\b(?![’']))",
        rf"\b(?:first|second|third|fourth|last)\s{_WEEKDAY}\s(?:of|in)\s{_MONTH}\b{_ONCE_NAMED}(?P<said>{_THIS_YEAR}the\s(?P<day>{_ORDINAL}))\b(?!\sof)",
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
                start, end = _said(match)
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
        *_said(match),
        weekday=next(number for name, number in DAYS.items() if name.startswith(parts["weekday"][:3].lower())),
        day=day,
        month=month(parts["month"]) if parts.get("month") else own,
        year=int(said) if said.isdecimal() else None,
        called="" if own else called,
    )


def _said(match: re.Match[str]) -> tuple[int, int]:
    """Where the words stand that bring the two together."""
    return match.span("said" if "said" in match.re.groupindex else 0)


_ANY = re.compile(
    rf"\b(?:{'|'.join(day[:3].capitalize() for day in DAYS)}|{'|'.join(day[:3].upper() for day in DAYS)})"
)
