"""A draft's division in the book: read whole, written as the difference."""

import json
import sqlite3
from collections.abc import Mapping, Sequence
from dataclasses import replace
from itertools import count
from typing import Any

from afterdraft.errors import Missing
from afterdraft.manuscript.division import Chapter, ChapterKind, Division, Matter, Part, Scene
from afterdraft.store.drafts import paragraph_count
from afterdraft.store.forms import dumped
from afterdraft.store.names import new_code, new_id

Row = tuple[object, ...]

COLUMNS: dict[str, tuple[str, ...]] = {
    "desk_part": ("at", "title"),
    "desk_chapter": ("at", "part", "kind", "number", "title", "head"),
    "desk_scene": ("at", "code", "began", "sure", "title"),
    "desk_matter": ("at", "place", "kind"),
}


def read(db: sqlite3.Connection, draft: str) -> Division:
    """The division as it stands. Raises `Missing` where there is no such draft."""
    roles = ["story"] * paragraph_count(db, draft)
    for paragraph, role in db.execute("SELECT paragraph, role FROM desk_role WHERE draft = ?", (draft,)):
        roles[paragraph] = role
    return Division(
        parts=tuple(Part(*row) for row in _rows(db, "desk_part", draft)),
        chapters=tuple(_chapter(*row) for row in _rows(db, "desk_chapter", draft)),
        scenes=tuple(Scene(*row) for row in _rows(db, "desk_scene", draft)),
        matter=tuple(Matter(*row) for row in _rows(db, "desk_matter", draft)),
        roles=tuple(roles),  # type: ignore[arg-type]  # written by `write` from the same literals
    )


def draft_of(db: sqlite3.Connection, scene: str) -> str:
    """Id of the draft that a scene belongs to. Raises `Missing`."""
    row = db.execute("SELECT draft FROM desk_scene WHERE id = ?", (scene,)).fetchone()
    if row is None:
        raise Missing("This scene")
    return str(row[0])


def write(db: sqlite3.Connection, draft: str, division: Division) -> Division:
    """Write what differs; returns what it was. A new scene gets a card, and a code unless it brings one.

    A scene that goes must have no card any more: the database refuses at the commit.
    """
    old = read(db, draft)
    known = {scene.id for scene in old.scenes}
    division = replace(division, scenes=tuple(_coded(db, scene) for scene in division.scenes))
    before, after = _tables(old), _tables(division)
    for table in COLUMNS:
        _write_rows(db, table, draft, before[table], after[table])
    _write_roles(db, draft, old.roles, division.roles)
    for scene in division.scenes:
        if scene.id not in known:
            _add_card(db, scene.id)
    return old


def _add_card(db: sqlite3.Connection, scene: str) -> None:
    """Under a key that no card ever had: a card that went may come back by undo."""
    db.execute("UPDATE book SET last_card = last_card + 1")
    db.execute("INSERT INTO desk_card (key, id, scene) SELECT last_card, ?, ? FROM book", (new_id("card"), scene))


def with_new_ids(division: Division) -> Division:
    """The same division under ids of this book; codes are left to `write`."""
    parts = {part.id: new_id("part") for part in division.parts}
    return replace(
        division,
        parts=tuple(replace(part, id=parts[part.id]) for part in division.parts),
        chapters=tuple(
            replace(one, id=new_id("chapter"), part=None if one.part is None else parts[one.part])
            for one in division.chapters
        ),
        scenes=tuple(replace(scene, id=new_id("scene"), code="") for scene in division.scenes),
        matter=tuple(replace(matter, id=new_id("matter")) for matter in division.matter),
    )


def _coded(db: sqlite3.Connection, scene: Scene) -> Scene:
    return scene if scene.code else replace(scene, code=new_code(db))


def _rows(db: sqlite3.Connection, table: str, draft: str) -> list[Any]:
    listed = ", ".join(COLUMNS[table])
    return db.execute(f"SELECT id, {listed} FROM {table} WHERE draft = ? ORDER BY at", (draft,)).fetchall()  # noqa: S608 — own table and column names


def _chapter(
    id: str, at: int, part: str | None, kind: ChapterKind, number: int | None, title: str, head: str
) -> Chapter:
    return Chapter(id, at, part, kind, number, title, tuple(json.loads(head)))


def _tables(division: Division) -> dict[str, dict[str, Row]]:
    """Each unit's columns by its id, as `COLUMNS` lists them."""
    return {
        "desk_part": {one.id: (one.at, one.title) for one in division.parts},
        "desk_chapter": {
            one.id: (one.at, one.part, one.kind, one.number, one.title, dumped(one.head)) for one in division.chapters
        },
        "desk_scene": {one.id: (one.at, one.code, one.began, one.sure, one.title) for one in division.scenes},
        "desk_matter": {one.id: (one.at, one.where, one.kind) for one in division.matter},
    }


def _write_rows(db: sqlite3.Connection, table: str, draft: str, old: Mapping[str, Row], new: Mapping[str, Row]) -> None:
    names = COLUMNS[table]
    gone = [(unit,) for unit in old if unit not in new]
    added = [(unit, draft, *row) for unit, row in new.items() if unit not in old]
    other = [(*row, unit) for unit, row in new.items() if unit in old and old[unit] != row]
    assigned = ", ".join(f"{name} = ?" for name in names)
    marks = ", ".join("?" for _ in names)
    db.executemany(f"DELETE FROM {table} WHERE id = ?", gone)  # noqa: S608 — own table and column names, here and below
    db.executemany(f"INSERT INTO {table} (id, draft, {', '.join(names)}) VALUES (?, ?, {marks})", added)  # noqa: S608
    db.executemany(f"UPDATE {table} SET {assigned} WHERE id = ?", other)  # noqa: S608


def _write_roles(db: sqlite3.Connection, draft: str, old: Sequence[str], new: Sequence[str]) -> None:
    for paragraph, was, now in zip(count(), old, new, strict=False):
        if was == now:
            continue
        if now == "story":
            db.execute("DELETE FROM desk_role WHERE draft = ? AND paragraph = ?", (draft, paragraph))
        else:
            db.execute(
                "INSERT INTO desk_role VALUES (?, ?, ?) "
                "ON CONFLICT (draft, paragraph) DO UPDATE SET role = excluded.role",
                (draft, paragraph, now),
            )
