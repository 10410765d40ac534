"""Say that what reading takes for a person, or a place, is none; or that it is one after all."""

from afterdraft.desk.cast import KnownKind
from afterdraft.reading.mentions import form
from afterdraft.work.called import quoted
from afterdraft.work.cast.add_known import THINGS
from afterdraft.work.cast.found import Found
from afterdraft.work.finding import named
from afterdraft.work.ports import Book, Desk

_WHAT: dict[KnownKind, str] = {"person": "person", "place": "place"}


def refuse_name(book: Book, kind: KnownKind, found: Found) -> None:
    """None of its names is a name of one; a row of hers stays as it is. One edit. Raises `NotPossible` for no name."""
    names = [form(named(name, THINGS[kind])) for name in (found.name, *found.aliases)]

    def change(desk: Desk) -> None:
        for name in names:
            desk.set_no_name(kind, name, none=True)

    book.edit(f"{found.told} no {_WHAT[kind]}", change)


def allow_name(book: Book, kind: KnownKind, name: str) -> None:
    """Reading may take it for one again. One edit. Raises `NotPossible` for no name."""
    allowed = form(named(name, THINGS[kind]))
    book.edit(f"{quoted(name)} a {_WHAT[kind]} after all", lambda desk: desk.set_no_name(kind, allowed, none=False))
