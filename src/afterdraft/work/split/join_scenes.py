"""Join a scene to the one before."""

from bisect import bisect_right

from afterdraft.manuscript import editing
from afterdraft.work.called import scene_called
from afterdraft.work.ports import Book
from afterdraft.work.split.mending import mend


def join_scenes(book: Book, scene: str) -> str:
    """Join `scene` to the one before, which keeps id, code and title; its card's words and notes go there too.

    Returns the id of the scene that now holds both. Raises `Missing`, `NotPossible`.
    """
    draft = book.draft_of(scene)
    at = next(one.at for one in book.division(draft).scenes if one.id == scene)
    name = f"Join {scene_called(book, scene)} to the scene before"
    now = mend(book, draft, name, lambda _, division: editing.join_scene(division, scene), kind="join", paragraph=at)
    return now.scenes[bisect_right(now.scenes, at, key=lambda one: one.at) - 1].id
