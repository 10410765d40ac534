"""Inks, guarded passages, and margin comments offered as notes: rows of the writer's half."""

import sqlite3
from collections.abc import Callable, Sequence
from contextlib import AbstractContextManager

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.guarded import Guarded
from afterdraft.desk.ink import Colour, Ink
from afterdraft.desk.note import About, Note, NoteState
from afterdraft.desk.offer import Offer
from afterdraft.store import notes
from afterdraft.store.anchors import anchors_of, fasten, unfasten
from afterdraft.store.forms import aside_of
from afterdraft.store.names import new_id
from afterdraft.store.rows import gone

_INKS = (
    "SELECT i.id, i.name, i.colour, i.letter, i.place, r.revision FROM desk_ink i JOIN row_revision r ON r.id = i.id "
    "ORDER BY i.place, i.id"
)
_GUARDED = (
    "SELECT o.id, o.why, o.made, r.revision FROM desk_guarded o JOIN row_revision r ON r.id = o.id "
    "WHERE EXISTS (SELECT 1 FROM desk_anchor a WHERE a.owner = o.id AND a.draft = ?)"
)
_COMMENTS = (
    "SELECT n, form FROM text_aside t WHERE draft = :draft AND paragraph >= :start AND paragraph < :end AND NOT EXISTS "
    "(SELECT 1 FROM desk_offered d WHERE d.draft = t.draft AND d.aside = t.n) ORDER BY n"
)


def inks(db: sqlite3.Connection) -> tuple[Ink, ...]:
    """In the writer's order."""
    return tuple(Ink(*row) for row in db.execute(_INKS))


def guarded(db: sqlite3.Connection, draft: str) -> tuple[Guarded, ...]:
    """In order of the text."""
    passages = anchors_of(db, "desk_guarded", "WHERE a.draft = ?", (draft,))
    found = (Guarded(one, passages[one], why, made, rev) for one, why, made, rev in db.execute(_GUARDED, (draft,)))
    return tuple(sorted(found, key=lambda one: (one.anchors[0].paragraph, one.anchors[0].start)))


def offers(db: sqlite3.Connection, draft: str, start: int, end: int) -> tuple[Offer, ...]:
    """Comments on paragraphs `start` to `end` that were not offered yet, answers with what they answer."""
    found: list[Offer] = []
    given = {"draft": draft, "start": start, "end": end}
    for number, form in db.execute(_COMMENTS, given):
        aside = aside_of(form)
        if aside.kind != "comment":
            continue
        if aside.reply and found:
            found[-1] = Offer(found[-1].aside, found[-1].comment, (*found[-1].answers, (number, aside)))
        else:
            found.append(Offer(number, aside))
    return tuple(found)


class BookInks:
    """Fills `work.ports.inks.InksBook`."""

    _reading: Callable[[], AbstractContextManager[sqlite3.Connection]]

    def inks(self) -> tuple[Ink, ...]:
        with self._reading() as db:
            return inks(db)

    def guarded(self, draft: str) -> tuple[Guarded, ...]:
        with self._reading() as db:
            return guarded(db, draft)

    def offers(self, draft: str, start: int, end: int) -> tuple[Offer, ...]:
        with self._reading() as db:
            return offers(db, draft, start, end)


class DeskInks:
    """Fills `work.ports.inks.InksDesk`."""

    _db: sqlite3.Connection
    _now: str

    def inks(self) -> tuple[Ink, ...]:
        return inks(self._db)

    def add_ink(self, *, name: str, colour: Colour, letter: str, place: str) -> str:
        made = new_id("ink")
        self._db.execute(
            "INSERT INTO desk_ink (id, place, name, colour, letter) VALUES (?, ?, ?, ?, ?)",
            (made, place, name, colour, letter),
        )
        return made

    def set_ink(self, id: str, *, colour: Colour, letter: str, place: str) -> None:
        change = "UPDATE desk_ink SET colour = ?, letter = ?, place = ? WHERE id = ?"
        gone(self._db.execute(change, (colour, letter, place, id)), "This ink")

    def remove_ink(self, id: str) -> None:
        self._db.execute("UPDATE desk_note SET ink = NULL WHERE ink = ?", (id,))
        gone(self._db.execute("DELETE FROM desk_ink WHERE id = ?", (id,)), "This ink")

    def ink_note(self, id: str, ink: str | None) -> Note:
        return notes.ink_note(self._db, id, ink)

    def place_note(self, id: str, about: About, anchors: Sequence[Anchor] = ()) -> Note:
        return notes.place_note(self._db, id, about, anchors)

    def add_note(
        self,
        *,
        text: str,
        scene: str | None = None,
        about: About | None = None,
        ink: str | None = None,
        state: NoteState = "open",
        anchors: Sequence[Anchor] = (),
    ) -> Note:
        return notes.add_note(
            self._db, text=text, now=self._now, scene=scene, about=about, ink=ink, state=state, anchors=anchors
        )

    def guard(self, anchors: Sequence[Anchor], why: str) -> str:
        made = new_id("guarded")
        self._db.execute("INSERT INTO desk_guarded (id, why, made) VALUES (?, ?, ?)", (made, why, self._now))
        fasten(self._db, made, anchors)
        return made

    def let_go(self, id: str) -> None:
        gone(self._db.execute("DELETE FROM desk_guarded WHERE id = ?", (id,)), "This passage")
        unfasten(self._db, id)

    def answer_offer(self, draft: str, aside: int, note: str | None) -> None:
        self._db.execute("INSERT INTO desk_offered (draft, aside, note) VALUES (?, ?, ?)", (draft, aside, note))
