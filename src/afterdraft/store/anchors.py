"""Passages that something is fastened to: a note, a guarded passage, a point of a thread."""

import sqlite3
from collections.abc import Iterable, Sequence
from dataclasses import astuple

from afterdraft.desk.anchor import Anchor

_PLACE = "draft, paragraph, start_at, end_at, quote, words_before, words_after"  # the fields of `Anchor`, in order
_OF = f"SELECT owner, {_PLACE} FROM desk_anchor a JOIN {{owners}} o ON o.id = a.owner"  # noqa: S608 — own names
_ORDER = "ORDER BY (SELECT ordinal FROM text_draft t WHERE t.id = a.draft), a.paragraph, a.start_at"
_FASTEN = f"INSERT INTO desk_anchor (owner, {_PLACE}) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"  # noqa: S608


def fasten(db: sqlite3.Connection, owner: str, anchors: Iterable[Anchor]) -> None:
    db.executemany(_FASTEN, [(owner, *astuple(anchor)) for anchor in anchors])


def unfasten(db: sqlite3.Connection, owner: str) -> None:
    db.execute("DELETE FROM desk_anchor WHERE owner = ?", (owner,))


def anchors_of(
    db: sqlite3.Connection, owners: str, where: str = "", given: Sequence[str] = ()
) -> dict[str, tuple[Anchor, ...]]:
    """Anchors of the rows of the table `owners` (`o`) for which `where` holds, by owner, in order of the text."""
    found: dict[str, tuple[Anchor, ...]] = {}
    for owner, *place in db.execute(f"{_OF.format(owners=owners)} {where} {_ORDER}", given):
        found[owner] = (*found.get(owner, ()), Anchor(*place))
    return found
