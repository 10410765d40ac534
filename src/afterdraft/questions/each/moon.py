"""Two moons that cannot be that many days apart."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.story_days import day_at

MONTH = 29.53  # days from one new moon to the next, on the mean (Meeus, Astronomical Algorithms, chapter 49)
LONGEST = 200  # days up to which two moons are held against each other: the months are not all as long
FULL, NEW = MONTH / 2, 0.0  # days since new moon
ROUND = 6  # days by which people are out in calling a moon full, twice over; chosen by hand
APART = 6  # days that a crescent and a full moon lie apart at least, likewise
_FULL = r"full moon|moon (?:was|stood|rose|hung) (?:\w+ )?(?:at (?:the|its) )?full|moon at (?:the|its) full"
_NEW = r"new moon|(?:thin|slender|young|crescent|sickle) moon|crescent of (?:the|a) (?:new )?moon|moon (?:was|is) new"
_MOONS = ((FULL, re.compile(rf"\b(?:{_FULL})\b")), (NEW, re.compile(rf"\b(?:{_NEW})\b")))
_ELSEWHEN = re.compile(
    r"\b(?:had|would|when|until|till|before|after|next|last|every|each|like|as if|as though|if|were|shall|will"
    r"|once|always"
    r"|never|not|no|under a|days?|nights? (?:ago|before))\b|[’']d\b"
)


@dataclass(frozen=True, slots=True)
class _Moon:
    day: date
    age: float
    said: str
    span: Span


def find(seen: Seen) -> Iterator[Finding]:
    moons = [moon for number in seen.scenes for moon in _moons(seen, number)]
    for one, other in combinations(moons, 2):
        days = (other.day - one.day).days
        if 0 < days <= LONGEST and _differ(one.age, other.age, days):
            yield Finding(
                evidence=(one.span, other.span),
                strength=0.7,
                subject="moon",
                words={"first": one.said, "other": other.said},
                numbers={"days": days},
            )
            return


def _moons(seen: Seen, number: int) -> Iterator[_Moon]:
    """Those whose day is known, outside speech and as they stand then."""
    for place, text in enumerate(seen.texts[number]):
        for age, pattern in _MOONS:
            for match in pattern.finditer(text):
                span = seen.span(number, place, *sentence(text, *match.span()))
                told = day_at(seen, number, place)
                if told and not (_ELSEWHEN.search(span.quote) or _is_spoken(seen, number, place, match.start())):
                    yield _Moon(told.day, age, match.group(), span)


def _is_spoken(seen: Seen, number: int, paragraph: int, at: int) -> bool:
    return any(one.paragraph == paragraph and one.start <= at < one.end for one in seen.facts[number].quotes)


def _differ(one: float, other: float, days: int) -> bool:
    off = (one + days - other) % MONTH
    off = min(off, MONTH - off)  # days by which the second comes too early or too late
    return off > (ROUND if one == other else MONTH / 2 - APART)


CHECK = Check(
    id="moon",
    name="Two moons",
    family="continuity",
    looks_at="A full moon and another full moon, or a new one, between which there are too few or too many days.",
    method="The mean month of the moon, 29.53 days (Meeus), between two moons whose days are told above them, or are "
    "known from story time; six days are given to whoever calls a moon full.",
    blind="Moons whose day nothing tells. A moon that is meant as a figure of speech.",
    reads=("words", "facts", "time"),
    find=find,
    recipe=2,
)
