"""A weekday and a date that are named as one day and cannot be."""

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from afterdraft.questions.check import Check
from afterdraft.questions.days_apart import either_way, forward, in_other_calendars, is_one_step_off, may_fit
from afterdraft.questions.known_years import YEAR, Amiss, amiss_in_known_years
from afterdraft.questions.months_told import FAR, may_be_held
from afterdraft.questions.question import Finding
from afterdraft.questions.remembered_days import remembered
from afterdraft.questions.running_days import Placed, is_shown, is_spoken, looks_back, placed, running
from afterdraft.questions.seen import Seen
from afterdraft.questions.years_between import headed
from afterdraft.reading.time_words import DAYS

NEAR = 45  # days between two days of named months up to which no other year is thought of; chosen by hand
NEXT = 10  # likewise where the month is not named of both; chosen on the demonstration book
_YEAR_TOLD = re.compile(
    rf"{YEAR.pattern}|[’'‘](?:(?:twen|thir|for|fif|six|seven|eigh|nine)ty|\d\d)\b"
    r"|\byears? (?:later|ago|earlier|before|since|back)\b|\b(?:last|that|the (?:next|same|other|previous)) year\b"
)
BESIDE = 4  # scenes between a day that is talked of, or looked back on, and those told, likewise
BY = 2  # scenes between two days told, of one of which the month is not said, likewise
ALONE = 14  # days from the one that is told alone, likewise
ABOUT = 31  # days from those told to one whose month is not said, likewise
WEEKDAYS = tuple(day.capitalize() for day in DAYS)


def find(seen: Seen) -> Iterator[Finding]:
    found = placed(seen)
    amiss = [_by_calendar(seen, it) for it in amiss_in_known_years(seen, found)]
    yield from amiss
    told = {span for one in amiss for span in one.evidence}
    left = [one for one in found if one.span(seen) not in told]
    runs = list(running(seen, left))
    against = list(_against_each_other(seen, [one for one in runs if not one.day.year]))
    yield from against
    told |= {span for one in against for span in one.evidence}
    yield from _beside_those_told(seen, [one for one in left if one.span(seen) not in told], runs)
    for that, day in remembered(seen, found):
        words = {"that": that.quote, "first": day.said(seen)}
        yield Finding((day.span(seen), that), 0.65, "weekday", words)


def _by_calendar(seen: Seen, it: Amiss) -> Finding:
    return Finding(
        evidence=(it.named.span(seen), *([it.near] if it.near else [])),
        strength=it.sure,
        subject="weekday",
        words={
            "said": it.named.said(seen),
            "was": WEEKDAYS[it.own.isoweekday() - 1],
            "told": _weekday(it.named),
        },
        numbers={"year": it.own.year},
    )


def _against_each_other(seen: Seen, found: Sequence[Placed]) -> Iterator[Finding]:
    """Days whose year no page says, in the order in which they are told, each held against those that agree."""
    agreed: list[Placed] = []
    for place, one in enumerate(found):
        if agreed and not may_be_held(seen, agreed[-1], one, BY, found):
            agreed = [one]
            continue
        if not agreed or _can_follow(agreed[-1], one):
            agreed.append(one)
            continue
        last = agreed[-1]
        after = found[place + 1] if place + 1 < len(found) else None
        same = _of_that_date(seen, found[max(0, place - FAR) : place], one)
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


def _of_that_date(seen: Seen, found: Sequence[Placed], one: Placed) -> Placed | None:
    """The last of the same date, if of another weekday: it says most plainly what is amiss."""
    same = [it for it in found if it != one and it.day.day == one.day.day and it.day.called == one.day.called]
    near = [it for it in same if not _of_two_months(it, one) and may_be_held(seen, it, one, FAR, found)]
    near = [it for it in near if abs(one.scene - it.scene) <= FAR]
    return near[-1] if near and near[-1].day.weekday != one.day.weekday else None


def _of_two_months(one: Placed, other: Placed) -> bool:
    return bool(one.day.month and other.day.month and one.day.month != other.day.month)


def _may_be_years_apart(seen: Seen, first: Placed, second: Placed) -> bool:
    """Whether many scenes lie between two days, or years by their headings, or the paragraph of either tells a year
    besides."""
    texts = (text for one in (first, second) for text in one.around(seen))
    years = any(headed(seen, scene) for scene in range(first.scene + 1, second.scene + 1))
    return second.scene - first.scene > FAR or years or any(_YEAR_TOLD.search(text) for text in texts)


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
    """Days that are talked of, shown or looked back on, or whose month is not said, near days that are told and
    agree."""
    asked: list[Placed] = []
    for one in left:
        if one in asked or not _is_nearby(seen, one):
            continue
        fits = [(other, _may_fit(other, one)) for other in runs if other != one and _is_near(seen, other, one, runs)]
        against = [other for other, fit in fits if fit is False]
        if not against or any(fit for _, fit in fits) or not _agree(against) or not _are_enough(against, one):
            continue
        off = next((it for it in runs if is_one_step_off(it.day, one.day) and _agree_with(against, it)), None)
        if off or not is_shown(seen, one):
            nearest = min(
                against, key=lambda it: (abs(it.scene - one.scene), abs(it.day.paragraph - one.day.paragraph))
            )
            told = _of_that_date(seen, runs, one) or off or nearest
            asked.append(told)
            yield _finding(seen, told, one, 0.8 if len(against) > 1 else 0.7)


def _is_near(seen: Seen, told: Placed, one: Placed, runs: Sequence[Placed]) -> bool:
    """Whether they may be of one time: further apart, where the month is said of neither, if they would be one day but
    for one step, as of no two months beside each other."""
    if told.day.year and not one.day.month and told.scene != one.scene:
        return False  # a wedding day of long ago says no month of now
    off = not told.day.month and not one.day.month and is_one_step_off(told.day, one.day)
    by = FAR if off else BESIDE
    held = BY if one.day.month and not told.day.month else by
    return abs(told.scene - one.scene) <= by and may_be_held(seen, told, one, held, runs)


def _agree_with(against: Sequence[Placed], one: Placed) -> bool:
    return all(may_fit(other.day, one.day, NEAR) for other in against)


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
    talked = is_spoken(seen, one) or looks_back(seen, one) or is_shown(seen, one)
    elsewhen = one.day.year or _YEAR_TOLD.search(one.words(seen))
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
    method="Where the year is said, there or a page or two before, and not looked back on, read out or told of lives "
    "and houses, the calendar decides (Gregorian, from the standard library), unless more of the book’s days agree on "
    "another year. Where it is not, days named near one another are held against each other: whole weeks lie between "
    "the same weekdays. What somebody says, or looks back on, is held against the days that are told within "
    f"{BESIDE} scenes. A month that is not said is that of the chapter’s heading, or the one named above it in the "
    f"scene, or else that of a day told up to {BY} scenes before; not that of a day announced.",
    blind="Days on what somebody reads or hears, which may be of any year, unless they are one step beside a day told. "
    "Dates before 1753 went by one calendar or the other: they are asked about where the book’s others keep to them; "
    "Russian ones before 1918 went by the other too. A day of another year told between two of this one may be asked "
    "about where nothing says so.",
    reads=("words",),
    find=find,
    recipe=13,
)
