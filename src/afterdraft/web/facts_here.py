"""What is known of the scenes: what reading found, under what the writer has said, which wins."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from starlette.requests import Request

from afterdraft.desk.anchor import Passage
from afterdraft.desk.cast import PRESENCES, Known, Presence
from afterdraft.errors import Missing
from afterdraft.manuscript.outline import SceneView
from afterdraft.web.prose import Stretch
from afterdraft.web.reading import Progress, Reading
from afterdraft.web.reading_words import told as sentence
from afterdraft.web.told import InScene, ReadPerson, Speech, Told
from afterdraft.web.view import BookView
from afterdraft.web.when import when_told
from afterdraft.work.cast.found import Found, of_known
from afterdraft.work.finding import called

SURE = 0.7  # from which a speaker is named without 'probably'; the least that is shown at all is half of it
SHOWN = 0.35


@dataclass(frozen=True, slots=True)
class PersonHere:
    """Somebody in a scene."""

    id: str  # of her row, or given by reading
    name: str
    how: Presence
    hers: bool  # she said so; else it was read
    read: bool  # reading finds them here
    mark: str = ""
    mentions: int = 0
    words_spoken: int = 0


@dataclass(frozen=True, slots=True)
class PlaceHere:
    """Where a scene happens."""

    id: str  # of her row, or given by reading
    name: str
    hers: bool
    read: bool
    mark: str = ""


@dataclass(frozen=True, slots=True)
class FactsHere:
    """For the side of a scene's card."""

    people: tuple[PersonHere, ...]
    time: str  # when it happens, in her words
    measures: Mapping[str, Any]  # as the published form has them; empty as long as nothing was read
    progress: Progress
    told: str  # how far reading is, "" where there is nothing to say
    places: tuple[PlaceHere, ...] = ()
    when: str = ""  # as read, in words

    @property
    def viewpoints(self) -> int:
        return sum(1 for one in self.people if one.how == "viewpoint")


def read_of(request: Request, seen: BookView) -> Told:
    reading: Reading = request.app.state.reading
    return reading.told(seen.book, seen.draft.id)


def facts_here(request: Request, seen: BookView, shown: SceneView) -> FactsHere:
    told = read_of(request, seen)
    return replace(
        progress_of(request, seen),
        people=people_by_scene(seen, told).get(shown.scene.id, ()),
        time=seen.book.scene_times(seen.draft.id).get(shown.scene.id, ""),
        measures=told.of(shown.scene.id).measures,
        places=places_by_scene(seen, told).get(shown.scene.id, ()),
        when=when_told(told.of(shown.scene.id).when),
    )


def progress_of(request: Request, seen: BookView) -> FactsHere:
    """How far reading is, and nothing of any scene."""
    reading: Reading = request.app.state.reading
    progress = reading.progress(seen.book, seen.draft.id)
    return FactsHere((), "", {}, progress, sentence(progress))


def people_by_scene(seen: BookView, told: Told) -> dict[str, tuple[PersonHere, ...]]:
    """Who is in each scene: viewpoint first, then those on the page, then those mentioned."""
    known = {one.id: one for one in seen.book.known("person")}
    rows = rows_of(told, known.values())
    absent = seen.book.absent(seen.draft.id)
    hers: dict[str, dict[str, Presence]] = {}
    for one in seen.book.present(seen.draft.id):
        hers.setdefault(one.scene, {})[one.person] = one.how
    return {
        scene.scene.id: _merged(
            told.of(scene.scene.id).people,
            hers.get(scene.scene.id, {}),
            {who for where, who in absent if where == scene.scene.id},
            known,
            told.people,
            rows,
        )
        for scene in seen.outline.scenes
    }


def places_by_scene(seen: BookView, told: Told) -> dict[str, tuple[PlaceHere, ...]]:
    """Where each scene happens: as she says, else as read."""
    known = {one.id: one for one in seen.book.known("place")}
    absent = seen.book.absent(seen.draft.id)
    hers: dict[str, list[str]] = {}
    for one in seen.book.settings(seen.draft.id):
        hers.setdefault(one.scene, []).append(one.place)
    found: dict[str, tuple[PlaceHere, ...]] = {}
    for scene in (view.scene.id for view in seen.outline.scenes):
        read = [_row_of(told.places[place].name, place, known) for place in told.of(scene).settings]
        ids = dict.fromkeys(hers.get(scene) or [place for place in read if (scene, place) not in absent])
        found[scene] = tuple(
            PlaceHere(
                place,
                known[place].name if place in known else told.places[place].name,
                place in hers.get(scene, ()),
                place in read,
                known[place].mark if place in known else "",
            )
            for place in ids
        )
    return found


def _row_of(name: str, id: str, known: Mapping[str, Known]) -> str:
    """The row of hers that a place of reading is, by its name; else what reading calls it."""
    row = None if id in known else called(known.values(), name)
    return row.id if row else id


def found_place(seen: BookView, told: Told, id: str) -> Found:
    """A place by its id as a page has it. Raises `Missing`."""
    for known in seen.book.known("place"):
        if known.id == id:
            return of_known(known)
    if id in told.places:
        return Found(told.places[id].name)
    raise Missing("This place")


def rows_of(told: Told, known: Iterable[Known]) -> dict[str, str]:
    """Which row of hers somebody is whom reading told of before she kept them, by reading's id."""
    listed = tuple(known)
    return {one.id: row.id for one in told.people.values() if (row := called(listed, one.name)) is not None}


def found(seen: BookView, told: Told, id: str) -> Found:
    """Somebody by their id as a page has it. Raises `Missing`."""
    for known in seen.book.known("person"):
        if known.id == id:
            return of_known(known)
    if id in told.people:
        return Found(told.people[id].name, told.people[id].aliases)
    raise Missing("This person")


def _merged(
    read: Sequence[InScene],
    hers: Mapping[str, Presence],
    absent: set[str],
    known: Mapping[str, Known],
    people: Mapping[str, ReadPerson],
    rows: Mapping[str, str],
) -> tuple[PersonHere, ...]:
    here: dict[str, PersonHere] = {}
    viewpoint_said = "viewpoint" in hers.values()
    for one in read:
        who = rows.get(one.person, one.person)
        if who in absent or (who not in known and who not in people):
            continue
        name = known[who].name if who in known else people[who].name
        how: Presence = "on page" if one.how == "viewpoint" and viewpoint_said else one.how
        mark = known[who].mark if who in known else ""
        here[who] = PersonHere(who, name, how, False, True, mark, one.mentions, one.words_spoken)
    for person, said in hers.items():
        before = here.get(person, PersonHere(person, known[person].name, said, True, False, known[person].mark))
        here[person] = replace(before, how=said, hers=True)
    return tuple(sorted(here.values(), key=lambda one: (PRESENCES.index(one.how), -one.mentions, one.name)))


def highlights(seen: BookView, told: Told, shown: SceneView, wanted: frozenset[str]) -> dict[int, tuple[Stretch, ...]]:
    """By paragraph of the file, what she wants to see in the text: "people", "speech", "times"."""
    made: dict[int, list[Stretch]] = {}
    here = told.of(shown.scene.id)
    known = {one.id: one for one in seen.book.known("person")}
    if "people" in wanted:
        for place, _ in here.named:
            if place.paragraph < len(shown.story):
                made.setdefault(shown.story[place.paragraph], []).append(Stretch(place.start, place.end, "person"))
    if "times" in wanted:
        for place in here.times:
            if place.paragraph < len(shown.story):
                made.setdefault(shown.story[place.paragraph], []).append(Stretch(place.start, place.end, "time"))
    if "speech" in wanted:
        for one in here.speech:
            if one.place.paragraph < len(shown.story):
                made.setdefault(shown.story[one.place.paragraph], []).append(_said(one, told, known))
    return {paragraph: tuple(several) for paragraph, several in made.items()}


def speech_at(told: Told, shown: SceneView, words: Sequence[Passage]) -> tuple[Passage, ...]:
    """The whole stretch of speech that the first of these words lie in; none where nobody speaks."""
    speech = told.of(shown.scene.id).speech
    here = [(shown.story[one.place.paragraph], one.place) for one in speech if one.place.paragraph < len(shown.story)]
    return tuple(
        Passage(paragraph, place.start, place.end)
        for paragraph, place in here
        if words and paragraph == words[0].paragraph and place.start <= words[0].start < place.end
    )[:1]


def _said(one: Speech, told: Told, known: Mapping[str, Known]) -> Stretch:
    """Speech; with its speaker's name, if she follows them and reading is sure enough."""
    name = ""
    speaker = known.get(one.person or "")
    if speaker and speaker.followed and one.sure >= SHOWN:
        name = speaker.name if one.sure >= SURE else f"{speaker.name}?"
    says = f"{name.removesuffix('?')}{' probably' if name.endswith('?') else ''} says this" if name else ""
    return Stretch(one.place.start, one.place.end, "said", who=name, says=says, ticked=False)
