"""The second form: the desk.

Arrangements with their Next sides, inks, guarded passages, threads, setups, reveals, strands, what follows from what,
cast and places, changes, cards for chapters, parts and the book. Everything is the writer's (`desk_…`).

`place` is a text key that gives an order (`desk.order`). `owner` of an anchor is a note, a guarded passage or a point.
"""

import sqlite3

from afterdraft.store.migrations.making import counted, searched, statements

_NOTES = """
ALTER TABLE desk_note ADD COLUMN ink TEXT REFERENCES desk_ink (id) DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE desk_note ADD COLUMN chapter TEXT REFERENCES desk_chapter (id) DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE desk_note ADD COLUMN laid TEXT REFERENCES desk_laid (id) DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE desk_note ADD COLUMN about_book INTEGER NOT NULL DEFAULT 0;

CREATE TABLE desk_ink (
    id TEXT PRIMARY KEY NOT NULL,
    place TEXT NOT NULL,
    name TEXT NOT NULL,
    colour TEXT NOT NULL,
    letter TEXT NOT NULL
) STRICT;

CREATE TABLE desk_guarded (  -- passages that work and must not be lost
    id TEXT PRIMARY KEY NOT NULL,
    why TEXT NOT NULL DEFAULT '',
    made TEXT NOT NULL  -- UTC, ISO 8601
) STRICT;

CREATE TABLE desk_offered (  -- margin comments that were offered as notes, and what became of the offer
    draft TEXT NOT NULL REFERENCES text_draft (id),
    aside INTEGER NOT NULL,
    note TEXT,  -- the note made of it; NULL where it was declined
    PRIMARY KEY (draft, aside)
) STRICT;
"""

_ARRANGING = """
ALTER TABLE book ADD COLUMN arrangement TEXT NOT NULL DEFAULT '';  -- id of the one last looked at

CREATE TABLE desk_arrangement (
    id TEXT PRIMARY KEY NOT NULL,
    draft TEXT NOT NULL REFERENCES text_draft (id),
    place TEXT NOT NULL,
    name TEXT NOT NULL,
    why TEXT NOT NULL DEFAULT '',
    given_up INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE TABLE desk_row (  -- a chapter of an arrangement
    id TEXT PRIMARY KEY NOT NULL,
    arrangement TEXT NOT NULL REFERENCES desk_arrangement (id) DEFERRABLE INITIALLY DEFERRED,
    place TEXT NOT NULL,
    title TEXT NOT NULL DEFAULT '',
    chapter TEXT,  -- of the draft; may be gone from it
    part TEXT  -- of the draft; may be gone from it
) STRICT;

CREATE TABLE desk_laid (  -- a card as it lies in an arrangement, with its Next side
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    arrangement TEXT NOT NULL REFERENCES desk_arrangement (id) DEFERRABLE INITIALLY DEFERRED,
    home TEXT REFERENCES desk_row (id) DEFERRABLE INITIALLY DEFERRED,  -- NULL: set aside
    place TEXT NOT NULL,
    code TEXT NOT NULL,
    intent TEXT,
    title TEXT NOT NULL DEFAULT '',
    what TEXT NOT NULL DEFAULT '',
    viewpoint TEXT NOT NULL DEFAULT '',
    people TEXT NOT NULL DEFAULT '',
    setting TEXT NOT NULL DEFAULT '',
    time TEXT NOT NULL DEFAULT '',
    length TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE TABLE desk_laid_scene (  -- several for one card: to be joined; several cards for one scene: to be split
    laid TEXT NOT NULL REFERENCES desk_laid (id) DEFERRABLE INITIALLY DEFERRED,
    n INTEGER NOT NULL,
    scene TEXT NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (laid, scene)
) STRICT;

CREATE TABLE desk_unit_card (
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    draft TEXT NOT NULL REFERENCES text_draft (id),
    kind TEXT NOT NULL,
    unit TEXT,  -- of a chapter or part; NULL for the book
    summary TEXT NOT NULL DEFAULT '',
    whose TEXT NOT NULL DEFAULT '',
    wants TEXT NOT NULL DEFAULT '',
    answers TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE UNIQUE INDEX desk_unit_card_by_unit ON desk_unit_card (draft, kind, coalesce(unit, ''));
CREATE INDEX desk_row_by_arrangement ON desk_row (arrangement, place);
CREATE INDEX desk_laid_by_arrangement ON desk_laid (arrangement, home, place);
CREATE INDEX desk_laid_scene_by_scene ON desk_laid_scene (scene);
"""

_LINES = """
CREATE TABLE desk_line (  -- a thread, a setup, a reveal
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    kind TEXT NOT NULL,
    place TEXT NOT NULL,
    name TEXT NOT NULL,
    letter TEXT NOT NULL,
    note TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE TABLE desk_point (
    id TEXT PRIMARY KEY NOT NULL,
    line TEXT NOT NULL REFERENCES desk_line (id) DEFERRABLE INITIALLY DEFERRED,
    does TEXT NOT NULL,
    scene TEXT REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    laid TEXT REFERENCES desk_laid (id) DEFERRABLE INITIALLY DEFERRED,
    person TEXT REFERENCES desk_person (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE desk_strand (
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    place TEXT NOT NULL,
    name TEXT NOT NULL,
    letter TEXT NOT NULL
) STRICT;

CREATE TABLE desk_strand_scene (
    scene TEXT PRIMARY KEY NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    strand TEXT NOT NULL REFERENCES desk_strand (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE desk_follows (
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    scene TEXT NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    source TEXT NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    why TEXT NOT NULL DEFAULT '',
    UNIQUE (scene, source)
) STRICT;

CREATE INDEX desk_point_by_line ON desk_point (line);
CREATE INDEX desk_point_by_scene ON desk_point (scene);
CREATE INDEX desk_follows_by_source ON desk_follows (source);
"""

_KNOWN = "".join(
    f"""
CREATE TABLE desk_{kind} (
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    place TEXT NOT NULL,
    name TEXT NOT NULL,
    aliases TEXT NOT NULL DEFAULT '',  -- one a line
    note TEXT NOT NULL DEFAULT '',
    mark TEXT NOT NULL DEFAULT ''
) STRICT;
"""
    for kind in ("person", "place")
)

_CAST = """
CREATE TABLE desk_presence (  -- as the writer says; what reading finds is kept apart
    scene TEXT NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    person TEXT NOT NULL REFERENCES desk_person (id) DEFERRABLE INITIALLY DEFERRED,
    how TEXT NOT NULL,
    PRIMARY KEY (scene, person)
) STRICT;

CREATE TABLE desk_setting (
    scene TEXT NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    place TEXT NOT NULL REFERENCES desk_place (id) DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (scene, place)
) STRICT;

CREATE TABLE desk_carried (  -- what a person comes into a scene with, and leaves it with
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    scene TEXT NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    person TEXT NOT NULL REFERENCES desk_person (id) DEFERRABLE INITIALLY DEFERRED,
    comes_in TEXT NOT NULL DEFAULT '',
    leaves TEXT NOT NULL DEFAULT '',
    UNIQUE (scene, person)
) STRICT;
"""

_CHANGES = """
CREATE TABLE desk_change (
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    place TEXT NOT NULL,
    wrong TEXT NOT NULL DEFAULT '',
    decide TEXT NOT NULL DEFAULT '',
    due TEXT NOT NULL,  -- must, if time, later
    work TEXT NOT NULL DEFAULT '',
    note TEXT REFERENCES desk_note (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE desk_change_place (
    id TEXT PRIMARY KEY NOT NULL,
    change TEXT NOT NULL REFERENCES desk_change (id) DEFERRABLE INITIALLY DEFERRED,
    n INTEGER NOT NULL,
    scene TEXT REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    laid TEXT REFERENCES desk_laid (id) DEFERRABLE INITIALLY DEFERRED,
    words TEXT NOT NULL DEFAULT '',
    done INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE INDEX desk_change_place_by_change ON desk_change_place (change, n);
"""

_SEARCHED = {
    "laid": ("desk_laid", ("title", "what", "viewpoint", "people", "setting", "time")),
    "unit_card": ("desk_unit_card", ("summary", "whose", "wants", "answers")),
    "line": ("desk_line", ("name", "note")),
    "strand": ("desk_strand", ("name",)),
    "follows": ("desk_follows", ("why",)),
    "person": ("desk_person", ("name", "aliases", "note")),
    "place": ("desk_place", ("name", "aliases", "note")),
    "carried": ("desk_carried", ("comes_in", "leaves")),
    "change": ("desk_change", ("wrong", "decide", "work")),
}
_COUNTED = {
    "desk_ink": ("name", "colour", "letter"),
    "desk_guarded": ("why",),
    "desk_arrangement": ("name", "why", "given_up"),
    "desk_row": ("title",),
    "desk_laid": ("intent", "title", "what", "viewpoint", "people", "setting", "time", "length"),
    "desk_unit_card": ("summary", "whose", "wants", "answers"),
    "desk_line": ("name", "letter", "note"),
    "desk_strand": ("name", "letter"),
    "desk_follows": ("why",),
    "desk_person": ("name", "aliases", "note", "mark"),
    "desk_place": ("name", "aliases", "note", "mark"),
    "desk_carried": ("comes_in", "leaves"),
    "desk_change": ("wrong", "decide", "due", "work"),
    "desk_change_place": ("words",),
}


def desk(db: sqlite3.Connection) -> None:
    """Make the tables, indexes and triggers of the desk."""
    scripts = [_NOTES, _ARRANGING, _LINES, _KNOWN, _CAST, _CHANGES]
    scripts += [searched(name, table, columns) for name, (table, columns) in _SEARCHED.items()]
    scripts += [counted(table, columns) for table, columns in _COUNTED.items()]
    for statement in statements("\n".join(scripts)):
        db.execute(statement)
