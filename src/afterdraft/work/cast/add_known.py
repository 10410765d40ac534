"""Add a person to the cast, or a place."""

from afterdraft.desk.cast import KnownKind
from afterdraft.errors import NameTaken
from afterdraft.work.called import quoted
from afterdraft.work.finding import at_the_end, called, named
from afterdraft.work.ports import Book, Desk

THINGS: dict[KnownKind, str] = {"person": "A person", "place": "A place"}


def add_known(book: Book, kind: KnownKind, name: str, *, all_the_same: bool = False) -> str:
    """Returns its id. Raises `NotPossible` for no name; `NameTaken`, unless `all_the_same`."""
    wanted = named(name, THINGS[kind])

    def change(desk: Desk) -> str:
        listed = desk.known(kind)
        if not all_the_same and called(listed, wanted):
            raise NameTaken(f"There is {THINGS[kind].lower()} called {quoted(wanted)} already.")
        return desk.add_known(kind, name=wanted, place=at_the_end(listed))

    return book.edit(f"Add {quoted(wanted)}", change)
