"""What the writer has marked, as checks take it: scenes by their places in telling order, people by id."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from afterdraft.desk.cast import Presence
from afterdraft.desk.ground import Ground
from afterdraft.desk.lines import Does, LineKind
from afterdraft.questions.question import Span


@dataclass(frozen=True, slots=True)
class Point:
    """A place where a line is opened, touched, closed; where a reveal's fact is learned."""

    scene: int
    does: Does
    person: str | None = None  # of a reveal: who learns it; None for the reader
    passage: Span | None = None


@dataclass(frozen=True, slots=True)
class Line:
    """A thread, setup or reveal with its points in telling order; those of planned cards are left out."""

    kind: LineKind
    name: str
    points: tuple[Point, ...] = ()

    def scenes(self, *does: Does) -> tuple[int, ...]:
        """Where it does one of these; where it does anything, without."""
        return tuple(one.scene for one in self.points if not does or one.does in does)


@dataclass(frozen=True, slots=True)
class Carried:
    """What somebody comes into a scene with and leaves it with, in her words."""

    scene: int
    person: str
    comes_in: str = ""
    leaves: str = ""


@dataclass(frozen=True, slots=True)
class Renamed:
    """A person or place that has another name now, as she writes both."""

    name: str
    former: tuple[str, ...]
    also: tuple[str, ...] = ()  # other names that it still has


@dataclass(frozen=True, slots=True)
class Marks:
    """All of hers that checks look at; empty where a manuscript is asked about without a book."""

    lines: tuple[Line, ...] = ()
    follows: tuple[tuple[int, int], ...] = ()  # a scene, and the earlier one that makes it happen
    strands: Mapping[int, str] = field(default_factory=dict)  # by scene the strand it is in
    carried: tuple[Carried, ...] = ()  # in telling order
    present: Mapping[tuple[int, str], Presence] = field(default_factory=dict)  # by scene and person
    ground: Ground | None = None  # the real place and year it is set in
    renamed: tuple[Renamed, ...] = ()
    set_aside: frozenset[int] = frozenset()  # scenes whose cards lie aside in the arrangement at work

    @property
    def any_lines(self) -> bool:
        return bool(self.lines)


NO_MARKS = Marks()
