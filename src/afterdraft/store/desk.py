"""The open transaction that an edit is given; each method only hands on."""

import sqlite3
from collections.abc import Mapping, Sequence
from typing import Any

from afterdraft.desk.card import Card
from afterdraft.desk.note import Note, NoteState
from afterdraft.manuscript.division import Division
from afterdraft.manuscript.draft import Draft
from afterdraft.store import cards, corrections, divisions, drafts, fields, following, notes
from afterdraft.store.arranging import DeskArrangements
from afterdraft.store.cast import DeskCast
from afterdraft.store.changes import DeskChanges
from afterdraft.store.drafts_order import DeskDrafts
from afterdraft.store.inks import DeskInks
from afterdraft.store.journal import Journal
from afterdraft.store.lines import DeskLines
from afterdraft.store.names import Kind, new_code, new_id
from afterdraft.store.questions import DeskQuestions
from afterdraft.store.reading import DeskReading
from afterdraft.store.units import DeskUnits
from afterdraft.work.ports import Fields, Written


class OpenDesk(
    DeskArrangements,
    DeskLines,
    DeskCast,
    DeskChanges,
    DeskInks,
    DeskQuestions,
    DeskReading,
    DeskUnits,
    DeskDrafts,
):
    """Fills `work.ports.Desk`. `now`: UTC, ISO 8601."""

    def __init__(self, db: sqlite3.Connection, journal: Journal, now: str) -> None:
        self._db = db
        self._journal = journal
        self._now = now

    def division(self, draft: str) -> Division:
        return divisions.read(self._db, draft)

    def set_division(self, draft: str, division: Division) -> None:
        old = divisions.write(self._db, draft, division)
        following.follow_units(self._db, draft, old, division, now=self._now)
        following.lay_new(self._db, draft, division)

    def new_id(self, kind: Kind = "scene") -> str:
        return new_id(kind)

    def new_code(self) -> str:
        return new_code(self._db)

    def text(self, draft: str, paragraph: int) -> str:
        return drafts.text(self._db, draft, paragraph)

    def draft_of(self, scene: str) -> str:
        return divisions.draft_of(self._db, scene)

    def card(self, id: str) -> Card:
        return cards.card(self._db, id)

    def card_of(self, scene: str) -> Card:
        return cards.card_of(self._db, scene)

    def fields(self, kind: Written, id: str) -> Fields:
        return fields.fields(self._db, kind, id)

    def set_field(self, kind: Written, id: str, field: str, text: str, *, client: str, sequence: int) -> int:
        return fields.set_field(self._db, kind, id, field, text, client=client, sequence=sequence)

    def join_cards(self, *, into: str, of: str) -> None:
        cards.join(self._db, into=into, of=of)
        following.merge(self._db, into=into, of=of, now=self._now)

    def loosen_card(self, scene: str) -> None:
        cards.loosen(self._db, scene, now=self._now)
        following.loosen(self._db, scene, now=self._now)

    def note(self, id: str) -> Note:
        return notes.note(self._db, id)

    def notes(self) -> tuple[Note, ...]:
        return notes.notes(self._db, scene=None, loose=False)

    def follow_anchors(self, draft: str) -> None:
        notes.follow_anchors(self._db, draft)
        following.follow_points(self._db, draft)

    def set_note(self, id: str, *, text: str | None = None, state: NoteState | None = None) -> Note:
        return notes.set_note(self._db, id, text=text, state=state)

    def set_title(self, title: str) -> None:
        self._db.execute("UPDATE desk_book SET title = ?", (title,))

    def add_draft(self, draft: Draft, originals: Sequence[tuple[str, bytes]]) -> str:
        """Everything a draft brings is written unlogged and hidden; what can be taken back is that it is shown."""
        made = new_id("draft")
        with self._journal.paused():
            drafts.put(self._db, made, draft, originals, brought_in=self._now)
            self._db.execute("INSERT INTO desk_draft (id, hidden) VALUES (?, 1)", (made,))
            divisions.write(self._db, made, divisions.with_new_ids(draft.division))
        return made

    def close_doubt(self, draft: str, paragraph: int) -> None:
        self._db.execute(
            "INSERT INTO desk_settled SELECT DISTINCT draft, paragraph FROM text_doubt "
            "WHERE draft = ? AND paragraph = ? ON CONFLICT DO NOTHING",
            (draft, paragraph),
        )

    def record_correction(self, draft: str, kind: str, paragraph: int, detail: Mapping[str, object]) -> None:
        corrections.record(self._db, draft, kind, paragraph, detail)

    def corrections_met(self, draft: str) -> Sequence[tuple[str, int, Mapping[str, Any]]]:
        return corrections.met(self._db, draft)
