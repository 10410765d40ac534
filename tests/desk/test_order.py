"""Keys of an order: there is always room, and only what moves gets a new key."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.desk.order import beside, between, several_between, spread


@given(st.lists(st.integers(min_value=0), max_size=60))
def test_there_is_room_anywhere_again_and_again(places: list[int]) -> None:
    keys: list[str] = []
    for place in places:
        index = place % (len(keys) + 1)
        keys.insert(index, between(*beside(keys, index)))
    assert keys == sorted(set(keys))
    assert not any(key.endswith("0") for key in keys)


@pytest.mark.parametrize("count", [0, 1, 17, 18, 90, 648, 3000])
def test_keys_spread_evenly_are_short_and_in_order(count: int) -> None:
    keys = spread(count)
    assert list(keys) == sorted(set(keys))
    assert len(keys) == count
    assert all(len(key) <= 3 for key in keys)
    assert all(between(*beside(keys, n)) for n in range(count + 1))


@given(st.integers(min_value=0, max_value=40))
def test_several_fit_between_two(count: int) -> None:
    keys = several_between("a", "b", count)
    assert ["a", *keys, "b"] == sorted({"a", *keys, "b"})


def test_always_at_the_beginning_or_the_end_keys_grow_slowly() -> None:
    first = last = "i"
    for _ in range(100):
        first, last = between("", first), between(last, "")
    assert len(first) < 40
    assert len(last) < 40


@pytest.mark.parametrize(("before", "after"), [("b", "a"), ("a", "a")])
def test_no_key_where_the_order_is_upside_down(before: str, after: str) -> None:
    with pytest.raises(ValueError, match="does not come before"):
        between(before, after)
