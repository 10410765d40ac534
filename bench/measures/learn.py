"""`python -m bench.measures.learn`: writes `reading/event_weights.py` anew from LitBank, the same each time.

Signs are weighed by logistic regression with a ridge on the train passages. Then each passage is judged by weights
from the others (five folds), and a second regression learns what the surroundings add to that. The least score that
counts is the best on these judgements and the dev passages together. The test passages are not touched.
"""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import chain
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from afterdraft.reading import events
from afterdraft.reading.events import Found
from bench.measures.litbank import Part
from bench.measures.read import Read, read
from bench.weights_module import module

RIDGE = 1.0  # the best of 0.3, 0.5, 0.7, 1, 1.5, 2, 3, 4 by the five folds
SEEN = 5  # times that a sign must occur: of 2, 3, 5, 8 the fewest signs that lose less than half a point
FOLDS = 5
STEPS, STEP, MEMORY = 200, 0.05, (0.9, 0.999)  # of the descent (Adam, Kingma & Ba 2015), by which it has settled
PLACES = 1  # of a weight
TARGET = Path(events.__file__).with_name("event_weights.py")
Numbers = NDArray[np.float64]
Places = NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class Passage:
    found: list[Found]
    right: list[bool]
    events: int  # also those that no candidate is


@dataclass(frozen=True, slots=True)
class Table:
    """Signs by number: `signs[i]` is one of row `rows[i]`; number 0 is the constant."""

    rows: Places
    signs: Places
    right: Numbers
    of: Places  # passage of each row


def main() -> None:
    train, dev = passages("train"), passages("dev")
    numbers = _numbered(train)
    table = _table(train, numbers)
    weights = np.round(fitted(table, len(numbers)), PLACES)
    judged = _by_passage(table, _folded(table, len(numbers)), train)
    stacked = _stacked(train, judged)
    known = {sign: float(weights[number]) for sign, number in numbers.items() if weights[number]}
    tuned = [_scores(one, own, stacked) for one, own in zip(train, judged, strict=True)]
    for one in dev:
        own = [float(weights[0]) + sum(known.get(sign, 0.0) for sign in clue.signs) for _, clue in one.found]
        tuned.append(_scores(one, own, stacked))
    least = _least(tuned, [*train, *dev])
    TARGET.write_text(_written(float(weights[0]), known, stacked, least), encoding="utf-8")
    print(f"{len(known)} signs; train in folds {_f1(tuned[: len(train)], train, least):.4f}, ", end="")
    print(f"dev {_f1(tuned[len(train) :], dev, least):.4f}")


def passages(part: Part) -> list[Passage]:
    return [_passage(one) for one in read(part)]


def _passage(one: Read) -> Passage:
    found = list(events.candidates(one.paragraphs))
    return Passage(found, [(number, clue.token) in one.events for number, clue in found], len(one.events))


def _numbered(train: Iterable[Passage]) -> dict[str, int]:
    seen = Counter(sign for one in train for _, clue in one.found for sign in set(clue.signs))
    return {sign: number for number, sign in enumerate(sorted(s for s, times in seen.items() if times >= SEEN), 1)}


def _table(some: Sequence[Passage], numbers: Mapping[str, int]) -> Table:
    rows, signs, of = [], [], []
    clues = ((place, clue) for place, one in enumerate(some) for _, clue in one.found)
    for row, (place, clue) in enumerate(clues):
        held = sorted({0, *(numbers[sign] for sign in clue.signs if sign in numbers)})
        signs += held
        rows += [row] * len(held)
        of.append(place)
    right = np.array([right for one in some for right in one.right], dtype=np.float64)
    return Table(np.array(rows), np.array(signs), right, np.array(of))


def fitted(table: Table, signs: int) -> Numbers:
    """Weights, the constant first, which alone is free of the ridge."""
    found, mean, square = np.zeros((3, signs + 1))
    ridge = np.full(signs + 1, RIDGE)
    ridge[0] = 0.0
    for step in range(1, STEPS + 1):
        wrong = 1 / (1 + np.exp(-_summed(table, found))) - table.right
        slope = np.bincount(table.signs, wrong[table.rows], signs + 1) + ridge * found
        mean = MEMORY[0] * mean + (1 - MEMORY[0]) * slope
        square = MEMORY[1] * square + (1 - MEMORY[1]) * slope**2
        size = STEP * 0.5 * (1 + np.cos(np.pi * step / STEPS))
        found = found - size * (mean / (1 - MEMORY[0] ** step)) / (np.sqrt(square / (1 - MEMORY[1] ** step)) + 1e-8)
    return found


def _summed(table: Table, weights: Numbers) -> Numbers:
    return np.bincount(table.rows, weights[table.signs], len(table.right)).astype(np.float64)


def _folded(table: Table, signs: int) -> Numbers:
    """Each row's score by weights from the passages of other folds."""
    scores = np.zeros(len(table.right))
    for fold in range(FOLDS):
        own = table.of % FOLDS == fold
        learned = fitted(_only(table, ~own), signs)
        scores[own] = _summed(table, learned)[own]
    return scores


def _only(table: Table, kept: NDArray[np.bool_]) -> Table:
    number = np.cumsum(kept) - 1
    held = kept[table.rows]
    return Table(number[table.rows[held]], table.signs[held], table.right[kept], table.of[kept])


def _by_passage(table: Table, scores: Numbers, some: Sequence[Passage]) -> list[list[float]]:
    return [scores[table.of == place].tolist() for place in range(len(some))]


def _stacked(some: Sequence[Passage], judged: Sequence[list[float]]) -> Numbers:
    """Constant, weight of the own score, weights of the surroundings: Newton's method, a ridge of one."""
    rows = [
        (1.0, score, *ring)
        for one, own in zip(some, judged, strict=True)
        for score, ring in zip(own, events.surroundings(one.found, own), strict=True)
    ]
    table, right = np.array(rows), np.array(list(chain.from_iterable(one.right for one in some)), dtype=np.float64)
    found = np.zeros(table.shape[1])
    for _ in range(50):
        likely = 1 / (1 + np.exp(-table @ found))
        bend = (table * (likely * (1 - likely))[:, None]).T @ table + np.eye(len(found))
        step = np.linalg.solve(bend, table.T @ (right - likely) - found)
        found = found + step
        if np.abs(step).max() < 1e-9:
            break
    return np.round(found, 2)


def _scores(one: Passage, own: Sequence[float], stacked: Numbers) -> list[float]:
    rings = events.surroundings(one.found, own)
    return [float(stacked @ (1.0, score, *ring)) for score, ring in zip(own, rings, strict=True)]


def _least(tuned: Sequence[Sequence[float]], some: Sequence[Passage]) -> float:
    choices = [round(-2 + 0.05 * step, 2) for step in range(60)]
    return max(choices, key=lambda least: _f1(tuned, some, least))


def _f1(tuned: Sequence[Sequence[float]], some: Sequence[Passage], least: float) -> float:
    pairs = [(score >= least, right) for scores, one in zip(tuned, some, strict=True)
             for score, right in zip(scores, one.right, strict=True)]  # fmt: skip
    there = sum(said for said, _ in pairs) + sum(one.events for one in some)
    return float(2 * sum(said and right for said, right in pairs) / there)


def _written(bias: float, known: Mapping[str, float], stacked: Numbers, least: float) -> str:
    own, nearby = tuple(stacked[:2].tolist()), tuple(stacked[2:].tolist())
    return module(_TOLD, known, _FIGURES.format(bias=bias, least=least, own=own, nearby=nearby))


_TOLD = """How much each sign of an event weighs: made by `python -m bench.measures.learn`, not by hand.

Learned from the train passages of LitBank (David Bamman and others, CC BY 4.0; `NOTICES.md`). A weight is what the
sign adds to the natural logarithm of the odds that the word is an event.
"""
_FIGURES = """BIAS = {bias}
OWN = {own}  # constant, and how much the score of the word by itself counts
NEARBY = {nearby}  # of what `event_nearby.nearby` gives
LEAST = {least}  # score from which a word is taken for an event"""

if __name__ == "__main__":
    main()
