"""What runs through the book: threads, setups and reveals. Each is a line of points on scenes or passages."""

from dataclasses import dataclass
from typing import Literal

from afterdraft.desk.anchor import Anchor

LineKind = Literal["thread", "setup", "reveal"]
Does = Literal["opens", "carries", "closes", "setup", "return", "payoff", "learns"]

DOES: dict[LineKind, tuple[Does, ...]] = {
    "thread": ("opens", "carries", "closes"),
    "setup": ("setup", "return", "payoff"),
    "reveal": ("learns",),
}


@dataclass(frozen=True, slots=True)
class Point:
    """One place where a line is opened, touched or closed; where a reveal's fact is learned."""

    id: str
    line: str  # id
    does: Does
    scene: str | None  # id; None for a planned card without a scene
    laid: str | None = None  # id of that card
    person: str | None = None  # of a reveal: who learns it; None for the reader
    anchors: tuple[Anchor, ...] = ()  # the passage, where it is fastened to one


@dataclass(frozen=True, slots=True)
class Line:
    id: str
    kind: LineKind
    name: str  # of a reveal: the fact
    letter: str  # one or two capitals, its own among lines of its kind
    note: str = ""
    place: str = ""  # text key of its place in the order
    revision: int = 0
    points: tuple[Point, ...] = ()


@dataclass(frozen=True, slots=True)
class Strand:
    """An exclusive division of the scenes (era, viewpoint, documents), for books that alternate."""

    id: str
    name: str
    letter: str
    place: str = ""
    revision: int = 0
    scenes: tuple[str, ...] = ()  # ids; a scene is in one strand at most


@dataclass(frozen=True, slots=True)
class Follows:
    """The link from a scene to the earlier one that makes it happen."""

    id: str
    scene: str  # id
    source: str  # id of the earlier scene
    why: str = ""
    revision: int = 0
