"""Drafts in the book: written once, read often, checked at every opening."""

import hashlib
import json
import sqlite3
import zlib
from collections.abc import Iterable, Sequence
from typing import Any

import afterdraft
from afterdraft.errors import Missing
from afterdraft.manuscript.blocks import Aside, Block, Blocks
from afterdraft.manuscript.division import Doubt
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.words import count
from afterdraft.store.forms import aside_form, aside_of, block_form, block_of, dumped
from afterdraft.work.ports import DraftFacts

FIRST_WORDS = 120  # characters of a paragraph that stand for it in lists

_FACTS = """
SELECT d.id, row_number() OVER (ORDER BY state.place), d.title, d.author, d.language,
    (SELECT json_group_array(name) FROM (SELECT name FROM text_file f WHERE f.draft = d.id ORDER BY n)),
    (SELECT coalesce(sum(words), 0) FROM text_paragraph p WHERE p.draft = d.id)
        - (SELECT coalesce(sum(words), 0) FROM desk_role r
           JOIN text_paragraph p ON p.draft = r.draft AND p.n = r.paragraph WHERE r.draft = d.id),
    (SELECT count(*) FROM desk_scene s WHERE s.draft = d.id),
    (SELECT count(*) FROM desk_scene s JOIN desk_card c ON c.scene = s.id WHERE s.draft = d.id AND c.summary <> ''),
    d.brought_in, state.part_way
FROM text_draft d JOIN desk_draft state ON state.id = d.id
WHERE NOT state.hidden AND state.gave_way IS NULL ORDER BY state.place
"""


def put(
    db: sqlite3.Connection, id: str, draft: Draft, originals: Sequence[tuple[str, bytes]], *, brought_in: str
) -> None:
    """Write everything about a draft that never changes. `originals`: each file's name and bytes."""
    rows = [(id, n, count(block.text), block_form(block), block.text) for n, block in enumerate(draft.source.blocks)]
    db.execute(
        "INSERT INTO text_draft VALUES (?, (SELECT coalesce(max(ordinal), 0) + 1 FROM text_draft), "
        "?, ?, ?, ?, ?, ?, ?, ?)",
        (
            id,
            brought_in,
            afterdraft.__version__,
            len(rows),
            digest((text, form) for *_, form, text in rows),
            draft.title,
            draft.author,
            draft.language,
            _source_form(draft.source),
        ),
    )
    db.executemany("INSERT INTO text_paragraph (draft, n, words, form, text) VALUES (?, ?, ?, ?, ?)", rows)
    db.executemany(
        "INSERT INTO text_file VALUES (?, ?, ?, ?, ?, ?, ?)",
        ((id, n, *_file_row(name, content)) for n, (name, content) in enumerate(originals)),
    )
    db.executemany(
        "INSERT INTO text_aside VALUES (?, ?, ?, ?)",
        ((id, n, aside.block, aside_form(aside)) for n, aside in enumerate(draft.source.asides)),
    )
    db.executemany(
        "INSERT INTO text_doubt VALUES (?, ?, ?, ?, ?, ?)",
        ((id, n, one.paragraph, one.what, one.chosen, one.other) for n, one in enumerate(draft.doubts)),
    )


def digest(paragraphs: Iterable[tuple[str, str]]) -> str:
    """SHA-256 over the text and form of each paragraph, lengths in front so that nothing can slip across."""
    sum_ = hashlib.sha256()
    for text, form in paragraphs:
        pieces = text.encode(), form.encode()
        sum_.update(b"%d %d " % (len(pieces[0]), len(pieces[1])))
        sum_.update(pieces[0])
        sum_.update(pieces[1])
    return sum_.hexdigest()


def changed(db: sqlite3.Connection) -> tuple[int, ...]:
    """Numbers of the drafts (hidden ones counted) whose paragraphs are not those brought in; none, if all is well."""
    drafts = db.execute("SELECT ordinal, id, digest FROM text_draft ORDER BY ordinal").fetchall()
    return tuple(number for number, draft, kept in drafts if digest(_paragraphs(db, draft)) != kept)


def files(db: sqlite3.Connection, id: str) -> tuple[tuple[str, bytes], ...]:
    """The draft's original files, name and bytes."""
    rows = db.execute("SELECT name, packed, bytes FROM text_file WHERE draft = ? ORDER BY n", (id,))
    return tuple((name, zlib.decompress(content) if packed else content) for name, packed, content in rows)


def facts(db: sqlite3.Connection) -> tuple[DraftFacts, ...]:
    """Of every draft not taken back, in order."""
    return tuple(_facts(*row) for row in db.execute(_FACTS))


def current(db: sqlite3.Connection) -> str | None:
    """Id of the newest draft not taken back."""
    row = db.execute(
        "SELECT id FROM desk_draft WHERE NOT hidden AND gave_way IS NULL ORDER BY place DESC LIMIT 1"
    ).fetchone()
    return row[0] if row else None


def paragraph_count(db: sqlite3.Connection, id: str) -> int:
    """Raises `Missing` where there is no such draft."""
    row = db.execute("SELECT paragraphs FROM text_draft WHERE id = ?", (id,)).fetchone()
    if row is None:
        raise Missing("This draft")
    return int(row[0])


def blocks(db: sqlite3.Connection, id: str, start: int, end: int | None) -> tuple[Block, ...]:
    end = paragraph_count(db, id) if end is None else end
    rows = db.execute(
        "SELECT text, form FROM text_paragraph WHERE draft = ? AND n >= ? AND n < ? ORDER BY n", (id, start, end)
    )
    return tuple(block_of(text, form) for text, form in rows)


def blocks_at(db: sqlite3.Connection, id: str, paragraphs: Sequence[int]) -> dict[int, Block]:
    """These paragraphs, and no others, by number."""
    rows = db.execute(
        "SELECT n, text, form FROM text_paragraph WHERE draft = ? AND n IN (SELECT value FROM json_each(?))",
        (id, dumped(list(paragraphs))),
    )
    return {n: block_of(text, form) for n, text, form in rows}


def text(db: sqlite3.Connection, id: str, paragraph: int) -> str:
    """One paragraph's text; "" outside the draft."""
    row = db.execute("SELECT text FROM text_paragraph WHERE draft = ? AND n = ?", (id, paragraph)).fetchone()
    return row[0] if row else ""


def texts(db: sqlite3.Connection, id: str) -> tuple[str, ...]:
    """Every paragraph's text."""
    rows = db.execute("SELECT text FROM text_paragraph WHERE draft = ? ORDER BY n", (id,))
    return tuple(text for (text,) in rows)


def first_words(db: sqlite3.Connection, id: str, paragraphs: Sequence[int]) -> dict[int, str]:
    """The first characters of each paragraph, on one line, cut at a word."""
    rows = db.execute(
        "SELECT n, substr(text, 1, ?) FROM text_paragraph WHERE draft = ? AND n IN (SELECT value FROM json_each(?))",
        (FIRST_WORDS + 1, id, dumped(list(paragraphs))),
    )
    return {n: _cut(start) for n, start in rows}


def words(db: sqlite3.Connection, id: str) -> tuple[int, ...]:
    rows = db.execute("SELECT words FROM text_paragraph WHERE draft = ? ORDER BY n", (id,))
    return tuple(number for (number,) in rows)


def source(db: sqlite3.Connection, id: str) -> Blocks:
    """The files as they were read."""
    return Blocks(
        **{**_said(db, id), "notices": unread(db, id)},
        blocks=blocks(db, id, 0, None),
        asides=asides(db, id, 0, paragraph_count(db, id)),
    )


def unread(db: sqlite3.Connection, id: str) -> tuple[str, ...]:
    """What was met in the files and not read, one sentence each."""
    return tuple(_said(db, id)["notices"])


def asides(db: sqlite3.Connection, id: str, start: int, end: int) -> tuple[Aside, ...]:
    """Those that belong to paragraphs `start` to `end`, exclusive."""
    rows = db.execute(
        "SELECT form FROM text_aside WHERE draft = ? AND paragraph >= ? AND paragraph < ? ORDER BY n", (id, start, end)
    )
    return tuple(aside_of(form) for (form,) in rows)


def doubts(db: sqlite3.Connection, id: str) -> tuple[Doubt, ...]:
    """Those not yet settled, in order of the text."""
    rows = db.execute(
        "SELECT what, paragraph, chosen, other FROM text_doubt d WHERE draft = ? AND NOT EXISTS "
        "(SELECT 1 FROM desk_settled s WHERE s.draft = d.draft AND s.paragraph = d.paragraph) ORDER BY paragraph, n",
        (id,),
    )
    return tuple(Doubt(*row) for row in rows)


def _facts(id: str, number: int, title: str, author: str, language: str, names: str, *counted: Any) -> DraftFacts:
    words, scenes, written, brought_in, part_way = counted
    files = tuple(json.loads(names))
    return DraftFacts(id, number, title, author, language, files, words, scenes, written, brought_in, bool(part_way))


def _paragraphs(db: sqlite3.Connection, id: str) -> Iterable[tuple[str, str]]:
    return db.execute("SELECT text, form FROM text_paragraph WHERE draft = ? ORDER BY n", (id,))


def _said(db: sqlite3.Connection, id: str) -> dict[str, Any]:
    """What the reader said of the files, paragraphs and asides apart. Raises `Missing`."""
    row = db.execute("SELECT source FROM text_draft WHERE id = ?", (id,)).fetchone()
    if row is None:
        raise Missing("This draft")
    said: dict[str, Any] = json.loads(row[0])
    return said


def _source_form(source: Blocks) -> str:
    said = ("name", "format", "sha256", "size", "title", "author", "language", "notices")
    return dumped({name: getattr(source, name) for name in said})


def _file_row(name: str, content: bytes) -> tuple[str, str, int, int, bytes]:
    small = zlib.compress(content)  # a docx is packed already and gains nothing
    packed = len(small) < len(content)
    return name, hashlib.sha256(content).hexdigest(), len(content), int(packed), small if packed else content


def _cut(start: str) -> str:
    line = " ".join(start.split())
    return line if len(start) <= FIRST_WORDS else line[:FIRST_WORDS].rsplit(" ", 1)[0]
