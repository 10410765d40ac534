"""Ranks that change once: the text is invented; what goes together is common knowledge."""

import pytest

from afterdraft.questions.each.ranks import CHECK
from tests.questions.asked import found, quotes

HOUR = ["Colonel Hale went down to the landing. Colonel Hale waited.", "“Sit, Colonel Hale,” said Ilse."]


def test_asks_about_a_rank_between_others() -> None:
    (one,) = found(CHECK, HOUR, ["Captain Hale untied the boat."], HOUR)
    assert quotes([one])[0][0] == "Captain Hale untied the boat."
    assert one.words == {"surname": "Hale", "usual": "Colonel", "rare": "Captain"}


@pytest.mark.parametrize(
    "other",
    [
        "Captain Lamb untied the boat.",
        "Mr. Hale untied the boat.",
        "Col. Hale untied the boat.",
        "His brother, Captain Hale, untied the boat.",
        "Captain Hale and Colonel Hale untied the boat.",
    ],
)
def test_is_silent_about_other_people_and_what_goes_together(other: str) -> None:
    assert not found(CHECK, HOUR, [other], HOUR)


def test_is_silent_where_somebody_rises() -> None:
    assert not found(CHECK, ["Captain Hale untied the boat."], HOUR, HOUR)
