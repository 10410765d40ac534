"""Cards that stand for a chapter, a part or the book."""

from dataclasses import dataclass
from typing import Literal, get_args

UnitCardKind = Literal["chapter", "part", "book"]
UnitField = Literal["summary", "whose", "wants", "answers"]
UNIT_FIELDS: tuple[UnitField, ...] = get_args(UnitField)


@dataclass(frozen=True, slots=True)
class UnitCard:
    id: str
    kind: UnitCardKind
    unit: str | None  # id of the chapter or part; None for the book
    summary: str = ""  # what happens in it, and what changes
    whose: str = ""  # whose story it is
    wants: str = ""  # what they want
    answers: str = ""  # what the end answers
    revision: int = 0
