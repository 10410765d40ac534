"""Arrangements in the book: read whole, written as the difference."""

import sqlite3
from collections.abc import Callable, Mapping, Sequence
from contextlib import AbstractContextManager, suppress
from typing import Protocol, TypeVar

from afterdraft.desk.arrangement import NEXT_FIELDS, Arrangement, Laid, Next, Row
from afterdraft.desk.arranging import everything
from afterdraft.errors import BookOpenElsewhere, CannotWrite
from afterdraft.store import following
from afterdraft.store.journal import Journal

T = TypeVar("T")
Columns = tuple[object, ...]
_NEXT = tuple("setting" if name == "place" else name for name in NEXT_FIELDS)
_HEAD = ("draft", "place", "name", "why", "given_up")
_ROW = ("arrangement", "place", "title", "chapter", "part")
_LAID = ("arrangement", "home", "place", "code", "intent", "title", *_NEXT)

_HEADS = """
SELECT a.id, a.name, a.why, a.given_up, a.place, r.revision
FROM desk_arrangement a JOIN row_revision r ON r.id = a.id WHERE a.draft = ? ORDER BY a.place, a.id
"""
_ROWS = "SELECT id, place, title, chapter, part FROM desk_row WHERE arrangement = ? ORDER BY place, id"
_CARDS = f"""
SELECT l.id, l.code, l.home, l.place, l.intent, l.title, r.revision, {", ".join(_NEXT)}
FROM desk_laid l JOIN row_revision r ON r.id = l.id WHERE l.arrangement = ? ORDER BY l.place, l.id
"""  # noqa: S608 — own names, here and below
_SCENES = """
SELECT s.laid, s.scene FROM desk_laid_scene s JOIN desk_laid l ON l.id = s.laid WHERE l.arrangement = ? ORDER BY s.n
"""


def arrangements(db: sqlite3.Connection, draft: str) -> tuple[Arrangement, ...]:
    """Those made for a draft, in order."""
    return tuple(_read(db, draft, *head) for head in db.execute(_HEADS, (draft,)).fetchall())


def write(db: sqlite3.Connection, arrangement: Arrangement) -> None:
    """Write what differs; an arrangement whose id is new is made."""
    known = arrangements(db, arrangement.draft)
    old = next((one for one in known if one.id == arrangement.id), None)
    given = () if old is None else (old,)
    _write(db, "desk_arrangement", _HEAD, _heads(given), _heads([arrangement]))
    _write(db, "desk_row", _ROW, _rows(given), _rows([arrangement]))
    before, after = _scenes(given), _scenes([arrangement])
    moved = [card for card in {*before, *after} if before.get(card) != after.get(card)]
    db.executemany("DELETE FROM desk_laid_scene WHERE laid = ?", [(card,) for card in moved])
    _write(db, "desk_laid", _LAID, _cards(given), _cards([arrangement]))
    db.executemany(
        "INSERT INTO desk_laid_scene (laid, n, scene) VALUES (?, ?, ?)",
        [(card, n, scene) for card in moved for n, scene in enumerate(after.get(card, ()))],
    )


class Open(Protocol):
    _db: sqlite3.Connection


class DeskArrangements:
    """Fills `work.ports.arranging.ArrangingDesk`."""

    def arrangements(self: Open, draft: str) -> tuple[Arrangement, ...]:
        return arrangements(self._db, draft)

    def set_arrangement(self: Open, arrangement: Arrangement) -> None:
        write(self._db, arrangement)

    def follow_laid(self: Open, *, into: str, of: str) -> None:
        following.follow_laid(self._db, into=into, of=of)


class File(Protocol):
    def _reading(self) -> AbstractContextManager[sqlite3.Connection]: ...
    def _write(self, work: Callable[[sqlite3.Connection, Journal], T], *, transaction: bool = True) -> T: ...
    def last_arrangement(self) -> str: ...


class BookArrangements:
    """Fills `work.ports.arranging.ArrangingBook`."""

    def arrangements(self: File, draft: str) -> tuple[Arrangement, ...]:
        with self._reading() as db:
            return arrangements(db, draft)

    def last_arrangement(self: File) -> str:
        with self._reading() as db:
            return str(db.execute("SELECT arrangement FROM book").fetchone()[0])

    def set_last_arrangement(self: File, arrangement: str) -> None:
        def work(db: sqlite3.Connection, _: Journal) -> None:
            db.execute("UPDATE book SET arrangement = ?", (arrangement,))

        if arrangement != self.last_arrangement():
            with suppress(CannotWrite, BookOpenElsewhere):  # not worth an error where she only reads
                self._write(work)


def _read(
    db: sqlite3.Connection, draft: str, id: str, name: str, why: str, given_up: int, place: str, revision: int
) -> Arrangement:
    scenes: dict[str, list[str]] = {}
    for laid, scene in db.execute(_SCENES, (id,)):
        scenes.setdefault(laid, []).append(scene)
    lines: dict[str | None, list[Laid]] = {}
    for card, code, home, key, intent, title, changed, *texts in db.execute(_CARDS, (id,)):
        own = tuple(scenes.get(card, ()))
        lines.setdefault(home, []).append(Laid(card, code, own, home, key, intent, title, Next(*texts), changed))
    rows = tuple(
        Row(row, key, called, chapter, part, tuple(lines.get(row, ())))
        for row, key, called, chapter, part in db.execute(_ROWS, (id,))
    )
    return Arrangement(id, draft, name, why, bool(given_up), place, revision, rows, tuple(lines.get(None, ())))


def _heads(given: Sequence[Arrangement]) -> dict[str, Columns]:
    return {one.id: (one.draft, one.place, one.name, one.why, int(one.given_up)) for one in given}


def _rows(given: Sequence[Arrangement]) -> dict[str, Columns]:
    return {row.id: (one.id, row.place, row.title, row.chapter, row.part) for one in given for row in one.rows}


def _cards(given: Sequence[Arrangement]) -> dict[str, Columns]:
    return {card.id: (one.id, *_card(card)) for one in given for card in everything(one)}


def _card(card: Laid) -> Columns:
    texts = [getattr(card.next, name) for name in NEXT_FIELDS]
    return (card.row, card.place, card.code, card.intent, card.title, *texts)


def _scenes(given: Sequence[Arrangement]) -> dict[str, tuple[str, ...]]:
    return {card.id: card.scenes for one in given for card in everything(one) if card.scenes}


def _write(
    db: sqlite3.Connection, table: str, names: Sequence[str], old: Mapping[str, Columns], new: Mapping[str, Columns]
) -> None:
    gone = [(one,) for one in old if one not in new]
    added = [(one, *row) for one, row in new.items() if one not in old]
    other = [(*row, one) for one, row in new.items() if one in old and old[one] != row]
    assigned = ", ".join(f"{name} = ?" for name in names)
    marks = ", ".join("?" for _ in names)
    db.executemany(f"DELETE FROM {table} WHERE id = ?", gone)  # noqa: S608
    db.executemany(f"INSERT INTO {table} (id, {', '.join(names)}) VALUES (?, {marks})", added)  # noqa: S608
    db.executemany(f"UPDATE {table} SET {assigned} WHERE id = ?", other)  # noqa: S608
