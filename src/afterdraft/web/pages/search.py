"""Search: the draft's text and all that is written about it."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.web.laid import table
from afterdraft.web.render import book_of, frame, go, render
from afterdraft.web.view import BookView, view
from afterdraft.work.find import LIMIT, find
from afterdraft.work.ports import Book, Hit


@dataclass(frozen=True, slots=True)
class Place:
    hit: Hit
    path: str  # where it opens
    name: str  # of the scene, or what else it lies in
    code: str
    kind: str  # said beside the name, where the name does not say it


@dataclass(frozen=True, slots=True)
class SearchPage:
    view: BookView
    query: str
    places: tuple[Place, ...]
    full: bool  # there may be more than are shown


def search(request: Request) -> Response:
    """`/books/{book}/search?q=…`: the places with these words; a scene's code leads straight to the scene, in an older
    draft where only that has it."""
    seen = view(book_of(request))
    query = request.query_params.get("q", "").strip()
    meant = next((scene.scene.code for scene in seen.outline.scenes if scene.scene.code == query.upper()), None)
    if meant:  # a code, copied from paper
        return go(f"/books/{seen.facts.id}/scenes/{meant}")
    if any(sheet.code == query.upper() for sheet in table(seen, "").sheets()):  # of a card without a scene of its own
        return go(f"/books/{seen.facts.id}/cards/{query.upper()}")
    if then := _in_older_draft(seen.book, query.upper()):
        return go(then)
    hits = find(seen.book, query)
    context = SearchPage(seen, query, tuple(_place(seen, hit) for hit in hits), len(hits) == LIMIT)
    return render(
        request, "search.html", context, frame(request, f"Search: {query}" if query else "Search", "search", book=seen)
    )


def _in_older_draft(book: Book, code: str) -> str:
    """Where a scene of this code is read, in the youngest of the drafts before the newest that has one; else ""."""
    if not code or " " in code:
        return ""
    for draft in reversed(book.drafts()[:-1]):
        if any(scene.code == code for scene in book.division(draft.id).scenes):
            return f"/books/{book.id}/drafts/{draft.number}/scenes/{code}"
    return ""


def _place(seen: BookView, hit: Hit) -> Place:
    base = f"/books/{seen.facts.id}"
    scene = seen.by_id(hit.scene) if hit.scene else None
    if scene is None:
        page, name = APART[hit.kind]
        if hit.kind == "note" and not seen.book.note(hit.id).loose:
            name = "Note on a chapter, a card or the book"
        return Place(hit, base + page.format(id=hit.id), name, "", KINDS.get(hit.kind, ""))
    part = IN_SCENES[hit.kind].format(id=hit.id, paragraph=hit.paragraph)
    return Place(hit, f"{base}/scenes/{scene.scene.code}{part}", seen.name(scene), scene.scene.code, KINDS[hit.kind])


# Where a hit of each kind opens: what belongs to a scene, in it; what does not, on its own screen and under its name.
IN_SCENES = {
    "text": "#p{paragraph}",
    "card": "#card-summary",
    "note": "#note-{id}",
    "carried": "#who",
    "follows": "#follows",
}
APART = {
    "text": ("/split", "Front or back matter"),
    "note": ("/notes?state=all#note-{id}", "Loose note"),
    "laid": ("/cards/{id}", "The Next side of a card"),
    "unit_card": ("/whole?open={id}#u-{id}", "Card of a chapter, a part or the book"),
    "line": ("/threads?open={id}#l-{id}", "Thread, setup or reveal"),
    "strand": ("/threads?open={id}#l-{id}", "Strand"),
    "person": ("/people?open={id}#l-{id}", "Person"),
    "place": ("/people?open={id}#l-{id}", "Place"),
    "change": ("/plan#c-{id}", "Planned change"),
}
KINDS = {
    "text": "text",
    "card": "card",
    "note": "note",
    "carried": "comes in with, leaves with",
    "follows": "follows from",
}
