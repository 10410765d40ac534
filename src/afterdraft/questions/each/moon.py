"""Two moons that cannot be that many days apart."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations, pairwise

from afterdraft.questions.check import Check
from afterdraft.questions.moon_phases import Phase, apart, phases
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.story_days import day_at, days_of
from afterdraft.reading.time import Time

LONGEST = 200  # days up to which two moons are held against each other: the months are not all as long
GRANTED = 1.0  # days beyond what is granted to each; chosen by hand
VAGUE = 3  # days between the first and the last on which a scene may lie, likewise
BESIDE = 4  # scenes between two moons whose days are counted by the weekdays told round them, likewise
LONG = 4  # days that pass, from which they are not counted so
NIGHT = 1  # days between two moons of one scene in which no time passes
_ELSEWHEN = re.compile(
    r"\b(?:would|when|until|till|next|last(?! quarter)|every|each|like|as if|as though|if|were|shall|will|once|always"
    r"|often|sometimes|remember\w*|dream\w*|paint\w*|picture|never|under a|months?|tides?|(?:days?|nights?) ago"
    r"|(?<!days )(?<!nights )(?<!day )(?<!night )(?:before|after))\b"
)
_NOT_NOW = re.compile(r"\b(?:had|not(?! quite)|no(?! more than)|nor)\b|[’']d\b|n[’']t\b")
_CLAUSE = re.compile(r"[,;:—–]|\b(?:and|but|that)\b")
_LENGTH = re.compile(r"P(\d+)([DWMY])")
DAYS = {"D": 1, "W": 7, "M": 30, "Y": 365}


@dataclass(frozen=True, slots=True)
class _Moon:
    scene: int
    paragraph: int
    phase: Phase
    span: Span
    days: tuple[int, int] | None  # first and last on which it may be, of the calendar


def find(seen: Seen) -> Iterator[Finding]:
    moons = [moon for number in seen.scenes for moon in _moons(seen, number)]
    asked: set[Span] = set()
    for one, other in combinations(moons, 2):
        between = None if {one.span, other.span} & asked else _between(seen, one, other)
        if between and between[1] <= LONGEST and apart(one.phase, other.phase, *between) > GRANTED:
            yield Finding(
                evidence=(one.span, other.span),
                strength=0.7,
                subject="moon",
                words={"first": _said(seen, one), "other": _said(seen, other)},
                numbers={"days": between[1]} | ({} if between[0] == between[1] else {"least": between[0]}),
            )
            asked |= {one.span, other.span}


def _moons(seen: Seen, number: int) -> Iterator[_Moon]:
    """Outside speech and as they stand then."""
    for place, text in enumerate(seen.texts[number]):
        for phase in phases(text):
            span = seen.span(number, place, *sentence(text, phase.start, phase.end))
            if _is_now(text, span, phase) and not _is_spoken(seen, number, place, phase.start):
                told = day_at(seen, number, place)
                days = (told.day.toordinal(),) * 2 if told else days_of(seen, number)
                near = days if days and days[1] - days[0] <= VAGUE else None
                yield _Moon(number, place, phase, span, near)


def _is_now(text: str, span: Span, phase: Phase) -> bool:
    before, behind = text[span.start : phase.start], text[phase.end : span.end]
    here = _CLAUSE.split(before)[-1] + _CLAUSE.split(behind)[0]
    return not (_ELSEWHEN.search(before + behind) or _NOT_NOW.search(here))


def _is_spoken(seen: Seen, number: int, paragraph: int, at: int) -> bool:
    return any(one.paragraph == paragraph and one.start <= at < one.end for one in seen.facts[number].quotes)


def _between(seen: Seen, one: _Moon, other: _Moon) -> tuple[int, int] | None:
    """Fewest and most days from the one to the other; None where that is not known, or the second may come first."""
    if one.days and other.days:
        least, most = other.days[0] - one.days[1], other.days[1] - one.days[0]
        return (max(0, least), most) if most > 0 and least >= -VAGUE else None
    return _by_weekdays(seen, one, other) if other.scene - one.scene <= BESIDE else None


def _by_weekdays(seen: Seen, one: _Moon, other: _Moon) -> tuple[int, int] | None:
    """As many as lie between the last weekday told above the one and that of the other, told above it in its scene or
    first below, if nothing between speaks of more; a night in a scene in which no time passes."""
    times = [
        (number, it)
        for number in range(max(0, one.scene - 1), min(len(seen.facts), other.scene + BESIDE))
        for it in seen.facts[number].times
        if not it.spoken and (it.kind == "weekday" or _passes(it))
    ]
    above = [at for at, it in enumerate(times) if _place(it) <= (one.scene, one.paragraph)]
    below = [at for at, it in enumerate(times) if _place(it) >= (other.scene, other.paragraph)]
    between = range(len(above), len(times) - len(below))
    if one.scene == other.scene and not between:
        return 0, NIGHT
    first = next((at for at in reversed(above) if times[at][1].kind == "weekday"), None)
    its_own = [at for at in between if times[at][0] == other.scene]
    last = next((at for at in (*reversed(its_own), *below) if times[at][1].kind == "weekday"), None)
    if first is None or last is None:
        return None
    way = [it for _, it in times[first : last + 1]]
    days = [int(it.value[-1]) for it in way if it.kind == "weekday" and it.value[-1].isdecimal()]
    most = sum((after - before) % 7 for before, after in pairwise(days))
    return None if any(it.kind != "weekday" for it in way) else (0, most)


def _place(it: tuple[int, Time]) -> tuple[int, int]:
    return it[0], it[1].paragraph


def _passes(one: Time) -> bool:
    """Whether it may take the telling further than weekdays do."""
    if one.kind in ("date", "season"):
        return not one.aside
    match = _LENGTH.fullmatch(one.value.rstrip("~")) if one.kind == "interval" and not one.lasting else None
    return match is not None and int(match.group(1)) * DAYS[match.group(2)] >= LONG


def _said(seen: Seen, one: _Moon) -> str:
    return " ".join(seen.texts[one.scene][one.paragraph][one.phase.start : one.phase.end].split())


CHECK = Check(
    id="moon",
    name="Two moons",
    family="continuity",
    looks_at="Two moons, full, new, half, thin or so many days past the full, between which there are too few or too "
    "many days.",
    method="The mean month of the moon, 29.53 days (Meeus), between two moons whose days are told above them, are "
    "known from story time within three days, or lie between weekdays told round them. Two days are given to whoever "
    "calls a moon full, about five to a thin or a half one, and one more between them.",
    blind="Moons whose days nothing tells, in talk, or told in more than one sentence. A moon that is meant as a "
    "figure of speech. A world whose moon keeps another month.",
    reads=("words", "facts", "time"),
    find=find,
    recipe=3,
)
