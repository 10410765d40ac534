"""Answers to questions, which are the writer's; and what checks found, which can be worked out again."""

import sqlite3
import zlib
from collections.abc import Callable, Mapping
from contextlib import AbstractContextManager

from afterdraft.desk.answer import Answer, Turned
from afterdraft.desk.ground import Ground
from afterdraft.store.journal import Journal
from afterdraft.store.rows import gone

_ANSWERS = (
    "SELECT fingerprint, asked_by, answer, asks, why, note, change, made FROM desk_answer "
    "ORDER BY made DESC, rowid DESC"
)


class BookQuestions:
    """Fills `work.ports.questions.QuestionsBook`."""

    _reading: Callable[[], AbstractContextManager[sqlite3.Connection]]
    _write: Callable[[Callable[[sqlite3.Connection, Journal], None]], None]

    def answers(self) -> tuple[Answer, ...]:
        with self._reading() as db:
            return tuple(Answer(*row) for row in db.execute(_ANSWERS))

    def turned_checks(self) -> Mapping[str, Turned]:
        with self._reading() as db:
            return dict(db.execute("SELECT id, turned FROM desk_check_turned"))

    def ground(self) -> Ground | None:
        with self._reading() as db:
            row = db.execute("SELECT place, north, east, year FROM desk_ground").fetchone()
        return Ground(*row) if row else None

    def kept_findings(self, draft: str) -> str:
        with self._reading() as db:
            row = db.execute("SELECT form FROM read_asked WHERE draft = ?", (draft,)).fetchone()
        return zlib.decompress(row[0]).decode() if row else ""

    def keep_findings(self, draft: str, form: str) -> None:
        packed = zlib.compress(form.encode())

        def keep(db: sqlite3.Connection, _: Journal) -> None:
            db.execute("DELETE FROM read_asked WHERE draft = ?", (draft,))
            db.execute("INSERT INTO read_asked VALUES (?, ?)", (draft, packed))

        self._write(keep)


class DeskQuestions:
    """Fills `work.ports.questions.QuestionsDesk`."""

    _db: sqlite3.Connection
    _now: str

    def answer(self, answer: Answer) -> None:
        self._db.execute("DELETE FROM desk_answer WHERE fingerprint = ?", (answer.fingerprint,))
        self._db.execute(
            "INSERT INTO desk_answer (fingerprint, asked_by, answer, asks, why, note, change, made) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
            (
                answer.fingerprint,
                answer.check,
                answer.answer,
                answer.asks,
                answer.why,
                answer.note,
                answer.change,
                answer.made or self._now,
            ),
        )

    def take_answer_back(self, fingerprint: str) -> None:
        gone(self._db.execute("DELETE FROM desk_answer WHERE fingerprint = ?", (fingerprint,)), "This answer")

    def turn_check(self, check: str, turned: Turned) -> None:
        self._db.execute("DELETE FROM desk_check_turned WHERE id = ?", (check,))
        self._db.execute("INSERT INTO desk_check_turned VALUES (?, ?)", (check, turned))

    def set_ground(self, ground: Ground | None) -> None:
        row = (ground.place, ground.north, ground.east, ground.year) if ground else None
        if row == self._db.execute("SELECT place, north, east, year FROM desk_ground").fetchone():
            return  # the same again is no edit
        self._db.execute("DELETE FROM desk_ground")
        if row:
            self._db.execute("INSERT INTO desk_ground (place, north, east, year) VALUES (?, ?, ?, ?)", row)
