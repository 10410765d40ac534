"""Cast and places, who is in a scene, where it happens, what people carry: rows of the writer's half."""

import sqlite3
from collections.abc import Callable
from contextlib import AbstractContextManager

from afterdraft.desk.cast import PRESENCES, Carried, Gender, Known, KnownKind, Presence, Present, Setting
from afterdraft.store.names import new_id
from afterdraft.store.rows import gone, require
from afterdraft.work.ports.cast import Listed

_WHAT: dict[Listed, str] = {
    "line": "This thread, setup or reveal",
    "strand": "This strand",
    "person": "This person",
    "place": "This place",
}
_PRESENT = (
    "SELECT p.scene, p.person, p.how FROM desk_presence p JOIN desk_scene s ON s.id = p.scene "
    "JOIN desk_person k ON k.id = p.person WHERE s.draft = ? ORDER BY s.at, k.place, k.key"
)
_SETTINGS = (
    "SELECT t.scene, t.place FROM desk_setting t JOIN desk_scene s ON s.id = t.scene "
    "JOIN desk_place k ON k.id = t.place WHERE s.draft = ? ORDER BY s.at, k.place, k.key"
)
_CARRIED = (
    "SELECT c.id, c.scene, c.person, c.comes_in, c.leaves, r.revision FROM desk_carried c "
    "JOIN row_revision r ON r.id = c.id JOIN desk_scene s ON s.id = c.scene JOIN desk_person k ON k.id = c.person"
)


def known(db: sqlite3.Connection, kind: KnownKind) -> tuple[Known, ...]:
    """The cast, or the places, in their order."""
    told = ", k.gender, k.narrator, k.followed" if kind == "person" else ""
    rows = db.execute(
        f"SELECT k.id, k.name, k.aliases, k.former, k.note, k.mark, k.place, r.revision{told} FROM desk_{kind} k "  # noqa: S608 — own names
        "JOIN row_revision r ON r.id = k.id ORDER BY k.place, k.key"
    )
    return tuple(_known(kind, *row) for row in rows)


def _known(
    kind: KnownKind,
    id: str,
    name: str,
    aliases: str,
    former: str,
    note: str,
    mark: str,
    place: str,
    revision: int,
    gender: Gender = "",
    narrator: int = 0,
    followed: int = 0,
) -> Known:
    others = _names(aliases), _names(former)
    return Known(id, kind, name, *others, note, mark, place, revision, gender, bool(narrator), bool(followed))


def _names(aliases: str) -> tuple[str, ...]:
    """One a line."""
    return tuple(name for line in aliases.splitlines() if (name := " ".join(line.split())))


class BookCast:
    """Fills `work.ports.cast.BookCast`."""

    _reading: Callable[[], AbstractContextManager[sqlite3.Connection]]

    def known(self, kind: KnownKind) -> tuple[Known, ...]:
        with self._reading() as db:
            return known(db, kind)

    def present(self, draft: str) -> tuple[Present, ...]:
        with self._reading() as db:
            return tuple(Present(*row) for row in db.execute(_PRESENT, (draft,)))

    def settings(self, draft: str) -> tuple[Setting, ...]:
        with self._reading() as db:
            return tuple(Setting(*row) for row in db.execute(_SETTINGS, (draft,)))

    def carried(self, draft: str) -> tuple[Carried, ...]:
        with self._reading() as db:
            rows = db.execute(f"{_CARRIED} WHERE s.draft = ? ORDER BY s.at, k.place, k.key", (draft,))
            return tuple(Carried(*row) for row in rows)


class DeskCast:
    """Fills `work.ports.cast.DeskCast`."""

    _db: sqlite3.Connection

    def known(self, kind: KnownKind) -> tuple[Known, ...]:
        return known(self._db, kind)

    def add_known(self, kind: KnownKind, *, name: str, place: str) -> str:
        made = new_id(kind)
        self._db.execute(f"INSERT INTO desk_{kind} (id, place, name) VALUES (?, ?, ?)", (made, place, name))  # noqa: S608 — own names
        return made

    def remove_known(self, kind: KnownKind, id: str) -> None:
        for table in ("desk_point", "desk_said") if kind == "person" else ():
            self._db.execute(
                f"DELETE FROM desk_anchor WHERE owner IN (SELECT id FROM {table} WHERE person = ?)",  # noqa: S608 — own names
                (id,),
            )
        for table, column in _MARKED[kind]:
            self._db.execute(f"DELETE FROM {table} WHERE {column} = ?", (id,))  # noqa: S608 — own names
        gone(self._db.execute(f"DELETE FROM desk_{kind} WHERE id = ?", (id,)), _WHAT[kind])  # noqa: S608

    def join_known(self, kind: KnownKind, *, into: str, of: str) -> None:
        for one in (into, of):
            require(self._db, f"desk_{kind}", one, _WHAT[kind])
        if kind == "person":
            self._join_people(into, of)
        else:
            self._join_places(into, of)
        self._join_absences(into, of)
        self._join_words(kind, into, of)
        self._db.execute(f"DELETE FROM desk_{kind} WHERE id = ?", (of,))  # noqa: S608 — own names

    def _join_people(self, into: str, of: str) -> None:
        for table in ("desk_point", "desk_said"):
            self._db.execute(f"UPDATE {table} SET person = ? WHERE person = ?", (into, of))  # noqa: S608 — own names
        self._db.execute(
            "UPDATE desk_person AS p SET gender = CASE p.gender WHEN '' THEN o.gender ELSE p.gender END, "
            "narrator = max(p.narrator, o.narrator), followed = max(p.followed, o.followed) "
            "FROM desk_person o WHERE o.id = ? AND p.id = ?",
            (of, into),
        )
        hows = dict(self._db.execute("SELECT scene, how FROM desk_presence WHERE person = ?", (into,)))
        for scene, how in self._db.execute("SELECT scene, how FROM desk_presence WHERE person = ?", (of,)).fetchall():
            self.set_presence(scene, of, None)
            self.set_presence(scene, into, min(how, hows.get(scene, how), key=PRESENCES.index))
        rows = self._db.execute(f"{_CARRIED} WHERE c.person = ?", (of,)).fetchall()
        for one in (Carried(*row) for row in rows):
            self.put_down(one.id)
            self.carry(one.scene, into, comes_in=one.comes_in, leaves=one.leaves)

    def _join_places(self, into: str, of: str) -> None:
        for (scene,) in self._db.execute("SELECT scene FROM desk_setting WHERE place = ?", (of,)).fetchall():
            self.set_setting(scene, of, there=False)
            self.set_setting(scene, into, there=True)

    def _join_absences(self, into: str, of: str) -> None:
        """Where one of them is not, the whole is not, unless it is marked there."""
        self._db.execute(
            "INSERT INTO desk_absent SELECT scene, ? FROM desk_absent WHERE who = ? ON CONFLICT DO NOTHING", (into, of)
        )
        self._db.execute("DELETE FROM desk_absent WHERE who = ?", (of,))
        for table, column in (("desk_presence", "person"), ("desk_setting", "place")):
            self._db.execute(
                f"DELETE FROM desk_absent WHERE who = ?1 AND scene IN (SELECT scene FROM {table} WHERE {column} = ?1)",  # noqa: S608 — own names
                (into,),
            )

    def _join_words(self, kind: KnownKind, into: str, of: str) -> None:
        """The names of the one that goes become other names of the one that stays, its earlier names earlier ones; its
        note goes under that one's."""
        both = {one.id: one for one in known(self._db, kind)}
        kept, gone_one = both[into], both[of]
        others = dict.fromkeys([*kept.aliases, gone_one.name, *gone_one.aliases])
        others.pop(kept.name, None)
        former = dict.fromkeys([*kept.former, *gone_one.former])
        self._db.execute(
            f"UPDATE desk_{kind} SET aliases = ?, former = ?, note = ?, mark = ? WHERE id = ?",  # noqa: S608 — own names
            ("\n".join(others), "\n".join(former), _under(kept.note, gone_one.note), kept.mark or gone_one.mark, into),
        )

    def set_place(self, kind: Listed, id: str, place: str) -> None:
        gone(self._db.execute(f"UPDATE desk_{kind} SET place = ? WHERE id = ?", (place, id)), _WHAT[kind])  # noqa: S608 — own names

    def viewpoints(self, scene: str) -> tuple[str, ...]:
        rows = self._db.execute("SELECT person FROM desk_presence WHERE scene = ? AND how = 'viewpoint'", (scene,))
        return tuple(person for (person,) in rows)

    def set_presence(self, scene: str, person: str, how: Presence | None) -> None:
        require(self._db, "desk_scene", scene, "This scene")
        require(self._db, "desk_person", person, _WHAT["person"])
        here = (scene, person)
        if how is None:
            self._db.execute("DELETE FROM desk_presence WHERE scene = ? AND person = ?", here)
        else:
            self._db.execute(
                "INSERT INTO desk_presence (scene, person, how) VALUES (?, ?, ?) "
                "ON CONFLICT (scene, person) DO UPDATE SET how = excluded.how",
                (*here, how),
            )
            self._db.execute("DELETE FROM desk_absent WHERE scene = ? AND who = ?", here)

    def set_setting(self, scene: str, place: str, *, there: bool) -> None:
        here = (scene, place)
        if there:
            require(self._db, "desk_scene", scene, "This scene")
            require(self._db, "desk_place", place, _WHAT["place"])
            self._db.execute("INSERT INTO desk_setting (scene, place) VALUES (?, ?) ON CONFLICT DO NOTHING", here)
            self._db.execute("DELETE FROM desk_absent WHERE scene = ? AND who = ?", here)
        else:
            self._db.execute("DELETE FROM desk_setting WHERE scene = ? AND place = ?", here)

    def carry(self, scene: str, person: str, *, comes_in: str, leaves: str) -> Carried:
        require(self._db, "desk_scene", scene, "This scene")
        require(self._db, "desk_person", person, _WHAT["person"])
        row = self._db.execute(f"{_CARRIED} WHERE c.scene = ? AND c.person = ?", (scene, person)).fetchone()
        if row is None:
            self._db.execute(
                "INSERT INTO desk_carried (id, scene, person, comes_in, leaves) VALUES (?, ?, ?, ?, ?)",
                (new_id("carried"), scene, person, comes_in, leaves),
            )
        else:
            is_there = Carried(*row)
            self._db.execute(
                "UPDATE desk_carried SET comes_in = ?, leaves = ? WHERE id = ?",
                (_under(is_there.comes_in, comes_in), _under(is_there.leaves, leaves), is_there.id),
            )
        return Carried(*self._db.execute(f"{_CARRIED} WHERE c.scene = ? AND c.person = ?", (scene, person)).fetchone())

    def put_down(self, id: str) -> None:
        gone(self._db.execute("DELETE FROM desk_carried WHERE id = ?", (id,)), "This")


_MARKED: dict[KnownKind, tuple[tuple[str, str], ...]] = {
    "person": (
        ("desk_point", "person"),
        ("desk_presence", "person"),
        ("desk_carried", "person"),
        ("desk_said", "person"),
        ("desk_absent", "who"),
    ),
    "place": (("desk_setting", "place"), ("desk_absent", "who")),
}


def _under(upper: str, lower: str) -> str:
    return "\n".join(text for text in (upper, lower) if text.strip())
