"""The chapters of an arrangement: add one, name it, move it with its cards, take an empty one out."""

from dataclasses import replace

from afterdraft.desk.arrangement import Arrangement, Row
from afterdraft.desk.arranging import add_row as added
from afterdraft.desk.arranging import move_row as moved
from afterdraft.desk.arranging import remove_row as removed
from afterdraft.desk.arranging import row_called
from afterdraft.work.called import quoted
from afterdraft.work.cards.arranging import arrange, row_name, seen
from afterdraft.work.plain import line
from afterdraft.work.ports import Book, Desk


def add_row(book: Book, arrangement: str, *, title: str = "", before: str = "") -> Arrangement:
    """A new chapter before another, or at the end. Raises `Missing`."""
    called = line(title)

    def act(desk: Desk, stands: Arrangement) -> Arrangement:
        return added(stands, Row(desk.new_id("row"), "", called, None, None), before=before or None)

    return arrange(book, arrangement, f"New chapter {quoted(called)}" if called else "New chapter", act)


def retitle_row(book: Book, arrangement: str, row: str, title: str) -> Arrangement:
    """With an empty title the draft's chapter is shown again. Raises `Missing`."""
    called = line(title)
    was = row_name(book, row_called(seen(book, arrangement), row))

    def act(_: Desk, stands: Arrangement) -> Arrangement:
        meant = row_called(stands, row)
        rows = tuple(replace(one, title=called) if one is meant else one for one in stands.rows)
        return replace(stands, rows=rows)

    name = f"Call {quoted(was)} {quoted(called)}" if called else f"Take the title off {quoted(was)}"
    return arrange(book, arrangement, name, act)


def move_row(book: Book, arrangement: str, row: str, *, before: str = "") -> Arrangement:
    """A chapter with its cards before another, or to the end. Raises `Missing`."""
    called = row_name(book, row_called(seen(book, arrangement), row))
    return arrange(
        book, arrangement, f"Move {quoted(called)}", lambda _, stands: moved(stands, row, before=before or None)
    )


def remove_row(book: Book, arrangement: str, row: str) -> Arrangement:
    """Take an empty chapter out. Raises `Missing`, `NotPossible` while cards lie in it."""
    called = row_name(book, row_called(seen(book, arrangement), row))
    return arrange(book, arrangement, f"Take {quoted(called)} out", lambda _, stands: removed(stands, row))
