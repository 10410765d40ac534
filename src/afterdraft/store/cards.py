"""Cards: rows of the writer's half."""

import sqlite3

from afterdraft.desk.card import CARD_FIELDS, Card
from afterdraft.errors import Missing
from afterdraft.store import notes

_FIELDS = ", ".join(f"c.{field}" for field in CARD_FIELDS)
_CARD = f"SELECT c.id, c.scene, {_FIELDS}, r.revision FROM desk_card c JOIN row_revision r ON r.id = c.id"  # noqa: S608 — own names


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
        notes.add_note(db, text="\n".join(texts), scene=None, now=now)
    db.execute("DELETE FROM desk_card WHERE id = ?", (gone.id,))


def _card(row: tuple[str, str, str, str, str, str, int] | None) -> Card:
    if row is None:
        raise Missing("This card")
    return Card(*row)
