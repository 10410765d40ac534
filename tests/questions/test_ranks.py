"""Ranks that change once: the text is invented; what goes together is common knowledge."""

import pytest

from afterdraft.questions.each.ranks import CHECK
from tests.questions.asked import found, quotes

HOUR = ["Colonel Hale went down to the landing. Colonel Hale waited.", "“Sit, Colonel Hale,” said Ilse."]


def test_asks_about_a_rank_between_others() -> None:
    (one,) = found(CHECK, HOUR, ["Captain Hale untied the boat."], HOUR)
    assert quotes([one])[0][0] == "Captain Hale untied the boat."
    assert one.words == {"surname": "Hale", "usual": "Colonel", "rare": "Captain"}


def test_what_belongs_to_him_counts_too() -> None:
    assert quotes(found(CHECK, HOUR, ["It was Captain Hale’s boat."], HOUR))[0][0] == "It was Captain Hale’s boat."


@pytest.mark.parametrize("hare", ["O’Hare", "O'Hare"])
def test_names_with_an_apostrophe(hare: str) -> None:
    hour = [line.replace("Hale", hare) for line in HOUR]
    (one,) = found(CHECK, hour, [f"Captain {hare} untied the boat."], hour)
    assert one.words["surname"] == hare


def test_other_people_in_the_sentence_explain_nothing() -> None:
    told = "The young marshal, and Captain Hale and his brother, untied the old boat now."
    assert quotes(found(CHECK, HOUR, [told], HOUR))[0][0] == told


@pytest.mark.parametrize(
    "other",
    [
        "Old Captain Hale untied the boat.",
        "Captain Hale (he was then) untied the boat.",
        "I was at the ferry with Captain Hale, as he then was.",
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
