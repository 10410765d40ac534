"""Connections to a book file: one that writes, any number that read.

WAL with synchronous FULL: a commit has reached the disk when it returns. Statements run in explicit transactions only.
"""

import sqlite3
from collections.abc import Sequence
from contextlib import closing
from pathlib import Path

APPLICATION_ID = 0x41667464  # "Aftd", in the file's header: tells a book from other databases
BUSY_SECONDS = 2.0  # how long another program may hold the file before that is said

_WRITING = (
    "journal_mode = WAL",
    "synchronous = FULL",
    "foreign_keys = ON",
    "recursive_triggers = ON",
    "wal_autocheckpoint = 0",  # checkpoints wait until the writer rests
)
_READING = ("query_only = ON",)


def writing(path: Path) -> sqlite3.Connection:
    """The one connection that writes. Makes no file: the file must be there."""
    return _connect(path, "rw", _WRITING)


def reading(path: Path) -> sqlite3.Connection:
    """A connection that cannot write."""
    return _connect(path, "ro", _READING)


def made_new(path: Path) -> None:
    """Put an empty file of ours at `path`, where none may be yet."""
    _connect(path, "rwc", (f"application_id = {APPLICATION_ID}",)).close()


def is_book(path: Path) -> bool:
    """Whether the file at `path` is a book, going by its header.

    Asked of the engine, never by opening the file ourselves: closing it again would drop the locks that the engine
    holds on it for this whole process (sqlite.org/howtocorrupt.html, 2.2).
    """
    with closing(reading(path)) as db:
        try:
            return bool(db.execute("PRAGMA application_id").fetchone() == (APPLICATION_ID,))
        except sqlite3.DatabaseError as error:
            if error.sqlite_errorcode == sqlite3.SQLITE_NOTADB:
                return False
            raise


def whole(db: sqlite3.Connection) -> None:
    """Bring everything into the one file, so that a copy of it is complete; no matter if others have it open."""
    db.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    try:
        db.execute("PRAGMA journal_mode = DELETE")
    except sqlite3.OperationalError as error:
        if error.sqlite_errorcode != sqlite3.SQLITE_BUSY:
            raise


def _connect(path: Path, mode: str, settings: Sequence[str]) -> sqlite3.Connection:
    db = sqlite3.connect(
        f"{path.absolute().as_uri()}?mode={mode}",
        uri=True,
        timeout=BUSY_SECONDS,
        isolation_level=None,
        check_same_thread=False,  # a connection is used by one thread at a time; which one may change
    )
    try:
        for setting in settings:
            db.execute(f"PRAGMA {setting}")
    except BaseException:
        db.close()
        raise
    return db
