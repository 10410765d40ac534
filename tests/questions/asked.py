"""Small books for checks, and what they ask of them."""

from collections.abc import Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.marks import NO_MARKS, Marks
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.reading.facts import SceneFacts

Scenes = Sequence[Sequence[str]]  # the paragraphs of each scene


def book(scenes: Scenes, facts: Sequence[SceneFacts] = (), marks: Marks = NO_MARKS) -> Seen:
    return Seen(texts=tuple(map(tuple, scenes)), facts=tuple(facts), marks=marks)


def found(check: Check, *scenes: Sequence[str]) -> list[Finding]:
    return list(check.find(book(scenes)))


def quotes(findings: Sequence[Finding]) -> list[list[str]]:
    """What each has in evidence."""
    return [[span.quote for span in one.evidence] for one in findings]
