"""Search: the draft's text, cards and notes of one book."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.web.render import book_of, frame, go, render
from afterdraft.web.view import BookView, view
from afterdraft.work.find import LIMIT, find
from afterdraft.work.ports import Hit


@dataclass(frozen=True, slots=True)
class Place:
    hit: Hit
    path: str  # where it opens
    name: str  # of the scene, or what else it lies in
    code: str


@dataclass(frozen=True, slots=True)
class SearchPage:
    view: BookView
    query: str
    places: tuple[Place, ...]
    full: bool  # there may be more than are shown


def search(request: Request) -> Response:
    """`/books/{book}/search?q=…`: the places with these words; a scene's code leads straight to the scene."""
    seen = view(book_of(request))
    query = request.query_params.get("q", "").strip()
    meant = next((scene.scene.code for scene in seen.outline.scenes if scene.scene.code == query.upper()), None)
    if meant:  # a code, copied from paper
        return go(f"/books/{seen.facts.id}/scenes/{meant}")
    hits = find(seen.book, query)
    context = SearchPage(seen, query, tuple(_place(seen, hit) for hit in hits), len(hits) == LIMIT)
    return render(
        request, "search.html", context, frame(request, f"Search: {query}" if query else "Search", "search", book=seen)
    )


def _place(seen: BookView, hit: Hit) -> Place:
    base = f"/books/{seen.facts.id}"
    scene = seen.by_id(hit.scene) if hit.scene else None
    if scene is None:
        path = f"{base}/notes" if hit.kind == "note" else f"{base}/split"
        return Place(hit, path, "Loose note" if hit.kind == "note" else "Front or back matter", "")
    part = {"text": f"#p{hit.paragraph}", "note": "#notes", "card": "#card-summary"}[hit.kind]
    return Place(hit, f"{base}/scenes/{scene.scene.code}{part}", seen.name(scene), scene.scene.code)
