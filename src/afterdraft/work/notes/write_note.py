"""Write a note: on a scene, a chapter, a planned card, the book, on passages of the text, or loose."""

from collections.abc import Sequence

from afterdraft.desk.anchor import Passage
from afterdraft.desk.note import About, Note
from afterdraft.errors import Missing, NotPossible
from afterdraft.work.called import scene_called
from afterdraft.work.notes.about import about_called
from afterdraft.work.notes.fastening import fastened, scene_of
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Desk


def write_note(
    book: Book, text: str, *, scene: str | None = None, about: About | None = None, ink: str | None = None
) -> Note:
    """On `about`, or on a `scene`, or loose; in an ink, or plain.

    Raises `NotPossible` for an empty note, `Missing` where what it is about, or the ink, is not there.
    """
    words = _words(text)
    place = about or About(scene)
    called = about_called(book, place)
    name = f"Note on {called}" if called else "Loose note"
    return book.edit(name, lambda desk: desk.add_note(text=words, about=place, ink=ink))


def write_note_on_passage(
    book: Book, text: str, *, draft: str, passages: Sequence[Passage], ink: str | None = None
) -> Note:
    """A note on stretches of the text; it belongs to the scene that holds the first, for as long as that one does.

    Raises `NotPossible` for an empty note or passage, `Missing` where the passage is in no scene.
    """
    words = _words(text)
    if not passages:
        raise NotPossible("There is no such passage.")
    scene = scene_of(book.division(draft), passages[0].paragraph)
    if scene is None:
        raise Missing("A scene with this passage")

    def change(desk: Desk) -> Note:
        anchors = fastened(desk, draft, passages)
        return desk.add_note(text=words, scene=scene, anchors=anchors, ink=ink)

    return book.edit(f"Note on a passage of {scene_called(book, scene)}", change)


def _words(text: str) -> str:
    words = plain(text).strip()
    if not words:
        raise NotPossible("A note needs some words.")
    return words
