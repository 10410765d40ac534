"""The fourth form: drafts one behind the other; answers to questions.

A scene that lives on in the next draft keeps its code, so that a code is given once in each draft and not once in the
book. `desk_…` tells what she says became of scenes and where what was taken over came from; `read_comparison` is the
program's, and can be worked out again.
"""

import sqlite3

from afterdraft.desk.order import between
from afterdraft.store.migrations.m0004_questions import QUESTIONS
from afterdraft.store.migrations.making import statements

_SCENES = """
CREATE TABLE desk_scene_made (
    id TEXT PRIMARY KEY NOT NULL,
    draft TEXT NOT NULL REFERENCES text_draft (id),
    at INTEGER NOT NULL,
    code TEXT NOT NULL,
    began TEXT NOT NULL,
    sure REAL NOT NULL,
    title TEXT NOT NULL,
    UNIQUE (draft, code)
) STRICT;
INSERT INTO desk_scene_made SELECT id, draft, at, code, began, sure, title FROM desk_scene;
DROP TABLE desk_scene;
ALTER TABLE desk_scene_made RENAME TO desk_scene;
CREATE INDEX desk_scene_by_draft ON desk_scene (draft, at);
"""

_DRAFTS = """
ALTER TABLE desk_draft ADD COLUMN place TEXT NOT NULL DEFAULT '';  -- text key: one may be put in behind another
ALTER TABLE desk_draft ADD COLUMN part_way INTEGER NOT NULL DEFAULT 0;  -- goes only as far as the revision has come
ALTER TABLE desk_draft ADD COLUMN gave_way TEXT REFERENCES text_draft (id);  -- the same draft again, or further on

ALTER TABLE book ADD COLUMN last_card INTEGER NOT NULL DEFAULT 0;  -- highest key that a card ever had: one that went
-- may come back by undo, and no other must have its key by then
UPDATE book SET last_card = (SELECT coalesce(max(key), 0) FROM desk_card);

CREATE TABLE desk_became (  -- what became of a scene, as she says; of a scene that is new, that it is
    scene TEXT PRIMARY KEY NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    became TEXT NOT NULL  -- '': as it was found
) STRICT;

CREATE TABLE desk_lives_on (  -- whether one scene became another, as she says
    old TEXT NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    new TEXT NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    so INTEGER NOT NULL,
    PRIMARY KEY (old, new)
) STRICT;

CREATE TABLE desk_from (  -- what was taken over into a draft: a point, a place of a change, what somebody carries
    id TEXT PRIMARY KEY NOT NULL,
    source TEXT NOT NULL  -- id of the same in the draft before
) STRICT;

CREATE TABLE desk_was_on (  -- where a note was when the next draft came in, and how it stood
    note TEXT NOT NULL,
    draft TEXT NOT NULL REFERENCES text_draft (id),
    scene TEXT REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    chapter TEXT REFERENCES desk_chapter (id) DEFERRABLE INITIALLY DEFERRED,
    state TEXT NOT NULL,
    PRIMARY KEY (note, draft)
) STRICT;

CREATE TABLE desk_round (  -- how notes and changes stood when a draft came in
    draft TEXT PRIMARY KEY NOT NULL REFERENCES text_draft (id),
    form TEXT NOT NULL  -- JSON
) STRICT;

CREATE TABLE desk_kept_card (  -- a card that was carried, words and all, instead of being written anew
    card TEXT PRIMARY KEY NOT NULL,
    source TEXT NOT NULL  -- ids of the scenes whose cards it was, one a line
) STRICT;

CREATE INDEX desk_from_by_source ON desk_from (source);
CREATE INDEX desk_lives_on_by_new ON desk_lives_on (new);
CREATE INDEX desk_was_on_by_scene ON desk_was_on (scene);

CREATE TABLE read_comparison (
    old TEXT NOT NULL REFERENCES text_draft (id),
    new TEXT NOT NULL REFERENCES text_draft (id),
    key TEXT NOT NULL,  -- hash of both texts and divisions
    form BLOB NOT NULL,  -- a zlib stream of JSON
    PRIMARY KEY (old, new)
) STRICT;
"""


def drafts(db: sqlite3.Connection) -> None:
    """Make the tables of drafts one behind the other, and those of answers to questions."""
    for statement in statements(_SCENES + _DRAFTS + QUESTIONS):
        db.execute(statement)
    place = ""
    for (draft,) in db.execute(
        "SELECT d.id FROM desk_draft d JOIN text_draft t ON t.id = d.id ORDER BY t.ordinal"
    ).fetchall():
        place = between(place, "")
        db.execute("UPDATE desk_draft SET place = ? WHERE id = ?", (place, draft))
