"""Holding what was read against what is known. Pure; spans are half-open and count in the novel's file."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

Span = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Found:
    """Spans looked for and spans shown: how many of each the other side covers by half or more."""

    known: int = 0
    hit: int = 0
    shown: int = 0
    right: int = 0

    def __add__(self, other: "Found") -> "Found":
        return Found(self.known + other.known, self.hit + other.hit, self.shown + other.shown, self.right + other.right)

    @property
    def precision(self) -> float:
        return self.right / max(1, self.shown)

    @property
    def recall(self) -> float:
        return self.hit / max(1, self.known)


def found(known: Sequence[Span], shown: Sequence[Span]) -> Found:
    """Half overlap, either way: nested quotations are split in the corpus, so sums of overlaps count."""
    return Found(
        len(known),
        sum(_half(span, shown) for span in known),
        len(shown),
        sum(_half(span, known) for span in shown),
    )


def overlap(one: Span, other: Span) -> int:
    return max(0, min(one[1], other[1]) - max(one[0], other[0]))


def _half(span: Span, others: Iterable[Span]) -> bool:
    return 2 * sum(overlap(span, other) for other in others if other[1] > span[0] and other[0] < span[1]) >= (
        span[1] - span[0]
    )
