"""A Simple Temporal Network (Dechter, Meiri and Pearl 1991): points in time, and how far apart they may be.

Each constraint says `low ≤ b − a ≤ high`. Shortest paths in its distance graph give the narrowest bounds of every
point; a cycle of negative length is a contradiction, and the constraints on it are its evidence.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf


@dataclass(frozen=True, slots=True)
class Constraint:
    """Between points `a` and `b`, in one unit throughout; `inf` where a side is open."""

    a: int
    b: int
    low: float = -inf
    high: float = inf


@dataclass(frozen=True, slots=True)
class Bounds:
    """Of each point, counted from point 0; `dropped` are constraints that contradict others, each with those others."""

    earliest: tuple[float, ...]
    latest: tuple[float, ...]
    dropped: tuple[tuple[int, tuple[int, ...]], ...] = ()


Edge = tuple[int, int, float, int]  # from, to, length, constraint


def bounds(points: int, constraints: Sequence[Constraint]) -> Bounds:
    """Narrowest bounds that all constraints allow. Of those that contradict one another the last given is left out,
    until the others agree."""
    left = dict(enumerate(constraints))
    dropped: list[tuple[int, tuple[int, ...]]] = []
    while cycle := _cycle(points, _edges(left)):
        gone = max(cycle)
        dropped.append((gone, tuple(sorted(cycle - {gone}))))
        del left[gone]
    edges = _edges(left)
    latest, _ = _shortest(points, edges)
    back, _ = _shortest(points, [(to, at, length, own) for at, to, length, own in edges])
    return Bounds(tuple(-far for far in back), tuple(latest), tuple(dropped))


def _edges(constraints: dict[int, Constraint]) -> list[Edge]:
    """The distance graph: b − a ≤ high, and a − b ≤ −low."""
    edges = [(one.a, one.b, one.high, own) for own, one in constraints.items() if one.high < inf]
    return edges + [(one.b, one.a, -one.low, own) for own, one in constraints.items() if one.low > -inf]


def _shortest(points: int, edges: Sequence[Edge]) -> tuple[list[float], list[Edge | None]]:
    """Distances from point 0, and the last edge of each path (Bellman and Ford)."""
    return _relaxed([0.0 if point == 0 else inf for point in range(points)], edges)


def _relaxed(far: list[float], edges: Sequence[Edge]) -> tuple[list[float], list[Edge | None]]:
    came: list[Edge | None] = [None] * len(far)
    for _ in range(len(far)):
        changed = False
        for edge in edges:
            at, to, length, _ = edge
            if far[at] + length < far[to]:
                far[to], came[to], changed = far[at] + length, edge, True
        if not changed:
            break
    return far, came


def _cycle(points: int, edges: Sequence[Edge]) -> frozenset[int]:
    """The constraints on a cycle of negative length; none where there is none."""
    far, came = _relaxed([0.0] * points, edges)
    loose = next((edge for edge in edges if far[edge[0]] + edge[2] < far[edge[1]]), None)
    if loose is None:
        return frozenset()
    point = loose[1]
    for _ in range(points):  # back along the paths until surely on the cycle
        edge = came[point]
        if edge is None:
            break
        point = edge[0]
    seen: set[int] = set()
    own: set[int] = set()
    while point not in seen and (edge := came[point]) is not None:
        seen.add(point)
        own.add(edge[3])
        point = edge[0]
    return frozenset(own)
