"""Change a note's words, or whether it is open, done or dropped."""

from afterdraft.desk.note import Note, NoteState
from afterdraft.errors import NotPossible, Stale
from afterdraft.work.called import quoted
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

    return book.edit(f"Words of the note {quoted(book.note(note).text)}", change)


def set_note_state(book: Book, note: str, state: NoteState) -> Note:
    """Raises `Missing`."""
    name = _STATES[state].format(f"the note {quoted(book.note(note).text)}")
    return book.edit(name, lambda desk: desk.set_note(note, state=state))
