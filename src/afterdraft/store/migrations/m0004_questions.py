"""What the fourth form has for questions: `desk_…` tells what she answered, `read_asked` can be worked out again."""

QUESTIONS = """
CREATE TABLE desk_answer (  -- what she answered to a question; as long as its evidence is the same, it is not asked
    fingerprint TEXT PRIMARY KEY NOT NULL,
    asked_by TEXT NOT NULL,  -- id of the check
    answer TEXT NOT NULL,  -- noted, stands
    asks TEXT NOT NULL,  -- the question as it was asked
    why TEXT NOT NULL DEFAULT '',  -- why it stands, in her words
    note TEXT,  -- id of the note that was made of it
    change TEXT,  -- id of the change that was made of it
    made TEXT NOT NULL  -- UTC, ISO 8601
) STRICT;

CREATE TABLE desk_check_turned (  -- how a check asks in this book, where that is otherwise than usual
    id TEXT PRIMARY KEY NOT NULL,
    turned TEXT NOT NULL  -- down: only where it is strong; off: never
) STRICT;

CREATE TABLE read_asked (  -- what the checks found in a draft
    draft TEXT PRIMARY KEY NOT NULL REFERENCES text_draft (id),
    form BLOB NOT NULL  -- a zlib stream of JSON: findings by the hash of what the check looked at
) STRICT;
"""
