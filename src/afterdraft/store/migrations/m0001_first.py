"""The first form of a book.

Tables come in two halves, told apart by their names:

- `text_…` the program's: what was brought in. Frozen by triggers, never journaled.
- `desk_…` the writer's: every change is journaled, so that it can be taken back.

Beside them: `book` (one row about the file itself), `code_used`, `row_revision` and `field_save` (what must never run
backwards, not even through undo), `undo_…` (the journal) and `search_…` (full-text indexes, kept right by triggers).
"""

import sqlite3

from afterdraft.store.migrations.making import counted, searched, statements

_BOOK = """
CREATE TABLE book (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    id TEXT NOT NULL,
    changed TEXT NOT NULL,  -- UTC, ISO 8601
    place TEXT NOT NULL DEFAULT ''  -- code of the scene last looked at
) STRICT;

CREATE TABLE code_used (code TEXT PRIMARY KEY NOT NULL) STRICT, WITHOUT ROWID;

CREATE TABLE row_revision (  -- how often a card or note changed
    id TEXT PRIMARY KEY NOT NULL,
    revision INTEGER NOT NULL DEFAULT 1
) STRICT, WITHOUT ROWID;

CREATE TABLE field_save (  -- a field's last change: the row's revision after it, and whose save it was
    id TEXT NOT NULL,
    field TEXT NOT NULL,
    revision INTEGER NOT NULL,
    client TEXT NOT NULL DEFAULT '',  -- '' when it was no save: undo, redo, a join
    sequence INTEGER NOT NULL DEFAULT 0,
    PRIMARY KEY (id, field)
) STRICT, WITHOUT ROWID;

CREATE TABLE undo_step (
    number INTEGER PRIMARY KEY AUTOINCREMENT,  -- never given twice: a stale button must be noticed
    name TEXT NOT NULL,
    undone INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE TABLE undo_change (
    id INTEGER PRIMARY KEY,
    step INTEGER NOT NULL REFERENCES undo_step (number),
    subject TEXT NOT NULL,  -- the row an update was to; '' for inserts and deletes
    sql TEXT NOT NULL  -- what takes the change back
) STRICT;
CREATE INDEX undo_change_by_step ON undo_change (step, subject);
"""

_TEXT = """
CREATE TABLE text_draft (
    id TEXT PRIMARY KEY NOT NULL,
    ordinal INTEGER NOT NULL UNIQUE,  -- order of coming in, hidden ones counted
    brought_in TEXT NOT NULL,  -- UTC, ISO 8601
    reader TEXT NOT NULL,  -- version of the program that cut the paragraphs; an upgrade never cuts them again
    paragraphs INTEGER NOT NULL,
    digest TEXT NOT NULL,  -- SHA-256 over all paragraphs
    title TEXT NOT NULL,
    author TEXT NOT NULL,
    language TEXT NOT NULL,
    source TEXT NOT NULL  -- JSON: what the files said of themselves
) STRICT;

CREATE TABLE text_file (
    draft TEXT NOT NULL REFERENCES text_draft (id),
    n INTEGER NOT NULL,
    name TEXT NOT NULL,
    sha256 TEXT NOT NULL,  -- of the original bytes
    size INTEGER NOT NULL,
    packed INTEGER NOT NULL,  -- 1: `bytes` is a zlib stream
    bytes BLOB NOT NULL,
    PRIMARY KEY (draft, n)
) STRICT;

CREATE TABLE text_paragraph (
    key INTEGER PRIMARY KEY,
    draft TEXT NOT NULL REFERENCES text_draft (id),
    n INTEGER NOT NULL,
    words INTEGER NOT NULL,
    form TEXT NOT NULL,  -- JSON: runs, look, gap, source; defaults left out
    text TEXT NOT NULL,
    UNIQUE (draft, n)
) STRICT;

CREATE TABLE text_aside (
    draft TEXT NOT NULL REFERENCES text_draft (id),
    n INTEGER NOT NULL,
    paragraph INTEGER NOT NULL,
    form TEXT NOT NULL,  -- JSON
    PRIMARY KEY (draft, n)
) STRICT, WITHOUT ROWID;

CREATE TABLE text_doubt (
    draft TEXT NOT NULL REFERENCES text_draft (id),
    n INTEGER NOT NULL,
    paragraph INTEGER NOT NULL,
    what TEXT NOT NULL,
    chosen TEXT NOT NULL,
    other TEXT NOT NULL,
    PRIMARY KEY (draft, n)
) STRICT, WITHOUT ROWID;
"""

_DESK = """
CREATE TABLE desk_book (one INTEGER PRIMARY KEY CHECK (one = 1), title TEXT NOT NULL) STRICT;

CREATE TABLE desk_draft (
    id TEXT PRIMARY KEY NOT NULL REFERENCES text_draft (id),
    hidden INTEGER NOT NULL  -- 1: its bringing in was taken back
) STRICT;

CREATE TABLE desk_part (
    id TEXT PRIMARY KEY NOT NULL,
    draft TEXT NOT NULL REFERENCES text_draft (id),
    at INTEGER NOT NULL,
    title TEXT NOT NULL
) STRICT;

CREATE TABLE desk_chapter (
    id TEXT PRIMARY KEY NOT NULL,
    draft TEXT NOT NULL REFERENCES text_draft (id),
    at INTEGER NOT NULL,
    part TEXT REFERENCES desk_part (id) DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL,
    number INTEGER,
    title TEXT NOT NULL,
    head TEXT NOT NULL  -- JSON list of lines
) STRICT;

CREATE TABLE desk_scene (
    id TEXT PRIMARY KEY NOT NULL,
    draft TEXT NOT NULL REFERENCES text_draft (id),
    at INTEGER NOT NULL,
    code TEXT NOT NULL UNIQUE,
    began TEXT NOT NULL,
    sure REAL NOT NULL,
    title TEXT NOT NULL
) STRICT;

CREATE TABLE desk_matter (
    id TEXT PRIMARY KEY NOT NULL,
    draft TEXT NOT NULL REFERENCES text_draft (id),
    at INTEGER NOT NULL,
    place TEXT NOT NULL,
    kind TEXT NOT NULL
) STRICT;

CREATE TABLE desk_role (  -- of paragraphs that are not told text
    draft TEXT NOT NULL REFERENCES text_draft (id),
    paragraph INTEGER NOT NULL,
    role TEXT NOT NULL,
    PRIMARY KEY (draft, paragraph)
) STRICT;

CREATE TABLE desk_settled (  -- doubts the writer has settled
    draft TEXT NOT NULL REFERENCES text_draft (id),
    paragraph INTEGER NOT NULL,
    PRIMARY KEY (draft, paragraph)
) STRICT;

CREATE TABLE desk_split (  -- corrections of the split, to be replayed on the next draft
    key INTEGER PRIMARY KEY,
    draft TEXT NOT NULL REFERENCES text_draft (id),
    kind TEXT NOT NULL,
    paragraph_hash TEXT NOT NULL,
    before_hash TEXT NOT NULL,  -- '' where there is no neighbour
    after_hash TEXT NOT NULL,
    detail TEXT NOT NULL  -- JSON
) STRICT;

CREATE TABLE desk_card (
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    scene TEXT NOT NULL UNIQUE REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    summary TEXT NOT NULL DEFAULT '',
    comes_in TEXT NOT NULL DEFAULT '',
    leaves TEXT NOT NULL DEFAULT '',
    needed_for TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE TABLE desk_note (
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    scene TEXT REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    text TEXT NOT NULL,
    state TEXT NOT NULL,
    made TEXT NOT NULL  -- UTC, ISO 8601
) STRICT;

CREATE TABLE desk_anchor (  -- what is fastened to a passage; paragraphs are never numbered anew
    key INTEGER PRIMARY KEY,
    owner TEXT NOT NULL,  -- id of what is fastened: a note
    draft TEXT NOT NULL REFERENCES text_draft (id),
    paragraph INTEGER NOT NULL,
    start_at INTEGER NOT NULL,  -- code points in the paragraph, half-open
    end_at INTEGER NOT NULL,
    quote TEXT NOT NULL,
    words_before TEXT NOT NULL,  -- up to 32 characters on either side
    words_after TEXT NOT NULL
) STRICT;

CREATE INDEX desk_anchor_by_owner ON desk_anchor (owner);
CREATE INDEX desk_anchor_by_place ON desk_anchor (draft, paragraph);
CREATE INDEX desk_part_by_draft ON desk_part (draft, at);
CREATE INDEX desk_chapter_by_draft ON desk_chapter (draft, at);
CREATE INDEX desk_scene_by_draft ON desk_scene (draft, at);
CREATE INDEX desk_matter_by_draft ON desk_matter (draft, at);
CREATE INDEX desk_note_by_scene ON desk_note (scene);
"""

_FROZEN = ("text_draft", "text_file", "text_paragraph", "text_aside", "text_doubt")
_SEARCHED = {
    "text": ("text_paragraph", ("text",)),
    "card": ("desk_card", ("summary", "comes_in", "leaves", "needed_for")),
    "note": ("desk_note", ("text",)),
}
_COUNTED = {
    "desk_card": ("scene", "summary", "comes_in", "leaves", "needed_for"),
    "desk_note": ("scene", "text", "state"),
}


def first(db: sqlite3.Connection) -> None:
    """Make every table, index and trigger of a new book."""
    scripts = [_BOOK, _TEXT, _DESK]
    scripts += [_frozen(table) for table in _FROZEN]
    scripts += [searched(name, table, columns) for name, (table, columns) in _SEARCHED.items()]
    scripts += [counted(table, columns) for table, columns in _COUNTED.items()]
    for statement in statements("\n".join(scripts)):
        db.execute(statement)


def _frozen(table: str) -> str:
    return "".join(
        f"CREATE TRIGGER {table}_no_{act.lower()} BEFORE {act} ON {table}\n"
        f"BEGIN SELECT RAISE(ABORT, 'a draft, once in, never changes'); END;\n"
        for act in ("UPDATE", "DELETE")
    )
