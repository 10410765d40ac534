"""The passages of LitBank as the program reads them, with their events laid on its words."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from afterdraft.reading.analysed import Analysed
from afterdraft.reading.grammar import Grammar, grammar
from afterdraft.reading.quotations import quotations
from bench.measures.litbank import Part, Passage, passages
from bench.reading.kept import analysed


@dataclass(frozen=True, slots=True)
class Read:
    id: str
    paragraphs: list[Grammar]
    events: frozenset[tuple[int, int]]  # paragraph, token


def read(part: Part) -> list[Read]:
    return [_read(one) for one in passages(part)]


def _read(passage: Passage) -> Read:
    paragraphs = analysed(passage.paragraphs)
    speech = _speech(passage.paragraphs)
    places = (passage.words[word] for word in passage.events)
    return Read(
        passage.id,
        [grammar(one, speech[number]) for number, one in enumerate(paragraphs)],
        frozenset((number, _token(paragraphs[number], start, end)) for number, start, end in places),
    )


def _speech(paragraphs: Sequence[str]) -> defaultdict[int, list[tuple[int, int]]]:
    spans: defaultdict[int, list[tuple[int, int]]] = defaultdict(list)
    for one in quotations(paragraphs):
        spans[one.paragraph].append((one.start, one.end))
    return spans


def _token(paragraph: Analysed, start: int, end: int) -> int:
    """The program's first token that shares a letter with the word."""
    return next(place for place, at in enumerate(paragraph.starts) if at < end and paragraph.end(place) > start)
