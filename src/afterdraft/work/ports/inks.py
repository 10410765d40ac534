"""Inks, notes' places, guarded passages, comments offered as notes: read from an open book, changed in an edit."""

from collections.abc import Sequence
from typing import Protocol

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.guarded import Guarded
from afterdraft.desk.ink import Colour, Ink
from afterdraft.desk.note import About, Note, NoteState
from afterdraft.desk.offer import Offer


class InksBook(Protocol):
    """For `Book`."""

    def inks(self) -> tuple[Ink, ...]:
        """In the writer's order."""
        ...

    def guarded(self, draft: str) -> tuple[Guarded, ...]:
        """Guarded passages of a draft, in order of the text."""
        ...

    def offers(self, draft: str, start: int, end: int) -> tuple[Offer, ...]:
        """Margin comments on paragraphs `start…end` that have not been offered as notes yet."""
        ...


class InksDesk(Protocol):
    """For `Desk`."""

    def inks(self) -> tuple[Ink, ...]: ...
    def add_ink(self, *, name: str, colour: Colour, letter: str, place: str) -> str:
        """Returns its id."""
        ...

    def set_ink(self, id: str, *, colour: Colour, letter: str, place: str) -> None:
        """Raises `Missing`."""
        ...

    def remove_ink(self, id: str) -> None:
        """Its notes are in plain pencil then. Raises `Missing`."""
        ...

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
        """On `about`, or on a `scene`, or loose. Raises `Missing`."""
        ...

    def ink_note(self, id: str, ink: str | None) -> Note:
        """Raises `Missing`."""
        ...

    def place_note(self, id: str, about: About, anchors: Sequence[Anchor] = ()) -> Note:
        """Take it from where it is, and put it there. Raises `Missing`."""
        ...

    def guard(self, anchors: Sequence[Anchor], why: str) -> str:
        """Returns the id."""
        ...

    def let_go(self, id: str) -> None:
        """Of a guarded passage. Raises `Missing`."""
        ...

    def answer_offer(self, draft: str, aside: int, note: str | None) -> None:
        """A comment was taken as a note, or left (None); it is not offered again."""
        ...
