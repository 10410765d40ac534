"""A guarded passage: one that works and must not be lost."""

from dataclasses import dataclass

from afterdraft.desk.anchor import Anchor


@dataclass(frozen=True, slots=True)
class Guarded:
    id: str
    anchors: tuple[Anchor, ...]  # a stretch for each paragraph
    why: str = ""
    made: str = ""  # UTC, ISO 8601
    revision: int = 0

    @property
    def quote(self) -> str:
        return "\n".join(anchor.quote for anchor in self.anchors)
