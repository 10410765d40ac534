"""Whether rows are there: an edit of what is gone meanwhile is refused in words."""

import sqlite3

from afterdraft.errors import Missing


def require(db: sqlite3.Connection, table: str, id: str | None, what: str) -> None:
    """Raises `Missing` unless `table` has a row `id`; None is always well."""
    if id is not None and not db.execute(f"SELECT 1 FROM {table} WHERE id = ?", (id,)).fetchone():  # noqa: S608 — own names
        raise Missing(what)


def gone(change: sqlite3.Cursor, what: str) -> None:
    """Raises `Missing` where a change touched no row."""
    if not change.rowcount:
        raise Missing(what)
