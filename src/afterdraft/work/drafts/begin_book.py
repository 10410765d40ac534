"""Begin a book with its first draft."""

from collections.abc import Sequence

from afterdraft.manuscript.draft import Draft
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.plain import line
from afterdraft.work.ports import Book, Shelf

UNTITLED = "Untitled"


def begin_book(shelf: Shelf, draft: Draft, originals: Sequence[tuple[str, bytes]], *, title: str = "") -> Book:
    """Make a book of `draft`, called `title`, or as the manuscript is, or as its file is: all of it or nothing."""
    called = line(title) or line(draft.title) or line(_stem(draft.source.name)) or UNTITLED
    book, _ = shelf.begin(title=called, first=lambda book: bring_draft(book, draft, originals))
    return book


def _stem(name: str) -> str:
    """A file's name without its ending."""
    stem, _, _ = name.rpartition(".")
    return stem or name
