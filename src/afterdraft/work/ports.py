"""The ports that use cases need. `store/` and `formats/` fill them; `wiring.py` joins the two.

An open book is read from any thread; it is changed only through `edit`, which runs on the book's one
writing thread, in one transaction, journaled for undo, and returns once the change is durable.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal, Protocol, TypeVar

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.card import Card, CardField
from afterdraft.desk.note import Note, NoteState
from afterdraft.manuscript.blocks import Aside, Block, Blocks
from afterdraft.manuscript.division import Division, Doubt
from afterdraft.manuscript.draft import Draft

T = TypeVar("T")
UnitKind = Literal["part", "chapter", "scene", "matter"]


@dataclass(frozen=True, slots=True)
class DraftFacts:
    id: str
    number: int  # 1 for the first
    title: str
    author: str
    language: str
    files: tuple[str, ...]  # names as brought in
    words: int  # story words
    scenes: int
    written: int  # scenes whose card has a summary
    brought_in: str  # UTC, ISO 8601


@dataclass(frozen=True, slots=True)
class BookFacts:
    id: str
    title: str
    author: str
    path: str
    draft: DraftFacts | None  # the newest that is not taken back
    changed: str  # UTC, ISO 8601


@dataclass(frozen=True, slots=True)
class Edit:
    """One entry of the undo stack."""

    number: int  # what an undo button posts, so that a stale button is noticed
    name: str  # "Summary of “The ferry”"


@dataclass(frozen=True, slots=True)
class Edits:
    undo: Edit | None  # the edit that undo would take back
    redo: Edit | None


@dataclass(frozen=True, slots=True)
class Hit:
    """A place found by search."""

    kind: str  # "text", "card", "note"
    id: str  # id of the card or note; "" for text
    scene: str | None  # id of the scene it belongs to; None for front and back matter and loose notes
    paragraph: int | None  # for text
    before: str  # the words around the match, in three pieces
    match: str
    after: str


@dataclass(frozen=True, slots=True)
class Saved:
    """A field's save was taken in and is durable."""

    revision: int


@dataclass(frozen=True, slots=True)
class LastSave:
    """A field's last change."""

    revision: int  # the row's, right after it
    client: str  # whose save it was; "" when it was none (undo, redo, a join)
    sequence: int


class Desk(Protocol):
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

    def card(self, id: str) -> Card: ...
    def card_of(self, scene: str) -> Card: ...
    def set_card_field(self, id: str, field: CardField, text: str, *, client: str, sequence: int) -> int:
        """Returns the new revision."""
        ...

    def last_saves(self, card: str) -> Mapping[str, LastSave]:
        """By field; fields that never changed are left out."""
        ...

    def join_cards(self, *, into: str, of: str) -> None:
        """The card of scene `of` goes under that of scene `into`, field by field; notes follow."""
        ...

    def loosen_card(self, scene: str) -> None:
        """The scene goes and no other takes it in: its notes become loose, and so do its card's words, as a note."""
        ...

    def note(self, id: str) -> Note: ...
    def add_note(self, *, text: str, scene: str | None, anchor: Anchor | None = None) -> Note: ...
    def follow_anchors(self, draft: str) -> None:
        """Notes on passages go to the scenes that hold their passages now."""
        ...

    def set_note(self, id: str, *, text: str | None = None, state: NoteState | None = None) -> Note: ...
    def set_title(self, title: str) -> None: ...
    def add_draft(self, draft: Draft, originals: Sequence[tuple[str, bytes]]) -> str:
        """Take a draft in with its original bytes; returns its id."""
        ...

    def close_doubt(self, draft: str, paragraph: int) -> None: ...
    def record_correction(self, draft: str, kind: str, paragraph: int, detail: Mapping[str, object]) -> None:
        """Keep a correction of the split, keyed by the paragraph's text and its neighbours', for the next draft."""
        ...


class Book(Protocol):
    """One open book file."""

    @property
    def id(self) -> str: ...
    @property
    def path(self) -> str: ...
    def notices(self) -> tuple[str, ...]:
        """What opening did that the writer must know (an older book brought up to date), one sentence each."""
        ...

    def facts(self) -> BookFacts: ...
    def drafts(self) -> tuple[DraftFacts, ...]: ...
    def division(self, draft: str) -> Division: ...
    def blocks(self, draft: str, start: int = 0, end: int | None = None) -> tuple[Block, ...]:
        """Paragraphs `start…end` of the draft, over the whole file."""
        ...

    def first_words(self, draft: str, paragraphs: Sequence[int]) -> dict[int, str]:
        """The first some 120 characters of each of these paragraphs."""
        ...

    def words(self, draft: str) -> tuple[int, ...]:
        """Words of each paragraph of the draft (white-space tokens with a letter or a digit)."""
        ...

    def source(self, draft: str) -> Blocks: ...
    def unread(self, draft: str) -> tuple[str, ...]:
        """What was met in the draft's files and not read, one sentence each."""
        ...

    def originals(self, draft: str) -> tuple[tuple[str, bytes], ...]:
        """Name and bytes of each file of the draft, as brought in."""
        ...

    def doubts(self, draft: str) -> tuple[Doubt, ...]:
        """Those not yet settled."""
        ...

    def asides(self, draft: str, start: int, end: int) -> tuple[Aside, ...]: ...
    def cards(self, draft: str) -> dict[str, Card]:
        """By scene id."""
        ...

    def card(self, id: str) -> Card: ...
    def draft_of(self, scene: str) -> str:
        """Id of the draft that a scene belongs to."""
        ...

    def note(self, id: str) -> Note: ...
    def notes(self, *, scene: str | None = None, loose: bool = False) -> tuple[Note, ...]:
        """All notes; or one scene's; or the loose ones. Oldest first."""
        ...

    def search(self, words: str, *, limit: int = 50) -> tuple[Hit, ...]: ...
    def edits(self) -> Edits: ...
    def edit(self, name: str, change: Callable[[Desk], T], *, merge: str = "") -> T:
        """Run `change` as one edit. Edits with the same non-empty `merge` within ten seconds are one on the stack,
        until `end_merge`."""
        ...

    def end_merge(self, merge: str) -> None: ...
    def undo(self, number: int) -> Edit: ...
    def redo(self, number: int) -> Edit: ...
    def last_place(self) -> str:
        """Code of the scene last looked at, "" for none. Not journaled."""
        ...

    def set_last_place(self, code: str) -> None: ...
    def back_up(self, *, why: str) -> str:
        """Make and check a backup; returns its path."""
        ...

    def check(self) -> tuple[str, ...]:
        """What is wrong with the file, one sentence each; empty when all is well."""
        ...

    def close(self) -> None: ...


class Shelf(Protocol):
    """Where books are begun."""

    def begin(self, *, title: str, first: Callable[[Book], T]) -> tuple[Book, T]:
        """Make a book, do `first` with it, and open it. The file has its name only when all is done."""
        ...
