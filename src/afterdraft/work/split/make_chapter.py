"""Make a line the heading of a chapter, or a chapter part of the one before; parts likewise."""

from typing import TypeVar

from afterdraft.errors import Missing
from afterdraft.manuscript import editing
from afterdraft.manuscript.division import Chapter, Division, Part
from afterdraft.manuscript.naming import chapter_name
from afterdraft.work.called import line_called, quoted
from afterdraft.work.ports import Book, Desk
from afterdraft.work.split.mending import mend

Unit = TypeVar("Unit", Chapter, Part)


def make_chapter(book: Book, draft: str, paragraph: int) -> None:
    """The line at `paragraph` is the heading of a chapter that begins there. Raises `Missing`, `NotPossible`."""

    def act(desk: Desk, division: Division) -> Division:
        text = desk.text(draft, paragraph)
        return editing.make_chapter(division, paragraph, text, desk.new_id("chapter"), desk.new_id("scene"))

    name = f"Begin a chapter at {line_called(book, draft, paragraph)}"
    mend(book, draft, name, act, kind="make chapter", paragraph=paragraph)


def unmake_chapter(book: Book, draft: str, chapter: str) -> None:
    """The scenes of `chapter` go to the chapter before. Raises `Missing`, `NotPossible`."""

    def act(_: Desk, division: Division) -> Division:
        return editing.unmake_chapter(division, chapter)

    unit = _find(book.division(draft).chapters, chapter, "This chapter")
    name = f"Join {quoted(chapter_name(unit))} to the chapter before"
    mend(book, draft, name, act, kind="unmake chapter", paragraph=unit.at)


def make_part_chapter(book: Book, draft: str, part: str) -> None:
    """`part` is a chapter, and its chapters are scenes of it. Raises `Missing`, `NotPossible`."""

    def act(desk: Desk, division: Division) -> Division:
        return editing.part_to_chapter(division, part, desk.new_id("chapter"))

    unit = _find(book.division(draft).parts, part, "This part")
    name = f"Make {quoted(unit.title)} a chapter"
    mend(book, draft, name, act, kind="part to chapter", paragraph=unit.at)


def unmake_part(book: Book, draft: str, part: str) -> None:
    """The heading of `part` is none; its chapters go to the part before. Raises `Missing`, `NotPossible`."""

    def act(_: Desk, division: Division) -> Division:
        return editing.unmake_part(division, part)

    unit = _find(book.division(draft).parts, part, "This part")
    name = f"Join {quoted(unit.title)} to the part before"
    mend(book, draft, name, act, kind="unmake part", paragraph=unit.at)


def _find(units: tuple[Unit, ...], unit: str, what: str) -> Unit:
    for one in units:
        if one.id == unit:
            return one
    raise Missing(what)
