"""PELT, against every parting tried."""

from collections.abc import Sequence
from functools import cache
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.whole.change_points import change_points, changes, usual_penalty
from tests.whole.test_pace import of

VALUES = st.lists(st.integers(-20, 20).map(float), min_size=1, max_size=24)


def squares(values: Sequence[float]) -> float:
    level = sum(values) / len(values)
    return sum((value - level) ** 2 for value in values)


def total(values: Sequence[float], points: Sequence[int], penalty: float) -> float:
    ends = [0, *points, len(values)]
    return sum(squares(values[a:b]) for a, b in pairwise(ends)) + penalty * len(points)


def slowest(values: Sequence[float], penalty: float, least: int) -> float:
    """The least cost of any parting: optimal partitioning, nothing left out."""

    @cache
    def best(start: int) -> float:
        rest = squares(values[start:])
        later = (
            squares(values[start:cut]) + penalty + best(cut) for cut in range(start + least, len(values) - least + 1)
        )
        return min([rest, *later])

    return best(0)


@given(VALUES, st.sampled_from([0.5, 3.0, 40.0]), st.integers(1, 4))
def test_no_parting_costs_less(values: list[float], penalty: float, least: int) -> None:
    found = change_points(values, penalty=penalty, least=least)
    assert total(values, found, penalty) == pytest.approx(slowest(values, penalty, least), abs=1e-6)
    ends = [0, *found, len(values)]
    assert not found or all(b - a >= least for a, b in pairwise(ends))


@pytest.mark.parametrize(
    ("values", "expected"),
    [
        ([], ()),
        ([1.0], ()),
        ([5.0] * 20, ()),
        ([1.0, 1.2, 0.9, 1.1, 1.0, 9.0, 9.2, 8.9, 9.1, 9.0], (5,)),
        ([1, 2, 1, 2, 1, 2, 1, 30, 31, 30, 31, 30, 4, 5, 4, 5, 4, 5], (7, 12)),
    ],
)
def test_changes_of_level(values: list[float], expected: tuple[int, ...]) -> None:
    assert change_points(values) == expected


# Made by five levels with noise, and what ruptures 1.1.10 says of it: Pelt(model="l2", min_size=2, jump=1). Recorded,
# since that library does not install on every Python that the program runs on.
NOISY = [
    *(
        3.1,
        4.5,
        1.9,
        4.2,
        2.7,
        2.7,
        5.3,
        3.2,
        2.9,
        11.9,
        12.4,
        11.0,
        11.7,
        9.8,
        10.6,
        5.5,
        4.4,
        4.2,
        4.0,
        5.7,
        5.8,
        5.6,
    ),
    *(6.1, 4.4, 5.9, 6.3, 6.9, 5.0, 5.5, 5.1, 6.9, 4.9, 5.8, 8.8, 4.9, 8.5, 7.9, 7.1, 8.1, 8.1, 3.3, 1.7, 1.3, 1.3),
    *(0.8, 1.9, 1.1, 3.3),
]


@pytest.mark.parametrize(("penalty", "expected"), [(5, (9, 15, 33, 40)), (20, (9, 15, 33, 40)), (60, (9, 15, 40))])
def test_a_reference_library_finds_the_same(penalty: float, expected: tuple[int, ...]) -> None:
    assert change_points(NOISY, penalty=penalty) == expected


def test_the_penalty_grows_with_how_far_neighbours_differ() -> None:
    assert usual_penalty([1.0, 3.0, 1.0, 3.0]) == pytest.approx(4 * usual_penalty([1.0, 2.0, 1.0, 2.0]))


def test_each_measure_of_a_book_has_its_changes() -> None:
    found = changes([of(events=1.0)] * 6 + [of(events=4.0)] * 6)
    assert found == {"words": (), "speech_share": (), "events_per_100": (6,), "words_per_sentence": ()}
