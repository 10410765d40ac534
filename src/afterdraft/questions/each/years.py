"""A date whose year is another than that of the dates round it."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.time import Time

NEAR = 45  # days from the dates round it within which the day would lie in their year; chosen by hand
_WHOLE = len("1893-05-03")
_ENTERED = re.compile(
    r"\b(?:born|bapti[sz]ed|christened|died|buried|married|built|founded|laid|dated|erected|registered)\b",
    re.IGNORECASE,
)  # what a register, a stone or an old paper says is of its own time


@dataclass(frozen=True, slots=True)
class _Named:
    scene: int
    time: Time
    day: date


def find(seen: Seen) -> Iterator[Finding]:
    named = list(_named(seen))
    for at in range(1, len(named) - 1):
        before, one, after = named[at - 1 : at + 2]
        year = before.day.year
        stands_alone = year == after.day.year != one.day.year and _would_fit(before.day, one.day, after.day)
        if stands_alone and not _ENTERED.search(_span(seen, one).quote):
            yield Finding(
                evidence=tuple(_span(seen, each) for each in (one, before, after)),
                strength=0.85,
                subject="year",
                words={"said": _said(seen, one)},
                numbers={"year": one.day.year, "others": year},
            )


def _named(seen: Seen) -> Iterator[_Named]:
    for number, scene in enumerate(seen.facts):
        for one in scene.times:
            if one.kind == "date" and len(one.value) == _WHOLE and one.value.replace("-", "").isdecimal():
                try:
                    yield _Named(number, one, date.fromisoformat(one.value))
                except ValueError:
                    continue  # the thirty-first of June


def _would_fit(before: date, one: date, after: date) -> bool:
    try:
        moved = one.replace(year=before.year)
    except ValueError:
        return False
    near = timedelta(days=NEAR)
    return min(before, after) - near <= moved <= max(before, after) + near and abs(after - before) <= 2 * near


def _span(seen: Seen, one: _Named) -> Span:
    text = seen.texts[one.scene][one.time.paragraph]
    return seen.span(one.scene, one.time.paragraph, *sentence(text, one.time.start, one.time.end))


def _said(seen: Seen, one: _Named) -> str:
    return " ".join(seen.texts[one.scene][one.time.paragraph][one.time.start : one.time.end].split())


CHECK = Check(
    id="year",
    name="A year that stands alone",
    family="continuity",
    looks_at="A date whose year is not that of the dates before and after it, though its day and month would lie among "
    "them.",
    method="Dates with day, month and year, three in a row; what was born, married, built or dated then is let be. The "
    "rule is our own.",
    blind="Dates whose year is not printed. An anniversary that is told among letters of another year is asked about.",
    reads=("words", "facts"),
    find=find,
    recipe=2,
)
