"""Add a thread, a setup, a reveal or a strand."""

from afterdraft.desk.lines import LineKind
from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted
from afterdraft.work.finding import WORDS, alike, named, new_line, new_strand
from afterdraft.work.ports import Book, Desk


def add_line(book: Book, kind: LineKind, name: str) -> str:
    """Returns its id. Raises `NotPossible` for no name, or one that another of its kind has."""
    wanted = named(name, WORDS[kind])

    def change(desk: Desk) -> str:
        if any(one.kind == kind and alike(one.name, wanted) for one in desk.all_lines()):
            raise NotPossible(f"There is a {kind} called {quoted(wanted)} already.")
        return new_line(desk, kind, wanted)

    return book.edit(f"Add the {kind} {quoted(wanted)}", change)


def add_strand(book: Book, name: str) -> str:
    """Returns its id. Raises `NotPossible` for no name, or one that another strand has."""
    wanted = named(name, "A strand")

    def change(desk: Desk) -> str:
        if any(alike(one.name, wanted) for one in desk.all_strands()):
            raise NotPossible(f"There is a strand called {quoted(wanted)} already.")
        return new_strand(desk, wanted)

    return book.edit(f"Add the strand {quoted(wanted)}", change)
