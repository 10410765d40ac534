"""A way that is told longer and shorter, that turns round, or for which there is no time."""

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.story_days import day, days_between
from afterdraft.questions.ways import Way, ways

FAR = 1.5  # times as long, from which two lengths of one way differ; chosen by hand
OPPOSITE = {"north": "south", "south": "north", "east": "west", "west": "east"}
SURE = 0.5  # of where a scene is set
DAY = 24  # hours


@dataclass(frozen=True, slots=True)
class _Told:
    way: Way
    span: Span


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[frozenset[str], list[_Told]] = defaultdict(list)
    for told in _told(seen):
        by[frozenset({told.way.one.lower(), told.way.other.lower()})].append(told)
    for places, some in by.items():
        pair = next((pair for pair in combinations(some, 2) if _differ(pair[0].way, pair[1].way)), None)
        if pair:
            yield _finding(places, pair)
        else:
            yield from _without_time(seen, some)


def _told(seen: Seen) -> Iterator[_Told]:
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for way in ways(text):
                yield _Told(way, seen.span(number, place, *sentence(text, way.start, way.end)))


def _differ(one: Way, other: Way) -> bool:
    """Whether they cannot both be: much longer by the same measure, or on the other side."""
    side = other.side if one.one.lower() == other.one.lower() else OPPOSITE.get(other.side, "")
    if one.side and side and one.side == OPPOSITE[side]:
        return True
    shorter, longer = sorted((one.length, other.length))
    return one.kind == other.kind and shorter > 0 and longer >= FAR * shorter


def _finding(places: frozenset[str], pair: tuple[_Told, _Told]) -> Finding:
    one, other = pair[0].way.one, pair[0].way.other
    return Finding(
        evidence=(pair[0].span, pair[1].span),
        strength=0.75,
        subject=f"from {' to '.join(sorted(places))}",
        words={"one": one, "other": other},
    )


def _without_time(seen: Seen, some: list[_Told]) -> Iterator[Finding]:
    """Somebody who is at both ends sooner than the way takes, by days."""
    days = next((told for told in some if told.way.kind.startswith("hours") and told.way.length > DAY), None)
    if days is None:
        return
    known = [number for number in seen.scenes if day(seen, number)]
    for first, second in combinations(known, 2):
        apart = days_between(seen, first, second) or 0
        if not 0 <= apart < days.way.length / DAY - 1:
            continue
        if {days.way.one, days.way.other} != _set(seen, first, second, days.way):
            continue
        if both := _on_page(seen, first) & _on_page(seen, second):
            person = min(both)
            yield Finding(
                evidence=(days.span,),
                strength=0.65,
                subject=f"from {days.way.one.lower()} to {days.way.other.lower()}: {seen.name(person).lower()}",
                words={"one": days.way.one, "other": days.way.other, "name": seen.name(person)},
                numbers={"days": days.way.length / DAY, "apart": apart, "first": first, "second": second},
                people=(person,),
                scenes=(first, second),
            )
            return


def _set(seen: Seen, first: int, second: int, way: Way) -> set[str]:
    """Those ends of the way that the two scenes are set in."""
    forms = {place.id: place.forms for place in seen.places.places}
    found = set()
    for number in (first, second):
        setting = seen.places.settings[number]
        if setting and setting.sure >= SURE:
            found |= {end for end in (way.one, way.other) if end.lower() in forms.get(setting.place, ())}
    return found


def _on_page(seen: Seen, number: int) -> set[str]:
    return {one.person for one in seen.book.appearances if one.scene == number and one.presence != "mentioned"}


CHECK = Check(
    id="journey",
    name="A way and its length",
    family="continuity",
    looks_at="Two places that are further apart in one passage than in another, or that lie the other way round; "
    "somebody "
    "who is in both sooner than the way is said to take.",
    method="‘Four miles from … to …’, ‘three days’ ride’, ‘lies to the north of’ between two places that are "
    "named; half as "
    "long again counts as different. Where the way takes days: scenes whose day and setting are known. The rule is "
    "our own.",
    blind="Ways of which one end is only ‘here’. Two roads of different length. Who goes faster than others.",
    reads=("words", "cast", "time"),
    find=find,
)
