"""The sliding windows against windows made anew at every gap."""

from collections import Counter
from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.manuscript.unmarked.cohesion import cohesion


def _slow(bags: list[list[str]], window: int) -> list[float]:
    return [_cosine(_gather(bags[:gap][::-1], window), _gather(bags[gap:], window)) for gap in range(1, len(bags))]


def _gather(bags: list[list[str]], window: int) -> Counter[str]:
    """Whole paragraphs until there are words enough."""
    found: Counter[str] = Counter()
    for bag in bags:
        if found.total() >= window:
            break
        found.update(bag)
    return found


def _cosine(left: Counter[str], right: Counter[str]) -> float:
    size = sqrt(sum(n * n for n in left.values()) * sum(n * n for n in right.values()))
    return sum(n * right[word] for word, n in left.items()) / size if size else 0.0


BAG = st.lists(st.sampled_from(["rope", "ferry", "tide", "soup", "stove"]), max_size=8)


@given(st.lists(BAG, max_size=20), st.integers(1, 12))
def test_sliding_is_the_same_as_counting_anew(bags: list[list[str]], window: int) -> None:
    assert cohesion(bags, window) == pytest.approx(_slow(bags, window))


def test_the_same_words_cohere_and_other_words_do_not() -> None:
    assert cohesion([["rope", "tide"], ["rope", "tide"], ["soup"]], 2) == pytest.approx([1.0, 0.0])
