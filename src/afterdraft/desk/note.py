"""A note: a remark in one ink on a scene, a passage, a chapter, a planned card or the book; or loose."""

from dataclasses import dataclass
from typing import Literal, get_args

from afterdraft.desk.anchor import Anchor

NoteState = Literal["open", "done", "dropped"]
NOTE_STATES: tuple[NoteState, ...] = get_args(NoteState)


@dataclass(frozen=True, slots=True)
class About:
    """What a note is on: one of these, or nothing yet."""

    scene: str | None = None  # id
    chapter: str | None = None  # id
    laid: str | None = None  # id of a planned card
    book: bool = False


@dataclass(frozen=True, slots=True)
class Note:
    id: str
    text: str
    scene: str | None = None  # id; None where it is on no scene
    state: NoteState = "open"
    made: str = ""  # UTC, ISO 8601
    revision: int = 0
    ink: str | None = None  # id; None for plain pencil
    chapter: str | None = None  # id
    laid: str | None = None  # id of a planned card
    about_book: bool = False
    anchors: tuple[Anchor, ...] = ()  # the passage it is about, a stretch for each paragraph

    @property
    def anchor(self) -> Anchor | None:
        """Where its passage begins."""
        return self.anchors[0] if self.anchors else None

    @property
    def loose(self) -> bool:
        """Tied to nothing yet."""
        return not (self.scene or self.chapter or self.laid or self.about_book)
