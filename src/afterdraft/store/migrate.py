"""Bringing a book to the present form."""

import sqlite3
from collections.abc import Callable, Sequence
from pathlib import Path

from afterdraft.errors import CannotWrite, DamagedBook, NewerBook
from afterdraft.store import journal
from afterdraft.store.migrations import Migration


def version(db: sqlite3.Connection) -> int:
    """How many migrations the book has been through."""
    return int(db.execute("PRAGMA user_version").fetchone()[0])


def refuse_newer(db: sqlite3.Connection, path: Path, migrations: Sequence[Migration]) -> None:
    """Raises `NewerBook`."""
    has = version(db)
    if has > len(migrations):
        raise NewerBook(str(path), has, len(migrations))


def refuse_older(db: sqlite3.Connection, path: Path, migrations: Sequence[Migration]) -> None:
    """A book opened for reading only is never migrated. Raises `CannotWrite`."""
    if version(db) < len(migrations):
        raise CannotWrite(
            str(path), "it was made by an earlier Afterdraft, and must be opened to be brought up to date"
        )


def migrate(
    db: sqlite3.Connection,
    path: Path,
    *,
    back_up: Callable[[], None],
    migrations: Sequence[Migration],
) -> str:
    """Run what the book has not been through, a transaction each; returns what the writer must know, or "".

    A book that is not new is backed up first. Steps of undo speak of the old tables, so they are given up.
    """
    has = version(db)
    if has == len(migrations):
        return ""
    if has:
        back_up()
    db.execute("PRAGMA foreign_keys = OFF")  # a table that is made anew must not pull others along
    forgot = False
    for number, step in enumerate(migrations[has:], start=has + 1):
        forgot |= _run(db, path, number, step)
    db.execute("PRAGMA foreign_keys = ON")
    return _notice(forgot) if has else ""


def _run(db: sqlite3.Connection, path: Path, number: int, step: Migration) -> bool:
    db.execute("BEGIN IMMEDIATE")
    try:
        step(db)
        forgot = journal.emptied(db)
        if db.execute("PRAGMA foreign_key_check").fetchone():
            raise DamagedBook(str(path), "some of its parts refer to others that are not there")
        db.execute(f"PRAGMA user_version = {number}")
        db.execute("COMMIT")
    except BaseException:
        db.execute("ROLLBACK")
        raise
    return forgot


def _notice(forgot: bool) -> str:
    made = "This book was made by an earlier Afterdraft and has been brought up to date. A backup was made first."
    return f"{made} Edits from before cannot be taken back any more." if forgot else made
