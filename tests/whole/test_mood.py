import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.mood import mood
from tests.whole.test_pace import counted


def book(*valences: float, words: int = 100) -> list[SceneFacts]:
    return [SceneFacts(1, counted=(counted(words=words, valence=value),)) for value in valences]


def test_the_window_is_stated_and_shrinks_with_the_book() -> None:
    assert mood(book(*[0.0] * 1000)).window == 10_000  # Reagan et al. 2016
    assert mood(book(*[0.0] * 100)).window == 2_000
    assert mood(book()).points == ()


@given(st.floats(-1, 1), st.integers(1, 60))
def test_an_even_book_is_an_even_line(value: float, scenes: int) -> None:
    found = mood(book(*[value] * scenes), points=20)
    assert [one.valence for one in found.points] == pytest.approx([value] * 20)
    assert [one.error for one in found.points] == pytest.approx([0.0] * 20)


def test_the_end_is_not_tied_to_the_beginning() -> None:
    """An even fall from good to bad is a straight line, ends included; smoothing by waves bends both."""
    slope = [0.8 - 1.6 * (number + 0.5) / 500 for number in range(500)]
    found = mood(book(*slope), points=21).points
    assert [one.valence for one in found] == pytest.approx([0.8 - 1.6 * n / 20 for n in range(21)], abs=1e-6)


def test_chance_is_smoothed_away_and_its_reach_is_told() -> None:
    draw = random.Random(7)  # noqa: S311  # chance for a test
    found = mood(book(*[draw.choice([-0.9, 0.9]) for _ in range(2000)]))
    inner = found.points[10:-10]
    assert max(abs(one.valence) for one in inner) < 0.45
    assert 0.05 < min(one.error for one in inner) < max(one.error for one in inner) < 0.2


def test_a_paragraph_longer_than_the_window_has_a_line() -> None:
    assert len(mood(book(0.5), points=3).points) == 3
