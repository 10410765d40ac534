"""Slips of the pen, by letters alone."""

import pytest

from afterdraft.questions.slips import is_slip


@pytest.mark.parametrize(
    "slip",
    ["Hareld", "Harodl", "Harrold", "Harld", "Harolt", "Harols", "Harpld", "Ahrold", "Haróld"],
)
def test_one_letter_more_less_alike_or_changed_about(slip: str) -> None:
    assert is_slip(slip, "Harold")


@pytest.mark.parametrize("other", ["Garold", "Hawold", "Harowl", "Harolds", "Harold", "Gerald", "Hamold", "Harqld"])
def test_no_slip(other: str) -> None:
    assert not is_slip(other, "Harold")


@pytest.mark.parametrize(("one", "two"), [("s", "w"), ("d", "r"), ("k", "m"), ("g", "v"), ("p", "o")])
def test_keys_side_by_side_are_taken_for_one_another(one: str, two: str) -> None:
    """As they lie on an English keyboard: from memory."""
    assert is_slip(f"Al{one}art", f"Al{two}art")
    assert is_slip(f"Al{two}art", f"Al{one}art")


@pytest.mark.parametrize(("one", "two"), [("s", "r"), ("d", "m"), ("g", "p"), ("h", "q"), ("t", "x")])
def test_keys_apart_are_not(one: str, two: str) -> None:
    assert not is_slip(f"Al{one}art", f"Al{two}art")
