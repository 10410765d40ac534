"""One open book file."""

from collections.abc import Callable, Sequence
from typing import Protocol, TypeVar

from afterdraft.desk.card import Card
from afterdraft.desk.note import Note
from afterdraft.manuscript.blocks import Aside, Block, Blocks
from afterdraft.manuscript.division import Division, Doubt
from afterdraft.work.ports.arranging import ArrangingBook
from afterdraft.work.ports.cast import BookCast
from afterdraft.work.ports.changes import ChangesBook
from afterdraft.work.ports.desk import Desk
from afterdraft.work.ports.drafts import DraftsBook
from afterdraft.work.ports.inks import InksBook
from afterdraft.work.ports.lines import BookLines
from afterdraft.work.ports.questions import QuestionsBook
from afterdraft.work.ports.reading import BookReading
from afterdraft.work.ports.units import BookUnits
from afterdraft.work.ports.values import BookFacts, DraftFacts, Edit, Edits, Fields, Hit, Written

T = TypeVar("T")


class Book(
    ArrangingBook,
    BookLines,
    BookCast,
    BookUnits,
    BookReading,
    ChangesBook,
    DraftsBook,
    InksBook,
    QuestionsBook,
    Protocol,
):
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

    def said(self, kind: str, draft: str, paragraphs: Sequence[int]) -> frozenset[int]:
        """Those of `paragraphs` that a correction of this kind was made of, in any draft with the same words there."""
        ...

    def asides(self, draft: str, start: int, end: int) -> tuple[Aside, ...]: ...
    def cards(self, draft: str) -> dict[str, Card]:
        """By scene id."""
        ...

    def card(self, id: str) -> Card: ...
    def fields(self, kind: Written, id: str) -> Fields:
        """The fields of a row. Raises `Missing`."""
        ...

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
