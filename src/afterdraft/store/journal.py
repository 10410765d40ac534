"""Undo and redo by the technique that SQLite documents (sqlite.org/undoredo.html), one linear stack for the book.

Temporary triggers on every table of the writer's half log, for each change of a row, the statement that takes it back.
Taking an edit back runs its statements, latest first, while the same triggers log what redoes it: a step always holds
what leads away from where the book stands now.
"""

import sqlite3
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from typing import TypeVar

from afterdraft.errors import NothingToUndo
from afterdraft.work.ports import Edit, Edits

T = TypeVar("T")

MERGE_SECONDS = 10.0  # a pause after which typing in one field is a new edit
_NOT_NOW = 0

_TOP = "SELECT number, name FROM undo_step WHERE NOT undone ORDER BY number DESC LIMIT 1"
_NEXT = "SELECT number, name FROM undo_step WHERE undone ORDER BY number LIMIT 1"


@dataclass(frozen=True, slots=True)
class _Merging:
    key: str
    number: int
    until: float


class Journal:
    """Belongs to the writing connection, and is used on its thread, within its transactions."""

    def __init__(self, db: sqlite3.Connection, clock: Callable[[], float] = time.monotonic) -> None:
        self._db = db
        self._clock = clock
        self._step = _NOT_NOW
        self._merging: _Merging | None = None
        db.create_function("journal_step", 0, lambda: self._step)
        for table in desk_tables(db):
            for trigger in _triggers(db, table):
                db.execute(trigger)

    def edit(self, name: str, change: Callable[[], T], *, merge: str, changed: Callable[[], None]) -> T:
        """Run `change` as one step, or as part of the last one, then `changed`.

        Where it changed nothing, no step is left and `changed` is not called.
        """
        number = self._merged_into(merge) or self._new_step(name)
        with self._logging(number):
            result = change()
        if self._is_empty(number):
            self._db.execute("DELETE FROM undo_step WHERE number = ?", (number,))
        else:
            changed()
            self._forget_redo()
            self._merging = _Merging(merge, number, self._clock() + MERGE_SECONDS) if merge else None
        return result

    @contextmanager
    def paused(self) -> Iterator[None]:
        """Changes in here are not logged: what a draft brings with it is not taken apart again, only hidden."""
        with self._logging(_NOT_NOW):
            yield

    def end_merge(self, merge: str) -> None:
        """The next edit with this key is a step of its own."""
        if self._merging and self._merging.key == merge:
            self._merging = None

    def undo(self, number: int) -> Edit:
        """Take edit `number` back. Raises `NothingToUndo` unless it is the latest."""
        return self._replay(_TOP, number, undone=1)

    def redo(self, number: int) -> Edit:
        """Do edit `number` again. Raises `NothingToUndo` unless it is the one taken back last."""
        return self._replay(_NEXT, number, undone=0)

    def _replay(self, which: str, number: int, *, undone: int) -> Edit:
        found = _edit(self._db, which)
        if found is None or found.number != number:
            top = _edit(self._db, _TOP)
            raise NothingToUndo(top.name if top else None)
        self._merging = None
        log = "SELECT sql FROM undo_change WHERE step = ? ORDER BY id DESC"
        statements = self._db.execute(log, (number,)).fetchall()
        self._db.execute("DELETE FROM undo_change WHERE step = ?", (number,))
        self._db.execute("PRAGMA defer_foreign_keys = ON")
        with self._logging(number):
            for (statement,) in statements:
                self._db.execute(statement)
        self._db.execute("UPDATE undo_step SET undone = ? WHERE number = ?", (undone, number))
        return found

    def _new_step(self, name: str) -> int:
        made = self._db.execute("INSERT INTO undo_step (name) VALUES (?)", (name,))
        return int(made.lastrowid or 0)

    def _merged_into(self, merge: str) -> int | None:
        """The step that an edit with this key goes on with: the latest, if it has the same key and is fresh."""
        last = self._merging
        if not merge or last is None or last.key != merge or self._clock() > last.until:
            return None
        top = _edit(self._db, _TOP)
        fits = top is not None and top.number == last.number and _edit(self._db, _NEXT) is None
        return last.number if fits else None

    @contextmanager
    def _logging(self, step: int) -> Iterator[None]:
        before, self._step = self._step, step
        try:
            yield
        finally:
            self._step = before

    def _is_empty(self, number: int) -> bool:
        return self._db.execute("SELECT 1 FROM undo_change WHERE step = ? LIMIT 1", (number,)).fetchone() is None

    def _forget_redo(self) -> None:
        self._db.execute("DELETE FROM undo_change WHERE step IN (SELECT number FROM undo_step WHERE undone)")
        self._db.execute("DELETE FROM undo_step WHERE undone")


def edits(db: sqlite3.Connection) -> Edits:
    """What undo and redo would do now."""
    return Edits(undo=_edit(db, _TOP), redo=_edit(db, _NEXT))


def emptied(db: sqlite3.Connection) -> bool:
    """Forget every step; says whether there were any."""
    db.execute("DELETE FROM undo_change")
    return db.execute("DELETE FROM undo_step").rowcount > 0


def desk_tables(db: sqlite3.Connection) -> list[str]:
    """Every table of the writer's half."""
    rows = db.execute("SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name GLOB 'desk_*' ORDER BY name")
    return [name for (name,) in rows]


def _edit(db: sqlite3.Connection, which: str) -> Edit | None:
    row = db.execute(which).fetchone()
    return Edit(*row) if row else None


def _triggers(db: sqlite3.Connection, table: str) -> Iterator[str]:
    """Triggers that log what takes back an insert, an update and a delete.

    A row updated twice in one step needs only the first entry: run last, it sets every column to what it was. Where its
    key changes, an entry more is needed that finds it by the new one.
    """
    columns = [(name, key) for _, name, _, _, _, key in db.execute(f"PRAGMA table_info({table})")]
    names = [name for name, _ in columns]
    keys = [name for name, key in columns if key]
    old = {name: f"quote(OLD.{name})" for name in names}
    where_new = _joined(" AND ", [(f"{key} = ", f"quote(NEW.{key})") for key in keys])
    values = _joined(", ", [("", old[name]) for name in names])
    settings = _joined(", ", [(f"{name} = ", old[name]) for name in names])
    subject = f"'{table} ' || {_joined(' ', [('', old[key]) for key in keys])}"
    moved = " OR ".join(f"OLD.{key} IS NOT NEW.{key}" for key in keys)
    differs = " OR ".join(f"OLD.{name} IS NOT NEW.{name}" for name in names)
    known = f"SELECT 1 FROM undo_change WHERE step = journal_step() AND subject = {subject}"  # noqa: S608 — schema names
    delete = f"'DELETE FROM {table} WHERE ' || {where_new}"  # noqa: S608
    update = f"'UPDATE {table} SET ' || {settings} || ' WHERE ' || {where_new}"  # noqa: S608
    insert = f"'INSERT INTO {table} ({', '.join(names)}) VALUES (' || {values} || ')'"  # noqa: S608
    yield _trigger(table, "INSERT", "", "''", delete)
    yield _trigger(table, "UPDATE", f" AND ({differs}) AND ({moved} OR NOT EXISTS ({known}))", subject, update)
    yield _trigger(table, "DELETE", "", "''", insert)


def _trigger(table: str, act: str, only: str, subject: str, statement: str) -> str:
    name = f"journal_{table}_{act.lower()}"
    log = f"INSERT INTO undo_change (step, subject, sql) VALUES (journal_step(), {subject}, {statement})"  # noqa: S608
    return f"CREATE TEMP TRIGGER {name} AFTER {act} ON main.{table} WHEN journal_step() > 0{only} BEGIN {log}; END"


def _joined(between: str, pieces: Sequence[tuple[str, str]]) -> str:
    """An SQL expression that joins fixed text and values: `'a = ' || quote(OLD.a) || ' AND b = ' || …`."""
    return f" || '{between}' || ".join(f"'{text}' || {value}" for text, value in pieces)
