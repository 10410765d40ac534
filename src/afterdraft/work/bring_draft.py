"""Bring a draft into a book."""

from collections.abc import Sequence

from afterdraft.manuscript.draft import Draft
from afterdraft.work.ports import Book, Desk
from afterdraft.work.replay import replay


def bring_draft(book: Book, draft: Draft, originals: Sequence[tuple[str, bytes]]) -> str:
    """Take `draft` in with its files (name, bytes); returns its id. A book that has one already is backed up first, and
    what was corrected in the split of the drafts before is corrected in this one too."""
    number = len(book.drafts()) + 1
    if number > 1:
        book.back_up(why=f"before draft {number}")

    def bring(desk: Desk) -> str:
        made = desk.add_draft(draft, originals)
        replay(desk, made)
        return made

    return book.edit(f"Bring in draft {number}", bring)
