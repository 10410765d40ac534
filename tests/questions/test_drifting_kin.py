"""Somebody's wife, child or dog who has another name for a page. The text is invented; so are the names."""

from collections.abc import Sequence

import pytest

from afterdraft.questions.each.name_drift import CHECK
from tests.questions.asked import Scenes, found

RAIN = ["It rained.", "The bell went at four.", "Nobody came.", "The boats lay side by side."] * 8
WIFE = ["The talk went down.", "Gerald came in late, with his wife Maud on his arm.", "Nobody sang."]
AGAIN = ["Maud was out, and Gerald had the key.", "Nobody sang.", "It was late."]


def book(other: Sequence[str], usual: Sequence[Sequence[str]] = (WIFE, AGAIN)) -> Scenes:
    return [*usual, RAIN, RAIN, ["Nobody spoke.", *other]]


@pytest.mark.parametrize(
    "other",
    [
        ["“Gerald,” Miriam said. “You needn’t.”"],
        ["Gerald looked round.", "“You needn’t,” said Miriam."],
        ["Gerald and Mimsy had brought a cake."],
        ["Gerald put the glass down. “This is for Mabel,” he said."],
    ],
)
def test_asks_where_a_wife_has_another_name_beside_the_same_man(other: Sequence[str]) -> None:
    (one,) = found(CHECK, *book(other))
    assert one.words["usual"] == "Maud"
    assert one.evidence[0].quote == WIFE[1]
    assert one.evidence[1].scene == 4


@pytest.mark.parametrize(
    "usual",
    [
        ["“Maud,” said Gerald. “My wife. The other one’s called Duchess.”"],
        ["Maud had moved in with Gerald at Easter. Maud made jam."],
        ["“Maud started it,” said Gerald. “That’s my wife that was.”"],
    ],
)
def test_knows_a_wife_by_other_words(usual: Sequence[str]) -> None:
    (one,) = found(CHECK, *book(["“Gerald,” Miriam said."], [usual]))
    assert one.words == {"usual": "Maud", "other": "Miriam"}


@pytest.mark.parametrize(
    "other",
    [
        ["“Gerald,” Sally said."],  # quite unlike
        ["“Not now,” Miriam said."],  # he is not there
        ["Gerald danced with a woman named Miriam.", "“Yes,” Miriam said."],
        ["Gerald’s sister was there.", "Her name was Miriam. “Yes,” Miriam said to Gerald."],
        ["“Gerald,” said Miriam Dacre."],  # another surname than his
        ["“Gerald,” Maudie said."],
        ["“Gerald,” Miriam said.", "“Quite right,” Maud said."],
        ["Gerald stood under the Miriam Tower."],
    ],
)
def test_is_silent_about_other_people(other: Sequence[str]) -> None:
    assert not found(CHECK, *book(other))


def test_two_before_one_surname_are_asked_about_as_given_names() -> None:
    usual = [[WIFE[1].replace("Maud", "Maud Hale")], AGAIN]
    assert not found(CHECK, *book(["“Gerald,” said Miriam Hale."], usual))


CHILD = [["Gerald had a son, Peter, with a cough.", "“No,” said Peter."], ["Gerald carried Peter up."]]


def test_asks_of_a_child_who_does_something_or_is_named_with_the_parent() -> None:
    assert found(CHECK, *book(["“Home,” said Gerald.", "“No,” said Paul."], CHILD))
    assert found(CHECK, *book(["Gerald and Paul went home."], CHILD))
    assert not found(CHECK, *book(["Gerald thought of Paul."], CHILD))


def test_is_silent_about_the_child_of_one_page_and_about_who_stands_beside_everybody() -> None:
    assert not found(CHECK, *book(["“Home,” said Gerald.", "“No,” said Paul."], [["Gerald’s son Peter had a cough."]]))
    everywhere = [[*WIFE, *AGAIN, *["Gerald sang."] * 40]]
    assert not found(CHECK, *book(["“Gerald,” Miriam said."], everywhere))
