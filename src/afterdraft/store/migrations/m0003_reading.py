"""The third form: what is read off the page, and what the writer says of it.

`desk_…` is hers: corrections that outlive every reading. `read_…` is the program's: it can be thrown away and made
again, is never journaled, and holds no words of hers.
"""

import sqlite3

from afterdraft.store.migrations.making import statements

_SAID = """
ALTER TABLE desk_person ADD COLUMN gender TEXT NOT NULL DEFAULT '';  -- f, m, n; '' where she has not said
ALTER TABLE desk_person ADD COLUMN narrator INTEGER NOT NULL DEFAULT 0;  -- the I that tells
ALTER TABLE desk_person ADD COLUMN followed INTEGER NOT NULL DEFAULT 0;  -- she wants to see what they say

CREATE TABLE desk_no_name (  -- words that reading takes for a name, and that are none
    kind TEXT NOT NULL,  -- person, place
    form TEXT NOT NULL,  -- as compared
    PRIMARY KEY (kind, form)
) STRICT;

CREATE TABLE desk_absent (  -- whom, or which place, reading finds in a scene and she does not
    scene TEXT NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    who TEXT NOT NULL,  -- id of a person or place
    PRIMARY KEY (scene, who)
) STRICT;

CREATE TABLE desk_scene_time (  -- when a scene happens, in her words
    scene TEXT PRIMARY KEY NOT NULL REFERENCES desk_scene (id) DEFERRABLE INITIALLY DEFERRED,
    words TEXT NOT NULL
) STRICT;

CREATE TABLE desk_said (  -- who speaks a quotation; its place is an anchor
    id TEXT PRIMARY KEY NOT NULL,
    person TEXT REFERENCES desk_person (id) DEFERRABLE INITIALLY DEFERRED  -- NULL: nobody of the cast
) STRICT;
"""

_READ = """
CREATE TABLE read_scene (  -- facts of a scene's words, by the hash of the words and of what read them
    key TEXT PRIMARY KEY NOT NULL,
    facts BLOB NOT NULL  -- a zlib stream of JSON
) STRICT, WITHOUT ROWID;

CREATE TABLE read_book (  -- what the facts of all scenes of a draft tell
    draft TEXT PRIMARY KEY NOT NULL REFERENCES text_draft (id),
    key TEXT NOT NULL,  -- hash of the scenes' keys and of what she has said
    form BLOB NOT NULL  -- a zlib stream of JSON
) STRICT;
"""


def reading(db: sqlite3.Connection) -> None:
    """Make the tables of reading and of its corrections."""
    for statement in statements(_SAID + _READ):
        db.execute(statement)
