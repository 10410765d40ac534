"""Thoughts of somebody else within a scene."""

import pytest

from afterdraft.questions.each.viewpoint import CHECK
from afterdraft.questions.marks import Marks
from tests.questions.asked import found_in, quotes, read
from tests.questions.people import ILSE, MARTA

pytestmark = pytest.mark.slow
MIND = [
    "Ilse saw the light go out across the water. Ilse wondered who had the oil.",
    "Ilse heard the door. Ilse hoped it was the dog.",
    "Ilse remembered the key. Ilse felt the cold come up through the boards.",
]
OTHER = "Tobias wished that the boat would sink before morning came."


def test_asks_about_a_thought_of_another() -> None:
    one = found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, OTHER], [*ILSE, *MIND])
    assert quotes(one) == [[OTHER]]
    assert (one[0].words["viewpoint"], one[0].words["other"]) == ("Ilse", "Tobias")


def test_asks_where_she_marked_whose_scene_it_is() -> None:
    marks = Marks(present={(0, "read:ilse"): "viewpoint"})
    assert quotes(list(CHECK.find(read([[*ILSE, OTHER], MARTA], marks)))) == [[OTHER]]


@pytest.mark.parametrize(
    "told",
    [
        "“Tobias wished that the boat would sink,” said Ilse.",
        "Ilse wished that the boat would sink before morning.",
        "Tobias felt in his pocket for the key of the shed.",
        "Tobias thought.",
        "She felt that Tobias wished the boat would sink before morning.",
        "Had Tobias really hoped that the boat would sink before morning?",
    ],
)
def test_is_silent_about_what_is_said_shown_or_her_own(told: str) -> None:
    assert not found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, told], [*ILSE, *MIND])


def test_is_silent_where_the_telling_knows_everybodys_mind() -> None:
    minds = [*MIND, *(line.replace("Ilse", "Tobias") for line in MIND)]
    assert not found_in(CHECK, *[[*ILSE, *minds]] * 3)


@pytest.mark.parametrize(
    "told",
    [
        "Tobias had long suspected as much and said nothing.",
        "Tobias felt a stab of envy at the sight of it.",
        "Tobias was secretly relieved.",
        "It seemed to Tobias that the river would never go down.",
    ],
)
def test_asks_however_the_thought_is_told(told: str) -> None:
    assert quotes(found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, told], [*ILSE, *MIND])) == [[told]]
