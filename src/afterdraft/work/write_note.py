"""Write a note, on a scene, on a passage of it, or loose."""

from afterdraft.desk.anchor import Anchor, anchor
from afterdraft.desk.note import Note
from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.division import Scene
from afterdraft.manuscript.validity import leaf_at
from afterdraft.work.called import scene_called
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Desk


def write_note(book: Book, text: str, *, scene: str | None = None) -> Note:
    """Raises `NotPossible` for an empty note, `Missing` where there is no such scene."""
    words = _words(text)
    name = "Loose note" if scene is None else f"Note on {scene_called(book, scene)}"
    return book.edit(name, lambda desk: desk.add_note(text=words, scene=scene))


def write_note_on_passage(book: Book, text: str, *, draft: str, paragraph: int, start: int, end: int) -> Note:
    """A note on `start…end` of a paragraph's text; it belongs to the scene that holds the paragraph, for as long as
    that one does.

    Raises `NotPossible` for an empty note or passage, `Missing` where the paragraph is in no scene.
    """
    words = _words(text)
    holder = leaf_at(book.division(draft), paragraph)
    if holder is None or not isinstance(holder[0], Scene):
        raise Missing("A scene with this passage")
    scene = holder[0].id

    def change(desk: Desk) -> Note:
        return desk.add_note(text=words, scene=scene, anchor=_fastened(desk, draft, paragraph, start, end))

    return book.edit(f"Note on a passage of {scene_called(book, scene)}", change)


def _fastened(desk: Desk, draft: str, paragraph: int, start: int, end: int) -> Anchor:
    text = desk.text(draft, paragraph)
    if not 0 <= start < end <= len(text):
        raise NotPossible("There is no such passage.")
    return anchor(draft=draft, paragraph=paragraph, text=text, start=start, end=end)


def _words(text: str) -> str:
    words = plain(text).strip()
    if not words:
        raise NotPossible("A note needs some words.")
    return words
