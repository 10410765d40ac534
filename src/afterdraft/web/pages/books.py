"""Books: bring a manuscript in, go on with a book, the demonstration book, where books are kept."""

from dataclasses import dataclass
from pathlib import Path

from starlette.requests import Request
from starlette.responses import Response

from afterdraft import wiring
from afterdraft.errors import NotPossible
from afterdraft.home import SUFFIX, Recent
from afterdraft.web.body import files, form, text
from afterdraft.web.render import book_of, frame, go, render
from afterdraft.work.ports import Book


@dataclass(frozen=True, slots=True)
class BooksPage:
    recents: tuple[Recent, ...]  # latest first
    accepts: str  # endings for the file chooser
    reads: str  # the same, for a person
    folder: Path  # where a new book goes
    folder_fixed: bool


@dataclass(frozen=True, slots=True)
class FolderPage:
    folder: Path
    fixed: bool
    warnings: tuple[str, ...]


def books(request: Request) -> Response:
    """`/`"""
    registry = request.app.state.registry
    endings = wiring.endings()
    context = BooksPage(
        recents=registry.recents(),
        accepts=",".join((*endings, SUFFIX)),
        reads=wiring.READS,
        folder=registry.folder.path(),
        folder_fixed=registry.folder.fixed,
    )
    return render(request, "books.html", context, frame(request, "Books", "books"))


def bring(request: Request) -> Response:
    """`POST /books`: files chosen or dropped. A book file is taken up; anything else is one draft of a new book."""
    chosen = files(form(request), "files")
    if not chosen:
        raise NotPossible("No file was chosen.")
    registry = request.app.state.registry
    taken = [(name, content) for name, content in chosen if name.endswith(SUFFIX)]
    if taken:
        book = [registry.adopt(name, content) for name, content in taken][-1]
        return go(f"/books/{book.id}/", said=f"A copy of the book now lies in {registry.folder.path()}.")
    book = registry.open(wiring.begin(chosen, folder=registry.folder))
    return go(f"/books/{book.id}/split")


def demo(request: Request) -> Response:
    """`POST /demo`: the demonstration book, made if it is not there yet."""
    registry = request.app.state.registry
    book = registry.open(wiring.demonstration(registry.folder))
    return go(f"/books/{book.id}/scenes")


def open_book(request: Request) -> Response:
    """`/books/{book}/`: a book is opened at the scene last looked at; at the split as long as nothing is written.

    What opening it did to it (brought it to a newer form, say) is told there.
    """
    book = book_of(request)
    return go(f"/books/{book.id}/{'scenes' if _begun(book) else 'split'}", said=" ".join(book.notices()))


def _begun(book: Book) -> bool:
    draft = book.facts().draft
    return bool(book.last_place()) or (draft is not None and draft.written > 0)


def forget(request: Request) -> Response:
    """`POST /forget`: off the list; the file stays."""
    request.app.state.registry.forget(text(form(request), "id"))
    return go("/", said="It is off the list. The book's file is where it was.")


def folder(request: Request) -> Response:
    """`/folder`"""
    kept = request.app.state.registry.folder
    context = FolderPage(kept.path(), kept.fixed, wiring.warnings(kept.path()))
    return render(request, "folder.html", context, frame(request, "Where books are kept", "books"))


def choose_folder(request: Request) -> Response:
    """`POST /folder`"""
    wanted = text(form(request), "folder").strip()
    if not wanted:
        raise NotPossible("The name of a folder is needed.")
    request.app.state.registry.folder.choose(Path(wanted))
    return go("/", said=f"New books go into {wanted}.")
