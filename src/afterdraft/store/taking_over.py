"""The same draft brought in again, or further on: its scenes stay the same ones, and only their text changes."""

import sqlite3
from collections.abc import Mapping
from dataclasses import replace

from afterdraft.manuscript.division import Division, Scene
from afterdraft.store import cards, carrying, divisions, following
from afterdraft.work.ports.drafts import Place


def take_over(
    db: sqlite3.Connection,
    old: str,
    new: str,
    scenes: Mapping[str, str],
    *,
    chapters: Mapping[str, str],
    place: Place,
    now: str,
) -> None:
    """As `work.ports.drafts.DraftsDesk.take_over` says."""
    made = divisions.read(db, new)
    _let_go_of_new(db, scenes, chapters)
    for scene in divisions.read(db, old).scenes:
        if scene.id not in scenes:
            cards.loosen(db, scene.id, now=now)
            following.loosen(db, scene.id, now=now)
            db.execute("DELETE FROM desk_scene WHERE id = ?", (scene.id,))
    before = divisions.read(db, old)
    for table in ("desk_scene", "desk_chapter", "desk_part", "desk_arrangement", "desk_unit_card"):
        db.execute(f"UPDATE {table} SET draft = ? WHERE draft = ?", (new, old))  # noqa: S608 — own names
    division = _renamed(made, {b: a for a, b in scenes.items()}, {b: a for a, b in chapters.items()}, before)
    divisions.write(db, new, division)
    following.follow_units(db, new, before, division, now=now)
    following.lay_new(db, new, division)
    carrying.moved(db, old, place)
    db.execute("UPDATE desk_draft SET gave_way = ? WHERE id = ?", (new, old))
    _follow_in_the_order(db, old, new)


def _let_go_of_new(db: sqlite3.Connection, scenes: Mapping[str, str], chapters: Mapping[str, str]) -> None:
    """What came with the new file and is the same as what is there: the blank cards, and the rows themselves."""
    for scene in scenes.values():
        db.execute("DELETE FROM desk_card WHERE scene = ?", (scene,))
        db.execute("DELETE FROM desk_scene WHERE id = ?", (scene,))
    for chapter in chapters.values():
        db.execute("DELETE FROM desk_chapter WHERE id = ?", (chapter,))


def _renamed(made: Division, scenes: Mapping[str, str], chapters: Mapping[str, str], before: Division) -> Division:
    """The new division under the ids, codes and titles of what was there. `scenes`, `chapters`: new id to old."""
    were = {scene.id: scene for scene in before.scenes}

    def scene(one: Scene) -> Scene:
        was = were.get(scenes.get(one.id, ""))
        return replace(one, id=was.id, code=was.code, title=was.title or one.title) if was else one

    return replace(
        made,
        chapters=tuple(replace(one, id=chapters.get(one.id, one.id)) for one in made.chapters),
        scenes=tuple(scene(one) for one in made.scenes),
    )


def _follow_in_the_order(db: sqlite3.Connection, old: str, new: str) -> None:
    """It stands where the other stood."""
    (place,) = db.execute("SELECT place FROM desk_draft WHERE id = ?", (old,)).fetchone()
    db.execute("UPDATE desk_draft SET place = ? WHERE id = ?", (place, new))
