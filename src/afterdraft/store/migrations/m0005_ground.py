"""The fifth form: the real place and year that a book is set in."""

import sqlite3


def ground(db: sqlite3.Connection) -> None:
    """Make the table of the one place that a book may have."""
    db.execute(
        "CREATE TABLE desk_ground ("  # none, or one row
        "one TEXT PRIMARY KEY NOT NULL DEFAULT 'one' CHECK (one = 'one'), "
        "place TEXT NOT NULL, "
        "north REAL NOT NULL, "  # degrees
        "east REAL NOT NULL, "
        "year INTEGER"  # of what is told without one
        ") STRICT"
    )
