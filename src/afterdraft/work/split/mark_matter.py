"""Set paragraphs apart as front or back matter, or count them as story again."""

from afterdraft.errors import Missing
from afterdraft.manuscript import editing
from afterdraft.manuscript.division import Division, MatterKind, Where
from afterdraft.work.called import line_called
from afterdraft.work.ports import Book, Desk
from afterdraft.work.split.mending import mend


def mark_matter(book: Book, draft: str, start: int, end: int, *, where: Where, kind: MatterKind = "other") -> None:
    """Paragraphs `start` to `end`, exclusive, are not story. Raises `Missing`, `NotPossible`."""

    def act(desk: Desk, division: Division) -> Division:
        return editing.mark_matter(division, start, end, where=where, kind=kind, new_id=desk.new_id("matter"))

    name = f"Set {line_called(book, draft, start)} apart as {where} matter"
    detail = {"paragraphs": end - start, "where": where, "kind": kind}
    mend(book, draft, name, act, kind="matter", paragraph=start, detail=detail)


def unmark_matter(book: Book, draft: str, matter: str) -> None:
    """The front or back matter `matter` is story: a chapter with one scene. Raises `Missing`, `NotPossible`."""
    found = next((one for one in book.division(draft).matter if one.id == matter), None)
    if found is None:
        raise Missing("This front or back matter")

    def act(desk: Desk, division: Division) -> Division:
        chapter, scene = desk.new_id("chapter"), desk.new_id("scene")
        return editing.unmark_matter(division, matter, chapter_id=chapter, scene_id=scene)

    name = f"Count {line_called(book, draft, found.at)} as story"
    mend(book, draft, name, act, kind="unmatter", paragraph=found.at)
