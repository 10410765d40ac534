"""Whether a book file is sound: what the engine says, and what only we know."""

import hashlib
import sqlite3
from collections.abc import Iterator

from afterdraft.manuscript.validity import problems as division_problems
from afterdraft.store import divisions, drafts

_INDEXES = "SELECT name FROM sqlite_schema WHERE type = 'table' AND sql LIKE 'CREATE VIRTUAL TABLE search%'"
_DRAFTS = (
    "SELECT t.id, t.ordinal, d.gave_way IS NOT NULL FROM text_draft t JOIN desk_draft d ON d.id = t.id "
    "ORDER BY t.ordinal"
)


def problems(db: sqlite3.Connection) -> tuple[str, ...]:
    """What is wrong, one sentence each; nothing when all is well. `db` may only read."""
    return tuple(_problems(db))


def _problems(db: sqlite3.Connection) -> Iterator[str]:
    broken = [row[0] for row in db.execute("PRAGMA integrity_check(10)")]
    if broken != ["ok"]:
        yield from (f"The file does not fit together: {said}." for said in broken)
        return
    for table, _, other, _ in db.execute("PRAGMA foreign_key_check"):
        yield f"Something in {table} refers to something in {other} that is not there."
    yield from (f"Draft {number} is not as it was brought in." for number in drafts.changed(db))
    for draft, number, gave_way in db.execute(_DRAFTS).fetchall():
        yield from _originals(db, draft, number)
        if not gave_way:  # its scenes are those of the draft that took its place
            yield from _division(db, draft, number)
    yield from _indexes(db)


def _originals(db: sqlite3.Connection, id: str, number: int) -> Iterator[str]:
    kept = [row[0] for row in db.execute("SELECT sha256 FROM text_file WHERE draft = ? ORDER BY n", (id,))]
    for (name, content), digest in zip(drafts.files(db, id), kept, strict=True):
        if hashlib.sha256(content).hexdigest() != digest:
            yield f"The original file “{name}” of draft {number} is not as it was brought in."


def _division(db: sqlite3.Connection, id: str, number: int) -> Iterator[str]:
    division = divisions.read(db, id)
    yield from (f"Draft {number}: {said}" for said in division_problems(division, drafts.paragraph_count(db, id)))
    for (code,) in db.execute(
        "SELECT code FROM desk_scene s WHERE draft = ? AND NOT EXISTS (SELECT 1 FROM desk_card c WHERE c.scene = s.id)",
        (id,),
    ):
        yield f"Draft {number}: scene {code} has no card."


def _indexes(db: sqlite3.Connection) -> Iterator[str]:
    """Each search index against the rows it was made from, in a copy: the check is a command that needs to write."""
    copy = sqlite3.connect(":memory:", isolation_level=None)
    try:
        db.backup(copy)
        for (name,) in copy.execute(_INDEXES).fetchall():
            try:
                copy.execute(f"INSERT INTO {name} ({name}, rank) VALUES ('integrity-check', 1)")  # noqa: S608
            except sqlite3.DatabaseError:
                yield f"The search index of {name.removeprefix('search_')} does not fit what it was made from."
    finally:
        copy.close()
