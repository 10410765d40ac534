"""The application as a browser meets it that was let in: with one book open, or with none."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from starlette.testclient import TestClient
from starlette.types import ASGIApp

from afterdraft import wiring
from afterdraft.home import BooksFolder, Recents
from afterdraft.platform import folders
from afterdraft.web.app import build
from afterdraft.web.asking import Asking
from afterdraft.web.guard import cookie_name
from afterdraft.web.reading import Reading
from afterdraft.web.registry import Registry
from afterdraft.work.ports import Book

KEY, PORT = "k", 9000
HOME = f"http://127.0.0.1:{PORT}"


@contextmanager
def opened(
    path: Path, *, asking: Asking | None = None, reading: Reading | None = None
) -> Iterator[tuple[TestClient, Book]]:
    """A client, and the book at `path`, which is closed at the end."""
    books = registry()
    book = books.open(path)
    try:
        made = build(books, key=KEY, port=PORT, close=lambda: (), log="log", asking=asking, reading=reading)
        yield let_in(made), book
    finally:
        books.close_all()


def registry() -> Registry:
    """With no book open; none can be dropped on it."""
    place = folders()
    return Registry(
        opener=wiring.open_book,
        adopter=lambda name, content: Path(),
        restorer=wiring.restore,
        recents=Recents(place),
        folder=BooksFolder(place),
    )


def let_in(app: ASGIApp) -> TestClient:
    headers = {"Cookie": f"{cookie_name(PORT)}={KEY}", "Origin": HOME}
    return TestClient(app, base_url=HOME, headers=headers)
