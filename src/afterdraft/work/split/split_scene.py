"""Split a scene in two."""

from bisect import bisect_right

from afterdraft.manuscript import editing
from afterdraft.manuscript.division import Division
from afterdraft.work.called import line_called
from afterdraft.work.ports import Book, Desk
from afterdraft.work.split.mending import mend


def split_scene(book: Book, draft: str, paragraph: int) -> str:
    """Begin a scene at `paragraph`; the first half keeps id, code and card. Returns the id of the second half.

    Raises `Missing`, `NotPossible`.
    """

    def act(desk: Desk, division: Division) -> Division:
        return editing.split_scene(division, paragraph, desk.new_id("scene"))

    name = f"Split a scene at {line_called(book, draft, paragraph)}"
    now = mend(book, draft, name, act, kind="split", paragraph=paragraph)
    return now.scenes[bisect_right(now.scenes, paragraph, key=lambda one: one.at) - 1].id
