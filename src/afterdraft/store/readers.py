"""Connections for reading, lent to one thread at a time."""

import sqlite3
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from afterdraft.errors import BookClosed
from afterdraft.store.connect import reading

_SPARE = 4  # kept open while nobody reads; each holds some megabytes of pages
_PATIENCE = 10.0  # seconds a closing book waits for pages still being read


class Readers:
    """Lends reading connections, opening another when all are out."""

    def __init__(self, path: Path) -> None:
        self._path = path
        self._idle: list[sqlite3.Connection] = []
        self._out = 0
        self._closed = False
        self._changed = threading.Condition()

    @contextmanager
    def snapshot(self) -> Iterator[sqlite3.Connection]:
        """A connection on which all that is read belongs to one moment."""
        db = self._take()
        try:
            db.execute("BEGIN")
            yield db
        finally:
            if db.in_transaction:
                db.execute("ROLLBACK")
            self._give_back(db)

    def close(self) -> None:
        """Wait for those still out, then close all."""
        with self._changed:
            self._closed = True
            self._changed.wait_for(lambda: self._out == 0, timeout=_PATIENCE)
            for db in self._idle:
                db.close()
            self._idle.clear()

    def _take(self) -> sqlite3.Connection:
        with self._changed:
            if self._closed:
                raise BookClosed(str(self._path))
            self._out += 1
            if self._idle:
                return self._idle.pop()
        try:
            return reading(self._path)
        except BaseException:
            self._returned()
            raise

    def _give_back(self, db: sqlite3.Connection) -> None:
        with self._changed:
            if self._closed or len(self._idle) == _SPARE:
                db.close()
            else:
                self._idle.append(db)
        self._returned()

    def _returned(self) -> None:
        with self._changed:
            self._out -= 1
            self._changed.notify_all()
