"""The open transaction that an edit is given."""

from collections.abc import Mapping, Sequence
from typing import Any, Protocol

from afterdraft.desk.card import Card
from afterdraft.desk.note import Note, NoteState
from afterdraft.manuscript.division import Division
from afterdraft.manuscript.draft import Draft
from afterdraft.work.ports.arranging import ArrangingDesk
from afterdraft.work.ports.cast import DeskCast
from afterdraft.work.ports.changes import ChangesDesk
from afterdraft.work.ports.drafts import DraftsDesk
from afterdraft.work.ports.inks import InksDesk
from afterdraft.work.ports.lines import DeskLines
from afterdraft.work.ports.questions import QuestionsDesk
from afterdraft.work.ports.reading import DeskReading
from afterdraft.work.ports.units import DeskUnits
from afterdraft.work.ports.values import Fields, UnitKind, Written


class Desk(
    ArrangingDesk,
    DeskLines,
    DeskCast,
    DeskUnits,
    DeskReading,
    ChangesDesk,
    DraftsDesk,
    InksDesk,
    QuestionsDesk,
    Protocol,
):
    """The open transaction given to an edit."""

    def division(self, draft: str) -> Division: ...
    def set_division(self, draft: str, division: Division) -> None:
        """Write the difference. New scenes (code "") get a code and a card; cards of scenes that are gone
        must have been merged before with `join_cards`."""
        ...

    def new_id(self, kind: UnitKind = "scene") -> str: ...
    def new_code(self) -> str: ...
    def text(self, draft: str, paragraph: int) -> str:
        """One paragraph's text; "" outside the draft."""
        ...

    def draft_of(self, scene: str) -> str:
        """Id of the draft that a scene belongs to. Raises `Missing`."""
        ...

    def card(self, id: str) -> Card: ...
    def card_of(self, scene: str) -> Card: ...
    def fields(self, kind: Written, id: str) -> Fields: ...
    def set_field(self, kind: Written, id: str, field: str, text: str, *, client: str, sequence: int) -> int:
        """Returns the row's new revision."""
        ...

    def join_cards(self, *, into: str, of: str) -> None:
        """The card of scene `of` goes under that of scene `into`, field by field; notes follow."""
        ...

    def loosen_card(self, scene: str) -> None:
        """The scene goes and no other takes it in: its notes become loose, and so do its card's words, as a note."""
        ...

    def note(self, id: str) -> Note: ...
    def follow_anchors(self, draft: str) -> None:
        """Notes on passages go to the scenes that hold their passages now."""
        ...

    def notes(self) -> tuple[Note, ...]:
        """All notes, oldest first."""
        ...

    def set_note(self, id: str, *, text: str | None = None, state: NoteState | None = None) -> Note: ...
    def set_title(self, title: str) -> None: ...
    def add_draft(self, draft: Draft, originals: Sequence[tuple[str, bytes]]) -> str:
        """Take a draft in with its original bytes, hidden until `show_draft`; returns its id."""
        ...

    def close_doubt(self, draft: str, paragraph: int) -> None: ...
    def record_correction(self, draft: str, kind: str, paragraph: int, detail: Mapping[str, object]) -> None:
        """Keep a correction of the split, keyed by the paragraph's text and its neighbours', for the next draft."""
        ...

    def corrections_met(self, draft: str) -> Sequence[tuple[str, int, Mapping[str, Any]]]:
        """Corrections kept of other drafts whose words stand in this one, the neighbour on one side at least the same:
        kind, paragraph here, detail; in the order in which they were made."""
        ...
