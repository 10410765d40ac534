"""Search by FTS5: over the current draft's text, and over all that the writer has written about it."""

import re
import sqlite3
from bisect import bisect_right
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import chain, islice

from afterdraft.manuscript.division import Division, Scene
from afterdraft.manuscript.outline import leaves
from afterdraft.store import divisions, drafts
from afterdraft.work.ports import Hit

AROUND = 70  # characters shown on either side of a match; about a line in all
_TERM = re.compile(r'["“”]([^"“”]*)["“”]|(\S+)')  # words in double quotes belong together
_LEAD, _TRAIL = "\x02", "\x03"  # around each match, as `highlight` sets them; control characters are in no manuscript

_OF_SCENES = """
SELECT t.id, t.scene, {columns} FROM search_{kind} JOIN desk_{kind} t ON t.key = search_{kind}.rowid
JOIN desk_scene s ON s.id = t.scene WHERE search_{kind} MATCH :query AND s.draft = :draft ORDER BY s.at LIMIT :limit
"""
_NOTES = """
SELECT t.id, t.scene, {columns} FROM search_note JOIN desk_note t ON t.key = search_note.rowid
LEFT JOIN desk_scene s ON s.id = t.scene
WHERE search_note MATCH :query AND (s.draft = :draft OR t.scene IS NULL) ORDER BY t.key LIMIT :limit
"""
_OF_THE_BOOK = """
SELECT t.id, NULL, {columns} FROM search_{kind} JOIN desk_{kind} t ON t.key = search_{kind}.rowid
WHERE search_{kind} MATCH :query ORDER BY t.place, t.key LIMIT :limit
"""
_LAID = """
SELECT t.id, NULL, {columns} FROM search_{kind} JOIN desk_{kind} t ON t.key = search_{kind}.rowid
JOIN desk_arrangement a ON a.id = t.arrangement
WHERE search_{kind} MATCH :query AND a.draft = :draft AND NOT a.given_up ORDER BY a.place DESC, t.key LIMIT :limit
"""
_UNIT_CARDS = """
SELECT coalesce(t.unit, '-'), NULL, {columns} FROM search_{kind} JOIN desk_{kind} t ON t.key = search_{kind}.rowid
WHERE search_{kind} MATCH :query AND t.draft = :draft ORDER BY t.key LIMIT :limit
"""  # known by what they are cards of: the chapter's or the part's id; "-" for the book
# What is searched before the text, in this order: kind of hit, statement, columns of its index.
_WRITTEN: tuple[tuple[str, str, int], ...] = (
    ("card", _OF_SCENES, 4),
    ("laid", _LAID, 6),
    ("unit_card", _UNIT_CARDS, 4),
    ("carried", _OF_SCENES, 2),
    ("follows", _OF_SCENES, 1),
    ("note", _NOTES, 1),
    ("line", _OF_THE_BOOK, 2),
    ("strand", _OF_THE_BOOK, 1),
    ("person", _OF_THE_BOOK, 3),
    ("place", _OF_THE_BOOK, 3),
    ("change", _OF_THE_BOOK, 3),
)
# Rows of a draft were written in telling order and are never deleted: the index's own order is the order of the text.
_TEXT = """
SELECT p.n, {columns} FROM search_text JOIN text_paragraph p ON p.key = search_text.rowid
WHERE search_text MATCH :query AND p.draft = :draft ORDER BY search_text.rowid LIMIT :limit
"""
_STANDING = """
SELECT n, replace(text, :words, :marked) FROM text_paragraph
WHERE draft = :draft AND instr(text, :words) ORDER BY n LIMIT :limit
"""


@dataclass(frozen=True, slots=True)
class _Piece:
    before: str
    match: str
    after: str


def search(db: sqlite3.Connection, words: str, *, limit: int) -> tuple[Hit, ...]:
    """Cards first, then the rest that the writer wrote, then text in telling order; at most `limit`.

    All words must be there, in any order; the last may be unfinished. Case, accents and the kind of apostrophe do not
    count. What has no letter or digit at all (an ornament, say) is looked for as it stands.
    """
    draft = drafts.current(db) or ""
    asked = query(words)
    if not words.strip():
        return ()
    hits = _by_index(db, draft, asked, limit) if asked else _as_it_stands(db, draft, words.strip(), limit)
    return tuple(islice(hits, limit))


def query(words: str) -> str:
    """The words as an FTS5 query in which nothing has a meaning of its own; "" where there is no word in them."""
    terms = [quoted or single for quoted, single in _TERM.findall(words)]
    phrases = ['"' + term.replace('"', " ") + '"' for term in terms if any(map(str.isalnum, term))]
    return " ".join(phrases) + "*" if phrases else ""


def _by_index(db: sqlite3.Connection, draft: str, asked: str, limit: int) -> Iterator[Hit]:
    given = {"query": asked, "draft": draft, "limit": limit}

    def rows(kind: str, statement: str, columns: int) -> sqlite3.Cursor:
        marked = ", ".join(f"highlight(search_{kind}, {n}, '{_LEAD}', '{_TRAIL}')" for n in range(columns))
        return db.execute(statement.format(columns=marked, kind=kind), given)

    written = (
        _hit(kind, row, scene, None, texts)
        for kind, statement, columns in _WRITTEN
        for row, scene, *texts in rows(kind, statement, columns)
    )
    return chain(written, _text_hits(db, draft, lambda: rows("text", _TEXT, 1)))


def _as_it_stands(db: sqlite3.Connection, draft: str, words: str, limit: int) -> Iterator[Hit]:
    def rows() -> sqlite3.Cursor:
        given = {"words": words, "draft": draft, "marked": f"{_LEAD}{words}{_TRAIL}", "limit": limit}
        return db.execute(_STANDING, given)

    return _text_hits(db, draft, rows)


def _text_hits(db: sqlite3.Connection, draft: str, rows: Callable[[], sqlite3.Cursor]) -> Iterator[Hit]:
    found = rows().fetchall()
    home = _homes(divisions.read(db, draft)) if found else None
    return (_hit("text", "", home(n) if home else None, n, texts) for n, *texts in found)


def _homes(division: Division) -> Callable[[int], str | None]:
    """Which scene holds a paragraph; None for part headings, front and back matter."""
    placed = leaves(division)
    starts = [start for _, start, _ in placed]

    def home(paragraph: int) -> str | None:
        index = bisect_right(starts, paragraph) - 1
        unit = placed[index][0] if index >= 0 else None
        return unit.id if isinstance(unit, Scene) else None

    return home


def _hit(kind: str, id: str, scene: str | None, paragraph: int | None, texts: list[str]) -> Hit:
    piece = _piece(next((text for text in texts if _LEAD in text), texts[0]))
    return Hit(kind, id, scene, paragraph, piece.before, piece.match, piece.after)


def _piece(marked: str) -> _Piece:
    """The first match with the words around it, cut at words."""
    before, _, rest = marked.partition(_LEAD)
    match, _, after = rest.partition(_TRAIL)
    after = after.replace(_LEAD, "").replace(_TRAIL, "")
    return _Piece(_tail(before), match, _head(after))


def _tail(text: str) -> str:
    if len(text) <= AROUND:
        return text
    kept = text[-AROUND:]
    return "…" + (kept.partition(" ")[2] if " " in kept else kept)


def _head(text: str) -> str:
    if len(text) <= AROUND:
        return text
    kept = text[:AROUND]
    return (kept.rpartition(" ")[0] if " " in kept else kept) + "…"
