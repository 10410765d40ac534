"""Dress within a scene: the text is invented."""

import pytest

from afterdraft.questions.each.dress import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, MARTA

pytestmark = pytest.mark.slow
GREY = "Ilse had come in a grey coat."


def test_asks_where_a_coat_has_two_colours() -> None:
    (one,) = found_in(CHECK, [*ILSE, GREY, "Tobias waited.", "Ilse wiped the oar on her green coat."], MARTA)
    assert quotes([one]) == [[GREY, "Ilse wiped the oar on her green coat."]]
    assert (one.words["name"], one.words["thing"], one.words["first"]) == ("Ilse", "coat", "grey")


@pytest.mark.parametrize("name", ["Ilse Brandt’s", "Ilse Brandt's"])
def test_whose_it_is_by_name(name: str) -> None:
    (one,) = found_in(CHECK, [*ILSE, GREY, f"{name} green coat was wet at the hem."], MARTA)
    assert one.words["other"] == "green"


def test_a_day_that_is_only_named_is_no_change() -> None:
    told = "Tobias said good day. He had the rope in his other hand, and it had been a long morning."
    told += " “I always change at noon,” said Tobias."
    assert found_in(CHECK, [*ILSE, GREY, told, "Ilse wiped the oar on her green coat."], MARTA)


@pytest.mark.parametrize(
    "other",
    [
        ["Ilse wiped the oar on her grey coat."],
        ["Ilse wiped the oar on her green skirt."],
        ["Tobias came in a green coat."],
        ["At noon she had changed.", "Ilse wiped the oar on her green coat."],
        ["Next day it rained.", "Ilse wiped the oar on her green coat."],
        ["She had another coat with her.", "Ilse wiped the oar on her green coat."],
        ["The next morning it rained.", "Ilse wiped the oar on her green coat."],
        ["An hour later it rained.", "Ilse wiped the oar on her green coat."],
    ],
)
def test_is_silent_about_other_things_people_and_a_change(other: list[str]) -> None:
    assert not found_in(CHECK, [*ILSE, GREY, *other], MARTA)


def test_is_silent_about_two_scenes() -> None:
    assert not found_in(CHECK, [*ILSE, GREY], ["Ilse wiped the oar on her green coat.", *MARTA])
