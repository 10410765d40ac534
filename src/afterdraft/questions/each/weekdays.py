"""A weekday and a date that are named as one day and cannot be."""

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace
from datetime import date

from afterdraft.questions.check import Check
from afterdraft.questions.named_days import NamedDay, named_days
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.reading.quotations import quotations
from afterdraft.reading.time_words import DAYS
from afterdraft.reading.times import times

REFORM = 1753  # first whole year of the Gregorian calendar in Britain and its colonies
NEAR = 45  # days between two days of named months up to which no other year is thought of; chosen by hand
NEXT = 10  # likewise where the month is not named of both; chosen on the demonstration book
BEFORE = 3  # scenes in which the last date with its year is looked for, the day's own among them; chosen by hand
YEAR_NEAR = 120  # days from that date up to which its year is taken, likewise
_YEAR = re.compile(r"\b(?:1[7-9]\d\d|20\d\d)\b|\b[Ee]ighteen\b|\b[Nn]ineteen\b")
FAR = 10  # scenes between two days, from which they may be of two years; chosen by hand
_YEAR_TOLD = re.compile(
    rf"{_YEAR.pattern}|[’'‘](?:(?:twen|thir|for|fif|six|seven|eigh|nine)ty|\d\d)\b|\byears? (?:later|ago)\b"
)
ROUND = 40  # characters behind a day in which 'had' says that the telling looks back; chosen on the demonstration book
_BACK = re.compile(r"\b(?:had|[Hh]e[’']d|[Ss]he[’']d|[Tt]hey[’']d)\s")
MONTH_DAYS = (31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
LENGTHS = (28, 29, 30, 31)  # days that a month whose name is not said may have
WEEKDAYS = tuple(day.capitalize() for day in DAYS)


@dataclass(frozen=True, slots=True)
class _Placed:
    scene: int
    day: NamedDay


def find(seen: Seen) -> Iterator[Finding]:
    found = [_Placed(number, one) for number, scene in enumerate(seen.texts) for one in named_days(scene)]
    for one in found:
        own = one.day.own
        if own and own.year >= REFORM and own.isoweekday() != one.day.weekday:
            yield Finding(
                evidence=(_span(seen, one),),
                strength=0.97,
                subject="weekday",
                words={"said": _said(seen, one), "was": WEEKDAYS[own.isoweekday() - 1], "told": _weekday(one)},
                numbers={"year": own.year},
            )
    amiss = list(_in_known_years(seen, [one for one in found if one.day.month and not one.day.year]))
    yield from amiss
    told = {span for one in amiss for span in one.evidence}
    unsaid = [one for one in found if not (one.day.year or _span(seen, one) in told or _is_elsewhen(seen, one))]
    yield from _against_each_other(seen, unsaid)


def _in_known_years(seen: Seen, found: Sequence[_Placed]) -> Iterator[Finding]:
    """Days of a named month whose year stands a page or two before. Where several are off by the same, the book has a
    calendar of its own."""
    known = [(one, *told) for one in found if (told := _day_near(seen, one))]
    off = Counter((day.isoweekday() - one.day.weekday) % 7 for one, day, _ in known)
    for one, day, near in known:
        amiss = (day.isoweekday() - one.day.weekday) % 7
        if amiss and off[amiss] == 1:
            yield Finding(
                evidence=(_span(seen, one), near),
                strength=0.8,
                subject="weekday",
                words={"said": _said(seen, one), "was": WEEKDAYS[day.isoweekday() - 1], "told": _weekday(one)},
                numbers={"year": day.year},
            )


def _day_near(seen: Seen, one: _Placed) -> tuple[date, Span] | None:
    """The day in the year of the last date before it that has a year and a month, if that lies near; and that date."""
    for number in range(one.scene, max(-1, one.scene - BEFORE), -1):
        scene = seen.texts[number]
        for place in range(one.day.paragraph if number == one.scene else len(scene) - 1, -1, -1):
            if _YEAR.search(scene[place]) and (said := _dates_with_year(scene[place])):
                near, start, end = said[-1]
                day = _nearest(one.day, near)
                return (day, seen.span(number, place, start, end)) if day else None
    return None


def _dates_with_year(text: str) -> list[tuple[date, int, int]]:
    """In order, with where they stand; of a month its middle."""
    found = []
    for one in times(text, 0):
        if one.kind == "date" and one.value.replace("-", "").isdecimal() and len(one.value) >= len("1893-05"):
            with suppress(ValueError):  # the thirty-first of June
                found.append((date.fromisoformat((one.value + "-15")[: len("1893-05-03")]), one.start, one.end))
    return found


def _nearest(day: NamedDay, near: date) -> date | None:
    years = (near.year - 1, near.year, near.year + 1)
    known = [it for year in years if (it := replace(day, year=year).own)]
    best = min(known, key=lambda it: abs(it - near), default=None)
    return best if best and abs((best - near).days) <= YEAR_NEAR and best.year >= REFORM else None


def _against_each_other(seen: Seen, found: Sequence[_Placed]) -> Iterator[Finding]:
    """Days whose year no page says, in the order in which they are told, each held against those that agree."""
    agreed: list[_Placed] = []
    for place, one in enumerate(found):
        if not agreed or _can_follow(agreed[-1], one):
            agreed.append(one)
            continue
        last = agreed[-1]
        after = found[place + 1] if place + 1 < len(found) else None
        if _apart(last, one) is None or _may_be_years_apart(seen, last, one):  # no holding against each other
            agreed = [one]
        elif after and _can_follow(one, after) and not _can_follow(last, after):
            agreed = [one]  # the telling has gone elsewhere, or it is the one before that stands alone
            if len(found) > 2:
                yield _finding(seen, last, one, 0.7)
        else:
            yield _finding(seen, last, one, 0.9 if len(agreed) > 1 or (after and _can_follow(last, after)) else 0.75)


def _may_be_years_apart(seen: Seen, first: _Placed, second: _Placed) -> bool:
    """Whether many scenes lie between two days, or the paragraph of either tells a year."""
    texts = (seen.texts[one.scene][one.day.paragraph] for one in (first, second))
    return second.scene - first.scene > FAR or any(_YEAR_TOLD.search(text) for text in texts)


def _can_follow(one: _Placed, other: _Placed) -> bool:
    """Whether their weekdays agree with the days between them."""
    apart = _apart(one, other)
    return apart is not None and any((other.day.weekday - one.day.weekday - days) % 7 == 0 for days in apart)


def _apart(one: _Placed, other: _Placed) -> tuple[int, ...] | None:
    """How many days the second may be after the first; None where they are far apart or go back."""
    first, second = one.day, other.day
    if first.month and second.month:
        whole = sum(MONTH_DAYS[: second.month - 1]) + second.day - sum(MONTH_DAYS[: first.month - 1]) - first.day
        days: tuple[int, ...] = (whole,)
        if first.month <= 2 < second.month:
            days = (whole - 1, whole)
    elif second.day >= first.day:
        days = (second.day - first.day,)
    else:
        days = tuple(length + second.day - first.day for length in LENGTHS)
    most = NEAR if first.month and second.month else NEXT
    return days if all(0 <= count <= most for count in days) else None


def _is_elsewhen(seen: Seen, one: _Placed) -> bool:
    """Talk goes to other months and years, and so does telling that looks back."""
    text = seen.texts[one.scene][one.day.paragraph]
    if _BACK.search(text, one.day.end, one.day.end + ROUND):
        return True
    here = (quote for quote in quotations(seen.texts[one.scene]) if quote.paragraph == one.day.paragraph)
    return any(quote.start <= one.day.start < quote.end for quote in here)


def _finding(seen: Seen, one: _Placed, other: _Placed, strength: float) -> Finding:
    apart = (_apart(one, other) or (0,))[-1]
    would = WEEKDAYS[(one.day.weekday - 1 + apart) % 7]
    return Finding(
        evidence=(_span(seen, one), _span(seen, other)),
        strength=strength,
        subject="weekday",
        words={"said": _said(seen, other), "first": _said(seen, one), "was": would, "told": _weekday(other)},
        numbers={"days": apart},
    )


def _span(seen: Seen, one: _Placed) -> Span:
    return seen.span(one.scene, one.day.paragraph, one.day.start, one.day.end)


def _said(seen: Seen, one: _Placed) -> str:
    return " ".join(seen.texts[one.scene][one.day.paragraph][one.day.start : one.day.end].split())


def _weekday(one: _Placed) -> str:
    return WEEKDAYS[one.day.weekday - 1]


CHECK = Check(
    id="weekday",
    name="Weekday and date",
    family="continuity",
    looks_at="A weekday and a date that are named together as one day.",
    method="Where the year is said, there or a page or two before, the calendar decides (Gregorian, from the "
    "standard library). Where it is not, days named near one another are held against each other: whole weeks "
    "lie between the same weekdays.",
    blind="Dates before 1753, and Russian ones before 1918, went by another calendar. A day of another year told "
    "between two of this one may be asked about where nothing says so.",
    reads=("words",),
    find=find,
    recipe=3,
)
