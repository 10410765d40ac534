"""Notes: the loose ones and those on scenes, with a box for a new one."""

from dataclasses import dataclass
from typing import get_args

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.note import Note, NoteState
from afterdraft.errors import NotPossible
from afterdraft.web.body import form, text
from afterdraft.web.render import back, book_of, frame, go, number, render
from afterdraft.web.view import BookView, view
from afterdraft.work.change_note import rewrite_note, set_note_state
from afterdraft.work.write_note import write_note


@dataclass(frozen=True, slots=True)
class SceneNotes:
    code: str
    name: str
    notes: tuple[Note, ...]


@dataclass(frozen=True, slots=True)
class NotesPage:
    view: BookView
    loose: tuple[Note, ...]
    by_scene: tuple[SceneNotes, ...]  # in telling order


def notes(request: Request) -> Response:
    """`/books/{book}/notes`"""
    seen = view(book_of(request))
    return render(request, "notes.html", notes_page(seen), frame(request, "Notes", "notes", book=seen))


def notes_page(seen: BookView) -> NotesPage:
    kept: dict[str, list[Note]] = {}
    for note in seen.book.notes():
        kept.setdefault(note.scene or "", []).append(note)
    return NotesPage(
        view=seen,
        loose=tuple(kept.get("", [])),
        by_scene=tuple(
            SceneNotes(scene.scene.code, seen.name(scene), tuple(kept[scene.scene.id]))
            for scene in seen.outline.scenes
            if scene.scene.id in kept
        ),
    )


def add(request: Request) -> Response:
    """`POST /books/{book}/notes` with text, and the scene's code unless it is loose."""
    book, posted = book_of(request), form(request)
    code = text(posted, "scene")
    write_note(book, text(posted, "text"), scene=view(book).by_code(code).scene.id if code else None)
    return go(
        back(posted, f"/books/{book.id}/notes"), said="The note is kept." if code else "The note is kept, under Notes."
    )


def change(request: Request) -> Response:
    """`POST /books/{book}/notes/{note}` with a new state."""
    book, posted = book_of(request), form(request)
    set_note_state(book, request.path_params["note"], _state(text(posted, "state")))
    return go(back(posted, f"/books/{book.id}/notes"))


def reword(request: Request) -> Response:
    """`POST /books/{book}/notes/{note}/words` with text and the revision that the window knows."""
    book, posted = book_of(request), form(request)
    request.state.yours = text(posted, "text")
    rewrite_note(book, request.path_params["note"], request.state.yours, revision=number(posted, "revision"))
    return go(back(posted, f"/books/{book.id}/notes"))


def _state(name: str) -> NoteState:
    for state in get_args(NoteState):
        if state == name:
            return state  # type: ignore[no-any-return]  # get_args does not know the literal's type
    raise NotPossible("A note is open, done or dropped.")
