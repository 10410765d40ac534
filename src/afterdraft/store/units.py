"""Cards for chapters, parts and the book: rows of the writer's half."""

import sqlite3
from collections.abc import Callable, Sequence
from contextlib import AbstractContextManager

from afterdraft.desk.unit_card import UNIT_FIELDS, UnitCard, UnitCardKind
from afterdraft.errors import Missing
from afterdraft.manuscript.blocks import Block
from afterdraft.store import drafts

_FIELDS = ", ".join(UNIT_FIELDS)
_CARDS = f"""
SELECT c.id, c.kind, c.unit, {_FIELDS}, r.revision FROM desk_unit_card c JOIN row_revision r ON r.id = c.id
WHERE c.draft = ? ORDER BY c.key
"""  # noqa: S608 — own names, here and below
_ADD = f"INSERT INTO desk_unit_card (id, draft, kind, unit, {_FIELDS}) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"  # noqa: S608
_UNITS: dict[UnitCardKind, str] = {"chapter": "desk_chapter", "part": "desk_part"}


def unit_cards(db: sqlite3.Connection, draft: str) -> tuple[UnitCard, ...]:
    """In the order of their making."""
    return tuple(UnitCard(*row) for row in db.execute(_CARDS, (draft,)))


def add(db: sqlite3.Connection, draft: str, card: UnitCard) -> None:
    """Raises `Missing`."""
    table = _UNITS.get(card.kind)
    given = (card.unit, draft)
    if table and not db.execute(f"SELECT 1 FROM {table} WHERE id = ? AND draft = ?", given).fetchone():  # noqa: S608
        raise Missing(f"This {card.kind}")
    db.execute(_ADD, (card.id, draft, card.kind, card.unit, *(getattr(card, field) for field in UNIT_FIELDS)))


class BookUnits:
    """Fills `work.ports.units.BookUnits`."""

    _reading: Callable[[], AbstractContextManager[sqlite3.Connection]]

    def unit_cards(self, draft: str) -> tuple[UnitCard, ...]:
        with self._reading() as db:
            return unit_cards(db, draft)

    def blocks_at(self, draft: str, paragraphs: Sequence[int]) -> dict[int, Block]:
        with self._reading() as db:
            return drafts.blocks_at(db, draft, paragraphs)


class DeskUnits:
    """Fills `work.ports.units.DeskUnits`."""

    _db: sqlite3.Connection

    def unit_cards(self, draft: str) -> tuple[UnitCard, ...]:
        return unit_cards(self._db, draft)

    def add_unit_card(self, draft: str, card: UnitCard) -> None:
        add(self._db, draft, card)
