"""People and places: cast and places with the scenes they are in, as she has them and as they were read."""

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.cast import Carried, Known, KnownKind, Presence
from afterdraft.manuscript.outline import SceneView
from afterdraft.reading.mentions import form
from afterdraft.web.facts_here import FactsHere, people_by_scene, places_by_scene, progress_of, read_of, rows_of
from afterdraft.web.render import book_of, frame, many, render
from afterdraft.web.told import NOTHING, ReadPerson, ReadPlace, Told
from afterdraft.web.view import BookView, view
from afterdraft.work.finding import alike, called

OFTEN = 2  # scenes from which somebody whom only reading knows is shown at once
OFTEN_SAID = 50  # or words that they speak
MOST = 40  # of these at once
ScenesOf = dict[str, dict[Presence, list["SceneName"]]]
HOWS: Mapping[Presence, str] = {"viewpoint": "Viewpoint", "on page": "On the page", "mentioned": "Mentioned"}


@dataclass(frozen=True, slots=True)
class SceneName:
    code: str
    name: str


@dataclass(frozen=True, slots=True)
class CarriedRow:
    scene: SceneName
    carried: Carried


@dataclass(frozen=True, slots=True)
class Learned:
    line: str  # id
    fact: str
    scene: SceneName | None


@dataclass(frozen=True, slots=True)
class KnownRow:
    known: Known
    scenes: tuple[tuple[str, tuple[SceneName, ...]], ...]  # under "Viewpoint", "On the page", "Mentioned", or ""
    count: int  # scenes
    carried: tuple[CarriedRow, ...]
    learns: tuple[Learned, ...]
    namesakes: int  # others of the same name
    goes_with: str  # what goes when it is removed
    read: ReadPerson | None = None  # what reading knows of them
    nowhere: tuple[str, ...] = ()  # names of theirs that stand nowhere in the draft


@dataclass(frozen=True, slots=True)
class FoundRow:
    """Somebody whom only reading knows."""

    person: ReadPerson
    scenes: tuple[tuple[str, tuple[SceneName, ...]], ...]
    count: int


@dataclass(frozen=True, slots=True)
class PlaceRow:
    """A place that only reading knows."""

    place: ReadPlace
    scenes: tuple[SceneName, ...]  # that it is the place of


@dataclass(frozen=True, slots=True)
class PeoplePage:
    view: BookView
    groups: tuple[tuple[KnownKind, str, str, tuple[KnownRow, ...]], ...]
    opened: str  # id of the row that is open
    joining: str  # id of the row that is to be joined to another
    again: str  # a name that is taken, and was asked for all the same
    again_kind: str
    places: tuple[PlaceRow, ...] = ()  # those of most scenes first
    nowhere: tuple[str, ...] = ()  # names that she said are no place's
    found: tuple[FoundRow, ...] = ()  # those named most first
    seldom: tuple[FoundRow, ...] = ()  # the others
    nobody: tuple[str, ...] = ()  # names that she said are no person's
    facts: FactsHere | None = None  # how far reading is

    @property
    def all_places(self) -> tuple[tuple[str, str], ...]:
        """Id and name of every place, hers first."""
        hers = [(row.known.id, row.known.name) for kind, _, _, rows in self.groups if kind == "place" for row in rows]
        return (*hers, *((row.place.id, row.place.name) for row in self.places))

    @property
    def all_people(self) -> tuple[tuple[str, str], ...]:
        """Id and name of everybody, hers first."""
        hers = [(row.known.id, row.known.name) for kind, _, _, rows in self.groups if kind == "person" for row in rows]
        return (*hers, *((row.person.id, row.person.name) for row in (*self.found, *self.seldom)))


def people(request: Request) -> Response:
    """`/books/{book}/people`: `?open=` a row, `?join=` it to another; `?again=` and `kind=` name one that is taken."""
    seen = view(book_of(request))
    asked = request.query_params
    context = people_page(
        seen,
        read_of(request, seen),
        facts=progress_of(request, seen),
        opened=asked.get("open", ""),
        joining=asked.get("join", ""),
        again=asked.get("again", ""),
        kind=asked.get("kind", ""),
    )
    return render(request, "people.html", context, frame(request, "People and places", "people", book=seen))


def people_page(
    seen: BookView,
    told: Told = NOTHING,
    *,
    facts: FactsHere | None = None,
    opened: str = "",
    joining: str = "",
    again: str = "",
    kind: str = "",
) -> PeoplePage:
    cast, places = seen.book.known("person"), seen.book.known("place")
    here = _scenes_of(seen, told)
    found = tuple(_found(seen, told, cast, here))
    often = [row for row in found if row.count >= OFTEN or row.person.words_spoken >= OFTEN_SAID][:MOST]
    return PeoplePage(
        view=seen,
        found=tuple(often),
        seldom=tuple(row for row in found if row not in often),
        nobody=tuple(sorted(seen.book.no_names("person"))),
        places=tuple(_found_places(seen, told, places)),
        nowhere=tuple(sorted(seen.book.no_names("place"))),
        facts=facts,
        groups=(
            ("person", "People", "The cast: who is in the book.", _people(seen, cast, told, here)),
            ("place", "Places", "Where it happens.", _places(seen, places, told)),
        ),
        opened=opened,
        joining=joining,
        again=again,
        again_kind=kind,
    )


def _people(seen: BookView, cast: tuple[Known, ...], told: Told, here: ScenesOf) -> tuple[KnownRow, ...]:
    names = _names(seen)
    carried = seen.book.carried(seen.draft.id)
    facts = [line for line in seen.book.lines(seen.draft.id) if line.kind == "reveal"]
    all_drafts = _marks_of_people(seen)
    rows = []
    for person in cast:
        learns = tuple(
            Learned(line.id, line.name, names.get(point.scene or ""))
            for line in facts
            for point in line.points
            if point.person == person.id
        )
        holds = tuple(CarriedRow(names[one.scene], one) for one in carried if one.person == person.id)
        shown, count = _shown(here.get(person.id, {}))
        goes = _goes(*(marks[person.id] for marks in all_drafts))
        nowhere = tuple(name for name in person.in_use if form(name) in told.unmet)
        rows.append(
            KnownRow(
                person, shown, count, holds, learns, _namesakes(cast, person), goes, told.people.get(person.id), nowhere
            )
        )
    return tuple(rows)


def _found(seen: BookView, told: Told, cast: tuple[Known, ...], here: ScenesOf) -> Iterator[FoundRow]:
    """Those of reading who are nobody of hers, named most first."""
    rows, hers = rows_of(told, cast), {one.id for one in cast}
    for person in told.people.values():
        if person.id not in hers and person.id not in rows:
            yield FoundRow(person, *_shown(here.get(person.id, {})))


def _scenes_of(seen: BookView, told: Told) -> ScenesOf:
    """By person and how, the scenes they are in."""
    names = _names(seen)
    found: ScenesOf = {}
    for scene, people in people_by_scene(seen, told).items():
        for one in people:
            found.setdefault(one.id, {}).setdefault(one.how, []).append(names[scene])
    return found


def _shown(scenes: Mapping[Presence, list[SceneName]]) -> tuple[tuple[tuple[str, tuple[SceneName, ...]], ...], int]:
    shown = tuple((HOWS[how], tuple(scenes[how])) for how in HOWS if how in scenes)
    return shown, sum(map(len, scenes.values()))


def _found_places(seen: BookView, told: Told, places: tuple[Known, ...]) -> list[PlaceRow]:
    """Places that scenes are set in, or that several name, and that are none of hers."""
    names, hers = _names(seen), {one.id for one in places}
    free = [
        one
        for one in told.places.values()
        if one.id not in hers and not called(places, one.name) and (one.settings or len(one.scenes) >= OFTEN)
    ]
    free.sort(key=lambda one: (-len(one.settings), -len(one.scenes), one.name))
    return [PlaceRow(one, tuple(names[scene] for scene in one.settings if scene in names)) for one in free[:MOST]]


def _places(seen: BookView, places: tuple[Known, ...], told: Told) -> tuple[KnownRow, ...]:
    names = _names(seen)
    here = places_by_scene(seen, told)
    all_drafts = Counter(one.place for draft in seen.book.drafts() for one in seen.book.settings(draft.id))
    rows = []
    for place in places:
        scenes = tuple(names[scene] for scene, several in here.items() if any(one.id == place.id for one in several))
        goes = _goes(all_drafts[place.id])
        shown = (("", scenes),) if scenes else ()
        rows.append(KnownRow(place, shown, len(scenes), (), (), _namesakes(places, place), goes))
    return tuple(rows)


def _marks_of_people(seen: BookView) -> tuple[Counter[str], Counter[str], Counter[str]]:
    """By person, in all drafts: scenes they are in, marks of what they learn, scenes they carry something in."""
    book, drafts = seen.book, [draft.id for draft in seen.book.drafts()]
    learned = {
        point.id: point.person
        for draft in drafts
        for line in book.lines(draft)
        for point in line.points
        if point.person
    }
    return (
        Counter(one.person for draft in drafts for one in book.present(draft)),
        Counter(learned.values()),
        Counter(one.person for draft in drafts for one in book.carried(draft)),
    )


def _goes(scenes: int, learns: int = 0, carried: int = 0) -> str:
    """ "12 marks in scenes, 2 marks of what they learn, 1 card where they carry something"; "" for nothing."""
    told = [
        many(scenes, "mark in a scene", "marks in scenes") if scenes else "",
        many(learns, "mark of what they learn", "marks of what they learn") if learns else "",
        many(carried, "card where they carry something", "cards where they carry something") if carried else "",
    ]
    return ", ".join(filter(None, told))


def _namesakes(listed: tuple[Known, ...], known: Known) -> int:
    return sum(1 for other in listed if other.id != known.id and alike(other.name, known.name))


def _names(seen: BookView) -> dict[str, SceneName]:
    """By scene id."""

    def named(scene: SceneView) -> SceneName:
        return SceneName(scene.scene.code, seen.name(scene))

    return {scene.scene.id: named(scene) for scene in seen.outline.scenes}
