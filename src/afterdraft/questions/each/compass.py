"""A place that is told to lie on one side, and on the opposite one."""

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from afterdraft.questions.bearings import OPPOSITE, Bearing, bearings
from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence

MOST = 2  # sides on which a book may tell a place to lie: of one that is sailed round, or crossed, it tells more


@dataclass(frozen=True, slots=True)
class _Told:
    bearing: Bearing
    span: Span


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[str, list[_Told]] = defaultdict(list)
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for one in bearings(text):
                span = seen.span(number, place, *sentence(text, one.start, one.end))
                by[one.place.lower()].append(_Told(one, span))
    for name, some in by.items():
        pair = next((pair for pair in combinations(some, 2) if _are_opposite(*pair)), None)
        if pair and len({one.bearing.side for one in some}) <= MOST:
            yield _finding(name, *pair)


def _are_opposite(first: _Told, other: _Told) -> bool:
    return first.span != other.span and other.bearing.side == OPPOSITE[first.bearing.side]


def _finding(name: str, first: _Told, other: _Told) -> Finding:
    return Finding(
        evidence=(first.span, other.span),
        strength=0.65,
        subject=f"compass: {name}",
        words={
            "place": first.bearing.place,
            "first": _told(first.bearing),
            "other": _told(other.bearing),
        },
    )


def _told(one: Bearing) -> str:
    if one.sun:
        return "has the sun rise over it" if one.side == "east" else "has the sun set over it"
    return f"lies to the {one.side}"


CHECK = Check(
    id="compass",
    name="A place on the other side",
    family="continuity",
    looks_at="A place that is told to lie to the west, say, and elsewhere to the east, or with the sun rising over it.",
    method="Sides of the compass beside a named place, or one with ‘the’ (the mainland, the city), as in ‘to the west, "
    "the lights of …’ and ‘looking south across the water to …’; the sun rises over what lies to the east and sets "
    "over what lies to the west. Asked where two sides are opposite and no third is told. Common practice of copy "
    "editors.",
    blind="From where a place is seen: what lies to the west of one house lies to the east of another. The sun of a "
    "high summer, far to the north. Sides that only a map would tell.",
    reads=("words",),
    find=find,
    recipe=2,
)
