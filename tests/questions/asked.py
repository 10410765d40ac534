"""Small books for checks, and what they ask of them."""

from collections.abc import Sequence
from functools import cache

from afterdraft.questions.check import Check
from afterdraft.questions.marks import NO_MARKS, Marks
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.reading.facts import Quote, SceneFacts
from afterdraft.reading.quotations import quotations
from afterdraft.reading.times import times

Scenes = Sequence[Sequence[str]]  # the paragraphs of each scene


def book(scenes: Scenes, facts: Sequence[SceneFacts] = (), marks: Marks = NO_MARKS) -> Seen:
    return Seen(texts=tuple(map(tuple, scenes)), facts=tuple(facts), marks=marks)


def found(check: Check, *scenes: Sequence[str]) -> list[Finding]:
    return list(check.find(book(scenes)))


def quotes(findings: Sequence[Finding]) -> list[list[str]]:
    """What each has in evidence."""
    return [[span.quote for span in one.evidence] for one in findings]


@cache
def _facts(paragraphs: tuple[str, ...]) -> SceneFacts:
    from afterdraft.engine.reader import read_scenes  # late: only slow tests need the language pipeline

    (facts,) = read_scenes([paragraphs])
    return facts


def read(scenes: Scenes, marks: Marks = NO_MARKS) -> Seen:
    """A book as reading sees it, with the real language pipeline."""
    return book(scenes, [_facts(tuple(scene)) for scene in scenes], marks)


def found_in(check: Check, *scenes: Sequence[str]) -> list[Finding]:
    """As `found`, over a book that was read."""
    return list(check.find(read(scenes)))


def dated(*scenes: Sequence[str]) -> Seen:
    """A book of which only times and speech are read, which needs no language pipeline."""
    return book(scenes, [_times(scene) for scene in scenes])


def _times(scene: Sequence[str]) -> SceneFacts:
    speech = quotations(scene)
    found = [
        one
        for place, text in enumerate(scene)
        for one in times(text, place, [(quote.start, quote.end) for quote in speech if quote.paragraph == place])
    ]
    quotes = tuple(Quote(one.paragraph, one.start, one.end) for one in speech)
    return SceneFacts(len(scene), quotes=quotes, times=tuple(found))
