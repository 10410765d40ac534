"""Settle a doubt: what the program chose is right."""

from afterdraft.work.called import line_called
from afterdraft.work.ports import Book


def settle_doubt(book: Book, draft: str, paragraph: int) -> None:
    """The doubts about `paragraph` are not shown any more. Raises `Missing`."""
    name = f"Leave {line_called(book, draft, paragraph)} as it is"
    book.edit(name, lambda desk: desk.close_doubt(draft, paragraph))
