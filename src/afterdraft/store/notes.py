"""Notes: rows of the writer's half, and the passages they are fastened to."""

import sqlite3
from collections.abc import Mapping, Sequence
from typing import Any

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.note import About, Note, NoteState
from afterdraft.errors import Missing
from afterdraft.store.anchors import anchors_of, fasten, unfasten
from afterdraft.store.homes import homes
from afterdraft.store.names import new_id
from afterdraft.store.rows import require

_NOTE = (
    "SELECT o.id, o.text, o.scene, o.state, o.made, r.revision, o.ink, o.chapter, o.laid, o.about_book "
    "FROM desk_note o JOIN row_revision r ON r.id = o.id"
)
_LOOSE = "WHERE o.scene IS NULL AND o.chapter IS NULL AND o.laid IS NULL AND NOT o.about_book"


def notes(db: sqlite3.Connection, *, scene: str | None, loose: bool) -> tuple[Note, ...]:
    """All notes, or one scene's, or the loose ones; in the order they were made."""
    if loose:
        return _notes(db, _LOOSE)
    return _notes(db, "WHERE o.scene = ?", (scene,)) if scene is not None else _notes(db)


def note(db: sqlite3.Connection, id: str) -> Note:
    """Raises `Missing`."""
    found = _notes(db, "WHERE o.id = ?", (id,))
    if not found:
        raise Missing("This note")
    return found[0]


def add_note(
    db: sqlite3.Connection,
    *,
    text: str,
    now: str,
    scene: str | None = None,
    about: About | None = None,
    ink: str | None = None,
    state: NoteState = "open",
    anchors: Sequence[Anchor] = (),
) -> Note:
    """On `about`, or on a `scene`, or loose. Raises `Missing` where what it is about, or the ink, is not there."""
    made = new_id("note")
    place = about or About(scene)
    _check(db, place, ink)
    db.execute(
        "INSERT INTO desk_note (id, text, state, made, ink, scene, chapter, laid, about_book) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        (made, text, state, now, ink, place.scene, place.chapter, place.laid, place.book),
    )
    fasten(db, made, anchors)
    return note(db, made)


def set_note(db: sqlite3.Connection, id: str, *, text: str | None, state: NoteState | None) -> Note:
    """Change what is given. Raises `Missing`."""
    was = note(db, id)
    db.execute(
        "UPDATE desk_note SET text = ?, state = ? WHERE id = ?",
        (was.text if text is None else text, was.state if state is None else state, id),
    )
    return note(db, id)


def ink_note(db: sqlite3.Connection, id: str, ink: str | None) -> Note:
    """Raises `Missing`."""
    _check(db, About(), ink)
    db.execute("UPDATE desk_note SET ink = ? WHERE id = ?", (ink, id))
    return note(db, id)


def place_note(db: sqlite3.Connection, id: str, about: About, anchors: Sequence[Anchor]) -> Note:
    """Take it from where it is, and put it there. Raises `Missing`."""
    _check(db, about, None)
    db.execute(
        "UPDATE desk_note SET scene = ?, chapter = ?, laid = ?, about_book = ? WHERE id = ?",
        (about.scene, about.chapter, about.laid, about.book, id),
    )
    unfasten(db, id)
    fasten(db, id, anchors)
    return note(db, id)


def follow_anchors(db: sqlite3.Connection, draft: str) -> None:
    """Notes on passages go to the scenes that hold their passages now; where none does, or where they went on into a
    later draft, they stay where they are."""
    home = homes(db, draft)
    fastened = db.execute(
        "SELECT n.id, n.scene, min(a.paragraph) FROM desk_note n JOIN desk_anchor a ON a.owner = n.id "
        "JOIN desk_scene s ON s.id = n.scene AND s.draft = a.draft WHERE a.draft = ? GROUP BY n.id",
        (draft,),
    ).fetchall()
    for note_id, scene, paragraph in fastened:
        holder = home(paragraph)
        if holder not in (None, scene):
            db.execute("UPDATE desk_note SET scene = ? WHERE id = ?", (holder, note_id))


def _notes(db: sqlite3.Connection, where: str = "", given: Sequence[str] = ()) -> tuple[Note, ...]:
    """A note that came over from an earlier draft has its passages of then beside those of now."""
    passages = anchors_of(db, "desk_note", where, given)
    drafts = dict(db.execute("SELECT s.id, s.draft FROM desk_scene s JOIN desk_note n ON n.scene = s.id"))
    rows = db.execute(f"{_NOTE} {where} ORDER BY o.key", given).fetchall()
    return tuple(_note(passages, drafts, *row) for row in rows)


def _note(passages: Mapping[str, tuple[Anchor, ...]], drafts: Mapping[str, str], id: str, *columns: Any) -> Note:
    text, scene, state, made, revision, ink, chapter, laid, about_book = columns
    all_ = passages.get(id, ())
    here = tuple(one for one in all_ if scene is None or one.draft == drafts[scene])
    then = tuple(one for one in all_ if one not in here)
    return Note(id, text, scene, state, made, revision, ink, chapter, laid, bool(about_book), here, then)


def _check(db: sqlite3.Connection, about: About, ink: str | None) -> None:
    require(db, "desk_scene", about.scene, "This scene")
    require(db, "desk_chapter", about.chapter, "This chapter")
    require(db, "desk_laid", about.laid, "This card")
    require(db, "desk_ink", ink, "This ink")
