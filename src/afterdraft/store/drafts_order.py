"""Drafts one behind the other: their order, what she says of their scenes, and comparisons that were kept."""

import json
import sqlite3
import zlib
from collections.abc import Callable, Mapping, Sequence
from contextlib import AbstractContextManager

from afterdraft.desk.draft import Became, DraftState, NoteWas, SaidOfScenes
from afterdraft.desk.order import between
from afterdraft.store import carrying, drafts, settled, taking_over
from afterdraft.store.journal import Journal
from afterdraft.store.rows import require
from afterdraft.work.ports.drafts import Place

_STATES = """
SELECT d.id, CASE WHEN d.gave_way IS NULL THEN
    (SELECT count(*) FROM desk_draft o WHERE NOT o.hidden AND o.gave_way IS NULL AND o.place <= d.place) END,
    d.part_way, d.gave_way, t.brought_in,
    (SELECT json_group_array(name) FROM (SELECT name FROM text_file f WHERE f.draft = d.id ORDER BY n))
FROM desk_draft d JOIN text_draft t ON t.id = d.id WHERE NOT d.hidden ORDER BY d.place, t.ordinal
"""
_BECAME = (
    "SELECT b.scene, b.became FROM desk_became b JOIN desk_scene s ON s.id = b.scene WHERE s.draft IN (:old, :new)"
)
_LIVES_ON = (
    "SELECT l.old, l.new, l.so FROM desk_lives_on l JOIN desk_scene o ON o.id = l.old "
    "JOIN desk_scene n ON n.id = l.new WHERE o.draft = :old AND n.draft = :new"
)
_THEN = (
    "SELECT w.note, w.scene, w.chapter, w.state FROM desk_was_on w JOIN desk_note n ON n.id = w.note "
    "WHERE w.draft = ? ORDER BY n.key"
)


def states(db: sqlite3.Connection) -> tuple[DraftState, ...]:
    return tuple(
        DraftState(draft, number, bool(part_way), gave_way, brought_in, tuple(json.loads(files)))
        for draft, number, part_way, gave_way, brought_in, files in db.execute(_STATES)
    )


def said_of(db: sqlite3.Connection, old: str, new: str) -> SaidOfScenes:
    given = {"old": old, "new": new}
    lives_on = {(one, other): bool(so) for one, other, so in db.execute(_LIVES_ON, given)}
    return SaidOfScenes(dict(db.execute(_BECAME, given)), lives_on)


class BookDrafts:
    """Fills `work.ports.drafts.DraftsBook`."""

    _reading: Callable[[], AbstractContextManager[sqlite3.Connection]]
    _write: Callable[[Callable[[sqlite3.Connection, Journal], None]], None]

    def texts(self, draft: str) -> tuple[str, ...]:
        with self._reading() as db:
            drafts.paragraph_count(db, draft)
            return drafts.texts(db, draft)

    def all_drafts(self) -> tuple[DraftState, ...]:
        with self._reading() as db:
            return states(db)

    def said_of(self, old: str, new: str) -> SaidOfScenes:
        with self._reading() as db:
            return said_of(db, old, new)

    def kept_comparison(self, old: str, new: str) -> tuple[str, str] | None:
        with self._reading() as db:
            row = db.execute("SELECT key, form FROM read_comparison WHERE old = ? AND new = ?", (old, new)).fetchone()
        return (row[0], zlib.decompress(row[1]).decode()) if row else None

    def keep_comparison(self, old: str, new: str, key: str, form: str) -> None:
        packed = zlib.compress(form.encode())

        def keep(db: sqlite3.Connection, _: Journal) -> None:
            db.execute("DELETE FROM read_comparison WHERE old = ? AND new = ?", (old, new))
            db.execute("INSERT INTO read_comparison VALUES (?, ?, ?, ?)", (old, new, key, packed))

        self._write(keep)

    def notes_then(self, draft: str) -> tuple[NoteWas, ...]:
        with self._reading() as db:
            return tuple(NoteWas(*row) for row in db.execute(_THEN, (draft,)))

    def taken_from(self) -> Mapping[str, str]:
        with self._reading() as db:
            return dict(db.execute("SELECT id, source FROM desk_from"))

    def kept_cards(self) -> Mapping[str, tuple[str, ...]]:
        with self._reading() as db:
            rows = db.execute("SELECT card, source FROM desk_kept_card")
            return {card: tuple(source.split("\n")) for card, source in rows}

    def rounds(self) -> Mapping[str, str]:
        with self._reading() as db:
            return dict(db.execute("SELECT draft, form FROM desk_round"))


class DeskDrafts:
    """Fills `work.ports.drafts.DraftsDesk`."""

    _db: sqlite3.Connection
    _journal: Journal
    _now: str

    def unlogged(self) -> AbstractContextManager[None]:
        return self._journal.paused()

    def show_draft(self, draft: str, *, before: str | None = None, part_way: bool = False) -> None:
        self._db.execute(
            "UPDATE desk_draft SET hidden = 0, place = ?, part_way = ? WHERE id = ?",
            (_place(self._db, before), part_way, draft),
        )

    def texts(self, draft: str) -> tuple[str, ...]:
        return drafts.texts(self._db, draft)

    def all_drafts(self) -> tuple[DraftState, ...]:
        return states(self._db)

    def said_of(self, old: str, new: str) -> SaidOfScenes:
        return said_of(self._db, old, new)

    def recode(self, draft: str, codes: Mapping[str, str]) -> None:
        had = dict(self._db.execute("SELECT id, code FROM desk_scene WHERE draft = ?", (draft,)))
        free = [(had[scene],) for scene, code in codes.items() if had[scene] != code]
        self._db.executemany(
            "UPDATE desk_scene SET code = ? WHERE id = ?", [(code, one) for one, code in codes.items()]
        )
        self._db.executemany(
            "DELETE FROM code_used WHERE code = ?1 AND NOT EXISTS (SELECT 1 FROM desk_scene WHERE code = ?1)", free
        )

    def carry_over(
        self,
        old: str,
        new: str,
        scenes: Mapping[str, Sequence[str]],
        *,
        chapters: Mapping[str, str],
        place: Place,
    ) -> None:
        carrying.carry_over(self._db, old, new, scenes, chapters=chapters, place=place)

    def take_back(self, old: str, new: str) -> None:
        carrying.take_back(self._db, old, new)

    def take_over(
        self, old: str, new: str, scenes: Mapping[str, str], *, chapters: Mapping[str, str], place: Place
    ) -> None:
        taking_over.take_over(self._db, old, new, scenes, chapters=chapters, place=place, now=self._now)

    def settle_again(self, draft: str) -> None:
        settled.settle_again(self._db, draft)

    def say_became(self, scene: str, became: Became | None) -> None:
        require(self._db, "desk_scene", scene, "This scene")
        if became is None:
            self._db.execute("DELETE FROM desk_became WHERE scene = ?", (scene,))
        else:
            self._db.execute(
                "INSERT INTO desk_became VALUES (?, ?) ON CONFLICT (scene) DO UPDATE SET became = excluded.became",
                (scene, became),
            )

    def say_lives_on(self, old: str, new: str, *, so: bool | None) -> None:
        for scene in (old, new):
            require(self._db, "desk_scene", scene, "This scene")
        if so is None:
            self._db.execute("DELETE FROM desk_lives_on WHERE old = ? AND new = ?", (old, new))
        else:
            self._db.execute(
                "INSERT INTO desk_lives_on VALUES (?, ?, ?) ON CONFLICT (old, new) DO UPDATE SET so = excluded.so",
                (old, new, so),
            )

    def kept_card(self, card: str, sources: Sequence[str]) -> None:
        require(self._db, "desk_card", card, "This card")
        self._db.execute("DELETE FROM desk_kept_card WHERE card = ?", (card,))
        if sources:
            self._db.execute("INSERT INTO desk_kept_card VALUES (?, ?)", (card, "\n".join(sources)))

    def begin_round(self, draft: str, form: str) -> None:
        self._db.execute(
            "INSERT INTO desk_round VALUES (?, ?) ON CONFLICT (draft) DO UPDATE SET form = excluded.form", (draft, form)
        )


def _place(db: sqlite3.Connection, before: str | None) -> str:
    """A key at the end, or right before a draft. Raises `Missing`."""
    if before is None:
        return between(db.execute("SELECT coalesce(max(place), '') FROM desk_draft WHERE NOT hidden").fetchone()[0], "")
    require(db, "desk_draft", before, "This draft")
    (after,) = db.execute("SELECT place FROM desk_draft WHERE id = ?", (before,)).fetchone()
    last = "SELECT coalesce(max(place), '') FROM desk_draft WHERE place < ? AND NOT hidden"
    return between(db.execute(last, (after,)).fetchone()[0], after)
