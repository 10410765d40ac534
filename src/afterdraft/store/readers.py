"""Connections for reading, lent to one thread at a time."""

import sqlite3
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager

_PATIENCE = 10.0  # seconds a closing book waits for pages still being read


class Readers:
    """Lends reading connections, opening another when all are out. `open_one` makes one."""

    def __init__(self, open_one: Callable[[], sqlite3.Connection]) -> None:
        self._open_one = open_one
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
                raise RuntimeError("the book is closed")
            self._out += 1
            if self._idle:
                return self._idle.pop()
        try:
            return self._open_one()
        except BaseException:
            self._returned()
            raise

    def _give_back(self, db: sqlite3.Connection) -> None:
        with self._changed:
            if self._closed:
                db.close()
            else:
                self._idle.append(db)
        self._returned()

    def _returned(self) -> None:
        with self._changed:
            self._out -= 1
            self._changed.notify_all()
