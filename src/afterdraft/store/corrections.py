"""What the writer said of the split, kept by the words it was said of, so that it holds in the next draft too."""

import hashlib
import json
import sqlite3
from collections import defaultdict
from collections.abc import Mapping, Sequence
from typing import Any

from afterdraft.store import drafts
from afterdraft.store.forms import dumped


def record(db: sqlite3.Connection, draft: str, kind: str, paragraph: int, detail: Mapping[str, object]) -> None:
    """Keep a correction of the split at `paragraph`."""
    db.execute(
        "INSERT INTO desk_split (draft, kind, paragraph_hash, before_hash, after_hash, detail) "
        "VALUES (?, ?, ?, ?, ?, ?)",
        (draft, kind, *_around(db, draft, paragraph), dumped(detail)),
    )


def said(db: sqlite3.Connection, kind: str, draft: str, paragraphs: Sequence[int]) -> frozenset[int]:
    """Those of `paragraphs` that a correction of this kind was made of, in any draft with the same words there."""
    kept = set(
        db.execute("SELECT paragraph_hash, before_hash, after_hash FROM desk_split WHERE kind = ?", (kind,)).fetchall()
    )
    return frozenset(n for n in paragraphs if _around(db, draft, n) in kept) if kept else frozenset()


def met(db: sqlite3.Connection, draft: str) -> list[tuple[str, int, dict[str, Any]]]:
    """Corrections of other drafts whose words stand in this one: kind, paragraph here, detail; in the order they were
    made. The words of one neighbour are the same too; where several places fit, both, or it is none of them."""
    kept = db.execute(
        "SELECT kind, paragraph_hash, before_hash, after_hash, detail FROM desk_split WHERE draft <> ? ORDER BY key",
        (draft,),
    ).fetchall()
    if not kept:
        return []
    hashes = ["", *(_hash(block.text) for block in drafts.blocks(db, draft, 0, None)), ""]
    places: defaultdict[str, list[int]] = defaultdict(list)
    for place in range(1, len(hashes) - 1):
        places[hashes[place]].append(place)
    found = ((kind, _place(hashes, places[here], before, after), detail) for kind, here, before, after, detail in kept)
    return [(kind, place - 1, json.loads(detail)) for kind, place, detail in found if place]


def _place(hashes: Sequence[str], places: Sequence[int], before: str, after: str) -> int | None:
    both = [place for place in places if (hashes[place - 1], hashes[place + 1]) == (before, after)]
    one = [place for place in places if hashes[place - 1] == before or hashes[place + 1] == after]
    fit = both or one
    return fit[0] if len(fit) == 1 else None


def _around(db: sqlite3.Connection, draft: str, paragraph: int) -> tuple[str, str, str]:
    """Hashes of the paragraph, the one before and the one after."""
    here, before, after = (_hash(drafts.text(db, draft, n)) for n in (paragraph, paragraph - 1, paragraph + 1))
    return here, before, after


def _hash(text: str) -> str:
    """SHA-256 of a paragraph's text, white space evened out so that another file format gives the same; "" for none."""
    line = " ".join(text.split())
    return hashlib.sha256(line.encode()).hexdigest() if line else ""
