"""Marks for tests, short to write."""

from afterdraft.desk.lines import Does, LineKind
from afterdraft.questions.check import Check
from afterdraft.questions.marks import Line, Marks, Point
from afterdraft.questions.question import Finding
from tests.questions.asked import book


def line(kind: LineKind, name: str, *points: tuple[int, Does]) -> Line:
    return Line(kind, name, tuple(Point(scene, does) for scene, does in points))


def found_of(check: Check, marks: Marks, *, scenes: int = 20) -> list[Finding]:
    """Over a book of so many scenes that say nothing."""
    return list(check.find(book([[f"Scene {number}."] for number in range(scenes)], marks=marks)))
