"""People and places: cast and places by hand, with the scenes they are in."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.cast import Carried, Known, KnownKind, Presence
from afterdraft.manuscript.outline import SceneView
from afterdraft.web.render import book_of, frame, many, render
from afterdraft.web.view import BookView, view
from afterdraft.work.finding import alike

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


@dataclass(frozen=True, slots=True)
class PeoplePage:
    view: BookView
    groups: tuple[tuple[KnownKind, str, str, tuple[KnownRow, ...]], ...]
    opened: str  # id of the row that is open
    joining: str  # id of the row that is to be joined to another
    again: str  # a name that is taken, and was asked for all the same
    again_kind: str


def people(request: Request) -> Response:
    """`/books/{book}/people`: `?open=` a row, `?join=` it to another; `?again=` and `kind=` name one that is taken."""
    seen = view(book_of(request))
    asked = request.query_params
    context = people_page(
        seen,
        opened=asked.get("open", ""),
        joining=asked.get("join", ""),
        again=asked.get("again", ""),
        kind=asked.get("kind", ""),
    )
    return render(request, "people.html", context, frame(request, "People and places", "people", book=seen))


def people_page(seen: BookView, *, opened: str = "", joining: str = "", again: str = "", kind: str = "") -> PeoplePage:
    cast, places = seen.book.known("person"), seen.book.known("place")
    return PeoplePage(
        view=seen,
        groups=(
            ("person", "People", "The cast: who is in the book.", _people(seen, cast)),
            ("place", "Places", "Where it happens.", _places(seen, places)),
        ),
        opened=opened,
        joining=joining,
        again=again,
        again_kind=kind,
    )


def _people(seen: BookView, cast: tuple[Known, ...]) -> tuple[KnownRow, ...]:
    names = _names(seen)
    present = seen.book.present(seen.draft.id)
    carried = seen.book.carried(seen.draft.id)
    facts = [line for line in seen.book.lines(seen.draft.id) if line.kind == "reveal"]
    all_drafts = _marks_of_people(seen)
    seen_in: dict[tuple[str, Presence], list[SceneName]] = {}
    for one in present:
        seen_in.setdefault((one.person, one.how), []).append(names[one.scene])
    rows = []
    for person in cast:
        scenes = {how: tuple(seen_in.get((person.id, how), ())) for how in HOWS}
        learns = tuple(
            Learned(line.id, line.name, names.get(point.scene or ""))
            for line in facts
            for point in line.points
            if point.person == person.id
        )
        holds = tuple(CarriedRow(names[one.scene], one) for one in carried if one.person == person.id)
        shown = tuple((HOWS[how], several) for how, several in scenes.items() if several)
        count = sum(map(len, scenes.values()))
        goes = _goes(*(marks[person.id] for marks in all_drafts))
        rows.append(KnownRow(person, shown, count, holds, learns, _namesakes(cast, person), goes))
    return tuple(rows)


def _places(seen: BookView, places: tuple[Known, ...]) -> tuple[KnownRow, ...]:
    names = _names(seen)
    settings = seen.book.settings(seen.draft.id)
    all_drafts = Counter(one.place for draft in seen.book.drafts() for one in seen.book.settings(draft.id))
    rows = []
    for place in places:
        scenes = tuple(names[one.scene] for one in settings if one.place == place.id)
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
