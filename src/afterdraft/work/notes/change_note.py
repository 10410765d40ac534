"""Change a note: its words, its ink, whether it is open, done or dropped, what it is fastened to."""

from collections.abc import Sequence

from afterdraft.desk.anchor import Passage
from afterdraft.desk.note import About, Note, NoteState
from afterdraft.errors import Missing, NotPossible, Stale
from afterdraft.work.called import quoted
from afterdraft.work.notes.about import about_called
from afterdraft.work.notes.fastening import fastened, scene_of
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Desk

_STATES: dict[NoteState, str] = {"open": "Open {} again", "done": "Mark {} as done", "dropped": "Drop {}"}


def rewrite_note(book: Book, note: str, text: str, *, revision: int) -> Note:
    """`revision`: the note's, as the window knows it. Raises `Stale` if it changed since, `Missing`, `NotPossible`."""
    words = plain(text).strip()
    if not words:
        raise NotPossible("A note needs some words. It can be dropped instead.")

    def change(desk: Desk) -> Note:
        stands = desk.note(note)
        if stands.text == words:
            return stands
        if stands.revision != revision:
            raise Stale(what="This note", stands=stands.text, revision=stands.revision)
        return desk.set_note(note, text=words)

    return book.edit(f"Words of {_called(book, note)}", change)


def set_note_state(book: Book, note: str, state: NoteState) -> Note:
    """Raises `Missing`."""
    return book.edit(_STATES[state].format(_called(book, note)), lambda desk: desk.set_note(note, state=state))


def set_note_ink(book: Book, note: str, ink: str | None) -> Note:
    """None: plain pencil. Raises `Missing`."""
    known = {one.id: one.name for one in book.inks()}
    how = quoted(known[ink]) if ink in known else "plain pencil"
    name = f"{_called(book, note)} in {how}"
    return book.edit(name[0].upper() + name[1:], lambda desk: desk.ink_note(note, ink))


def place_note(book: Book, note: str, about: About) -> Note:
    """Put it on something else as a whole, or make it loose. Raises `Missing`."""
    where = about_called(book, about)
    name = f"Put {_called(book, note)} on {where}" if where else f"Make {_called(book, note)} loose"
    return book.edit(name, lambda desk: desk.place_note(note, about))


def fasten_note(book: Book, note: str, *, draft: str, passages: Sequence[Passage]) -> Note:
    """Fasten it to a passage. Raises `NotPossible`, `Missing`."""
    if not passages:
        raise NotPossible("There is no such passage.")
    scene = scene_of(book.division(draft), passages[0].paragraph)
    if scene is None:
        raise Missing("A scene with this passage")
    about = About(scene)
    name = f"Fasten {_called(book, note)} to a passage"
    return book.edit(name, lambda desk: desk.place_note(note, about, fastened(desk, draft, passages)))


def _called(book: Book, note: str) -> str:
    return f"the note {quoted(book.note(note).text)}"
