"""What reading told of a book, by scene and by person, for the pages."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from afterdraft.desk.cast import Gender, Presence
from afterdraft.whole.told import RECIPE

_HOW: Mapping[str, Presence] = {"point of view": "viewpoint", "on page": "on page", "mentioned": "mentioned"}


@dataclass(frozen=True, slots=True)
class InScene:
    """A person in a scene, as read."""

    scene: str  # id
    person: str  # id
    how: Presence
    mentions: int
    words_spoken: int


@dataclass(frozen=True, slots=True)
class ReadPerson:
    id: str  # of her row, or given by reading
    name: str
    aliases: tuple[str, ...]  # as written, the name left out
    gender: Gender
    narrator: bool
    mentions: int
    words_spoken: int


@dataclass(frozen=True, slots=True)
class Place:
    """A stretch of a paragraph, counted among those of its scene."""

    paragraph: int
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Speech:
    place: Place
    person: str | None
    how: str
    sure: float


@dataclass(frozen=True, slots=True)
class When:
    """When a scene happens, as read: EDTF dates, "" where nothing is known."""

    earliest: str = ""
    latest: str = ""
    part_of_day: str = ""
    flashback: bool = False


@dataclass(frozen=True, slots=True)
class ReadScene:
    people: tuple[InScene, ...] = ()
    named: tuple[tuple[Place, str], ...] = ()  # where who is named
    speech: tuple[Speech, ...] = ()
    times: tuple[Place, ...] = ()  # where the text says when
    when: When = When()
    settings: tuple[str, ...] = ()  # ids of the places it is set in
    measures: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class ReadPlace:
    id: str  # of her row, or given by reading
    name: str
    scenes: tuple[str, ...]  # ids of those it is named in
    settings: tuple[str, ...]  # ids of those it is the place of


@dataclass(frozen=True, slots=True)
class Told:
    people: Mapping[str, ReadPerson]  # by id, those named most first
    scenes: Mapping[str, ReadScene]  # by id
    places: Mapping[str, ReadPlace] = field(default_factory=dict)  # by id
    unmet: frozenset[str] = frozenset()  # names of hers, as compared, that stand nowhere in the draft

    def of(self, scene: str) -> ReadScene:
        return self.scenes.get(scene, ReadScene())


NOTHING = Told({}, {})


def told_of(form: Mapping[str, Any]) -> Told:
    """Of what `afterdraft.alongside` answered; nothing where an earlier program kept it, which told otherwise."""
    if form.get("recipe") != RECIPE:
        return NOTHING
    ids: list[str] = form["scenes"]
    people: dict[str, list[InScene]] = {one: [] for one in ids}
    for one in form["appearances"]:
        scene = ids[one["scene"]]
        how = _HOW[one["as"]]
        people[scene].append(InScene(scene, one["person"], how, one["mentions"], one["words_spoken"]))
    places = {one["id"]: _place(one, ids) for one in form["places"]}
    scenes = {
        scene: ReadScene(
            people=tuple(people[scene]),
            named=tuple((Place(*place), person) for *place, person in here["named"]),
            speech=tuple(Speech(Place(*row[:3]), *row[3:]) for row in here["said"]),
            times=tuple(Place(*row[:3]) for row in here["times"]),
            when=_when(when),
            settings=tuple(place.id for place in places.values() if scene in place.settings),
            measures=measures,
        )
        for scene, here, when, measures in zip(
            ids, form["in_place"], form["scene_times"], form["measures"], strict=True
        )
    }
    by_id = {one["id"]: _person(one) for one in form["people"]}
    return Told(by_id, scenes, places, frozenset(form["unmet"]))


def _when(form: Mapping[str, Any]) -> When:
    return When(form["earliest"] or "", form["latest"] or "", form["part_of_day"] or "", form["flashback"])


def _place(form: Mapping[str, Any], ids: Sequence[str]) -> ReadPlace:
    scenes, settings = (tuple(ids[scene] for scene in form[key]) for key in ("scenes", "settings"))
    return ReadPlace(form["id"], form["name"], scenes, settings)


def _person(form: Mapping[str, Any]) -> ReadPerson:
    return ReadPerson(
        id=form["id"],
        name=form["name"],
        aliases=tuple(name for name in form["aliases"] if name.casefold() != form["name"].casefold()),
        gender=form["gender"] or "",
        narrator=form["narrator"],
        mentions=form["mentions"],
        words_spoken=form["words_spoken"],
    )
