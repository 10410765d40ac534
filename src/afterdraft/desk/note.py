"""A note: a remark on a scene or on a passage of it, or loose."""

from dataclasses import dataclass
from typing import Literal

from afterdraft.desk.anchor import Anchor

NoteState = Literal["open", "done", "dropped"]


@dataclass(frozen=True, slots=True)
class Note:
    id: str
    text: str
    scene: str | None = None  # id; None when loose
    state: NoteState = "open"
    made: str = ""  # UTC, ISO 8601
    revision: int = 0
    anchor: Anchor | None = None  # the passage it is about
