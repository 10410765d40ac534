"""What the database engine says, in the writer's words."""

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager

from afterdraft.errors import BookOpenElsewhere, BookTrouble, CannotWrite, DamagedBook, NotABook

_GONE = "the drive or folder it is in can no longer be reached, or is full or failing"
_PRIMARY = 0xFF  # the low byte of an extended result code is its primary code: sqlite.org/rescode.html


@contextmanager
def told(path: str) -> Iterator[None]:
    """Raise what goes wrong with the file at `path` as a `BookTrouble`; faults of ours pass through unchanged."""
    try:
        yield
    except sqlite3.Error as error:
        trouble = _trouble(error, path)
        if trouble is None:
            raise
        raise trouble from error
    except OSError as error:
        raise CannotWrite(path, (error.strerror or str(error)).lower()) from error


def _trouble(error: sqlite3.Error, path: str) -> BookTrouble | None:
    code = getattr(error, "sqlite_errorcode", sqlite3.SQLITE_OK) & _PRIMARY
    match code:
        case sqlite3.SQLITE_FULL:
            return CannotWrite(path, "the disk is full")
        case sqlite3.SQLITE_READONLY | sqlite3.SQLITE_PERM:
            return CannotWrite(path, "the file or its folder is for reading only")
        case sqlite3.SQLITE_IOERR | sqlite3.SQLITE_CANTOPEN:
            return CannotWrite(path, _GONE)
        case sqlite3.SQLITE_BUSY | sqlite3.SQLITE_LOCKED:
            return BookOpenElsewhere(path)
        case sqlite3.SQLITE_CORRUPT:
            return DamagedBook(path, "its pages do not fit together")
        case sqlite3.SQLITE_NOTADB:
            return NotABook(path)
        case _:
            return None
