"""Say which scene makes another happen."""

from afterdraft.errors import Missing, NotPossible
from afterdraft.work.called import scene_called
from afterdraft.work.plain import line
from afterdraft.work.ports import Book


def link_scenes(book: Book, scene: str, *, source: str, why: str = "") -> str:
    """`scene` follows from `source`, because of `why`; returns the link's id.

    `source` comes earlier in the story, but may be told later. Raises `NotPossible` for a scene and itself, or scenes
    of two drafts; `Missing`.
    """
    if scene == source:
        raise NotPossible("A scene cannot follow from itself.")
    if book.draft_of(scene) != book.draft_of(source):
        raise NotPossible("These scenes belong to two drafts.")
    name = f"{scene_called(book, scene)} follows from {scene_called(book, source)}"
    return book.edit(name, lambda desk: desk.add_follows(scene=scene, source=source, why=line(why)))


def unlink_scenes(book: Book, draft: str, link: str) -> None:
    """Take a link away. Raises `Missing`."""
    stands = next((one for one in book.follows(draft) if one.id == link), None)
    if stands is None:
        raise Missing("This link")
    name = f"{scene_called(book, stands.scene)} does not follow from {scene_called(book, stands.source)}"
    book.edit(name, lambda desk: desk.remove_follows(link))
