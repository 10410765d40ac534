"""`python -m bench.unmarked.learn`: the weights of `manuscript/unmarked/weights.py`, from the tune half alone.

Logistic regression by Newton's method with a ridge, on standardised features. A novel counts by the root of its breaks,
so that none rules the rest. Then every novel is judged by weights learned from the others (cross-validation): a second
regression on the places chosen there turns scores into shares right, and the least strength to show is picked there.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import accumulate

import numpy as np
from numpy.typing import NDArray

from afterdraft.manuscript.unmarked.choose import peaks
from afterdraft.manuscript.unmarked.features import NAMES, gaps
from afterdraft.manuscript.unmarked.passages import passages
from afterdraft.manuscript.unmarked.weights import APART, WORDS_EACH
from bench.structure.score import Count
from bench.unmarked.measures import Case, count
from bench.unmarked.truth import Blind, novels

RIDGE = 100.0  # the best of 30, 100, 300 in cross-validation
CALIBRATED_FROM = -6.0  # score (natural logarithm of odds) from which places are looked at to calibrate
Table = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Rows:
    """A stretch as numbers: a row for each gap."""

    features: Table
    breaks: tuple[int, ...]  # paragraphs
    places: tuple[int, ...]  # words before each gap
    words: int


@dataclass(frozen=True, slots=True)
class Counted:
    slug: str
    breaks: int
    words: int
    by_habit: bool
    stretches: tuple[Rows, ...]


def main() -> None:
    typed, headed = ([counted(one) for one in novels(kind, "tune")] for kind in ("hr", "section"))
    judged = [(novel, judge(novel, without(novel, typed + headed))) for novel in typed]
    slope, base = calibration(judged)
    weights = slope * learned(typed + headed)
    weights[0] += base
    usual = np.concatenate([rows.features for novel in typed + headed for rows in novel.stretches]).mean(axis=0)
    print(f"BIAS = {weights[0]:.2f}")
    for name, weight, mean in zip(NAMES, weights[1:], usual, strict=True):
        print(f'    Weight("{name}", {weight:.2f}, usual={mean:.2f}),')
    for strength in np.arange(0.04, 0.4, 0.02):
        logit = (np.log(strength / (1 - strength)) - base) / slope
        print(f"{strength:.2f}: {_told(judged, float(logit))}")


def counted(novel: Blind) -> Counted:
    told = iter(passages([text for stretch in novel.stretches for text in stretch.texts]))
    rows = []
    for stretch in novel.stretches:
        own = [next(told) for _ in stretch.texts]
        ends = tuple(accumulate(passage.words for passage in own))
        table = np.array([[getattr(gap, name) for name in NAMES] for gap in gaps(own)], dtype=np.float64)
        rows.append(Rows(table.reshape(-1, len(NAMES)), stretch.breaks, ends[:-1], ends[-1]))
    words = sum(one.words for one in rows)
    return Counted(novel.slug, novel.breaks, words, novel.by_habit, tuple(rows))


def without(novel: Counted, others: Iterable[Counted]) -> Table:
    """Weights learned from all novels but one."""
    return learned([other for other in others if other.slug != novel.slug])


def learned(some: Sequence[Counted]) -> Table:
    """Weights, the constant first."""
    features = np.concatenate([rows.features for novel in some for rows in novel.stretches])
    right = np.concatenate([_answers(rows) for novel in some for rows in novel.stretches])
    counts = np.concatenate(
        [np.full(len(rows.features), novel.breaks**-0.5) for novel in some for rows in novel.stretches]
    )
    return logistic(features, right, counts * len(counts) / counts.sum(), ridge=RIDGE)


def logistic(features: Table, right: Table, counts: Table, *, ridge: float) -> Table:
    """Weighted logistic regression; `ridge` holds the weights of standardised features, not the constant."""
    mean, spread = features.mean(axis=0), features.std(axis=0) + 1e-9
    table = np.column_stack([np.ones(len(features)), (features - mean) / spread])
    hold = np.diag([0.0] + [ridge] * features.shape[1])
    found = np.zeros(table.shape[1])
    for _ in range(50):
        likely = 1 / (1 + np.exp(-table @ found))
        slope = table.T @ (counts * (right - likely)) - hold @ found
        bend = (table * (counts * likely * (1 - likely))[:, None]).T @ table + hold
        step = np.linalg.solve(bend, slope)
        found += step
        if np.abs(step).max() < 1e-8:
            break
    scaled = found[1:] / spread
    return np.concatenate([[found[0] - scaled @ mean], scaled])


def judge(novel: Counted, weights: Table) -> list[list[tuple[int, float]]]:
    """For each stretch, paragraphs chosen and their scores."""
    return [_chosen(rows, weights) for rows in novel.stretches]


def calibration(judged: Iterable[tuple[Counted, list[list[tuple[int, float]]]]]) -> tuple[float, float]:
    """Slope and base that turn scores into the log odds of being right."""
    pairs = np.array(list(_rightness(judged)), dtype=np.float64)
    found = logistic(pairs[:, :1], pairs[:, 1], np.ones(len(pairs)), ridge=0.0)
    return float(found[1]), float(found[0])


def _rightness(judged: Iterable[tuple[Counted, list[list[tuple[int, float]]]]]) -> Iterator[tuple[float, float]]:
    for novel, chosen in judged:
        for rows, some in zip(novel.stretches, chosen, strict=True):
            for at, score in some:
                yield score, float(any(abs(at - true) <= 1 for true in rows.breaks))


def _chosen(rows: Rows, weights: Table) -> list[tuple[int, float]]:
    scores = [float(score) for score in weights[0] + rows.features @ weights[1:]]
    found = peaks(scores, rows.places, length=rows.words, least=CALIBRATED_FROM, apart=APART)
    return [(gap + 1, scores[gap]) for gap in found]


def _answers(rows: Rows) -> Table:
    right = np.zeros(len(rows.features))
    right[[at - 1 for at in rows.breaks]] = 1
    return right


def _told(judged: Sequence[tuple[Counted, list[list[tuple[int, float]]]]], least: float) -> str:
    counts = [(novel, _count(novel, chosen, least)) for novel, chosen in judged]
    by_habit = [one for novel, one in counts if novel.by_habit]
    mean = sum(one.f1 for one in by_habit) / len(by_habit)
    sums = (sum((one for _, one in counts), Count()), sum(by_habit, Count()))
    return f"F1 all {sums[0].f1:.3f} {sums[0]}, by habit {sums[1].f1:.3f} {sums[1]}, mean of these novels {mean:.3f}"


def _count(novel: Counted, chosen: list[list[tuple[int, float]]], least: float) -> Count:
    """With no more places than may be shown, the best of them."""
    most = max(1, novel.words // WORDS_EACH)
    strong = sorted((score for some in chosen for _, score in some), reverse=True)[:most]
    least = max(least, strong[-1]) if strong else least
    cases = (
        Case(len(rows.features) + 1, rows.breaks, [at for at, score in some if score >= least])
        for rows, some in zip(novel.stretches, chosen, strict=True)
    )
    return sum(map(count, cases), Count())


if __name__ == "__main__":
    main()
