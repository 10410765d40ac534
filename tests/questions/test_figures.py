"""One thing of which two figures are told."""

import pytest

from afterdraft.questions.counted import number
from afterdraft.questions.each.figures import CHECK
from afterdraft.questions.wording import worded
from tests.questions.asked import found, quotes

STEPS = "There were two hundred and eleven steps to the lamp, and Ilse counted them."


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("a hundred and ninety-nine", 199),
        ("thirty-two hundred", 3200),
        ("two thousand, one hundred and six", 2106),
        ("1,250", 1250),
        ("twenty-eight", 28),
        ("forty one", 41),
    ],
)
def test_reads_figures(words: str, value: int) -> None:
    assert number(words) == value


@pytest.mark.parametrize(
    ("first", "other"),
    [
        (STEPS, "She went up the two hundred and thirteen steps with the oil."),
        (STEPS, "All 212 stone steps were wet."),
        ("The house had twenty-three windows.", "He cleaned the thirty-two windows before noon."),
        ("They rang the thirteen bells.", "Sixteen bells hung there."),
        ("He had paid twelve hundred pounds for the boat.", "“The boat cost me fifteen hundred pounds,” he said."),
        ("He bought the van from a cousin for $900.", "She had given $700 for the van."),
        ("The price of the mule was forty crowns.", "He paid thirty crowns for the old mule."),
    ],
)
def test_asks_where_one_thing_has_two_figures(first: str, other: str) -> None:
    (one,) = found(CHECK, [first], ["Nothing."], [other])
    assert quotes([one]) == [[first, other]]
    assert worded(CHECK.id, one, ("One", "Two", "Three")).endswith("Which is meant?")


@pytest.mark.parametrize(
    ("first", "other"),
    [
        (STEPS, "She went up the two hundred and eleven steps with the oil."),
        (STEPS, "She went up some two hundred and thirteen steps."),
        (STEPS, "There were another hundred and thirty-one steps to go."),
        (STEPS, "There were sixteen steps down."),
        (STEPS, "There were three hundred and six steps in the cellar."),
        (STEPS, "Were there not two hundred and six steps?"),
        (STEPS, "There were two hundred and six goats."),
        ("They went up twenty steps.", "They went up thirty steps."),
        ("He had paid twelve hundred pounds for the boat.", "He would have paid fifteen hundred pounds for the boat."),
        ("He had paid twelve hundred pounds for the boat.", "He had paid fifteen hundred pounds for the house."),
        ("He had paid twelve hundred pounds for the boat.", "He sold the boat for fifteen hundred pounds."),
        ("He had paid twelve hundred pounds for the boat.", "They offered to pay nine hundred pounds for the boat."),
        ("He gave ten minutes for the walk.", "He gave twenty minutes for the walk."),
    ],
)
def test_is_silent_about_other_things_and_what_is_not_sure(first: str, other: str) -> None:
    assert not found(CHECK, [first], ["Nothing."], [other])


def test_is_silent_within_one_scene() -> None:
    assert not found(CHECK, [STEPS, "She made it two hundred and thirteen steps."])
