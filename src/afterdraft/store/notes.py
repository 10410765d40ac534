"""Notes: rows of the writer's half, and the passages they are fastened to."""

import sqlite3
from bisect import bisect_right
from dataclasses import astuple
from typing import Any

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.note import Note, NoteState
from afterdraft.errors import Missing
from afterdraft.store.names import new_id

_PLACE = "draft, paragraph, start_at, end_at, quote, words_before, words_after"  # the fields of `Anchor`, in order
_NOTE = f"""
SELECT n.id, n.text, n.scene, n.state, n.made, r.revision, {_PLACE}
FROM desk_note n JOIN row_revision r ON r.id = n.id LEFT JOIN desk_anchor a ON a.owner = n.id"""  # noqa: S608 — own names
_FASTEN = f"INSERT INTO desk_anchor (owner, {_PLACE}) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"  # noqa: S608


def notes(db: sqlite3.Connection, *, scene: str | None, loose: bool) -> tuple[Note, ...]:
    """All notes, or one scene's, or the loose ones; in the order they were made."""
    if loose:
        rows = db.execute(f"{_NOTE} WHERE n.scene IS NULL ORDER BY n.key")
    elif scene is not None:
        rows = db.execute(f"{_NOTE} WHERE n.scene = ? ORDER BY n.key", (scene,))
    else:
        rows = db.execute(f"{_NOTE} ORDER BY n.key")
    return tuple(_note(*row) for row in rows)


def note(db: sqlite3.Connection, id: str) -> Note:
    """Raises `Missing`."""
    row = db.execute(f"{_NOTE} WHERE n.id = ?", (id,)).fetchone()
    if row is None:
        raise Missing("This note")
    return _note(*row)


def add_note(db: sqlite3.Connection, *, text: str, scene: str | None, now: str, anchor: Anchor | None = None) -> Note:
    """Raises `Missing` where there is no such scene."""
    if scene is not None and not db.execute("SELECT 1 FROM desk_scene WHERE id = ?", (scene,)).fetchone():
        raise Missing("This scene")
    made = new_id("note")
    db.execute(
        "INSERT INTO desk_note (id, scene, text, state, made) VALUES (?, ?, ?, 'open', ?)", (made, scene, text, now)
    )
    if anchor is not None:
        db.execute(_FASTEN, (made, *astuple(anchor)))
    return note(db, made)


def set_note(db: sqlite3.Connection, id: str, *, text: str | None, state: NoteState | None) -> Note:
    """Change what is given. Raises `Missing`."""
    was = note(db, id)
    db.execute(
        "UPDATE desk_note SET text = ?, state = ? WHERE id = ?",
        (was.text if text is None else text, was.state if state is None else state, id),
    )
    return note(db, id)


def follow_anchors(db: sqlite3.Connection, draft: str) -> None:
    """Notes on passages go to the scenes that hold their passages now; where none does, they stay where they are."""
    units = db.execute(
        "SELECT at, id FROM desk_scene WHERE draft = :draft "
        "UNION ALL SELECT at, NULL FROM desk_part WHERE draft = :draft "
        "UNION ALL SELECT at, NULL FROM desk_matter WHERE draft = :draft ORDER BY at",
        {"draft": draft},
    ).fetchall()
    fastened = db.execute(
        "SELECT n.id, n.scene, a.paragraph FROM desk_note n JOIN desk_anchor a ON a.owner = n.id "
        "WHERE a.draft = ? AND n.scene IS NOT NULL",
        (draft,),
    ).fetchall()
    for note_id, scene, paragraph in fastened:
        holder = units[bisect_right(units, paragraph, key=lambda one: one[0]) - 1][1]
        if holder not in (None, scene):
            db.execute("UPDATE desk_note SET scene = ? WHERE id = ?", (holder, note_id))


def _note(id: str, text: str, scene: str | None, state: NoteState, made: str, revision: int, *place: Any) -> Note:
    return Note(id, text, scene, state, made, revision, Anchor(*place) if place[0] is not None else None)
