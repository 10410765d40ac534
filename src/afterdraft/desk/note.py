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
    then: tuple[Anchor, ...] = ()  # the passages it was about in earlier drafts

    @property
    def anchor(self) -> Anchor | None:
        """Where its passage begins."""
        return self.anchors[0] if self.anchors else None

    @property
    def passage(self) -> Literal["there", "changed", "gone"] | None:
        """What became of its passage since the draft it was written on; None where it is on none, or of this draft."""
        if not self.then:
            return None
        if not self.anchors:
            return "gone"
        draft = self.then[-1].draft
        before = [one.quote for one in self.then if one.draft == draft]
        return "there" if before == [one.quote for one in self.anchors] else "changed"

    @property
    def loose(self) -> bool:
        """Tied to nothing yet."""
        return not (self.scene or self.chapter or self.laid or self.about_book)
