"""Threads: all that runs through the book as lists — threads, setups, reveals, strands, what follows from what."""

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.arranging import everything
from afterdraft.desk.lines import Follows, Line, LineKind, Point, Strand
from afterdraft.desk.standing import standing
from afterdraft.manuscript.naming import shortened
from afterdraft.web.foreedge import WIDTH, ForeEdge
from afterdraft.web.lines import Lists, Mark, lists, mark, pattern
from afterdraft.web.render import book_of, frame, render
from afterdraft.web.scene_lines import quote_of
from afterdraft.web.view import BookView, view

HEADS: Mapping[LineKind, tuple[str, str]] = {
    "thread": ("Threads", "A line through the book that scenes open, carry or close: a subplot, a love, a mystery."),
    "setup": ("Setups", "A thing planted, touched again, paid."),
    "reveal": ("Reveals", "A fact, and when the reader learns it, when each person does."),
}


@dataclass(frozen=True, slots=True)
class PointLine:
    """A point as the list shows it."""

    point: Point
    mark: Mark
    code: str  # of its scene; "" where it has none any more
    name: str
    quote: str
    path: str  # where it is, within the book
    x: float | None  # percent of the width of the book


@dataclass(frozen=True, slots=True)
class LineRow:
    line: Line
    pattern: int
    points: tuple[PointLine, ...]
    standing: str
    scenes: int
    marks: int  # in all drafts: what goes when the line is removed

    @property
    def reach(self) -> tuple[float, float] | None:
        """From the first point to the last, in percent of the width of the book; None where there are not two."""
        places = [point.x for point in self.points if point.x is not None]
        return (min(places), max(places)) if len(places) > 1 else None


@dataclass(frozen=True, slots=True)
class SceneName:
    code: str
    name: str
    x: float


@dataclass(frozen=True, slots=True)
class Planned:
    """A card of an arrangement that has no scene yet."""

    code: str
    name: str
    arrangement: str  # id


@dataclass(frozen=True, slots=True)
class StrandRow:
    strand: Strand
    scenes: tuple[SceneName, ...]


@dataclass(frozen=True, slots=True)
class LinkRow:
    link: Follows
    scene: SceneName
    source: SceneName
    later: bool  # the source is told after what follows from it


@dataclass(frozen=True, slots=True)
class ThreadsPage:
    view: BookView
    groups: tuple[tuple[LineKind, str, str, tuple[LineRow, ...]], ...]
    strands: tuple[StrandRow, ...]
    links: tuple[LinkRow, ...]
    scenes: tuple[SceneName, ...]
    opened: str  # id of the row that is open

    @property
    def empty(self) -> bool:
        return not (self.strands or self.links or any(rows for _, _, _, rows in self.groups))


def threads(request: Request) -> Response:
    """`/books/{book}/threads`, with `?open=` the id of a row that shall be open."""
    seen = view(book_of(request))
    around = frame(request, "Threads", "threads", book=seen)
    opened = request.query_params.get("open", "")
    return render(request, "threads.html", threads_page(seen, around.edge, opened), around)


def threads_page(seen: BookView, edge: ForeEdge | None, opened: str = "") -> ThreadsPage:
    known = lists(seen.book, seen.draft.id)
    scenes = _scenes(seen, edge)
    planned = _planned(seen, known)
    marks = _marks(seen)
    return ThreadsPage(
        view=seen,
        groups=tuple(
            (kind, *words, tuple(_row(known, scenes, planned, line, marks[line.id]) for line in known.of(kind)))
            for kind, words in HEADS.items()
        ),
        strands=tuple(StrandRow(one, tuple(scenes[scene] for scene in one.scenes)) for one in known.strands),
        links=tuple(_link(seen, scenes, link) for link in seen.book.follows(seen.draft.id)),
        scenes=tuple(scenes.values()),
        opened=opened,
    )


def _scenes(seen: BookView, edge: ForeEdge | None) -> dict[str, SceneName]:
    """By scene id, in telling order; each at its middle on the fore-edge."""
    leaves: Iterable[float] = ((leaf.x + leaf.width / 2) / WIDTH * 100 for leaf in (edge.leaves if edge else ()))
    return {
        one.scene.id: SceneName(one.scene.code, seen.name(one), round(x, 2))
        for one, x in zip(seen.outline.scenes, leaves, strict=False)
    }


def _marks(seen: BookView) -> Counter[str]:
    """How many marks each line has in all drafts, by its id."""
    points = {
        point.id: line.id for draft in seen.book.drafts() for line in seen.book.lines(draft.id) for point in line.points
    }
    return Counter(points.values())


def _planned(seen: BookView, known: Lists) -> dict[str, Planned]:
    """Planned cards that something is marked on, by id."""
    marked = {point.laid for line in known.lines for point in line.points if point.laid}
    if not marked:
        return {}
    return {
        card.id: Planned(card.code, card.title or shortened(card.next.what) or "A new card", one.id)
        for one in seen.book.arrangements(seen.draft.id)
        for card in everything(one)
        if card.id in marked
    }


def _row(
    known: Lists, scenes: Mapping[str, SceneName], planned: Mapping[str, Planned], line: Line, marks: int
) -> LineRow:
    points = tuple(_point(known, scenes, planned, line, point) for point in line.points)
    holding = {point.scene for point in line.points if point.scene}
    return LineRow(line, pattern(known, line), points, standing(line), len(holding), marks)


def _point(
    known: Lists, scenes: Mapping[str, SceneName], planned: Mapping[str, Planned], line: Line, point: Point
) -> PointLine:
    shown = mark(known, line, point)
    scene = scenes.get(point.scene or "")
    card = planned.get(point.laid or "")
    if scene is None and card is not None:
        path = f"cards/{card.code}?a={card.arrangement}"
        return PointLine(point, shown, card.code, card.name, "", path, None)
    if scene is None:
        return PointLine(point, shown, "", "in no scene any more", quote_of(point), "", None)
    part = f"#p{point.anchors[0].paragraph}" if point.anchors else ""
    return PointLine(point, shown, scene.code, scene.name, quote_of(point), f"scenes/{scene.code}{part}", scene.x)


def _link(seen: BookView, scenes: Mapping[str, SceneName], link: Follows) -> LinkRow:
    order = list(scenes)
    later = order.index(link.source) > order.index(link.scene)
    return LinkRow(link, scenes[link.scene], scenes[link.source], later)
