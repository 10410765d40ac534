"""Write a note, on a scene or loose."""

from afterdraft.desk.note import Note
from afterdraft.errors import NotPossible
from afterdraft.work.called import scene_called
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book


def write_note(book: Book, text: str, *, scene: str | None = None) -> Note:
    """Raises `NotPossible` for an empty note, `Missing` where there is no such scene."""
    words = plain(text).strip()
    if not words:
        raise NotPossible("A note needs some words.")
    name = "Loose note" if scene is None else f"Note on {scene_called(book, scene)}"
    return book.edit(name, lambda desk: desk.add_note(text=words, scene=scene))
