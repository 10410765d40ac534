"""The network against Floyd and Warshall's algorithm, slow and obvious, and against the paper's own example."""

from math import inf

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.whole.network import Constraint, bounds


def slow(points: int, constraints: list[Constraint]) -> list[list[float]] | None:
    """All distances; None where they contradict one another (Floyd and Warshall)."""
    far = [[0.0 if a == b else inf for b in range(points)] for a in range(points)]
    for one in constraints:
        far[one.a][one.b] = min(far[one.a][one.b], one.high)
        far[one.b][one.a] = min(far[one.b][one.a], -one.low)
    for over in range(points):
        for a in range(points):
            for b in range(points):
                far[a][b] = min(far[a][b], far[a][over] + far[over][b])
    return None if any(far[a][a] < 0 for a in range(points)) else far


POINTS = 5
constraints = st.lists(
    st.builds(
        lambda a, b, low, width: Constraint(a, b, low, low + width),
        st.integers(0, POINTS - 1),
        st.integers(0, POINTS - 1),
        st.integers(-9, 9),
        st.one_of(st.integers(0, 9), st.just(inf)),
    ).filter(lambda one: one.a != one.b),
    max_size=9,
)


@given(constraints)
def test_bounds_are_the_shortest_paths(given: list[Constraint]) -> None:
    far = slow(POINTS, given)
    found = bounds(POINTS, given)
    if far is None:
        assert found.dropped
    else:
        assert found.dropped == ()
        assert list(found.latest) == far[0]
        assert list(found.earliest) == [-far[point][0] for point in range(POINTS)]


@given(constraints)
def test_what_is_dropped_contradicts_what_is_named_with_it_and_the_rest_agrees(given: list[Constraint]) -> None:
    found = bounds(POINTS, given)
    for gone, others in found.dropped:
        assert slow(POINTS, [given[gone], *(given[other] for other in others)]) is None
    kept = [one for place, one in enumerate(given) if place not in {gone for gone, _ in found.dropped}]
    assert slow(POINTS, kept) is not None


def test_the_example_of_the_paper() -> None:
    """Dechter, Meiri and Pearl 1991, the example of their chapter 2 in one reading, from memory: John leaves home
    between 7:10 and 7:20 and drives 30 to 40 minutes; Fred arrives at work between 8:00 and 8:10, after 40 to 50
    minutes, and left 10 to 20 minutes before John came. Minutes after 7:00."""
    network = [
        Constraint(0, 1, 10, 20),
        Constraint(1, 2, 30, 40),
        Constraint(3, 4, 40, 50),
        Constraint(3, 2, 10, 20),
        Constraint(0, 4, 60, 70),
    ]
    found = bounds(5, network)
    assert (found.earliest, found.latest) == ((0, 10, 40, 20, 60), (0, 20, 50, 30, 70))
    assert found.dropped == ()


@pytest.mark.parametrize("wrong", [Constraint(0, 2, 20, 25), Constraint(2, 0, 5, 9)])
def test_a_contradiction_is_told_with_its_evidence(wrong: Constraint) -> None:
    found = bounds(3, [Constraint(0, 1, 3, 3), Constraint(1, 2, 4, 4), wrong])
    assert found.dropped == ((2, (0, 1)),)
    assert found.latest == (0, 3, 7)


def test_a_point_that_nothing_ties_is_open() -> None:
    assert bounds(2, []).latest == (0, inf)
