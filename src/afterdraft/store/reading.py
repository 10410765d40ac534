"""What was read off the page, which can be made again; and what the writer says of it, which is hers."""

import sqlite3
import zlib
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import AbstractContextManager
from itertools import islice

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.cast import Gender, KnownKind, SaidBy
from afterdraft.store.anchors import anchors_of, fasten, unfasten
from afterdraft.store.journal import Journal
from afterdraft.store.names import new_id
from afterdraft.store.rows import gone, require

_ABSENT = "SELECT a.scene, a.who FROM desk_absent a JOIN desk_scene s ON s.id = a.scene WHERE s.draft = ?"
_TIMES = "SELECT t.scene, t.words FROM desk_scene_time t JOIN desk_scene s ON s.id = t.scene WHERE s.draft = ?"
_AT_ONCE = 500  # keys in one question; SQLite takes 999 at least


class BookReading:
    """Fills `work.ports.reading.BookReading`."""

    _reading: Callable[[], AbstractContextManager[sqlite3.Connection]]
    _write: Callable[[Callable[[sqlite3.Connection, Journal], None]], None]

    def no_names(self, kind: KnownKind) -> frozenset[str]:
        with self._reading() as db:
            return frozenset(form for (form,) in db.execute("SELECT form FROM desk_no_name WHERE kind = ?", (kind,)))

    def absent(self, draft: str) -> frozenset[tuple[str, str]]:
        with self._reading() as db:
            return frozenset(db.execute(_ABSENT, (draft,)))

    def scene_times(self, draft: str) -> dict[str, str]:
        with self._reading() as db:
            return dict(db.execute(_TIMES, (draft,)))

    def said_by(self, draft: str) -> tuple[SaidBy, ...]:
        with self._reading() as db:
            places = anchors_of(db, "desk_said", "WHERE a.draft = ?", (draft,))
            people = dict(db.execute("SELECT id, person FROM desk_said"))
            return tuple(SaidBy(one, people[one], anchors) for one, anchors in places.items())

    def kept_facts(self, keys: Sequence[str]) -> dict[str, str]:
        found: dict[str, str] = {}
        with self._reading() as db:
            for some in _batches(keys):
                marks = ", ".join("?" * len(some))
                rows = db.execute(f"SELECT key, facts FROM read_scene WHERE key IN ({marks})", some)  # noqa: S608
                found.update((key, zlib.decompress(facts).decode()) for key, facts in rows)
        return found

    def keep_facts(self, key: str, facts: str) -> None:
        packed = zlib.compress(facts.encode())
        self._write(
            lambda db, _: _run(db, "INSERT INTO read_scene VALUES (?, ?) ON CONFLICT DO NOTHING", (key, packed))
        )

    def keep_read(self, rows: Mapping[str, str]) -> None:
        packed = [(key, zlib.compress(text.encode())) for key, text in rows.items()]
        anew = "INSERT INTO read_scene VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET facts = excluded.facts"
        self._write(lambda db, _: _run_each(db, anew, packed))

    def read_whole(self, draft: str) -> tuple[str, str] | None:
        with self._reading() as db:
            row = db.execute("SELECT key, form FROM read_book WHERE draft = ?", (draft,)).fetchone()
        return (row[0], zlib.decompress(row[1]).decode()) if row else None

    def keep_whole(self, draft: str, key: str, form: str) -> None:
        packed = zlib.compress(form.encode())
        self._write(
            lambda db, _: _run(
                db,
                "INSERT INTO read_book VALUES (?, ?, ?) "
                "ON CONFLICT (draft) DO UPDATE SET key = excluded.key, form = excluded.form",
                (draft, key, packed),
            )
        )

    def drop_read(self) -> None:
        self._write(lambda db, _: _drop(db))


class DeskReading:
    """Fills `work.ports.reading.DeskReading`."""

    _db: sqlite3.Connection

    def set_no_name(self, kind: KnownKind, form: str, *, none: bool) -> None:
        if none:
            self._db.execute("INSERT INTO desk_no_name VALUES (?, ?) ON CONFLICT DO NOTHING", (kind, form))
        else:
            self._db.execute("DELETE FROM desk_no_name WHERE kind = ? AND form = ?", (kind, form))

    def set_names(self, kind: KnownKind, id: str, name: str, aliases: Iterable[str]) -> None:
        gone(
            self._db.execute(
                f"UPDATE desk_{kind} SET name = ?, aliases = ? WHERE id = ?",  # noqa: S608 — own names
                (name, "\n".join(aliases), id),
            ),
            "This person" if kind == "person" else "This place",
        )

    def set_absent(self, scene: str, who: str, *, absent: bool) -> None:
        require(self._db, "desk_scene", scene, "This scene")
        if absent:
            self._db.execute("INSERT INTO desk_absent VALUES (?, ?) ON CONFLICT DO NOTHING", (scene, who))
        else:
            self._db.execute("DELETE FROM desk_absent WHERE scene = ? AND who = ?", (scene, who))

    def set_scene_time(self, scene: str, words: str) -> None:
        require(self._db, "desk_scene", scene, "This scene")
        if self._db.execute("SELECT 1 FROM desk_scene_time WHERE (scene, words) = (?, ?)", (scene, words)).fetchone():
            return  # the same again is no edit
        self._db.execute("DELETE FROM desk_scene_time WHERE scene = ?", (scene,))
        if words:
            self._db.execute("INSERT INTO desk_scene_time VALUES (?, ?)", (scene, words))

    def set_gender(self, person: str, gender: Gender) -> None:
        gone(self._db.execute("UPDATE desk_person SET gender = ? WHERE id = ?", (gender, person)), "This person")

    def set_narrator(self, person: str | None) -> None:
        self._db.execute("UPDATE desk_person SET narrator = 0 WHERE narrator AND id IS NOT ?", (person,))
        if person is not None:
            gone(self._db.execute("UPDATE desk_person SET narrator = 1 WHERE id = ?", (person,)), "This person")

    def set_followed(self, person: str, *, followed: bool) -> None:
        gone(self._db.execute("UPDATE desk_person SET followed = ? WHERE id = ?", (followed, person)), "This person")

    def say_speaker(self, anchors: Sequence[Anchor], person: str | None) -> str:
        if person is not None:
            require(self._db, "desk_person", person, "This person")
        made = new_id("said")
        self._db.execute("INSERT INTO desk_said VALUES (?, ?)", (made, person))
        fasten(self._db, made, anchors)
        return made

    def unsay_speaker(self, id: str) -> None:
        unfasten(self._db, id)
        gone(self._db.execute("DELETE FROM desk_said WHERE id = ?", (id,)), "This")


def _run(db: sqlite3.Connection, statement: str, given: Sequence[object]) -> None:
    db.execute(statement, given)


def _run_each(db: sqlite3.Connection, statement: str, given: Iterable[Sequence[object]]) -> None:
    db.executemany(statement, given)


def _drop(db: sqlite3.Connection) -> None:
    db.execute("DELETE FROM read_scene")
    db.execute("DELETE FROM read_book")
    db.execute("DELETE FROM read_asked")


def _batches(keys: Iterable[str]) -> Iterator[list[str]]:
    left = iter(keys)
    while some := list(islice(left, _AT_ONCE)):
        yield some
