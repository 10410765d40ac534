"""Where a series of figures, one a scene, changes its level for good."""

from collections.abc import Mapping, Sequence
from itertools import accumulate, pairwise
from math import inf, log
from statistics import median

from afterdraft.whole.pace import Measures

LEAST = 2  # scenes between two changes
SERIES = ("words", "speech_share", "events_per_100", "words_per_sentence")
_MEDIAN_OF_STEPS = 0.9539  # median of |difference| of two normal values of spread one: 0.6745 times the root of two
_EPSILON = 1e-12


def changes(measures: Sequence[Measures]) -> Mapping[str, tuple[int, ...]]:
    """For each measure of a scene, by name, the scenes that begin another level."""
    return {name: change_points([float(getattr(one, name)) for one in measures]) for name in SERIES}


def change_points(values: Sequence[float], *, penalty: float | None = None, least: int = LEAST) -> tuple[int, ...]:
    """Indices where a new level begins, in order: the parting with the least sum of squares round the level of each
    stretch, each change costing `penalty`; no stretch is shorter than `least`.

    PELT (Killick, Fearnhead & Eckley 2012): exact, and linear where changes are many. The penalty is that of the
    Bayesian criterion, twice the variance times the logarithm of the length, from how far neighbours differ.
    """
    cost = _Cost(values)
    penalty = usual_penalty(values) if penalty is None else penalty
    best, before = [-penalty], [0]
    starts = [0]  # where the last stretch may begin
    expires: dict[int, int] = {}  # a beginning that is beaten at some end may still serve until the next fits behind
    for end in range(1, len(values) + 1):
        costs = {one: best[one] + cost(one, end) for one in starts if end - one >= least}
        start = min(costs, key=lambda one: costs[one], default=0)
        best.append(costs.get(start, inf) + penalty)
        before.append(start)
        for one, total in costs.items():
            if total > best[end]:
                expires.setdefault(one, end + least)
        starts = [one for one in starts if expires.get(one, inf) > end + 1] + [end]
    return _traced(before)


def usual_penalty(values: Sequence[float]) -> float:
    steps = [abs(later - earlier) for earlier, later in pairwise(values)]
    spread = median(steps) / _MEDIAN_OF_STEPS if steps else 0.0
    return max(2 * spread**2 * log(len(values)), _EPSILON) if len(values) > 1 else 0.0


class _Cost:
    """Sum of squares round the mean of any stretch, from running sums."""

    def __init__(self, values: Sequence[float]) -> None:
        self._sums = list(accumulate(values, initial=0.0))
        self._squares = list(accumulate((value * value for value in values), initial=0.0))

    def __call__(self, start: int, end: int) -> float:
        total = self._sums[end] - self._sums[start]
        return self._squares[end] - self._squares[start] - total * total / (end - start)


def _traced(before: Sequence[int]) -> tuple[int, ...]:
    found, end = [], len(before) - 1
    while end > 0 and before[end] > 0:
        end = before[end]
        found.append(end)
    return tuple(reversed(found))
