"""Months and seasons: what grows and falls when is common practice, for the north."""

import pytest

from afterdraft.questions.each.season import CHECK
from tests.questions.asked import dated, quotes

JULY = "It was the third of July, and the ferry went twice a day."


def test_asks_about_snow_in_july() -> None:
    (one,) = CHECK.find(dated([JULY, "Ilse went out to the landing. Snow lay along the rail."]))
    assert quotes([one]) == [[JULY, "Snow lay along the rail."]]
    assert one.words == {"month": "July", "sign": "Snow lay"}


@pytest.mark.parametrize(
    "scene",
    [
        [JULY, "Ilse went out to the landing. The hay was down on the other bank."],
        ["It was the third of January.", "Ilse went out to the landing. Snow lay along the rail."],
        [JULY, "“The snow lay to the sills,” said Ilse."],
        [JULY, "Ilse went out to the landing, where snow had lain in the winter she was born."],
        [JULY, "They were far down in the southern hemisphere.", "Snow lay along the rail."],
        ["Ilse dreamed that he came home. " + JULY, "She woke, and snow lay along the rail."],
        [JULY, "They were in the Alps. Snow lay along the path."],
        ["“It was the third of July,” said Ilse.", "Snow lay along the rail."],
        [JULY, "In October they sold the goat.", "In January the river froze.", "Snow lay along the rail."],
    ],
)
def test_is_silent_where_they_agree_or_where_it_is_not_of_that_time(scene: list[str]) -> None:
    assert not list(CHECK.find(dated(scene)))


def test_is_silent_far_from_the_month() -> None:
    scene = [JULY, *["Nobody came."] * 40, "Snow lay along the rail."]
    assert not list(CHECK.find(dated(scene)))
