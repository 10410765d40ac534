"""The acts that mend the split: one edit, then back to the line it was about."""

from collections.abc import Callable

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.division import Chapter, Matter, Part, Scene, Where
from afterdraft.manuscript.validity import leaf_at
from afterdraft.web.body import form, text
from afterdraft.web.render import back, book_of, go, number, number_of
from afterdraft.work.ports import Book
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.make_chapter import make_chapter, make_part_chapter, unmake_chapter, unmake_part
from afterdraft.work.split.mark_break import unmark_break
from afterdraft.work.split.mark_matter import mark_matter, unmark_matter
from afterdraft.work.split.retitle import retitle_chapter, retitle_part, retitle_scene
from afterdraft.work.split.settle_doubt import settle_doubt
from afterdraft.work.split.split_scene import split_scene
from afterdraft.work.split.take_other import take_other

Act = Callable[[Book, str, FormData], None]
Unit = Part | Chapter | Scene | Matter


def mend(request: Request) -> Response:
    """`POST /books/{book}/split/{act}`"""
    book, posted = book_of(request), form(request)
    act = ACTS.get(request.path_params["act"])
    if act is None:
        raise Missing("This act")
    draft = _draft(book)
    about = _paragraph(book, draft, posted)
    act(book, draft, posted)
    return go(back(posted, f"/books/{book.id}/split{_place(book, draft, about)}"))


def _draft(book: Book) -> str:
    draft = book.facts().draft
    if draft is None:
        raise Missing("The draft")
    return draft.id


def _paragraph(book: Book, draft: str, posted: FormData) -> int:
    """Where the act happens, counted before it is done: units come and go, paragraphs stay."""
    for name in ("paragraph", "start"):
        if name in posted:
            return number(posted, name)
    division = book.division(draft)
    units: list[Unit] = [*division.scenes, *division.chapters, *division.parts, *division.matter]
    named = {text(posted, name) for name in ("scene", "chapter", "part", "matter")}
    return next((unit.at for unit in units if unit.id in named), 0)


def _place(book: Book, draft: str, paragraph: int) -> str:
    """The part of the page that shows what holds `paragraph` now."""
    holder = leaf_at(book.division(draft), paragraph)
    if holder is None:
        return ""
    unit = holder[0]
    return f"#u-{unit.code if isinstance(unit, Scene) else unit.id}"


def _begin(book: Book, draft: str, posted: FormData) -> None:
    at, what = number(posted, "paragraph"), text(posted, "begin")
    if what == "scene":
        split_scene(book, draft, at)
    elif what == "chapter":
        make_chapter(book, draft, at)
    elif what == "text":
        unmark_break(book, draft, at)
    else:
        raise NotPossible("A paragraph can begin a scene or a chapter.")


def _where(posted: FormData) -> Where:
    return "back" if text(posted, "where") == "back" else "front"


def _join(book: Book, draft: str, posted: FormData) -> None:
    join_scenes(book, text(posted, "scene"))


def _settle(book: Book, draft: str, posted: FormData) -> None:
    settle = take_other if text(posted, "take") == "other" else settle_doubt
    settle(book, draft, *(number_of(str(value), -1) for value in posted.getlist("paragraph")))


ACTS: dict[str, Act] = {
    "join": _join,
    "at": _begin,
    "retitle-scene": lambda book, draft, p: retitle_scene(book, text(p, "scene"), text(p, "title")),
    "retitle-chapter": lambda book, draft, p: retitle_chapter(book, draft, text(p, "chapter"), text(p, "title")),
    "retitle-part": lambda book, draft, p: retitle_part(book, draft, text(p, "part"), text(p, "title")),
    "unmake-chapter": lambda book, draft, posted: unmake_chapter(book, draft, text(posted, "chapter")),
    "part-chapter": lambda book, draft, posted: make_part_chapter(book, draft, text(posted, "part")),
    "unmake-part": lambda book, draft, posted: unmake_part(book, draft, text(posted, "part")),
    "set-apart": lambda book, draft, posted: mark_matter(
        book, draft, number(posted, "start"), number(posted, "end"), where=_where(posted)
    ),
    "is-story": lambda book, draft, posted: unmark_matter(book, draft, text(posted, "matter")),
    "settle": _settle,
}
