"""The sixth form: names that a person or a place had before a renaming."""

import sqlite3

from afterdraft.store.migrations.making import counted, searched, statements

_WORDS = ("name", "aliases", "former", "note")
_COLUMNS = (*_WORDS, "mark")


def former(db: sqlite3.Connection) -> None:
    """Give both tables a column of earlier names, one a line, which search and saves know as they know the others."""
    scripts = [_anew(kind) for kind in ("person", "place")]
    for statement in statements("\n".join(scripts)):
        db.execute(statement)


def _anew(kind: str) -> str:
    table = f"desk_{kind}"
    triggers = ("found", "found_anew", "lost", "counted", "counted_again")
    return "\n".join(
        [
            f"ALTER TABLE {table} ADD COLUMN former TEXT NOT NULL DEFAULT '';",
            *(f"DROP TRIGGER {table}_{name};" for name in triggers),
            f"DROP TABLE search_{kind};",
            searched(kind, table, _WORDS),
            counted(table, _COLUMNS),
            f"INSERT INTO search_{kind} (search_{kind}) VALUES ('rebuild');",  # noqa: S608 — own names
        ]
    )
