"""Which scene of a draft holds a paragraph, as its division stands now."""

import sqlite3
from bisect import bisect_right
from collections.abc import Callable

_UNITS = """
SELECT at, id FROM desk_scene WHERE draft = :draft
UNION ALL SELECT at, NULL FROM desk_part WHERE draft = :draft
UNION ALL SELECT at, NULL FROM desk_matter WHERE draft = :draft ORDER BY at
"""


def homes(db: sqlite3.Connection, draft: str) -> Callable[[int], str | None]:
    """A function from a paragraph's number to the id of its scene; None for what is in no scene."""
    units = db.execute(_UNITS, {"draft": draft}).fetchall()
    starts = [at for at, _ in units]

    def home(paragraph: int) -> str | None:
        index = bisect_right(starts, paragraph) - 1
        return units[index][1] if index >= 0 else None

    return home
