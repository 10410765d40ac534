"""What the ports hand over."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

UnitKind = Literal["part", "chapter", "scene", "matter", "arrangement", "row", "laid", "unit card"]
Written = Literal[
    "card",
    "next",
    "unit",
    "arrangement",
    "row",
    "ink",
    "guarded",
    "line",
    "strand",
    "follows",
    "person",
    "place",
    "carried",
    "change",
    "change place",
]
# rows with fields that she types into and that save themselves: "next" is a laid card, "unit" the card of a chapter,
# part or the book


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
    part_way: bool = False  # goes only as far as the revision has come


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


@dataclass(frozen=True, slots=True)
class Fields:
    """The fields of one row."""

    texts: Mapping[str, str]
    revision: int  # the row's
    last: Mapping[str, LastSave]  # by field; those that never changed are left out
    beside: tuple[LastSave, ...] = ()  # changes of what is in the row and no field
