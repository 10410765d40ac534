"""A Simple Temporal Network (Dechter, Meiri & Pearl 1991): points in time, and bounds on the distances between them.

A bound says that one point is at most so much later than another. A circle of bounds whose sum is below nothing is a
contradiction, and the bounds of that circle are its evidence. Told one by one: a feasible time for every point is kept,
and each new bound repairs it or is refused (Cotton & Maler 2006, after Ramalingam et al. 1999).
"""

from collections.abc import Iterator
from dataclasses import dataclass
from heapq import heappop, heappush
from typing import Generic, TypeVar

Why = TypeVar("Why")


@dataclass(frozen=True, slots=True)
class Bound(Generic[Why]):
    """`head` is at most `most` later than `tail`, in whole units of the network's own; `why` is what that rests on."""

    tail: int
    head: int
    most: int
    why: Why


class Network(Generic[Why]):
    """Points are numbered from 0; the bounds told so far never contradict one another."""

    def __init__(self, points: int) -> None:
        self._from: list[list[Bound[Why]]] = [[] for _ in range(points)]
        self._to: list[list[Bound[Why]]] = [[] for _ in range(points)]
        self._time = [0] * points  # feasible: time[head] <= time[tail] + most for each bound

    def tell(self, bound: Bound[Why]) -> tuple[Bound[Why], ...]:
        """Take the bound in; where it contradicts those told before, leave it out and return the circle, it first."""
        changed, circle = self._repaired(bound)
        if circle:
            return circle
        for point, time in changed.items():
            self._time[point] = time
        self._from[bound.tail].append(bound)
        self._to[bound.head].append(bound)
        return ()

    def latest(self, origin: int) -> list[int | None]:
        """The most that each point can be later than `origin`; None where nothing holds it back."""
        return [None if reached is None else reached[0] for reached in self._shortest(origin, back=False)]

    def earliest(self, origin: int) -> list[int | None]:
        """The least that each point must be later than `origin` (below 0: may be before it); None where it is free."""
        return [None if reached is None else -reached[0] for reached in self._shortest(origin, back=True)]

    def rests_on(self, origin: int) -> list[tuple[Bound[Why], ...]]:
        """For each point the bounds that make its earliest and its latest."""
        ways = [self._shortest(origin, back=back) for back in (False, True)]
        return [tuple(dict.fromkeys(b for way in ways for b in _path(way, point))) for point in range(len(self._time))]

    def _repaired(self, new: Bound[Why]) -> tuple[dict[int, int], tuple[Bound[Why], ...]]:
        """New times of the points that must become earlier, or the circle that forbids it."""
        over = self._time[new.tail] + new.most - self._time[new.head]
        done: dict[int, int] = {}
        why = {new.head: new}
        if over < 0 and new.head == new.tail:
            return {}, (new,)
        least = {new.head: over}
        queue = [(over, new.head)]
        while queue and queue[0][0] < 0:
            change, point = heappop(queue)
            if point in done:
                continue
            if point == new.tail:
                return {}, tuple(_circle(new, why))
            done[point] = self._time[point] + change
            for bound in self._from[point]:
                lower = done[point] + bound.most - self._time[bound.head]
                if bound.head not in done and lower < least.get(bound.head, 0):
                    least[bound.head], why[bound.head] = lower, bound
                    heappush(queue, (lower, bound.head))
        return done, ()

    def _shortest(self, origin: int, *, back: bool) -> "Reached[Why]":
        """Dijkstra over bounds made non-negative by the feasible times; distance and last bound of each point."""
        reached: Reached[Why] = [None] * len(self._time)
        order = 0  # tells equal costs apart: bounds themselves have no order
        heap: list[tuple[int, int, int, Bound[Why] | None]] = [(0, order, origin, None)]
        while heap:
            cost, _, point, by = heappop(heap)
            if reached[point] is not None:
                continue
            shift = self._time[origin] - self._time[point]
            reached[point] = (cost + shift if back else cost - shift, by)
            for bound in self._to[point] if back else self._from[point]:
                order += 1
                slack = bound.most + self._time[bound.tail] - self._time[bound.head]
                heappush(heap, (cost + slack, order, bound.tail if back else bound.head, bound))
        return reached


Reached = list[tuple[int, Bound[Why] | None] | None]


def _circle(new: Bound[Why], why: dict[int, Bound[Why]]) -> Iterator[Bound[Why]]:
    yield new
    bound = why[new.tail]
    while bound is not new:
        yield bound
        bound = why[bound.tail]


def _path(way: Reached[Why], point: int) -> Iterator[Bound[Why]]:
    reached = way[point]
    while reached and (bound := reached[1]):
        yield bound
        point = bound.tail if point == bound.head else bound.head
        reached = way[point]
