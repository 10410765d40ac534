"""Moons: twenty-nine and a half days from one to the next, as every almanac has it."""

import pytest

from afterdraft.questions.each.moon import CHECK
from tests.questions.asked import dated, quotes

FIRST = ["It was the third of May.", "A full moon stood over the landing."]


def test_asks_about_two_full_moons_a_fortnight_apart() -> None:
    (one,) = CHECK.find(dated(FIRST, ["It was the seventeenth of May.", "The full moon came up over the rail."]))
    assert quotes([one]) == [["A full moon stood over the landing.", "The full moon came up over the rail."]]
    assert one.numbers == {"days": 14}


def test_a_day_that_is_told_within_a_scene_counts() -> None:
    begins = ["Ilse came down to the landing.", "She had a basket with her."]
    found = list(
        CHECK.find(dated([*begins, *FIRST], [*begins, "It was the seventeenth of May.", "The moon was full."]))
    )
    assert [one.numbers for one in found] == [{"days": 14}]
    gone_on = "Two days later the rope broke."
    assert not list(
        CHECK.find(dated(FIRST, [*begins, "It was the seventeenth of May.", gone_on, "The moon was full."]))
    )


def test_asks_about_a_new_moon_right_after_a_full_one() -> None:
    assert list(CHECK.find(dated(FIRST, ["It was the fifth of May.", "A thin moon hung over the rail."])))


@pytest.mark.parametrize(
    "other",
    [
        ["It was the first of June.", "The full moon came up over the rail."],
        ["It was the seventeenth of May.", "A thin moon hung over the rail."],
        ["It was the seventeenth of May.", "“There’s a full moon,” said Ilse."],
        ["It was the seventeenth of May.", "Her face was like a full moon."],
        ["It was some time in May.", "The full moon came up over the rail."],
        ["It was the fifth of May.", "The full moon came up over the rail."],
    ],
)
def test_is_silent_where_it_may_be_so(other: list[str]) -> None:
    assert not list(CHECK.find(dated(FIRST, other)))
