"""Drafts one behind the other, and what the writer says of them."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

Became = Literal["", "cut", "not reached"]  # "": as it was found


@dataclass(frozen=True, slots=True)
class DraftState:
    id: str
    number: int | None  # None where it gave way to the same draft brought in again
    part_way: bool  # goes only as far as the revision has come
    gave_way: str | None  # id of the draft that took its place
    brought_in: str  # UTC, ISO 8601
    files: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class SaidOfScenes:
    """What she says became of scenes; outweighs what comparing finds. By scene ids."""

    became: Mapping[str, Became] = field(default_factory=dict)  # of scenes of either draft
    lives_on: Mapping[tuple[str, str], bool] = field(default_factory=dict)  # old scene, new scene


@dataclass(frozen=True, slots=True)
class NoteWas:
    """Where a note was when the next draft came in, and how it stood."""

    note: str
    scene: str | None
    chapter: str | None
    state: str
