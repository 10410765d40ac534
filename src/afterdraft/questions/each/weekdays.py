"""A weekday and a date that are named as one day and cannot be."""

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import replace
from datetime import date
from itertools import pairwise

from afterdraft.questions.check import Check
from afterdraft.questions.days_apart import either_way, forward, in_other_calendars, may_fit
from afterdraft.questions.named_days import NamedDay
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.running_days import Placed, is_shown, is_spoken, looks_back, placed, running
from afterdraft.questions.seen import Seen
from afterdraft.questions.speech import speech
from afterdraft.reading.time_words import DAYS, MONTHS
from afterdraft.reading.times import times

REFORM = 1753  # first whole year of the Gregorian calendar in Britain and its colonies
NEAR = 45  # days between two days of named months up to which no other year is thought of; chosen by hand
NEXT = 10  # likewise where the month is not named of both; chosen on the demonstration book
BEFORE = 3  # scenes in which the last date with its year is looked for, the day's own among them; chosen by hand
YEAR_NEAR = 120  # days from that date up to which its year is taken, likewise
_YEAR = re.compile(r"\b(?:1[7-9]\d\d|20\d\d)\b|\b[Ee]ighteen\b|\b[Nn]ineteen\b")
_FIGURES = re.compile(r"\b(?:1[5-9]|20)\d\d\b")
FAR = 10  # scenes between two days, from which they may be of two years; chosen by hand
_YEAR_TOLD = re.compile(
    rf"{_YEAR.pattern}|[’'‘](?:(?:twen|thir|for|fif|six|seven|eigh|nine)ty|\d\d)\b"
    r"|\byears? (?:later|ago|earlier|before|since|back)\b|\b(?:last|that|the (?:next|same|other|previous)) year\b"
)
BESIDE = 4  # scenes between a day that is talked of, or looked back on, and those told, likewise
BY = 2  # scenes between two days told, of one of which the month is not said, likewise
ALONE = 14  # days from the one that is told alone, likewise
ABOUT = 31  # days from those told to one whose month is not said, likewise
_MONTH = "|".join(month.capitalize() for month in MONTHS)
_MONTHS = re.compile(
    rf"\b(?:in|of|till|until|since|early|late|this|last|next)\s(?P<behind>{_MONTH})\b|\b(?P<before>{_MONTH})\s\d"
)
_ELSEWHEN = re.compile(r"\b(?:had|when|since|ago|until|till|before|after)\b|[’']d\b", re.IGNORECASE)
WEEKDAYS = tuple(day.capitalize() for day in DAYS)


def find(seen: Seen) -> Iterator[Finding]:
    found = placed(seen)
    amiss = [
        *_by_calendar(seen, found),
        *_in_known_years(seen, [it for it in found if it.day.month and not it.day.year]),
    ]
    yield from amiss
    told = {span for one in amiss for span in one.evidence}
    left = [one for one in found if one.span(seen) not in told]
    runs = list(running(seen, left))
    against = list(_against_each_other(seen, [one for one in runs if not one.day.year]))
    yield from against
    told |= {span for one in against for span in one.evidence}
    yield from _beside_those_told(seen, [one for one in left if one.span(seen) not in told], runs)


def _by_calendar(seen: Seen, found: Sequence[Placed]) -> Iterator[Finding]:
    for one in found:
        own = one.day.own
        if own and own.year >= REFORM and own.isoweekday() != one.day.weekday:
            yield Finding(
                evidence=(one.span(seen),),
                strength=0.97,
                subject="weekday",
                words={"said": one.said(seen), "was": WEEKDAYS[own.isoweekday() - 1], "told": _weekday(one)},
                numbers={"year": own.year},
            )


def _in_known_years(seen: Seen, found: Sequence[Placed]) -> Iterator[Finding]:
    """Days of a named month whose year stands a page or two before. Where several are off by the same, the book has a
    calendar of its own."""
    known = [(one, *told) for one in found if (told := _day_near(seen, one))]
    off = Counter((day.isoweekday() - one.day.weekday) % 7 for one, day, _ in known)
    for one, day, near in known:
        amiss = (day.isoweekday() - one.day.weekday) % 7
        if amiss and off[amiss] == 1:
            yield Finding(
                evidence=(one.span(seen), near),
                strength=0.8,
                subject="weekday",
                words={"said": one.said(seen), "was": WEEKDAYS[day.isoweekday() - 1], "told": _weekday(one)},
                numbers={"year": day.year},
            )


def _day_near(seen: Seen, one: Placed) -> tuple[date, Span] | None:
    """The day in the year of the last date before it that has a year and a month, if that lies near; and that date.
    None where a year that its scene says would make it right."""
    here = {int(year) for text in seen.texts[one.scene] for year in _FIGURES.findall(text)}
    own = (it for year in here if (it := replace(one.day, year=year).own))
    if any(it.isoweekday() == one.day.weekday for it in own):
        return None
    for number in range(one.scene, max(-1, one.scene - BEFORE), -1):
        scene = seen.texts[number]
        spoken = speech(scene)
        for place in range(one.day.paragraph if number == one.scene else len(scene) - 1, -1, -1):
            if _YEAR.search(scene[place]) and (said := _dates_with_year(scene[place])):
                near, start, end = said[-1]
                back = _ELSEWHEN.search(seen.sentence(seen.span(number, place, start, end)).quote)
                if back or spoken(place, start):
                    return None  # what is looked back on, read out or talked of says no year of what is told
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


def _against_each_other(seen: Seen, found: Sequence[Placed]) -> Iterator[Finding]:
    """Days whose year no page says, in the order in which they are told, each held against those that agree."""
    agreed: list[Placed] = []
    for place, one in enumerate(found):
        if agreed and not _may_be_held(seen, agreed[-1], one, BY):
            agreed = [one]
            continue
        if not agreed or _can_follow(agreed[-1], one):
            agreed.append(one)
            continue
        last = agreed[-1]
        after = found[place + 1] if place + 1 < len(found) else None
        same = _of_that_date(found[max(0, place - FAR) : place], one)
        if same and same.day.month and _apart(last, one) is None and not _may_be_years_apart(seen, same, one):
            yield _finding(seen, same, one, 0.8)
        elif _apart(last, one) is None or _may_be_years_apart(seen, last, one):  # no holding against each other
            agreed = [one]
        elif after and _can_follow(one, after) and not _can_follow(last, after):
            agreed = [one]  # the telling has gone elsewhere, or it is the one before that stands alone
            if len(found) > 2:
                yield _finding(seen, last, one, 0.7)
        else:
            yield _finding(
                seen, same or last, one, 0.9 if len(agreed) > 1 or (after and _can_follow(last, after)) else 0.75
            )


def _may_be_held(seen: Seen, one: Placed, other: Placed, by: int) -> bool:
    """Whether two days may be of one month, or of two that are named: where the month of one is not said, it is the
    last named above it in its scene, or else that of the other, so many scenes off at most."""
    if all(it.day.month or it.day.called for it in (one, other)):
        return True
    months = [it.day.month or _month_above(seen, it) for it in (one, other)]
    return months[0] == months[1] if all(months) else not any(months) or abs(one.scene - other.scene) <= by


def _month_above(seen: Seen, one: Placed) -> int | None:
    """The month that is named last before it in its scene."""
    if one.heading:
        return None
    scene = seen.texts[one.scene]
    texts = [*scene[: one.day.paragraph], scene[one.day.paragraph][: one.day.start]]
    named = [match["behind"] or match["before"] for text in texts for match in _MONTHS.finditer(text)]
    return MONTHS[named[-1].lower()] if named else None


def _of_that_date(found: Sequence[Placed], one: Placed) -> Placed | None:
    """The last of the same date, if of another weekday: it says most plainly what is amiss."""
    same = [it for it in found if it != one and it.day.day == one.day.day and it.day.called == one.day.called]
    near = [it for it in same if abs(one.scene - it.scene) <= FAR and not _of_two_months(it, one)]
    return near[-1] if near and near[-1].day.weekday != one.day.weekday else None


def _of_two_months(one: Placed, other: Placed) -> bool:
    return bool(one.day.month and other.day.month and one.day.month != other.day.month)


def _may_be_years_apart(seen: Seen, first: Placed, second: Placed) -> bool:
    """Whether many scenes lie between two days, or the paragraph of either tells a year."""
    texts = (one.words(seen) for one in (first, second))
    return second.scene - first.scene > FAR or any(_YEAR_TOLD.search(text) for text in texts)


def _can_follow(one: Placed, other: Placed) -> bool:
    """Whether their weekdays agree with the days between them."""
    apart = _apart(one, other)
    return apart is not None and any((other.day.weekday - one.day.weekday - days) % 7 == 0 for days in apart)


def _apart(one: Placed, other: Placed) -> tuple[int, ...] | None:
    """How many days the second may be after the first; None where they are far apart or go back."""
    first, second = one.day, other.day
    days = forward(first, second)
    most = NEAR if first.month and second.month else NEXT
    elsewhere = in_other_calendars(first, second)
    return days if not elsewhere and all(0 <= count <= most for count in days) else None


def _beside_those_told(seen: Seen, left: Sequence[Placed], runs: Sequence[Placed]) -> Iterator[Finding]:
    """Days that are talked of or looked back on, or whose month is not said, near days that are told and agree."""
    asked: list[Placed] = []
    for one in left:
        if one in asked or not _is_nearby(seen, one):
            continue
        near = [other for other in runs if other != one and abs(other.scene - one.scene) <= BESIDE]
        beside = [other for other in near if _may_be_held(seen, other, one, BESIDE)]
        fits = [(other, _may_fit(other, one)) for other in beside]
        against = [other for other, fit in fits if fit is False]
        if against and not any(fit for _, fit in fits) and _agree(against) and _are_enough(against, one):
            nearest = min(
                against, key=lambda it: (abs(it.scene - one.scene), abs(it.day.paragraph - one.day.paragraph))
            )
            told = _of_that_date(runs, one) or nearest
            asked.append(told)
            yield _finding(seen, told, one, 0.8 if len(against) > 1 else 0.7)


def _are_enough(against: Sequence[Placed], one: Placed) -> bool:
    """Whether they are two; one alone may be of another year, unless it is near; and a day whose month nobody says may
    be of another month, unless it has the same number."""
    if len(against) > 1:
        return True
    if not one.day.month and not one.day.called:
        return against[0].day.day == one.day.day
    days = either_way(against[0].day, one.day)
    return not against[0].day.month or min(map(abs, days)) <= ALONE


def _is_nearby(seen: Seen, one: Placed) -> bool:
    """Whether a day lies near those that are told, for all that is said."""
    talked = is_spoken(seen, one) or looks_back(seen, one)
    elsewhen = one.day.year or is_shown(seen, one) or _YEAR_TOLD.search(one.words(seen))
    return not elsewhen and (talked or not one.day.month)


def _may_fit(one: Placed, other: Placed) -> bool | None:
    said = bool(one.day.month) + bool(other.day.month)
    return may_fit(one.day, other.day, (NEXT, ABOUT, NEAR)[said])


def _agree(days: Sequence[Placed]) -> bool:
    return all(may_fit(one.day, other.day, NEAR) is not False for one, other in pairwise(days))


def _finding(seen: Seen, one: Placed, other: Placed, strength: float) -> Finding:
    apart = min(either_way(one.day, other.day), key=abs)
    would = WEEKDAYS[(one.day.weekday - 1 + apart) % 7]
    return Finding(
        evidence=(one.span(seen), other.span(seen)),
        strength=strength,
        subject="weekday",
        words={"said": other.said(seen), "first": one.said(seen), "was": would, "told": _weekday(other)},
        numbers={"days": apart},
    )


def _weekday(one: Placed) -> str:
    return WEEKDAYS[one.day.weekday - 1]


CHECK = Check(
    id="weekday",
    name="Weekday and date",
    family="continuity",
    looks_at="A weekday and a date that are named together as one day, in the text or over a chapter.",
    method="Where the year is said, there or a page or two before, and not looked back on or read out, the calendar "
    "decides (Gregorian, from the standard library). Where it is not, days named near one another are held against "
    "each other: whole weeks lie between the same weekdays. What somebody says, or looks back on, is held against the "
    f"days that are told within {BESIDE} scenes. A month that is not said is the one named above it in the scene, or "
    f"else may be that of days told up to {BY} scenes off, the one before or the one after.",
    blind="Days on what somebody reads or hears, which may be of any year. Dates before 1753, and Russian ones before "
    "1918, went by another calendar. A day of another year told between two of this one may be asked about where "
    "nothing says so.",
    reads=("words",),
    find=find,
    recipe=8,
)
