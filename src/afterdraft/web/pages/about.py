"""The book itself: title, drafts, where it is kept, check, backups, restore."""

from dataclasses import dataclass
from pathlib import Path

from starlette.requests import Request
from starlette.responses import Response

from afterdraft import wiring
from afterdraft.desk.ground import Ground
from afterdraft.questions.sky import places
from afterdraft.web.body import form, text
from afterdraft.web.render import book_of, frame, go, render
from afterdraft.web.view import BookView, view
from afterdraft.work.ports import DraftFacts
from afterdraft.work.questions.set_ground import set_ground
from afterdraft.work.split.retitle import retitle_book


@dataclass(frozen=True, slots=True)
class AboutPage:
    view: BookView
    drafts: tuple[DraftFacts, ...]
    backups: tuple[wiring.Backup, ...]  # latest first
    warnings: tuple[str, ...]  # about where the file lies
    checked: tuple[str, ...] | None  # what a check found; None when none was asked for
    ground: Ground | None  # the real place and year it is set in
    towns: tuple[str, ...]  # that are known by name


def about(request: Request) -> Response:
    """`/books/{book}/about`"""
    return _page(request, checked=None)


def check(request: Request) -> Response:
    """`POST /books/{book}/check`: the same page with what was found."""
    return _page(request, checked=book_of(request).check())


def _page(request: Request, *, checked: tuple[str, ...] | None) -> Response:
    seen = view(book_of(request))
    context = AboutPage(
        view=seen,
        drafts=seen.book.drafts(),
        backups=wiring.backups(seen.facts.id),
        warnings=wiring.warnings(Path(seen.facts.path)),
        checked=checked,
        ground=seen.book.ground(),
        towns=places(),
    )
    return render(request, "about.html", context, frame(request, "The book", "about", book=seen))


def title(request: Request) -> Response:
    book = book_of(request)
    retitle_book(book, text(form(request), "title"))
    return go(f"/books/{book.id}/about")


def ground(request: Request) -> Response:
    """`POST /books/{book}/ground` with `place` and `year`."""
    book, posted = book_of(request), form(request)
    set_ground(book, text(posted, "place"), text(posted, "year"))
    top = book.edits().undo
    return go(f"/books/{book.id}/about", said=top.name if top else "")


def back_up(request: Request) -> Response:
    book = book_of(request)
    book.back_up(why="asked for")
    return go(f"/books/{book.id}/about", said="A backup is made and checked.")


def restore(request: Request) -> Response:
    book = book_of(request)
    request.app.state.registry.restore(book.id, text(form(request), "backup"))
    return go(f"/books/{book.id}/about", said="The book is what it was then. What it was before is kept as a backup.")
