"""Settle a doubt: what the program chose is right."""

from afterdraft.errors import Missing
from afterdraft.work.called import line_called
from afterdraft.work.ports import Book, Desk


def settle_doubt(book: Book, draft: str, *paragraphs: int) -> None:
    """The doubts about the lines are not shown any more, as one edit. Raises `Missing`."""

    def change(desk: Desk) -> None:
        for paragraph in paragraphs:
            desk.close_doubt(draft, paragraph)

    if not paragraphs:
        raise Missing("This doubt")
    called = [line_called(book, draft, paragraph) for paragraph in paragraphs]
    name = f"Leave {called[0]} as it is" if len(called) == 1 else f"Leave {len(called)} lines as they are"
    book.edit(name, change)
