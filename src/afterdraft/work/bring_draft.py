"""Bring a draft into a book."""

from collections.abc import Sequence

from afterdraft.manuscript.draft import Draft
from afterdraft.work.ports import Book


def bring_draft(book: Book, draft: Draft, originals: Sequence[tuple[str, bytes]]) -> str:
    """Take `draft` in with its files (name, bytes); returns its id. A book that has one already is backed up first."""
    number = len(book.drafts()) + 1
    if number > 1:
        book.back_up(why=f"before draft {number}")
    return book.edit(f"Bring in draft {number}", lambda desk: desk.add_draft(draft, originals))
