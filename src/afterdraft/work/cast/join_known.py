"""Join two people, or two places, that are one."""

from afterdraft.desk.cast import KnownKind
from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted
from afterdraft.work.ports import Book


def join_known(book: Book, kind: KnownKind, *, into: str, of: str) -> None:
    """All that is marked with `of` is marked with `into` then, which knows its names. One edit.

    Raises `NotPossible` for one and itself, `Missing`.
    """
    if into == of:
        raise NotPossible("These are one already.")
    kept, goes = (quoted(book.fields(kind, one).texts["name"]) for one in (into, of))
    book.edit(f"Join {goes} to {kept}", lambda desk: desk.join_known(kind, into=into, of=of))
