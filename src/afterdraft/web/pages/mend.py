"""The acts that mend the split: one edit, then back to the line it was about."""

from collections.abc import Callable

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.division import Where
from afterdraft.web.body import form, text
from afterdraft.web.render import back, book_of, go, number
from afterdraft.web.view import view
from afterdraft.work import retitle
from afterdraft.work.join_scenes import join_scenes
from afterdraft.work.make_chapter import make_chapter, unmake_chapter, unmake_part
from afterdraft.work.mark_matter import mark_matter, unmark_matter
from afterdraft.work.ports import Book
from afterdraft.work.settle_doubt import settle_doubt
from afterdraft.work.split_scene import split_scene, unmark_mark

Act = Callable[[Book, str, FormData], None]


def mend(request: Request) -> Response:
    """`POST /books/{book}/split/{act}`"""
    book, posted = book_of(request), form(request)
    act = ACTS.get(request.path_params["act"])
    if act is None:
        raise Missing("This act")
    draft = _draft(book)
    about = _paragraph(book, posted)
    act(book, draft, posted)
    return go(back(posted, f"/books/{book.id}/split{_place(book, about)}"))


def _draft(book: Book) -> str:
    draft = book.facts().draft
    if draft is None:
        raise Missing("The draft")
    return draft.id


def _paragraph(book: Book, posted: FormData) -> int:
    """Where the act happens, counted before it is done: units come and go, paragraphs stay."""
    for name in ("paragraph", "start"):
        if name in posted:
            return number(posted, name)
    seen = view(book)
    units = (*seen.division.scenes, *seen.division.chapters, *seen.division.parts, *seen.division.matter)
    named = {text(posted, name) for name in ("scene", "chapter", "part", "matter")}
    return next((unit.at for unit in units if unit.id in named), 0)


def _place(book: Book, paragraph: int) -> str:
    """The part of the page that shows the scene or matter which holds `paragraph` now."""
    seen = view(book)
    scene = seen.outline.scene_of(paragraph)
    if scene:
        return f"#u-{scene.scene.code}"
    matter = next((m for m in (*seen.outline.front, *seen.outline.back) if m.start <= paragraph < m.end), None)
    return f"#u-{matter.matter.id}" if matter else ""


def _begin(book: Book, draft: str, posted: FormData) -> None:
    at, what = number(posted, "paragraph"), text(posted, "begin")
    acts = {"scene": split_scene, "chapter": make_chapter, "text": unmark_mark}
    if what not in acts:
        raise NotPossible("A scene or a chapter begins at a paragraph.")
    acts[what](book, draft, at)


def _where(posted: FormData) -> Where:
    return "back" if text(posted, "where") == "back" else "front"


def _settle(book: Book, draft: str, posted: FormData) -> None:
    settle_doubt(book, draft, number(posted, "paragraph"), other=text(posted, "take") == "other")


ACTS: dict[str, Act] = {
    "join": lambda book, draft, posted: join_scenes(book, draft, text(posted, "scene")),
    "at": _begin,
    "retitle-scene": lambda book, draft, p: retitle.scene(book, draft, text(p, "scene"), text(p, "title")),
    "retitle-chapter": lambda book, draft, p: retitle.chapter(book, draft, text(p, "chapter"), text(p, "title")),
    "retitle-part": lambda book, draft, p: retitle.part(book, draft, text(p, "part"), text(p, "title")),
    "unmake-chapter": lambda book, draft, posted: unmake_chapter(book, draft, text(posted, "chapter")),
    "unmake-part": lambda book, draft, posted: unmake_part(book, draft, text(posted, "part")),
    "set-apart": lambda book, draft, posted: mark_matter(
        book, draft, number(posted, "start"), number(posted, "end"), where=_where(posted), kind="other"
    ),
    "is-story": lambda book, draft, posted: unmark_matter(book, draft, text(posted, "matter")),
    "settle": _settle,
}
