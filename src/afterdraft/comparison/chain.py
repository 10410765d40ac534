"""The heaviest run of pairs that rises on both sides.

Method: longest increasing subsequence with weights, by a binary indexed tree of maxima (Fenwick 1994), O(n log n).
"""

from collections.abc import Sequence


def heaviest(pairs: Sequence[tuple[int, int]], weights: Sequence[float], *, shared: bool = False) -> list[int]:
    """Places in `pairs` of a heaviest subset in which old and new indices both strictly rise, in that order.

    `shared`: neighbours of the run may have an index of either side in common, as the pieces of one unit do.
    """
    below, turn = (0, 1) if shared else (1, -1)
    order = sorted(range(len(pairs)), key=lambda place: (pairs[place][0], turn * pairs[place][1]))
    ranks = {new: rank for rank, new in enumerate(sorted({new for _, new in pairs}), 1)}
    size = len(ranks) + 1
    best = [0.0] * size  # heaviest run that ends at or under a rank …
    last = [-1] * size  # … and the place of its last pair
    before = [-1] * len(pairs)
    for place in order:
        rank = ranks[pairs[place][1]]
        weight, previous = 0.0, -1
        at = rank - below
        while at > 0:
            if best[at] > weight:
                weight, previous = best[at], last[at]
            at &= at - 1
        before[place] = previous
        weight += weights[place]
        at = rank
        while at < size:
            if weight > best[at]:
                best[at], last[at] = weight, place
            at += at & -at
    return _run(best, last, before)


def _run(best: Sequence[float], last: Sequence[int], before: Sequence[int]) -> list[int]:
    run: list[int] = []
    place = last[max(range(len(best)), key=best.__getitem__)]
    while place >= 0:
        run.append(place)
        place = before[place]
    return run[::-1]
