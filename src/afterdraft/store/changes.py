"""Planned changes and their places: rows of the writer's half."""

import sqlite3
from collections.abc import Callable
from contextlib import AbstractContextManager
from dataclasses import replace

from afterdraft.desk.change import Change, ChangePlace, When
from afterdraft.errors import Missing
from afterdraft.store import drafts
from afterdraft.store.names import new_id
from afterdraft.store.rows import gone, require

WHAT = "This change"
_CHANGE = (
    "SELECT c.id, c.wrong, c.decide, c.due, c.work, c.note, c.place, r.revision FROM desk_change c "
    "JOIN row_revision r ON r.id = c.id"
)
# A place that was taken over into a later draft is seen there; one that never was is seen wherever it is.
_PLACES = """
SELECT p.change, p.id, p.scene, p.laid, p.words, p.done, r.revision FROM desk_change_place p
JOIN row_revision r ON r.id = p.id LEFT JOIN desk_scene s ON s.id = p.scene LEFT JOIN desk_laid l ON l.id = p.laid
LEFT JOIN desk_arrangement a ON a.id = l.arrangement
WHERE coalesce(s.draft, a.draft, :draft) = :draft ORDER BY p.change, p.n
"""
_HERE = "WHERE c.id IN (SELECT change FROM desk_change_place WHERE scene = ?)"
_ALSO_TICKED = """
WITH RECURSIVE same (id) AS (
    SELECT :place UNION SELECT f.id FROM desk_from f JOIN same ON f.source = same.id
    UNION SELECT f.source FROM desk_from f JOIN same ON f.id = same.id
)
UPDATE desk_change_place SET done = :done WHERE id IN (SELECT id FROM same) AND done <> :done
"""


def changes(db: sqlite3.Connection, *, scene: str | None = None, draft: str | None = None) -> tuple[Change, ...]:
    """In the writer's order; all, or those that have a place in a scene. With their places in a draft: the newest,
    unless another is named."""
    where, given = ("", ()) if scene is None else (_HERE, (scene,))
    rows = db.execute(f"{_CHANGE} {where} ORDER BY c.place, c.key", given)
    return _with_places(db, tuple(Change(*row) for row in rows), draft)


def change(db: sqlite3.Connection, id: str) -> Change:
    """Raises `Missing`."""
    row = db.execute(f"{_CHANGE} WHERE c.id = ?", (id,)).fetchone()
    if row is None:
        raise Missing(WHAT)
    return _with_places(db, (Change(*row),), None)[0]


def _with_places(db: sqlite3.Connection, known: tuple[Change, ...], draft: str | None) -> tuple[Change, ...]:
    if not known:
        return ()
    places: dict[str, list[ChangePlace]] = {}
    for owner, *place in db.execute(_PLACES, {"draft": draft or drafts.current(db)}):
        places.setdefault(owner, []).append(_place(*place))
    return tuple(replace(one, places=tuple(places.get(one.id, ()))) for one in known)


def _place(id: str, scene: str | None, laid: str | None, words: str, done: int, revision: int) -> ChangePlace:
    return ChangePlace(id, scene, laid, words, bool(done), revision)


class BookChanges:
    """Fills `work.ports.changes.ChangesBook`."""

    _reading: Callable[[], AbstractContextManager[sqlite3.Connection]]

    def changes(self, *, scene: str | None = None, draft: str | None = None) -> tuple[Change, ...]:
        with self._reading() as db:
            return changes(db, scene=scene, draft=draft)

    def change(self, id: str) -> Change:
        with self._reading() as db:
            return change(db, id)


class DeskChanges:
    """Fills `work.ports.changes.ChangesDesk`."""

    _db: sqlite3.Connection

    def changes(self) -> tuple[Change, ...]:
        return changes(self._db)

    def add_change(self, *, wrong: str, decide: str, when: When, place: str, note: str | None = None) -> str:
        require(self._db, "desk_note", note, "This note")
        made = new_id("change")
        self._db.execute(
            "INSERT INTO desk_change (id, place, wrong, decide, due, note) VALUES (?, ?, ?, ?, ?, ?)",
            (made, place, wrong, decide, when, note),
        )
        return made

    def remove_change(self, id: str) -> None:
        self._db.execute("DELETE FROM desk_change_place WHERE change = ?", (id,))
        gone(self._db.execute("DELETE FROM desk_change WHERE id = ?", (id,)), WHAT)

    def put_change(self, id: str, *, when: When, place: str) -> None:
        gone(self._db.execute("UPDATE desk_change SET due = ?, place = ? WHERE id = ?", (when, place, id)), WHAT)

    def add_change_place(self, change: str, *, scene: str | None, laid: str | None = None, words: str = "") -> str:
        require(self._db, "desk_change", change, WHAT)
        require(self._db, "desk_scene", scene, "This scene")
        require(self._db, "desk_laid", laid, "This card")
        made = new_id("change place")
        self._db.execute(
            "INSERT INTO desk_change_place (id, change, n, scene, laid, words) "
            "SELECT ?1, ?2, coalesce(max(n) + 1, 0), ?3, ?4, ?5 FROM desk_change_place WHERE change = ?2",
            (made, change, scene, laid, words),
        )
        return made

    def remove_change_place(self, id: str) -> None:
        gone(self._db.execute("DELETE FROM desk_change_place WHERE id = ?", (id,)), "This place")

    def tick(self, place: str, *, done: bool) -> None:
        """In the draft where it stands, and in those it came from and went on into: it is one place."""
        gone(self._db.execute("UPDATE desk_change_place SET done = ? WHERE id = ?", (done, place)), "This place")
        self._db.execute(_ALSO_TICKED, {"place": place, "done": done})
