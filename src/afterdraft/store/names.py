"""Ids and codes: random, given once."""

import secrets
import sqlite3
from typing import Literal

Kind = Literal[
    "book",
    "draft",
    "part",
    "chapter",
    "scene",
    "matter",
    "card",
    "note",
    "ink",
    "guarded",
    "arrangement",
    "row",
    "laid",
    "unit card",
    "line",
    "point",
    "strand",
    "follows",
    "person",
    "place",
    "carried",
    "change",
    "change place",
    "said",
]
PREFIX: dict[Kind, str] = {
    "book": "bk",
    "draft": "dr",
    "part": "pt",
    "chapter": "ch",
    "scene": "sc",
    "matter": "fm",
    "card": "cd",
    "note": "nt",
    "ink": "ik",
    "guarded": "gd",
    "carried": "ca",
    "change": "cg",
    "change place": "cp",
    "place": "pl",
    "person": "pe",
    "follows": "fo",
    "strand": "st",
    "point": "pn",
    "line": "ln",
    "arrangement": "ar",
    "row": "rw",
    "laid": "ld",
    "unit card": "uc",
    "said": "sy",
}

_ALPHABET = "abcdefghijklmnopqrstuvwxyz234567"  # base 32 of RFC 4648, in small letters
_LENGTH = 10  # 50 bits: two of 100,000 scenes are alike once in 200,000 books
LETTERS = "ABCDEFGHJKMNPQRSTUVWXYZ"  # without I, L, O: written by hand they are taken for figures
DIGITS = "23456789"  # without 0 and 1, for the same reason
_SHORTEST = 2
_ROOM = 2  # codes grow by a figure when more than one in two of a length is used


def new_id(kind: Kind) -> str:
    """An opaque id, e.g. "sc7k2q9xw3ab"."""
    return PREFIX[kind] + "".join(secrets.choice(_ALPHABET) for _ in range(_LENGTH))


def new_code(db: sqlite3.Connection) -> str:
    """A code such as "F47" that this book never gave before, and never will again, not even after undo."""
    length = _length(db)
    while True:
        code = secrets.choice(LETTERS) + "".join(secrets.choice(DIGITS) for _ in range(length))
        if db.execute("INSERT INTO code_used (code) VALUES (?) ON CONFLICT DO NOTHING", (code,)).rowcount:
            return code


def _length(db: sqlite3.Connection) -> int:
    """Figures of the next code."""
    used = dict(db.execute("SELECT length(code) - 1, count(*) FROM code_used GROUP BY 1"))
    length = _SHORTEST
    while used.get(length, 0) * _ROOM > len(LETTERS) * len(DIGITS) ** length:
        length += 1
    return length
