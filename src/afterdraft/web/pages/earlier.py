"""An older draft, to be read: its reverse outline, and each scene with its card and notes as they were."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.card import Card
from afterdraft.desk.ink import Ink
from afterdraft.desk.note import Note
from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.outline import SceneView
from afterdraft.web.fates import FateRow, fate_row
from afterdraft.web.pages.scenes import Neighbour
from afterdraft.web.render import book_of, frame, go, render
from afterdraft.web.two_drafts import TwoDrafts, beside_newest
from afterdraft.web.view import BookView, chapter_title, view, view_then
from afterdraft.work.ports import Book


@dataclass(frozen=True, slots=True)
class OutlineThen:
    view: BookView  # of the older draft
    newest: int  # number of the newest draft


@dataclass(frozen=True, slots=True)
class NoteThen:
    note: Note
    ink: Ink | None
    state: str  # when the next draft came in
    quote: str  # the words of that draft that it was on


@dataclass(frozen=True, slots=True)
class SceneThen:
    view: BookView  # of the older draft
    two: TwoDrafts  # it and the newest
    scene: SceneView
    name: str
    chapter: str
    text: tuple[tuple[int, Block], ...]  # number over the whole file
    card: Card
    notes: tuple[NoteThen, ...]
    became: FateRow
    before: Neighbour | None
    after: Neighbour | None


def outline(request: Request) -> Response:
    """`/books/{book}/drafts/{number}`: the reverse outline as it was when the next draft came in."""
    book = book_of(request)
    seen = view(book)
    number = request.path_params["number"]
    if number == seen.draft.number:
        return go(f"/books/{book.id}/outline")
    then = view_then(book, number)
    context = OutlineThen(then, seen.draft.number)
    return render(request, "outline_then.html", context, frame(request, f"Draft {number}", "earlier", book=seen))


def scene(request: Request) -> Response:
    """`/books/{book}/drafts/{number}/scenes/{code}`"""
    book = book_of(request)
    seen, number = view(book), request.path_params["number"]
    if number == seen.draft.number:
        return go(f"/books/{book.id}/scenes/{seen.by_code(request.path_params['code']).scene.code}")
    then = view_then(book, number)
    shown = then.by_code(request.path_params["code"])
    two = beside_newest(request, seen, then.draft)
    blocks = book.blocks(then.draft.id, shown.start, shown.end)
    context = SceneThen(
        view=then,
        two=two,
        scene=shown,
        name=then.name(shown),
        chapter=chapter_title(then.chapter(shown)),
        text=tuple((n, blocks[n - shown.start]) for n in shown.story),
        card=then.cards[shown.scene.id],
        notes=_notes(book, then, shown.scene.id),
        became=fate_row(two, two.compared.fates[shown.scene.id]),
        before=_neighbour(then, shown.index - 1),
        after=_neighbour(then, shown.index + 1),
    )
    return render(request, "scene_then.html", context, frame(request, context.name, "earlier", book=seen))


def _notes(book: Book, then: BookView, scene: str) -> tuple[NoteThen, ...]:
    """Those that were on it, and those that stayed there because it lives on nowhere."""
    states = {was.note: was.state for was in book.notes_then(then.draft.id) if was.scene == scene}
    inks = {ink.id: ink for ink in book.inks()}
    return tuple(
        NoteThen(note, inks.get(note.ink or ""), states.get(note.id, note.state), _quote(note, then.draft.id))
        for note in book.notes()
        if note.id in states or note.scene == scene
    )


def _quote(note: Note, draft: str) -> str:
    return " … ".join(anchor.quote for anchor in (*note.then, *note.anchors) if anchor.draft == draft)


def _neighbour(then: BookView, index: int) -> Neighbour | None:
    if not 0 <= index < len(then.outline.scenes):
        return None
    found = then.outline.scenes[index]
    return Neighbour(found.scene.code, then.name(found))
