"""`find_places`: the places of a book, and which one each scene is set in.

Places are told by name (what the pipeline takes for one, or what mostly stands behind 'in' and 'at') or by kind ('the
kitchen'). One place per form: 'the Rectory' and 'the rectory' are one. What the writer says of her places wins.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.place import Place
from afterdraft.whole.given import NOTHING, Given

WEIGHTS: Mapping[str, float] = {"heads": 6, "in": 2, "to": 2, "from": 0.5, "": 0.5}
# how much a mention tells that a scene is set there; set by hand, not measured
SPOKEN = 0.1  # of a mention in speech: people mostly talk of elsewhere
EARLY, EARLIER = 3, 2.0  # in the first paragraphs a mention tells more
LEAST = 2.0  # evidence from which a scene has a setting


@dataclass(frozen=True, slots=True)
class FoundPlace:
    """A place of the book."""

    id: str
    name: str  # its commonest form as compared, or the writer's own name
    forms: tuple[str, ...]
    named: bool  # by a name of its own, and not by its kind
    scenes: tuple[int, ...]  # where it is mentioned


@dataclass(frozen=True, slots=True)
class Setting:
    """Where a scene happens."""

    place: str  # id
    sure: float  # 1 where the writer says so


@dataclass(frozen=True, slots=True)
class Places:
    places: tuple[FoundPlace, ...]
    settings: tuple[Setting | None, ...]  # one a scene


def find_places(scenes: Sequence[SceneFacts], given: Given = NOTHING, *, people: Iterable[str] = ()) -> Places:
    """`people` are forms of the cast: they are no places unless she says so."""
    hers = {form: one.id for one in given.places for form in one.forms}
    forms = _forms(scenes, given.nowhere | (set(people) - set(hers)))
    ids = {form: hers.get(form, f"place:{form}") for form in sorted({*forms, *hers})}
    found = tuple(_places(scenes, ids, forms, given))
    settings = tuple(_setting(number, scene, ids, given) for number, scene in enumerate(scenes))
    return Places(found, settings)


def _forms(scenes: Sequence[SceneFacts], never: Iterable[str]) -> frozenset[str]:
    """Those that are places: by kind, by what the pipeline mostly says, or by what mostly stands before them."""
    taken: Counter[str] = Counter()
    seen: Counter[str] = Counter()
    kinds: set[str] = set()
    for one in (place for scene in scenes for place in scene.places):
        seen[one.form] += 1
        taken[one.form] += one.taken
        if not one.name:
            kinds.add(one.form)
    acts: Counter[str] = Counter()
    placed: Counter[str] = Counter(
        one.form for scene in scenes for one in scene.places if one.name and one.sign in ("in", "heads")
    )
    for mention in (one for scene in scenes for one in scene.mentions):
        acts[mention.form] += (
            mention.speaks or mention.feels or mention.called or (mention.subject and not mention.spoken)
        )
    names = {form for form in seen if taken[form] or placed[form]}
    acting = {form for form in names if acts[form] and acts[form] >= placed[form]}
    return frozenset(((names - acting) | kinds) - set(never))


def _places(
    scenes: Sequence[SceneFacts], ids: Mapping[str, str], forms: Iterable[str], given: Given
) -> Iterator[FoundPlace]:
    """Hers first, then by how often."""
    where: defaultdict[str, set[int]] = defaultdict(set)
    counts: defaultdict[str, Counter[str]] = defaultdict(Counter)
    named: set[str] = set()
    for number, scene in enumerate(scenes):
        for one in scene.places:
            if one.form in ids:
                where[ids[one.form]].add(number)
                counts[ids[one.form]][one.form] += 1
                named.update([ids[one.form]] if one.name else [])
    for hers in given.places:
        yield FoundPlace(hers.id, hers.name, hers.forms, True, tuple(sorted(where[hers.id])))
    own = {hers.id for hers in given.places}
    for place, count in sorted(counts.items(), key=lambda pair: (-pair[1].total(), pair[0])):
        if place not in own:
            yield FoundPlace(
                place, count.most_common(1)[0][0], tuple(sorted(count)), place in named, tuple(sorted(where[place]))
            )


def _setting(number: int, scene: SceneFacts, ids: Mapping[str, str], given: Given) -> Setting | None:
    if place := given.settings.get(number):
        return Setting(place, 1.0)
    weights: Counter[str] = Counter()
    for one in scene.places:
        if one.form in ids:
            weights[ids[one.form]] += _weight(one)  # type: ignore[assignment]
    if not weights:
        return None
    place, most = weights.most_common(1)[0]
    return Setting(place, round(most / (sum(weights.values()) + 1), 2)) if most >= LEAST else None


def _weight(one: Place) -> float:
    weight = WEIGHTS[one.sign] * (EARLIER if one.paragraph < EARLY else 1)
    return weight * (SPOKEN if one.spoken and one.sign != "heads" else 1)
