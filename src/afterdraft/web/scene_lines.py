"""What runs through one scene, what it follows from, who is in it and where: for the side of its card."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from afterdraft.desk.cast import Carried, Known, Presence
from afterdraft.desk.lines import Line, Point, Strand
from afterdraft.manuscript.outline import SceneView
from afterdraft.web.lines import Lists, Mark, lists, mark
from afterdraft.web.prose import Stretch
from afterdraft.web.view import BookView


@dataclass(frozen=True, slots=True)
class HereMark:
    line: Line
    point: Point
    mark: Mark
    quote: str  # the words it is fastened to
    at: int | None  # paragraph of those words


@dataclass(frozen=True, slots=True)
class Linked:
    """The scene at the other end of a link."""

    id: str  # of the link
    code: str
    name: str
    why: str
    revision: int
    told: str  # "told later" where the scene that makes another happen is told after it


@dataclass(frozen=True, slots=True)
class Here:
    person: Known
    how: Presence


@dataclass(frozen=True, slots=True)
class Carries:
    person: Known
    carried: Carried


@dataclass(frozen=True, slots=True)
class SceneLines:
    lists: Lists
    scenes: tuple[tuple[str, str], ...]  # code and name of every other scene
    marks: tuple[HereMark, ...]
    strand: Strand | None
    sources: tuple[Linked, ...]
    results: tuple[Linked, ...]
    people: tuple[Here, ...]
    places: tuple[Known, ...]
    carries: tuple[Carries, ...]

    @property
    def viewpoints(self) -> int:
        return sum(1 for one in self.people if one.how == "viewpoint")


def scene_lines(seen: BookView, shown: SceneView) -> SceneLines:
    book, draft, scene = seen.book, seen.draft.id, shown.scene.id
    known = lists(book, draft)
    people, places = {one.id: one for one in known.people}, {one.id: one for one in known.places}
    sources, results = _links(seen, scene)
    return SceneLines(
        lists=known,
        scenes=tuple((one.scene.code, seen.name(one)) for one in seen.outline.scenes if one is not shown),
        marks=tuple(_here(known, line, point) for line in known.lines for point in line.points if point.scene == scene),
        strand=next((one for one in known.strands if scene in one.scenes), None),
        sources=sources,
        results=results,
        people=tuple(Here(people[one.person], one.how) for one in book.present(draft) if one.scene == scene),
        places=tuple(places[one.place] for one in book.settings(draft) if one.scene == scene),
        carries=carries(seen).get(scene, ()),
    )


def carries(seen: BookView) -> dict[str, tuple[Carries, ...]]:
    """What people come into scenes with and leave them with, by scene id."""
    people = {one.id: one for one in seen.book.known("person")}
    found: dict[str, tuple[Carries, ...]] = {}
    for one in seen.book.carried(seen.draft.id):
        found[one.scene] = (*found.get(one.scene, ()), Carries(people[one.person], one))
    return found


def quote_of(point: Point) -> str:
    """The words a point is fastened to; over several paragraphs its beginning and its end."""
    quotes = [anchor.quote for anchor in point.anchors]
    return " … ".join([quotes[0], quotes[-1]] if len(quotes) > 1 else quotes)


def with_lines(
    marked: Mapping[int, tuple[Stretch, ...]], marks: Iterable[HereMark], draft: str
) -> dict[int, tuple[Stretch, ...]]:
    """By paragraph: passages marked otherwise, and those that lines' marks are fastened to, each with its letter."""
    found = dict(marked)
    for one in marks:
        own = [anchor for anchor in one.point.anchors if anchor.draft == draft]
        for anchor in own:
            stretch = Stretch(
                anchor.start,
                anchor.end,
                "lined",
                letter=one.mark.letter,
                leads_to=f"mark-{one.point.id}",
                says=one.mark.words,
                ticked=anchor is own[-1],
            )
            found[anchor.paragraph] = (*found.get(anchor.paragraph, ()), stretch)
    return found


def _here(known: Lists, line: Line, point: Point) -> HereMark:
    at = point.anchors[0].paragraph if point.anchors else None
    return HereMark(line, point, mark(known, line, point), quote_of(point), at)


def _links(seen: BookView, scene: str) -> tuple[tuple[Linked, ...], tuple[Linked, ...]]:
    """What makes this scene happen, and what it makes happen."""
    views = {one.scene.id: one for one in seen.outline.scenes}
    sources: list[Linked] = []
    results: list[Linked] = []
    for link in seen.book.follows(seen.draft.id):
        if scene not in (link.scene, link.source):
            continue
        other = views[link.source if link.scene == scene else link.scene]
        later = views[link.source].index > views[link.scene].index
        told = ("told later" if link.scene == scene else "told earlier") if later else ""
        made = Linked(link.id, other.scene.code, seen.name(other), link.why, link.revision, told)
        (sources if link.scene == scene else results).append(made)
    return tuple(sources), tuple(results)
