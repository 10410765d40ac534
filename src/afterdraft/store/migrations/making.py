"""What migrations share: full-text indexes kept right by triggers, counted rows, scripts run statement by statement."""

import sqlite3

_BUMP = "INSERT INTO row_revision (id) VALUES (NEW.id) ON CONFLICT (id) DO UPDATE SET revision = revision + 1;"


def statements(script: str) -> list[str]:
    """The statements of a script, one by one: `executescript` would commit first."""
    found, pending = [], ""
    for line in script.splitlines(keepends=True):
        pending += line
        if sqlite3.complete_statement(pending):
            found.append(pending)
            pending = ""
    return found


def searched(name: str, table: str, columns: tuple[str, ...]) -> str:
    # U+02BC is a letter to Unicode, but an apostrophe to whoever types it: it parts words like the other apostrophes.
    listed = ", ".join(columns)
    old, new = (", ".join(f"{row}.{column}" for column in columns) for row in ("OLD", "NEW"))
    forget = f"INSERT INTO search_{name} (search_{name}, rowid, {listed}) VALUES ('delete', OLD.key, {old});"  # noqa: S608 — own names
    learn = f"INSERT INTO search_{name} (rowid, {listed}) VALUES (NEW.key, {new});"  # noqa: S608
    return f"""
CREATE VIRTUAL TABLE search_{name} USING fts5 (
    {listed}, content = '{table}', content_rowid = 'key', tokenize = "unicode61 remove_diacritics 2 separators 'ʼ'"
);
CREATE TRIGGER {table}_found AFTER INSERT ON {table} BEGIN {learn} END;
CREATE TRIGGER {table}_found_anew AFTER UPDATE ON {table} BEGIN {forget} {learn} END;
CREATE TRIGGER {table}_lost AFTER DELETE ON {table} BEGIN {forget} END;
"""


def counted(table: str, columns: tuple[str, ...]) -> str:
    changed = " OR ".join(f"OLD.{column} IS NOT NEW.{column}" for column in columns)
    fields = "\n".join(_field_changed(column) for column in columns)
    return f"""
CREATE TRIGGER {table}_counted AFTER INSERT ON {table} BEGIN {_BUMP} END;
CREATE TRIGGER {table}_counted_again AFTER UPDATE ON {table} WHEN {changed} BEGIN {_BUMP} {fields} END;
"""


def _field_changed(column: str) -> str:
    return f"""
INSERT INTO field_save (id, field, revision)
SELECT id, '{column}', revision FROM row_revision WHERE id = NEW.id AND OLD.{column} IS NOT NEW.{column}
ON CONFLICT (id, field) DO UPDATE SET revision = excluded.revision, client = '', sequence = 0;"""  # noqa: S608 — own names
