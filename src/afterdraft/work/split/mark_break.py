"""Say that a line is a break mark, or that it is text."""

from afterdraft.manuscript import editing
from afterdraft.manuscript.division import Division
from afterdraft.work.called import line_called
from afterdraft.work.ports import Book, Desk
from afterdraft.work.split.mending import mend


def mark_break(book: Book, draft: str, paragraph: int) -> None:
    """The line at `paragraph` is a break mark: a scene begins there. Raises `Missing`, `NotPossible`."""

    def act(desk: Desk, division: Division) -> Division:
        return editing.mark_mark(division, paragraph, desk.new_id("scene"))

    name = f"Read {line_called(book, draft, paragraph)} as a scene break"
    mend(book, draft, name, act, kind="mark", paragraph=paragraph)


def unmark_break(book: Book, draft: str, paragraph: int) -> None:
    """The line at `paragraph` is text; the scene that began with it goes to the one before."""

    def act(_: Desk, division: Division) -> Division:
        return editing.unmark_mark(division, paragraph)

    name = f"Read {line_called(book, draft, paragraph)} as text"
    mend(book, draft, name, act, kind="unmark", paragraph=paragraph)
