"""What is on the scenes of one draft goes on in the scenes of the next: rows of the writer's half.

Open notes go over, and it is written down where they were. Everything else is copied, and what has an id of its own
says what it was copied from; so the old outline stays as it was, and a wrong link can be taken back.
"""

import sqlite3
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from afterdraft.desk.anchor import Anchor
from afterdraft.store.anchors import anchors_of, fasten
from afterdraft.store.homes import homes
from afterdraft.store.names import Kind, new_id
from afterdraft.work.ports.drafts import Place

Pieces = Mapping[str, Sequence[str]]
_CLOSEST = "instr('mentioned,on page,viewpoint', {})"  # grows with how closely somebody is seen


def carry_over(
    db: sqlite3.Connection, old: str, new: str, scenes: Pieces, *, chapters: Mapping[str, str], place: Place
) -> None:
    """As `work.ports.drafts.DraftsDesk.carry_over` says."""
    mains = {scene: pieces[0] for scene, pieces in scenes.items() if pieces}
    _titles(db, mains)
    _notes(db, old, new, scenes, place)
    _chapter_notes(db, old, chapters)
    _passages(db, "desk_guarded", old, new, place)
    _passages(db, "desk_said", old, new, place)
    _points(db, old, new, scenes, place)
    _change_places(db, scenes)
    _planned_places(db, old)
    _everywhere(db, scenes)
    _in_the_main_piece(db, mains)
    _carried(db, mains)
    _follows(db, mains, old, new)


def take_back(db: sqlite3.Connection, old: str, new: str) -> None:
    """As `work.ports.drafts.DraftsDesk.take_back` says."""
    both = {"old": old, "new": new}
    notes = db.execute(
        "SELECT w.note, w.draft FROM desk_was_on w JOIN desk_note n ON n.id = w.note "
        "WHERE w.scene = :old AND n.scene = :new",
        both,
    ).fetchall()
    for note, draft in notes:
        db.execute("DELETE FROM desk_anchor WHERE owner = ? AND draft <> ?", (note, draft))
        db.execute("DELETE FROM desk_was_on WHERE note = ? AND draft = ?", (note, draft))
        db.execute("UPDATE desk_note SET scene = ? WHERE id = ?", (old, note))
    for table, same in _COPIED.items():
        copies = f"SELECT c.id FROM {table} c JOIN desk_from f ON f.id = c.id JOIN {table} o ON o.id = f.source {same}"  # noqa: S608 — own names, here and below
        for (copy,) in db.execute(copies, both).fetchall():
            _forget(db, table, copy)
    for table, column in _KEYED:
        db.execute(
            f"DELETE FROM {table} AS c WHERE c.scene = :new AND EXISTS "  # noqa: S608
            f"(SELECT 1 FROM {table} o WHERE o.scene = :old AND o.{column} = c.{column})",
            both,
        )


_COPIED = {
    "desk_point": "WHERE c.scene = :new AND o.scene = :old",
    "desk_carried": "WHERE c.scene = :new AND o.scene = :old AND (c.comes_in, c.leaves) = (o.comes_in, o.leaves)",
    "desk_change_place": "WHERE c.scene = :new AND o.scene = :old AND (c.words, c.done) = (o.words, o.done)",
    "desk_follows": "WHERE ((c.scene = :new AND o.scene = :old) OR (c.source = :new AND o.source = :old)) "
    "AND c.why = o.why",
}
_KEYED = (
    ("desk_strand_scene", "strand"),
    ("desk_setting", "place"),
    ("desk_scene_time", "words"),
    ("desk_presence", "person"),
    ("desk_absent", "who"),
)


def _forget(db: sqlite3.Connection, table: str, id: str) -> None:
    db.execute("DELETE FROM desk_anchor WHERE owner = ?", (id,))
    db.execute("DELETE FROM desk_from WHERE id = ?", (id,))
    db.execute(f"DELETE FROM {table} WHERE id = ?", (id,))  # noqa: S608


def _titles(db: sqlite3.Connection, mains: Mapping[str, str]) -> None:
    db.executemany(
        "UPDATE desk_scene SET title = (SELECT title FROM desk_scene WHERE id = ?1) WHERE id = ?2 AND title = '' "
        "AND EXISTS (SELECT 1 FROM desk_scene WHERE id = ?1 AND title <> '')",
        mains.items(),
    )


def _notes(db: sqlite3.Connection, old: str, new: str, scenes: Pieces, place: Place) -> None:
    """To the scene that holds its passage now; else to the piece with most of the words."""
    home = homes(db, new)
    passages = anchors_of(db, "desk_note", "WHERE a.draft = ?", (old,))
    listed = db.execute(
        "SELECT n.id, n.scene, n.state FROM desk_note n JOIN desk_scene s ON s.id = n.scene "
        "WHERE s.draft = ? AND n.state = 'open'",
        (old,),
    ).fetchall()
    for note, scene, state in listed:
        if scene not in scenes:
            continue
        there = [found for one in passages.get(note, ()) if (found := place(one)) is not None]
        goes = (home(there[0].paragraph) if there else None) or next(iter(scenes[scene]), None)
        if goes is None:
            continue  # its scene was cut, its passage is gone: it stays where it was
        _was(db, note, old, scene, None, state)
        db.execute("UPDATE desk_note SET scene = ? WHERE id = ?", (goes, note))
        fasten(db, note, there)


def _chapter_notes(db: sqlite3.Connection, old: str, chapters: Mapping[str, str]) -> None:
    for chapter, goes in chapters.items():
        listed = db.execute(
            "SELECT id, state FROM desk_note WHERE chapter = ? AND state = 'open'", (chapter,)
        ).fetchall()
        for note, state in listed:
            _was(db, note, old, None, chapter, state)
            db.execute("UPDATE desk_note SET chapter = ? WHERE id = ?", (goes, note))


def _was(db: sqlite3.Connection, note: str, draft: str, scene: str | None, chapter: str | None, state: str) -> None:
    db.execute(
        "INSERT INTO desk_was_on VALUES (?, ?, ?, ?, ?) ON CONFLICT DO NOTHING", (note, draft, scene, chapter, state)
    )


def _passages(db: sqlite3.Connection, owners: str, old: str, new: str, place: Place) -> None:
    """What hangs on its passage alone: guarded ones, and who speaks."""
    known = anchors_of(db, owners, "WHERE a.draft = ?", (new,))
    for owner, anchors in anchors_of(db, owners, "WHERE a.draft = ?", (old,)).items():
        if owner not in known:
            fasten(db, owner, [found for one in anchors if (found := place(one)) is not None])


def _points(db: sqlite3.Connection, old: str, new: str, scenes: Pieces, place: Place) -> None:
    home = homes(db, new)
    passages = anchors_of(db, "desk_point", "WHERE a.draft = ?", (old,))
    listed = db.execute(
        "SELECT p.id, p.line, p.does, p.scene, p.person FROM desk_point p JOIN desk_scene s ON s.id = p.scene "
        "WHERE s.draft = ? ORDER BY p.id",
        (old,),
    ).fetchall()
    for point, line, does, scene, person in listed:
        there = [found for one in passages.get(point, ()) if (found := place(one)) is not None]
        goes = (home(there[0].paragraph) if there else None) or next(iter(scenes.get(scene, ())), None)
        if scene in scenes and goes is not None:
            values = {"line": line, "does": does, "scene": goes, "laid": None, "person": person}
            if made := _copy(db, "desk_point", "point", point, values):
                fasten(db, made, there)


def _change_places(db: sqlite3.Connection, scenes: Pieces) -> None:
    """Ticks and all. The place in a scene that is gone, or not reached yet, is kept in words until there is one."""
    for scene, pieces in scenes.items():
        goes = pieces[0] if pieces else None
        for place, change, n, words, done, called in db.execute(_CHANGE_PLACES, (scene,)).fetchall():
            waiting = db.execute(_WAITING, (place,)).fetchone()
            if waiting and goes:
                db.execute("UPDATE desk_change_place SET scene = ?, words = ? WHERE id = ?", (goes, words, *waiting))
            elif not waiting:
                said = words if goes else words or called
                values = {"change": change, "n": n, "scene": goes, "laid": None, "words": said, "done": done}
                _copy(db, "desk_change_place", "change place", place, values)


def _planned_places(db: sqlite3.Connection, old: str) -> None:
    """Places on planned cards without a scene are kept in words: the arrangement stays with its draft."""
    for place, change, n, words, done, called in db.execute(_PLANNED_PLACES, (old,)).fetchall():
        values = {"change": change, "n": n, "scene": None, "laid": None, "words": words or called, "done": done}
        _copy(db, "desk_change_place", "change place", place, values)


_PLANNED_PLACES = (
    "SELECT p.id, p.change, p.n, p.words, p.done, CASE WHEN l.title <> '' THEN l.title WHEN l.what <> '' THEN l.what "
    "ELSE l.code END FROM desk_change_place p JOIN desk_laid l ON l.id = p.laid "
    "JOIN desk_arrangement a ON a.id = l.arrangement WHERE a.draft = ? AND p.scene IS NULL ORDER BY p.n"
)
_CHANGE_PLACES = (
    "SELECT p.id, p.change, p.n, p.words, p.done, CASE s.title WHEN '' THEN s.code ELSE s.title END "
    "FROM desk_change_place p JOIN desk_scene s ON s.id = p.scene WHERE p.scene = ? ORDER BY p.n"
)
_WAITING = "SELECT p.id FROM desk_change_place p JOIN desk_from f ON f.id = p.id WHERE f.source = ? AND p.scene IS NULL"


def _everywhere(db: sqlite3.Connection, scenes: Pieces) -> None:
    """What holds for a whole scene holds for each of its pieces: strand, place, time, viewpoint."""
    pairs = [(scene, piece) for scene, pieces in scenes.items() for piece in pieces]
    for table, columns in (("desk_strand_scene", "strand"), ("desk_setting", "place"), ("desk_scene_time", "words")):
        db.executemany(
            f"INSERT INTO {table} (scene, {columns}) SELECT ?2, {columns} FROM {table} WHERE scene = ?1 "  # noqa: S608
            "ON CONFLICT DO NOTHING",
            pairs,
        )
    _presences(db, pairs, "how = 'viewpoint'")


def _in_the_main_piece(db: sqlite3.Connection, mains: Mapping[str, str]) -> None:
    """Who else is there, and who is not, is known of one piece only."""
    _presences(db, list(mains.items()), "1")
    db.executemany(
        "INSERT INTO desk_absent SELECT ?2, who FROM desk_absent WHERE scene = ?1 AND NOT EXISTS "
        "(SELECT 1 FROM desk_presence p WHERE p.scene = ?2 AND p.person = who) ON CONFLICT DO NOTHING",
        mains.items(),
    )


def _presences(db: sqlite3.Connection, pairs: Sequence[tuple[str, str]], where: str) -> None:
    """Where several scenes were joined, as closely as in any of them."""
    closer = f"{_CLOSEST.format('excluded.how')} > {_CLOSEST.format('how')}"
    db.executemany(
        f"INSERT INTO desk_presence SELECT ?2, person, how FROM desk_presence WHERE scene = ?1 AND {where} "  # noqa: S608
        f"ON CONFLICT (scene, person) DO UPDATE SET how = excluded.how WHERE {closer}",
        pairs,
    )


def _carried(db: sqlite3.Connection, mains: Mapping[str, str]) -> None:
    for scene, goes in mains.items():
        listed = db.execute(
            "SELECT id, person, comes_in, leaves FROM desk_carried WHERE scene = ?", (scene,)
        ).fetchall()
        for own, person, comes_in, leaves in listed:
            has = db.execute("SELECT 1 FROM desk_carried WHERE scene = ? AND person = ?", (goes, person)).fetchone()
            if not has:
                values = {"scene": goes, "person": person, "comes_in": comes_in, "leaves": leaves}
                _copy(db, "desk_carried", "carried", own, values)


def _follows(db: sqlite3.Connection, mains: Mapping[str, str], old: str, new: str) -> None:
    """Where both scenes live on, and are still two."""
    known = {**_mains_known(db, old, new), **mains}
    listed = db.execute(
        "SELECT f.id, f.scene, f.source, f.why FROM desk_follows f JOIN desk_scene s ON s.id = f.scene "
        "WHERE s.draft = ? ORDER BY f.key",
        (old,),
    ).fetchall()
    for own, scene, source, why in listed:
        goes = known.get(scene), known.get(source)
        if None in goes or goes[0] == goes[1] or not {scene, source} & set(mains):
            continue
        if not db.execute("SELECT 1 FROM desk_follows WHERE scene = ? AND source = ?", goes).fetchone():
            _copy(db, "desk_follows", "follows", own, {"scene": goes[0], "source": goes[1], "why": why})


def _mains_known(db: sqlite3.Connection, old: str, new: str) -> dict[str, str]:
    """Scenes that live on under their own code."""
    return dict(
        db.execute(
            "SELECT o.id, n.id FROM desk_scene o JOIN desk_scene n ON n.code = o.code "
            "WHERE o.draft = ? AND n.draft = ?",
            (old, new),
        )
    )


def _copy(db: sqlite3.Connection, table: str, kind: Kind, source: str, values: Mapping[str, Any]) -> str | None:
    """Id of the copy; None where that scene has one already."""
    there = f"SELECT 1 FROM {table} t JOIN desk_from f ON f.id = t.id WHERE f.source = ? AND t.scene IS ?"  # noqa: S608
    if db.execute(there, (source, values["scene"])).fetchone():
        return None
    made = new_id(kind)
    marks = ", ".join("?" * (len(values) + 1))
    db.execute(f"INSERT INTO {table} (id, {', '.join(values)}) VALUES ({marks})", (made, *values.values()))  # noqa: S608
    db.execute("INSERT INTO desk_from VALUES (?, ?)", (made, source))
    return made


def moved(db: sqlite3.Connection, old: str, place: Place) -> None:
    """Every passage of draft `old` is fastened where it is in the next; one that is gone stays where it was."""
    rows = db.execute(
        "SELECT key, draft, paragraph, start_at, end_at, quote, words_before, words_after FROM desk_anchor "
        "WHERE draft = ?",
        (old,),
    ).fetchall()
    for key, *fields in rows:
        found = place(Anchor(*fields))
        if found is not None:
            db.execute(
                "UPDATE desk_anchor SET draft = ?, paragraph = ?, start_at = ?, end_at = ?, quote = ?, "
                "words_before = ?, words_after = ? WHERE key = ?",
                (*_row(found), key),
            )


def _row(anchor: Anchor) -> Iterable[object]:
    return (anchor.draft, anchor.paragraph, anchor.start, anchor.end, anchor.quote, anchor.before, anchor.after)
