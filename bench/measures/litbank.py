"""The passages of LitBank (CC BY 4.0) as prose again: its words stand between single spaces.

Spacing, paragraphs and the sides of straight quotes are guessed well enough for a pipeline of language; where each
word went is kept. Imports nothing of the program.
"""

import gzip
import json
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any, Literal

from bench.corpus import CORPUS

FOLDER = CORPUS / "litbank"
Part = Literal["train", "dev", "test"]
CLITIC = re.compile(r"(?:n['’]t|['’](?:s|ll|ve|m|d|re|em|n|t))$", re.IGNORECASE)
CLOSING = frozenset((*",.;!?:)]”’%", "...", "....", "’”"))
OPENING = frozenset((*"([“‘", "“‘"))
DASHES = frozenset(("--", "—", "----", "–"))
STRAIGHT = frozenset("\"'")


@dataclass(frozen=True, slots=True)
class Passage:
    """About 2,000 words of a book."""

    id: str
    paragraphs: tuple[str, ...]
    words: tuple[tuple[int, int, int], ...]  # beside each word of the corpus: paragraph, start, end
    events: frozenset[int]  # words that are events
    named_places: tuple[tuple[int, int], ...] = ()  # first and last word of places by name


def passages(part: Part) -> list[Passage]:
    """Of the part that the corpus folder's own split names."""
    names = set(_split()[part])
    return [_passage(one) for one in _documents() if one["id"] in names]


def named(passage: Passage) -> tuple[frozenset[tuple[int, int]], frozenset[tuple[int, int]]]:
    """Paragraph and end of everybody who is meant by name or noun, and of those meant by name."""
    document = next(one for one in _documents() if one["id"] == passage.id)
    ends = [(paragraph, end) for paragraph, _, end in passage.words]
    proper = (
        last
        for cluster in document["clusters"]
        for _, last, kind, how in cluster["mentions"]
        if (kind, how) == ("PER", "PROP")
    )
    return (
        frozenset(ends[last] for _, last, kind in document["entities"] if kind == "PER"),
        frozenset(ends[last] for last in proper),
    )


def people_meant(passage: Passage) -> list[tuple[tuple[int, int, int], str]]:
    """Paragraph, start and end of each mention of somebody, and whom it means."""
    document = next(one for one in _documents() if one["id"] == passage.id)
    return [
        ((passage.words[first][0], passage.words[first][1], passage.words[last][2]), cluster["id"])
        for cluster in document["clusters"]
        for first, last, kind, _ in cluster["mentions"]
        if kind == "PER"
    ]


@cache
def _split() -> dict[str, list[str]]:
    found: dict[str, list[str]] = json.loads((FOLDER / "split.json").read_text("utf-8"))
    return found


@cache
def _documents() -> tuple[dict[str, Any], ...]:
    with gzip.open(FOLDER / "documents.jsonl.gz", "rt", encoding="utf-8") as lines:
        return tuple(map(json.loads, lines))


def _passage(document: dict[str, Any]) -> Passage:
    paragraphs, places = prose(document["tokens"], document["sentences"])
    return Passage(document["id"], paragraphs, places, frozenset(document["events"]), _named(document))


def _named(document: dict[str, Any]) -> tuple[tuple[int, int], ...]:
    mentions = (tuple(one) for cluster in document["clusters"] for one in cluster["mentions"])
    return tuple(
        (first, last) for first, last, kind, how in mentions if kind in ("FAC", "GPE", "LOC") and how == "PROP"
    )


def place_names(passage: Passage) -> list[tuple[int, int, int]]:
    """Paragraph, start and end of each place by name."""
    spans = ((passage.words[first], passage.words[last]) for first, last in passage.named_places)
    return [(first[0], first[1], last[2]) for first, last in spans]


def prose(
    words: Sequence[str], sentences: Sequence[Sequence[int]]
) -> tuple[tuple[str, ...], tuple[tuple[int, int, int], ...]]:
    """Paragraphs, and beside each word its paragraph, start and end; sentences are half-open ranges of words."""
    glued = list(_glued(words))
    paragraphs: list[str] = []
    places: list[tuple[int, int, int]] = []
    for first, end in _paragraphs(words, sentences):
        text = ""
        for place in range(first, end):
            text += words[place] if place == first or glued[place] else f" {words[place]}"
            places.append((len(paragraphs), len(text) - len(words[place]), len(text)))
        paragraphs.append(text)
    return tuple(paragraphs), tuple(places)


def _glued(words: Sequence[str]) -> Iterator[bool]:
    """Whether each word follows the one before it without a space."""
    after = True  # an opening mark or a dash came before
    closing: set[str] = set()  # straight quotes that are open
    for word in words:
        if word in STRAIGHT:
            closing ^= {word}
            yield after or word not in closing
            after = word in closing
        else:
            yield after or word in CLOSING or word in DASHES or bool(CLITIC.match(word))
            after = word in OPENING or word in DASHES


def _paragraphs(words: Sequence[str], sentences: Sequence[Sequence[int]]) -> Iterator[tuple[int, int]]:
    """Speech begins a paragraph where none is open; what follows it runs on."""
    first, opened = 0, False
    for start, end in sentences:
        if start > first and not opened and words[start] in ('"', "“", "‘"):
            yield first, start
            first = start
        for word in words[start:end]:
            opened = (word == "“" or (word == '"' and not opened)) or (opened and word not in ('"', "”"))
    yield first, len(words)
