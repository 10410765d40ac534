"""The one thread that changes a book.

Work is queued and done in order, each piece in a transaction of its own; the caller gets the result once the commit has
reached the disk. Two seconds after the last change the log is folded into the file (only here, never by a reader).
"""

import logging
import queue
import sqlite3
import threading
from collections.abc import Callable
from concurrent.futures import Future
from dataclasses import dataclass
from pathlib import Path
from typing import Any, TypeVar

from afterdraft.errors import BookClosed, CannotWrite
from afterdraft.store.connect import BUSY_SECONDS, whole, writing

T = TypeVar("T")
Work = Callable[[sqlite3.Connection], T]

REST_SECONDS = 2.0  # idle time before the log is folded in

_log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class _Job:
    work: Work[Any]
    done: "Future[Any]"
    transaction: bool


class Writer:
    """Owns the writing connection. `prepare` is called on it, on the writing thread, before anything else."""

    def __init__(self, path: Path, prepare: Callable[[sqlite3.Connection], None]) -> None:
        self._path = path
        self._prepare = prepare
        self._jobs: queue.SimpleQueue[_Job | None] = queue.SimpleQueue()
        self._opened: Future[None] = Future()
        self._closing = threading.Lock()
        self._closed = False
        self._thread = threading.Thread(target=self._live, name="book writer", daemon=True)
        self._thread.start()
        self._opened.result()

    def run(self, work: Work[T]) -> T:
        """Do `work` in one transaction; returns when it is durable. What it raises is raised here, nothing changed."""
        return self._ask(work, transaction=True)

    def run_bare(self, work: Work[T]) -> T:
        """Do `work` on the writing thread outside a transaction."""
        return self._ask(work, transaction=False)

    def close(self) -> None:
        """Finish what is queued, fold the log in, close. More than once is harmless."""
        with self._closing:
            if not self._closed:
                self._closed = True
                self._jobs.put(None)
        self._thread.join()

    def _ask(self, work: Work[T], *, transaction: bool) -> T:
        if threading.current_thread() is self._thread:
            raise RuntimeError("an edit cannot be made from within an edit")
        done: Future[T] = Future()
        with self._closing:
            if self._closed:
                raise BookClosed(str(self._path))
            self._jobs.put(_Job(work, done, transaction))
        return done.result()

    def _live(self) -> None:
        try:
            db = writing(self._path)
        except BaseException as error:  # noqa: BLE001 — raised again in the thread that asked
            self._opened.set_exception(error)
            return
        try:
            self._prepare(db)
            here = _place(self._path)
            self._opened.set_result(None)
            self._serve(db, here)
        except BaseException as error:  # noqa: BLE001 — as above; `_serve` itself raises nothing
            self._opened.set_exception(error)
        finally:
            _leave(db)

    def _serve(self, db: sqlite3.Connection, here: tuple[int, int]) -> None:
        unfolded = True  # a log may have been left by a program that was killed
        while True:
            try:
                job = self._jobs.get(timeout=REST_SECONDS if unfolded else None)
            except queue.Empty:
                unfolded = not _fold(db)
                continue
            if job is None:
                return
            unfolded = True
            try:
                self._check_still_there(here)
                job.done.set_result(_in_transaction(db, job.work) if job.transaction else job.work(db))
            except BaseException as error:  # noqa: BLE001 — raised again in the thread that asked
                job.done.set_exception(error)

    def _check_still_there(self, here: tuple[int, int]) -> None:
        """An engine that holds the file open would go on writing to one that was deleted, and nobody would notice."""
        try:
            same = _place(self._path) == here
        except OSError:
            same = False
        if not same:
            raise CannotWrite(str(self._path), "it is no longer where it was; it may have been moved or deleted")


def _in_transaction(db: sqlite3.Connection, work: Work[T]) -> T:
    db.execute("BEGIN IMMEDIATE")
    try:
        result = work(db)
        db.execute("COMMIT")
    except BaseException:
        if db.in_transaction:
            db.execute("ROLLBACK")
        raise
    return result


def _fold(db: sqlite3.Connection) -> bool:
    """Fold the log into the file; False if someone is reading just now, to be tried again. Waits for nobody."""
    try:
        db.execute("PRAGMA busy_timeout = 0")
        busy, _, _ = db.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
    except sqlite3.Error:
        _log.warning("the log could not be folded in yet; all edits are safe in it", exc_info=True)
        return True  # tried again after the next edit
    finally:
        db.execute(f"PRAGMA busy_timeout = {int(BUSY_SECONDS * 1000)}")
    return not busy


def _leave(db: sqlite3.Connection) -> None:
    try:
        whole(db)
    except sqlite3.Error:
        _log.warning("the log could not be folded in; all edits are safe in it", exc_info=True)
    finally:
        db.close()


def _place(path: Path) -> tuple[int, int]:
    found = path.stat()
    return found.st_dev, found.st_ino
