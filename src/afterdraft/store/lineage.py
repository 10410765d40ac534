"""What refers to scenes across drafts follows them when the split is mended."""

import sqlite3


def merge(db: sqlite3.Connection, *, into: str, of: str) -> None:
    """Scene `of` goes into scene `into`: what she said of its going on holds for the whole."""
    both = {"into": into, "of": of}
    db.execute("DELETE FROM desk_became WHERE scene = :of", both)
    for column, other in (("old", "new"), ("new", "old")):
        db.execute(
            f"DELETE FROM desk_lives_on AS l WHERE {column} = :of AND EXISTS "  # noqa: S608 — own names, here and below
            f"(SELECT 1 FROM desk_lives_on m WHERE m.{column} = :into AND m.{other} = l.{other})",
            both,
        )
        db.execute(f"UPDATE desk_lives_on SET {column} = :into WHERE {column} = :of", both)  # noqa: S608
    db.execute("UPDATE desk_was_on SET scene = :into WHERE scene = :of", both)


def loosen(db: sqlite3.Connection, scene: str) -> None:
    """Scene `scene` goes and no other takes it in."""
    db.execute("DELETE FROM desk_became WHERE scene = ?", (scene,))
    db.execute("DELETE FROM desk_lives_on WHERE ? IN (old, new)", (scene,))
    db.execute("UPDATE desk_was_on SET scene = NULL WHERE scene = ?", (scene,))


def follow_chapter(db: sqlite3.Connection, gone: str, holder: str | None) -> None:
    db.execute("UPDATE desk_was_on SET chapter = ? WHERE chapter = ?", (holder, gone))
