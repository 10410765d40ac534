"""A question and what it rests on, as plain values."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from hashlib import sha256


@dataclass(frozen=True, slots=True, order=True)
class Span:
    """Words of the book: code points `start` to `end` of a paragraph, which counts from 0 in its scene."""

    scene: int
    paragraph: int
    start: int
    end: int
    quote: str = field(compare=False)


@dataclass(frozen=True, slots=True)
class Finding:
    """What a check found; its sentence is made of it by `wording`."""

    evidence: tuple[Span, ...]  # in the order in which they are best read; may be empty where only her marks tell
    strength: float  # 0 to 1: how sharp the question is, and how sure it is that there is something to ask
    subject: str = ""  # what it is about, as words that stay when the book is edited: "eyes of jossie wragg"
    words: Mapping[str, str] = field(default_factory=dict)  # what the sentence needs, by name
    numbers: Mapping[str, float] = field(default_factory=dict)  # what was measured, by name
    people: tuple[str, ...] = ()  # ids in the cast
    scenes: tuple[int, ...] = ()  # besides those of the evidence

    @property
    def all_scenes(self) -> tuple[int, ...]:
        """From 0, in telling order."""
        return tuple(sorted({*self.scenes, *(one.scene for one in self.evidence)}))


@dataclass(frozen=True)
class Question:
    """What a check asks of the book."""

    check: str  # id of the check
    asks: str  # one sentence; two where the first only says what stands there
    scenes: tuple[int, ...]  # from 0, in telling order
    people: tuple[str, ...]  # ids in the cast
    strength: float
    numbers: Mapping[str, float]
    evidence: tuple[Span, ...]
    subject: str
    nth: int = 0  # of several with the same words in evidence

    @cached_property
    def fingerprint(self) -> str:
        """The same for as long as the check asks about the same thing on the same words, wherever they stand."""
        return fingerprint(self.check, self.subject, (one.quote for one in self.evidence), self.nth)


def fingerprint(check: str, subject: str, quotes: Iterable[str], nth: int = 0) -> str:
    """SHA-256, as hexadecimal digits, of what is asked and of the words it rests on; white space counts as one space.

    No offset, figure or version goes in, so that an answer outlives edits elsewhere and the next draft.
    """
    pieces = [check, subject, *(" ".join(quote.split()) for quote in quotes), *([str(nth)] if nth else [])]
    return sha256("\x1f".join(pieces).encode()).hexdigest()
