"""Which gaps are offered: the best first, none too near to another or to the scene's ends."""

from bisect import bisect_left, insort
from collections.abc import Sequence


def peaks(scores: Sequence[float], places: Sequence[int], *, length: int, least: float, apart: int) -> list[int]:
    """Indices of the gaps chosen, in order; best scores first, each at least `apart` words from all chosen before it
    and from both ends of the scene.

    `places` are the words before each gap, rising; `length` the words of the scene; scores below `least` are let be.
    """
    chosen: list[int] = []
    taken = [0, length]
    for gap in sorted(range(len(scores)), key=lambda gap: (-scores[gap], gap)):
        if scores[gap] < least:
            break
        at = bisect_left(taken, places[gap])
        near = taken[max(0, at - 1) : at + 1]
        if all(abs(places[gap] - other) >= apart for other in near):
            insort(taken, places[gap])
            chosen.append(gap)
    return sorted(chosen)
