"""What the writer answers to questions, and how checks ask in her book."""

from dataclasses import dataclass
from typing import Literal, get_args

Given = Literal["noted", "stands"]
Turned = Literal["on", "down", "off"]  # asks; asks only where it is strong; never asks
TURNS: tuple[Turned, ...] = get_args(Turned)


@dataclass(frozen=True, slots=True)
class Answer:
    fingerprint: str  # of the question
    check: str  # id
    answer: Given
    asks: str  # the question as it was asked
    why: str = ""  # why it stands, in her words; "" where she gave no reason
    note: str | None = None  # id of what was made of it
    change: str | None = None
    made: str = ""  # UTC, ISO 8601
