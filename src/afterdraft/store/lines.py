"""Threads, setups, reveals, strands, and what follows from what: rows of the writer's half."""

import sqlite3
from collections.abc import Callable, Sequence
from contextlib import AbstractContextManager
from dataclasses import replace

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.lines import Does, Follows, Line, LineKind, Point, Strand
from afterdraft.errors import Missing
from afterdraft.store.anchors import fasten, unfasten
from afterdraft.store.names import new_id
from afterdraft.store.rows import gone, require
from afterdraft.work.ports.lines import Lettered

_PLACE = "draft, paragraph, start_at, end_at, quote, words_before, words_after"  # the fields of `Anchor`, in order
_LINE = (
    "SELECT l.id, l.kind, l.name, l.letter, l.note, l.place, r.revision FROM desk_line l "
    "JOIN row_revision r ON r.id = l.id"
)
_POINT = (
    "SELECT p.id, p.line, p.does, p.scene, p.laid, p.person FROM desk_point p LEFT JOIN desk_scene s ON s.id = p.scene "
    "LEFT JOIN desk_person k ON k.id = p.person"
)
# Within a scene: a setup before its return, the reader before those of the cast.
_IN_ORDER = (
    "ORDER BY s.at IS NULL, s.at, instr('opens setup carries return learns closes payoff', p.does), k.place, p.id"
)
_ANCHORS = f"SELECT a.owner, {_PLACE} FROM desk_anchor a JOIN desk_point p ON p.id = a.owner"  # noqa: S608 — own names
_STRAND = (
    "SELECT t.id, t.name, t.letter, t.place, r.revision FROM desk_strand t JOIN row_revision r ON r.id = t.id "
    "ORDER BY t.place, t.key"
)
_FOLLOWS = (
    "SELECT f.id, f.scene, f.source, f.why, r.revision FROM desk_follows f JOIN row_revision r ON r.id = f.id "
    "JOIN desk_scene s ON s.id = f.scene JOIN desk_scene o ON o.id = f.source WHERE s.draft = ? ORDER BY s.at, o.at"
)
_TABLES: dict[Lettered, str] = {"line": "desk_line", "strand": "desk_strand"}


def all_lines(db: sqlite3.Connection) -> tuple[Line, ...]:
    """Without their points."""
    return tuple(Line(*row) for row in db.execute(f"{_LINE} ORDER BY l.place, l.key"))


def lines(db: sqlite3.Connection, draft: str) -> tuple[Line, ...]:
    """With their points in this draft, and those of planned cards."""
    points = db.execute(f"{_POINT} WHERE p.scene IS NULL OR s.draft = ? {_IN_ORDER}", (draft,))
    return _with_points(all_lines(db), points, db.execute(f"{_ANCHORS} {_ANCHOR_ORDER}"))


def line(db: sqlite3.Connection, id: str) -> Line:
    """With all its points. Raises `Missing`."""
    row = db.execute(f"{_LINE} WHERE l.id = ?", (id,)).fetchone()
    if row is None:
        raise Missing("This thread, setup or reveal")
    points = db.execute(f"{_POINT} WHERE p.line = ? {_IN_ORDER}", (id,))
    anchors = db.execute(f"{_ANCHORS} WHERE p.line = ? {_ANCHOR_ORDER}", (id,))
    return _with_points((Line(*row),), points, anchors)[0]


_ANCHOR_ORDER = "ORDER BY a.draft, a.paragraph, a.start_at"


def _with_points(known: tuple[Line, ...], points: sqlite3.Cursor, anchors: sqlite3.Cursor) -> tuple[Line, ...]:
    passages: dict[str, list[Anchor]] = {}
    for owner, *place in anchors:
        passages.setdefault(owner, []).append(Anchor(*place))
    by_line: dict[str, list[Point]] = {}
    for point in (Point(*row) for row in points):
        fastened = replace(point, anchors=tuple(passages.get(point.id, ())))
        by_line.setdefault(point.line, []).append(fastened)
    return tuple(replace(one, points=tuple(by_line.get(one.id, ()))) for one in known)


def all_strands(db: sqlite3.Connection) -> tuple[Strand, ...]:
    """Without their scenes."""
    return tuple(Strand(*row) for row in db.execute(_STRAND))


def strands(db: sqlite3.Connection, draft: str) -> tuple[Strand, ...]:
    """With their scenes in this draft."""
    scenes: dict[str, list[str]] = {}
    for strand, scene in db.execute(
        "SELECT t.strand, t.scene FROM desk_strand_scene t JOIN desk_scene s ON s.id = t.scene "
        "WHERE s.draft = ? ORDER BY s.at",
        (draft,),
    ):
        scenes.setdefault(strand, []).append(scene)
    return tuple(replace(one, scenes=tuple(scenes.get(one.id, ()))) for one in all_strands(db))


def follows(db: sqlite3.Connection, draft: str) -> tuple[Follows, ...]:
    return tuple(Follows(*row) for row in db.execute(_FOLLOWS, (draft,)))


class BookLines:
    """Fills `work.ports.lines.BookLines`."""

    _reading: Callable[[], AbstractContextManager[sqlite3.Connection]]

    def lines(self, draft: str) -> tuple[Line, ...]:
        with self._reading() as db:
            return lines(db, draft)

    def line(self, id: str) -> Line:
        with self._reading() as db:
            return line(db, id)

    def strands(self, draft: str) -> tuple[Strand, ...]:
        with self._reading() as db:
            return strands(db, draft)

    def follows(self, draft: str) -> tuple[Follows, ...]:
        with self._reading() as db:
            return follows(db, draft)


class DeskLines:
    """Fills `work.ports.lines.DeskLines`."""

    _db: sqlite3.Connection

    def all_lines(self) -> tuple[Line, ...]:
        return all_lines(self._db)

    def add_line(self, *, kind: LineKind, name: str, letter: str, place: str) -> str:
        made = new_id("line")
        self._db.execute(
            "INSERT INTO desk_line (id, kind, place, name, letter) VALUES (?, ?, ?, ?, ?)",
            (made, kind, place, name, letter),
        )
        return made

    def remove_line(self, id: str) -> None:
        for (point,) in self._db.execute("SELECT id FROM desk_point WHERE line = ?", (id,)).fetchall():
            self.remove_point(point)
        gone(self._db.execute("DELETE FROM desk_line WHERE id = ?", (id,)), "This thread, setup or reveal")

    def add_point(
        self,
        line: str,
        does: Does,
        *,
        scene: str | None,
        laid: str | None = None,
        person: str | None = None,
        anchors: Sequence[Anchor] = (),
    ) -> str:
        require(self._db, "desk_line", line, "This thread, setup or reveal")
        require(self._db, "desk_scene", scene, "This scene")
        require(self._db, "desk_laid", laid, "This card")
        require(self._db, "desk_person", person, "This person")
        row = (line, does, scene, laid, person)
        same = self._db.execute(_SAME, row).fetchone()
        if same and not anchors:
            return str(same[0])
        made = new_id("point")
        self._db.execute(
            "INSERT INTO desk_point (id, line, does, scene, laid, person) VALUES (?, ?, ?, ?, ?, ?)", (made, *row)
        )
        fasten(self._db, made, anchors)
        return made

    def remove_point(self, id: str) -> None:
        unfasten(self._db, id)
        gone(self._db.execute("DELETE FROM desk_point WHERE id = ?", (id,)), "This mark")

    def all_strands(self) -> tuple[Strand, ...]:
        return all_strands(self._db)

    def add_strand(self, *, name: str, letter: str, place: str) -> str:
        made = new_id("strand")
        self._db.execute(
            "INSERT INTO desk_strand (id, place, name, letter) VALUES (?, ?, ?, ?)", (made, place, name, letter)
        )
        return made

    def remove_strand(self, id: str) -> None:
        self._db.execute("DELETE FROM desk_strand_scene WHERE strand = ?", (id,))
        gone(self._db.execute("DELETE FROM desk_strand WHERE id = ?", (id,)), "This strand")

    def put_in_strand(self, scene: str, strand: str | None) -> None:
        require(self._db, "desk_scene", scene, "This scene")
        require(self._db, "desk_strand", strand, "This strand")
        is_in = self._db.execute("SELECT strand FROM desk_strand_scene WHERE scene = ?", (scene,)).fetchone()
        if is_in == (strand,) or (is_in is None and strand is None):
            return
        self._db.execute("DELETE FROM desk_strand_scene WHERE scene = ?", (scene,))
        if strand is not None:
            self._db.execute("INSERT INTO desk_strand_scene (scene, strand) VALUES (?, ?)", (scene, strand))

    def set_letter(self, kind: Lettered, id: str, letter: str) -> None:
        changed = self._db.execute(f"UPDATE {_TABLES[kind]} SET letter = ? WHERE id = ?", (letter, id))  # noqa: S608 — own names
        gone(changed, "This thread, setup, reveal or strand")

    def add_follows(self, *, scene: str, source: str, why: str) -> str:
        for one in (scene, source):
            require(self._db, "desk_scene", one, "This scene")
        known = self._db.execute("SELECT id FROM desk_follows WHERE scene = ? AND source = ?", (scene, source))
        if row := known.fetchone():
            return str(row[0])
        made = new_id("follows")
        self._db.execute(
            "INSERT INTO desk_follows (id, scene, source, why) VALUES (?, ?, ?, ?)", (made, scene, source, why)
        )
        return made

    def remove_follows(self, id: str) -> None:
        gone(self._db.execute("DELETE FROM desk_follows WHERE id = ?", (id,)), "This link")


_SAME = """
SELECT p.id FROM desk_point p WHERE p.line = ? AND p.does = ? AND p.scene IS ? AND p.laid IS ? AND p.person IS ?
AND NOT EXISTS (SELECT 1 FROM desk_anchor a WHERE a.owner = p.id)
"""
