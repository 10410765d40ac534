"""Holding what was read against what is known. Pure; spans are half-open and count in the novel's file."""

from bisect import bisect_left
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

Span = tuple[int, int]
BEFORE = 8  # spans that begin earlier and may still reach in: nesting is no deeper


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
    known, shown = sorted(known), sorted(shown)
    return Found(
        len(known),
        sum(_half(span, _near(span, shown)) for span in known),
        len(shown),
        sum(_half(span, _near(span, known)) for span in shown),
    )


def overlap(one: Span, other: Span) -> int:
    return max(0, min(one[1], other[1]) - max(one[0], other[0]))


def _near(span: Span, others: Sequence[Span]) -> Sequence[Span]:
    """Those of the sorted `others` that may overlap; one that began a little before is looked at too."""
    return others[max(0, bisect_left(others, (span[0], 0)) - BEFORE) : bisect_left(others, (span[1], 0))]


def _half(span: Span, others: Iterable[Span]) -> bool:
    return 2 * sum(overlap(span, other) for other in others) >= (span[1] - span[0])


def b_cubed(known: Mapping[str, object], shown: Mapping[str, object]) -> tuple[float, float]:
    """Precision and recall of one clustering against another (Bagga & Baldwin 1998), over the same items."""
    if not known:
        return 1.0, 1.0
    shares = [
        (
            len(same & {other for other in known if known[other] == known[item]}) / len(same),
            len(same & {other for other in known if known[other] == known[item]})
            / sum(known[other] == known[item] for other in known),
        )
        for item in known
        for same in [{other for other in shown if shown[other] == shown[item]}]
    ]
    return sum(p for p, _ in shares) / len(shares), sum(r for _, r in shares) / len(shares)


def f1(precision: float, recall: float) -> float:
    return 2 * precision * recall / (precision + recall) if precision + recall else 0.0


def calibration(answers: Sequence[tuple[float, bool]], bins: int = 10) -> float:
    """Expected calibration error: how far, on average, what is claimed lies from what is right (Guo et al. 2017)."""
    error = 0.0
    for number in range(bins):
        inside = [(sure, right) for sure, right in answers if min(bins - 1, int(sure * bins)) == number]
        error += abs(sum(sure for sure, _ in inside) - sum(right for _, right in inside))
    return error / max(1, len(answers))


def surest_half(answers: Sequence[tuple[float, bool]]) -> float:
    """Share of right ones among the half that is claimed most surely."""
    ranked = sorted(answers, key=lambda one: -one[0])[: (len(answers) + 1) // 2]
    return sum(right for _, right in ranked) / max(1, len(ranked))
