"""What refers to scenes, chapters and parts follows them when the split is mended; nothing the writer made is lost.

`merge`: a scene goes into another. `loosen`: it goes and no other takes it in. `follow_units`: chapters and parts that
go. `lay_new`: a scene that came gets a card in every arrangement of its draft.
"""

import sqlite3
from collections.abc import Iterable, Sequence
from typing import TypeVar

from afterdraft.desk.order import between
from afterdraft.desk.unit_card import UNIT_FIELDS
from afterdraft.manuscript.division import Chapter, Division, Part
from afterdraft.manuscript.naming import chapter_name
from afterdraft.store import lineage, notes
from afterdraft.store.homes import homes
from afterdraft.store.names import new_id

Unit = TypeVar("Unit", Chapter, Part)
_NEXT = ("what", "viewpoint", "people", "setting", "time", "length")
_FASTENED = ("desk_note", "desk_point", "desk_change_place")  # what may be fastened to a card of an arrangement
_OF_SCENE = (
    "desk_strand_scene",
    "desk_setting",
    "desk_presence",
    "desk_carried",
    "desk_follows",
    "desk_absent",
    "desk_scene_time",
)
_STRENGTH = ("mentioned", "on page", "viewpoint")


def merge(db: sqlite3.Connection, *, into: str, of: str, now: str) -> None:
    """Scene `of` goes into scene `into`, and so does all that refers to it."""
    _merge_laid(db, into, of)
    _merge_points(db, into, of)
    _follow_scene(db, "desk_change_place", into, of)
    _keep_or_drop(db, "desk_strand_scene", "strand", into, of, alike="1")
    _keep_or_drop(db, "desk_setting", "place", into, of, alike="mine.place = other.place")
    _merge_follows(db, into, of, now)
    _merge_presence(db, into, of)
    _merge_carried(db, into, of)
    _keep_or_drop(db, "desk_absent", "who", into, of, alike="mine.who = other.who")
    _merge_times(db, into, of)
    lineage.merge(db, into=into, of=of)


def loosen(db: sqlite3.Connection, scene: str, *, now: str) -> None:
    """Scene `scene` goes. Words said of it become a loose note; cards with anything on them stay, without a scene."""
    title, code = db.execute("SELECT title, code FROM desk_scene WHERE id = ?", (scene,)).fetchone()
    _loosen_laid(db, scene, title)
    words = [text for (text,) in db.execute(_WORDS, {"scene": scene}) if text.strip()]
    if words:
        notes.add_note(db, text="\n".join(words), scene=None, now=now)
    db.execute("UPDATE desk_point SET scene = NULL WHERE scene = ?", (scene,))
    db.execute(
        "UPDATE desk_change_place SET scene = NULL, words = CASE words WHEN '' THEN ? ELSE words END WHERE scene = ?",
        (title or code, scene),
    )
    for table in _OF_SCENE:
        db.execute(f"DELETE FROM {table} WHERE scene = ?", (scene,))  # noqa: S608 — own names, here and below
    db.execute("DELETE FROM desk_follows WHERE source = ?", (scene,))
    lineage.loosen(db, scene)


def follow_laid(db: sqlite3.Connection, *, into: str, of: str) -> None:
    """What is fastened to card `of` of an arrangement goes to card `into`."""
    for table in _FASTENED:
        db.execute(f"UPDATE {table} SET laid = ? WHERE laid = ?", (into, of))  # noqa: S608


def follow_points(db: sqlite3.Connection, draft: str) -> None:
    """Points on passages go to the scenes that hold their passages now; where none does, they stay where they are."""
    home = homes(db, draft)
    for point, scene, paragraph in db.execute(_FASTENED_POINTS, (draft,)).fetchall():
        holder = home(paragraph)
        if holder not in (None, scene):
            db.execute("UPDATE desk_point SET scene = ? WHERE id = ?", (holder, point))


def follow_units(db: sqlite3.Connection, draft: str, old: Division, new: Division, *, now: str) -> None:
    """What belongs to chapters and parts that went goes to those that now hold their beginnings, or to the book."""
    for chapter in _gone(old.chapters, new.chapters):
        holder = _holder(new.chapters, chapter.at)
        db.execute(
            "UPDATE desk_note SET chapter = ?, about_book = about_book OR ? WHERE chapter = ?",
            (holder, holder is None, chapter.id),
        )
        db.execute(
            "UPDATE desk_row SET title = ? WHERE chapter = ? AND title = ''", (chapter_name(chapter), chapter.id)
        )
        db.execute("UPDATE desk_row SET chapter = NULL WHERE chapter = ?", (chapter.id,))
        lineage.follow_chapter(db, chapter.id, holder)
        _merge_unit_card(db, draft, "chapter", chapter.id, holder, chapter_name(chapter), now)
    for part in _gone(old.parts, new.parts):
        holder = _holder(new.parts, part.at)
        db.execute("UPDATE desk_row SET part = ? WHERE part = ?", (holder, part.id))
        _merge_unit_card(db, draft, "part", part.id, holder, part.title, now)


def lay_new(db: sqlite3.Connection, draft: str, division: Division) -> None:
    """Each scene without a card in an arrangement of its draft gets one, after the card of the scene before it."""
    for (arrangement,) in db.execute("SELECT id FROM desk_arrangement WHERE draft = ?", (draft,)).fetchall():
        laid = {scene for (scene,) in db.execute(_LAID_SCENES, (arrangement,))}
        for n, scene in enumerate(division.scenes):
            if scene.id not in laid:
                _lay_beside(db, arrangement, scene.id, [one.id for one in reversed(division.scenes[:n])])


_WORDS = """
SELECT p.name || ': ' || trim(c.comes_in || char(10) || c.leaves, char(10))
FROM desk_carried c JOIN desk_person p ON p.id = c.person WHERE c.scene = :scene AND trim(c.comes_in || c.leaves) <> ''
UNION ALL SELECT why FROM desk_follows WHERE scene = :scene OR source = :scene
UNION ALL SELECT words FROM desk_scene_time WHERE scene = :scene
"""
_FASTENED_POINTS = """
SELECT p.id, p.scene, min(a.paragraph) FROM desk_point p JOIN desk_anchor a ON a.owner = p.id
WHERE a.draft = ? AND p.scene IS NOT NULL GROUP BY p.id
"""
_LAID_SCENES = "SELECT s.scene FROM desk_laid_scene s JOIN desk_laid l ON l.id = s.laid WHERE l.arrangement = ?"
_LYING = """
SELECT l.id, l.arrangement, l.code = d.code, (SELECT count(*) FROM desk_laid_scene o WHERE o.laid = l.id)
FROM desk_laid l JOIN desk_laid_scene s ON s.laid = l.id JOIN desk_scene d ON d.id = s.scene
WHERE s.scene = ? ORDER BY l.code <> d.code, l.key
"""


def _merge_laid(db: sqlite3.Connection, into: str, of: str) -> None:
    """The own card of scene `of` goes into that of scene `into`; other cards that stand for `of` stand for `into`."""
    takers: dict[str, str] = {}
    for laid, arrangement, _, _ in db.execute(_LYING, (into,)).fetchall():
        takers.setdefault(arrangement, laid)
    for laid, arrangement, own, scenes in db.execute(_LYING, (of,)).fetchall():
        taker = takers.get(arrangement)
        if taker not in (None, laid) and own and scenes == 1:
            _join_laid(db, str(taker), laid)
        else:
            _stand_for(db, laid, into, of)


def _join_laid(db: sqlite3.Connection, into: str, of: str) -> None:
    columns = ", ".join(("home", "place", "intent", "title", *_NEXT))
    read = f"SELECT {columns} FROM desk_laid WHERE id = ?"  # noqa: S608
    (home, place, intent, title, *texts), (home2, place2, intent2, title2, *more) = (
        db.execute(read, (laid,)).fetchone() for laid in (into, of)
    )
    if home is None:  # what is told now must not lie aside because half of it did
        home, place = home2, place2
    both = [_under(one, other) for one, other in zip(texts, more, strict=True)]
    _delete_laid(db, of, into=into)
    assigned = ", ".join(f"{name} = ?" for name in columns.split(", "))
    db.execute(
        f"UPDATE desk_laid SET {assigned} WHERE id = ?",  # noqa: S608
        (home, place, intent or intent2, title or title2, *both, into),
    )


def _delete_laid(db: sqlite3.Connection, laid: str, *, into: str | None = None) -> None:
    if into is not None:
        follow_laid(db, into=into, of=laid)
    db.execute("DELETE FROM desk_laid_scene WHERE laid = ?", (laid,))
    db.execute("DELETE FROM desk_laid WHERE id = ?", (laid,))


def _stand_for(db: sqlite3.Connection, laid: str, into: str, of: str) -> None:
    if db.execute("SELECT 1 FROM desk_laid_scene WHERE laid = ? AND scene = ?", (laid, into)).fetchone():
        db.execute("DELETE FROM desk_laid_scene WHERE laid = ? AND scene = ?", (laid, of))
    else:
        db.execute("UPDATE desk_laid_scene SET scene = ? WHERE laid = ? AND scene = ?", (into, laid, of))


def _loosen_laid(db: sqlite3.Connection, scene: str, title: str) -> None:
    for laid, _, _, scenes in db.execute(_LYING, (scene,)).fetchall():
        db.execute("DELETE FROM desk_laid_scene WHERE laid = ? AND scene = ?", (laid, scene))
        if scenes == 1 and _is_blank(db, laid):
            _delete_laid(db, laid)
        elif scenes == 1:
            db.execute("UPDATE desk_laid SET title = ? WHERE id = ? AND title = ''", (title, laid))


def _is_blank(db: sqlite3.Connection, laid: str) -> bool:
    words = " || ".join(("title", *_NEXT))
    written = db.execute(f"SELECT intent IS NOT NULL OR {words} <> '' FROM desk_laid WHERE id = ?", (laid,))  # noqa: S608
    if written.fetchone()[0]:
        return False
    return not any(db.execute(f"SELECT 1 FROM {table} WHERE laid = ?", (laid,)).fetchone() for table in _FASTENED)  # noqa: S608


def _merge_points(db: sqlite3.Connection, into: str, of: str) -> None:
    """A point that says what another already says of scene `into`, and is fastened to no passage, goes."""
    db.execute(
        "DELETE FROM desk_point WHERE scene = :of AND laid IS NULL AND id NOT IN (SELECT owner FROM desk_anchor) "
        "AND EXISTS (SELECT 1 FROM desk_point o WHERE o.scene = :into AND o.line = desk_point.line "
        "AND o.does = desk_point.does AND o.person IS desk_point.person)",
        {"into": into, "of": of},
    )
    _follow_scene(db, "desk_point", into, of)


def _follow_scene(db: sqlite3.Connection, table: str, into: str, of: str) -> None:
    db.execute(f"UPDATE {table} SET scene = ? WHERE scene = ?", (into, of))  # noqa: S608


def _keep_or_drop(db: sqlite3.Connection, table: str, column: str, into: str, of: str, *, alike: str) -> None:
    """Rows of scene `of` go to `into`, but for those like one that `into` has."""
    db.execute(
        f"DELETE FROM {table} AS other WHERE scene = :of "  # noqa: S608
        f"AND EXISTS (SELECT 1 FROM {table} mine WHERE mine.scene = :into AND {alike})",
        {"into": into, "of": of},
    )
    _follow_scene(db, table, into, of)


def _merge_follows(db: sqlite3.Connection, into: str, of: str, now: str) -> None:
    """Links to and from `of` become those of `into`; two that are now one have both reasons; none leads to itself:
    why one half followed from the other is kept as a note on the scene."""
    for own, scene, source, why in db.execute(
        "SELECT id, scene, source, why FROM desk_follows WHERE :of IN (scene, source)", {"of": of}
    ).fetchall():
        link = (into if scene == of else scene, into if source == of else source)
        kept = db.execute("SELECT id, why FROM desk_follows WHERE scene = ? AND source = ?", link).fetchone()
        if link == (into, into) or kept:
            db.execute("DELETE FROM desk_follows WHERE id = ?", (own,))
        if kept:
            db.execute("UPDATE desk_follows SET why = ? WHERE id = ?", (_under(kept[1], why), kept[0]))
        elif link != (into, into):
            db.execute("UPDATE desk_follows SET scene = ?, source = ? WHERE id = ?", (*link, own))
        elif why.strip():
            notes.add_note(db, text=why, scene=into, now=now)


def _merge_presence(db: sqlite3.Connection, into: str, of: str) -> None:
    """Who is in both is in the whole as in the half where they are seen more closely."""
    found = db.execute("SELECT person, how FROM desk_presence WHERE scene IN (?, ?)", (into, of)).fetchall()
    closest: dict[str, str] = {}
    for person, how in found:
        closest[person] = max(closest.get(person, how), how, key=_STRENGTH.index)
    db.execute("DELETE FROM desk_presence WHERE scene = ?", (of,))
    db.executemany(
        "INSERT INTO desk_presence VALUES (?, ?, ?) ON CONFLICT (scene, person) DO UPDATE SET how = excluded.how",
        [(into, person, how) for person, how in closest.items()],
    )


def _merge_carried(db: sqlite3.Connection, into: str, of: str) -> None:
    for own, person, comes_in, leaves in db.execute(
        "SELECT id, person, comes_in, leaves FROM desk_carried WHERE scene = ?", (of,)
    ).fetchall():
        kept = db.execute(
            "SELECT id, comes_in, leaves FROM desk_carried WHERE scene = ? AND person = ?", (into, person)
        ).fetchone()
        if kept is None:
            db.execute("UPDATE desk_carried SET scene = ? WHERE id = ?", (into, own))
            continue
        db.execute("DELETE FROM desk_carried WHERE id = ?", (own,))
        db.execute(
            "UPDATE desk_carried SET comes_in = ?, leaves = ? WHERE id = ?",
            (_under(kept[1], comes_in), _under(kept[2], leaves), kept[0]),
        )


def _merge_times(db: sqlite3.Connection, into: str, of: str) -> None:
    """The whole happens when its halves do; two times stand one behind the other."""
    read = "SELECT words FROM desk_scene_time WHERE scene = ?"
    mine, other = (db.execute(read, (scene,)).fetchone() for scene in (into, of))
    if mine and other and mine != other:
        db.execute("UPDATE desk_scene_time SET words = ? WHERE scene = ?", (f"{mine[0]}; {other[0]}", into))
    _keep_or_drop(db, "desk_scene_time", "words", into, of, alike="1")


def _merge_unit_card(
    db: sqlite3.Connection, draft: str, kind: str, gone: str, holder: str | None, called: str, now: str
) -> None:
    columns = ", ".join(UNIT_FIELDS)
    read = f"SELECT id, {columns} FROM desk_unit_card WHERE draft = ? AND kind = ? AND unit = ?"  # noqa: S608
    card = db.execute(read, (draft, kind, gone)).fetchone()
    if card is None:
        return
    kept = db.execute(read, (draft, kind, holder)).fetchone() if holder else None
    if holder and kept is None:
        db.execute("UPDATE desk_unit_card SET unit = ? WHERE id = ?", (holder, card[0]))
        return
    db.execute("DELETE FROM desk_unit_card WHERE id = ?", (card[0],))
    words = [text for text in card[1:] if text.strip()]
    if kept is not None:
        both = [_under(one, other) for one, other in zip(kept[1:], card[1:], strict=True)]
        assigned = ", ".join(f"{name} = ?" for name in UNIT_FIELDS)
        db.execute(f"UPDATE desk_unit_card SET {assigned} WHERE id = ?", (*both, kept[0]))  # noqa: S608
    elif words:
        note = notes.add_note(db, text="\n".join([*([called] if called else []), *words]), scene=None, now=now)
        db.execute("UPDATE desk_note SET about_book = 1 WHERE id = ?", (note.id,))


def _lay_beside(db: sqlite3.Connection, arrangement: str, scene: str, before: Iterable[str]) -> None:
    """After the card of the nearest scene before it that has one; else before the first card; else aside."""
    (code,) = db.execute("SELECT code FROM desk_scene WHERE id = ?", (scene,)).fetchone()
    home, place = _spot(db, arrangement, before)
    made = new_id("laid")
    db.execute(
        "INSERT INTO desk_laid (id, arrangement, home, place, code) VALUES (?, ?, ?, ?, ?)",
        (made, arrangement, home, place, code),
    )
    db.execute("INSERT INTO desk_laid_scene (laid, n, scene) VALUES (?, 0, ?)", (made, scene))


def _spot(db: sqlite3.Connection, arrangement: str, before: Iterable[str]) -> tuple[str | None, str]:
    for scene in before:
        beside = next((laid for laid, own, *_ in db.execute(_LYING, (scene,)) if own == arrangement), None)
        if beside is not None:
            home, place = db.execute("SELECT home, place FROM desk_laid WHERE id = ?", (beside,)).fetchone()
            return home, between(place, _edge(db, arrangement, home, after=place))
    first = db.execute(
        "SELECT id FROM desk_row WHERE arrangement = ? ORDER BY place, id LIMIT 1", (arrangement,)
    ).fetchone()
    home = first[0] if first else None
    return home, between("", _edge(db, arrangement, home, after=""))


def _edge(db: sqlite3.Connection, arrangement: str, home: str | None, *, after: str) -> str:
    """The first key behind `after` in that line; "" at its end."""
    row = db.execute(
        "SELECT min(place) FROM desk_laid WHERE arrangement = ? AND home IS ? AND place > ?", (arrangement, home, after)
    ).fetchone()
    return row[0] or ""


def _gone(old: Sequence[Unit], new: Sequence[Unit]) -> list[Unit]:
    left = {unit.id for unit in new}
    return [unit for unit in old if unit.id not in left]


def _holder(units: Sequence[Unit], at: int) -> str | None:
    """Id of the unit that holds paragraph `at`: the last that begins before it."""
    return next((unit.id for unit in reversed(units) if unit.at <= at), None)


def _under(one: str, other: str) -> str:
    return "\n".join(text for text in (one, other) if text.strip())
