"""Fields of the writer's own words: read and written one by one, with whose save was the last."""

import sqlite3
from collections.abc import Mapping

from afterdraft.desk.arrangement import NEXT_FIELDS
from afterdraft.desk.card import CARD_FIELDS
from afterdraft.desk.unit_card import UNIT_FIELDS
from afterdraft.errors import Missing
from afterdraft.work.ports import Fields, LastSave, Written

_KNOWN = ("name", "aliases", "former", "note", "mark")
TABLES: Mapping[Written, tuple[str, tuple[str, ...]]] = {
    "card": ("desk_card", CARD_FIELDS),
    "next": ("desk_laid", ("title", *NEXT_FIELDS)),
    "unit": ("desk_unit_card", UNIT_FIELDS),
    "arrangement": ("desk_arrangement", ("name", "why")),
    "row": ("desk_row", ("title",)),
    "ink": ("desk_ink", ("name",)),
    "guarded": ("desk_guarded", ("why",)),
    "line": ("desk_line", ("name", "note")),
    "strand": ("desk_strand", ("name",)),
    "follows": ("desk_follows", ("why",)),
    "person": ("desk_person", _KNOWN),
    "place": ("desk_place", _KNOWN),
    "carried": ("desk_carried", ("comes_in", "leaves")),
    "change": ("desk_change", ("wrong", "decide", "work")),
    "change place": ("desk_change_place", ("words",)),
}
_COLUMNS = {("next", "place"): "setting"}  # every other field has its column's name


def fields(db: sqlite3.Connection, kind: Written, id: str) -> Fields:
    """All fields of a row, and their last saves. Raises `Missing`."""
    table, names = TABLES[kind]
    columns = ", ".join(_column(kind, name) for name in names)
    row = db.execute(
        f"SELECT r.revision, {columns} FROM {table} t JOIN row_revision r ON r.id = t.id WHERE t.id = ?",  # noqa: S608 — own names
        (id,),
    ).fetchone()
    if row is None:
        raise Missing("What this belongs to")
    saves = {column: LastSave(*save) for column, *save in db.execute(_SAVES, (id,))}
    last = {name: saves[column] for name in names if (column := _column(kind, name)) in saves}
    other = tuple(save for column, save in saves.items() if column not in {_column(kind, name) for name in names})
    return Fields(dict(zip(names, row[1:], strict=True)), row[0], last, other)


def set_field(
    db: sqlite3.Connection, kind: Written, id: str, field: str, text: str, *, client: str, sequence: int
) -> int:
    """Write one field; returns the row's new revision. Raises `Missing`."""
    table, names = TABLES[kind]
    if field not in names:
        raise Missing("This field")
    column = _column(kind, field)
    db.execute(f"UPDATE {table} SET {column} = ? WHERE id = ?", (text, id))  # noqa: S608 — own names
    db.execute(
        "UPDATE field_save SET client = ?, sequence = ? WHERE id = ? AND field = ?", (client, sequence, id, column)
    )
    return fields(db, kind, id).revision


_SAVES = "SELECT field, revision, client, sequence FROM field_save WHERE id = ?"


def _column(kind: Written, field: str) -> str:
    return _COLUMNS.get((kind, field), field)
