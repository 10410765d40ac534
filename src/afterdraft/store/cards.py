"""Cards and notes: rows of the writer's half, and whose save was the last."""

import sqlite3

from afterdraft.desk.card import CARD_FIELDS, Card, CardField
from afterdraft.desk.note import Note, NoteState
from afterdraft.errors import Missing
from afterdraft.store.names import new_id
from afterdraft.work.ports import LastSave

_FIELDS = ", ".join(f"c.{field}" for field in CARD_FIELDS)
_CARD = f"SELECT c.id, c.scene, {_FIELDS}, r.revision FROM desk_card c JOIN row_revision r ON r.id = c.id"  # noqa: S608 — own names
_NOTE = "SELECT n.id, n.text, n.scene, n.state, n.made, r.revision FROM desk_note n JOIN row_revision r ON r.id = n.id"


def cards(db: sqlite3.Connection, draft: str) -> dict[str, Card]:
    """Cards of a draft's scenes, by scene id."""
    rows = db.execute(f"{_CARD} JOIN desk_scene s ON s.id = c.scene WHERE s.draft = ? ORDER BY s.at", (draft,))
    return {card.scene: card for card in (Card(*row) for row in rows)}


def card(db: sqlite3.Connection, id: str) -> Card:
    """Raises `Missing`."""
    return _card(db.execute(f"{_CARD} WHERE c.id = ?", (id,)).fetchone())


def card_of(db: sqlite3.Connection, scene: str) -> Card:
    """Raises `Missing`."""
    return _card(db.execute(f"{_CARD} WHERE c.scene = ?", (scene,)).fetchone())


def set_field(db: sqlite3.Connection, id: str, field: CardField, text: str, *, client: str, sequence: int) -> int:
    """Write one field; returns the new revision. Raises `Missing`."""
    if field not in CARD_FIELDS:
        raise Missing("This part of the card")
    db.execute(f"UPDATE desk_card SET {field} = ? WHERE id = ?", (text, id))  # noqa: S608 — one of CARD_FIELDS
    db.execute(
        "UPDATE field_save SET client = ?, sequence = ? WHERE id = ? AND field = ?", (client, sequence, id, field)
    )
    return card(db, id).revision


def last_saves(db: sqlite3.Connection, id: str) -> dict[str, LastSave]:
    """Of each field that ever changed."""
    rows = db.execute("SELECT field, revision, client, sequence FROM field_save WHERE id = ?", (id,))
    return {field: LastSave(*row) for field, *row in rows}


def join(db: sqlite3.Connection, *, into: str, of: str) -> None:
    """Put the words of scene `of`'s card under those of scene `into`'s, field by field; its notes follow; it goes."""
    kept, gone = card_of(db, into), card_of(db, of)
    for field in CARD_FIELDS:
        both = [text for text in (getattr(kept, field), getattr(gone, field)) if text.strip()]
        if getattr(gone, field).strip():
            db.execute(f"UPDATE desk_card SET {field} = ? WHERE id = ?", ("\n".join(both), kept.id))  # noqa: S608
    db.execute("UPDATE desk_note SET scene = ? WHERE scene = ?", (into, of))
    db.execute("DELETE FROM desk_card WHERE id = ?", (gone.id,))


def loosen(db: sqlite3.Connection, scene: str, *, now: str) -> None:
    """A scene goes and no other takes it in: its notes become loose, and so do the card's words, as a note."""
    gone = card_of(db, scene)
    texts = [text for field in CARD_FIELDS if (text := getattr(gone, field).strip())]
    db.execute("UPDATE desk_note SET scene = NULL WHERE scene = ?", (scene,))
    if texts:
        add_note(db, text="\n".join(texts), scene=None, now=now)
    db.execute("DELETE FROM desk_card WHERE id = ?", (gone.id,))


def notes(db: sqlite3.Connection, *, scene: str | None, loose: bool) -> tuple[Note, ...]:
    """All notes, or one scene's, or the loose ones; in the order they were made."""
    if loose:
        rows = db.execute(f"{_NOTE} WHERE n.scene IS NULL ORDER BY n.key")
    elif scene is not None:
        rows = db.execute(f"{_NOTE} WHERE n.scene = ? ORDER BY n.key", (scene,))
    else:
        rows = db.execute(f"{_NOTE} ORDER BY n.key")
    return tuple(Note(*row) for row in rows)


def note(db: sqlite3.Connection, id: str) -> Note:
    """Raises `Missing`."""
    row = db.execute(f"{_NOTE} WHERE n.id = ?", (id,)).fetchone()
    if row is None:
        raise Missing("This note")
    return Note(*row)


def add_note(db: sqlite3.Connection, *, text: str, scene: str | None, now: str) -> Note:
    """Raises `Missing` where there is no such scene."""
    if scene is not None:
        card_of(db, scene)
    made = new_id("note")
    db.execute(
        "INSERT INTO desk_note (id, scene, text, state, made) VALUES (?, ?, ?, 'open', ?)", (made, scene, text, now)
    )
    return note(db, made)


def set_note(db: sqlite3.Connection, id: str, *, text: str | None, state: NoteState | None) -> Note:
    """Change what is given. Raises `Missing`."""
    was = note(db, id)
    db.execute(
        "UPDATE desk_note SET text = ?, state = ? WHERE id = ?",
        (was.text if text is None else text, was.state if state is None else state, id),
    )
    return note(db, id)


def _card(row: tuple[str, str, str, str, str, str, int] | None) -> Card:
    if row is None:
        raise Missing("This card")
    return Card(*row)
