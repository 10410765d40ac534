"""Take a person out of the cast, or a place out of the book."""

from afterdraft.desk.cast import KnownKind
from afterdraft.work.called import quoted
from afterdraft.work.ports import Book


def remove_known(book: Book, kind: KnownKind, id: str) -> None:
    """What is marked with it goes too: presence, settings, what is carried, what a person learns. One edit.

    Raises `Missing`.
    """
    name = quoted(book.fields(kind, id).texts["name"])
    book.edit(f"Remove {name}", lambda desk: desk.remove_known(kind, id))
