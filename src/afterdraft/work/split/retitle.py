"""Give a scene, chapter, part or the book another title. The manuscript's own lines stay as they are."""

from collections.abc import Callable

from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript import editing
from afterdraft.manuscript.division import Division
from afterdraft.manuscript.naming import chapter_name
from afterdraft.work.called import quoted, scene_called
from afterdraft.work.plain import line
from afterdraft.work.ports import Book
from afterdraft.work.split.mending import mend

Retitle = Callable[[Division, str, str], Division]


def retitle_scene(book: Book, scene: str, title: str) -> None:
    """With an empty title its first words are shown again. Raises `Missing`."""
    draft = book.draft_of(scene)
    at = next(one.at for one in book.division(draft).scenes if one.id == scene)
    _retitle(book, draft, scene, at, "scene", editing.retitle_scene, was=scene_called(book, scene), title=title)


def retitle_chapter(book: Book, draft: str, chapter: str, title: str) -> None:
    """Raises `Missing`."""
    unit = next((one for one in book.division(draft).chapters if one.id == chapter), None)
    if unit is None:
        raise Missing("This chapter")
    was = quoted(chapter_name(unit))
    _retitle(book, draft, chapter, unit.at, "chapter", editing.retitle_chapter, was=was, title=title)


def retitle_part(book: Book, draft: str, part: str, title: str) -> None:
    """Raises `Missing`."""
    unit = next((one for one in book.division(draft).parts if one.id == part), None)
    if unit is None:
        raise Missing("This part")
    _retitle(book, draft, part, unit.at, "part", editing.retitle_part, was=quoted(unit.title), title=title)


def retitle_book(book: Book, title: str) -> None:
    """The file keeps its name. Raises `NotPossible` for an empty title."""
    called = line(title)
    if not called:
        raise NotPossible("A book needs a title.")
    book.edit(f"Call the book {quoted(called)}", lambda desk: desk.set_title(called))


def _retitle(book: Book, draft: str, unit: str, at: int, kind: str, retitle: Retitle, *, was: str, title: str) -> None:
    called = line(title)
    mend(
        book,
        draft,
        f"Call {was} {quoted(called)}" if called else f"Take the title off {was}",
        lambda _, division: retitle(division, unit, called),
        kind=f"title {kind}",
        paragraph=at,
        detail={"title": called},
    )
