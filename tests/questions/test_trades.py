"""Two trades: the text is invented; which go together is common sense."""

import pytest

from afterdraft.questions.each.trades import CHECK
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
BAKER = "“There is Tobias, the baker,” said Marta."


def test_asks_where_somebody_is_called_by_two_trades() -> None:
    (one,) = found_in(CHECK, [*ILSE, BAKER], MARTA, [*NIGHT, "Ilse thought of Tobias, the blacksmith."])
    assert (one.words["name"], one.words["first"], one.words["other"]) == ("Tobias", "baker", "blacksmith")


@pytest.mark.parametrize(
    "other",
    [
        "Tobias was a blacksmith.",
        "Tobias, who was a blacksmith, put the needle down.",
        "Tobias, a blacksmith by trade, put the needle down.",
        "Tobias had been a blacksmith all his life.",
        "Tobias worked as a blacksmith.",
    ],
)
def test_asks_where_another_trade_is_told_outright(other: str) -> None:
    (one,) = found_in(CHECK, [*ILSE, BAKER], MARTA, [*NIGHT, other])
    assert {one.words["first"], one.words["other"]} == {"baker", "blacksmith"}


@pytest.mark.parametrize(
    "other",
    [
        "Ilse thought of Tobias, the baker.",
        "Ilse thought of Tobias, the blacksmith, and the priest.",
        "Ilse thought of Henry, the blacksmith.",
        "Ilse thought of Tobias.",
        "Tobias was as slow as a blacksmith on Sunday.",
        "Tobias was a wretched blacksmith, and he knew it.",
    ],
)
def test_is_silent_about_one_trade_other_people_and_lists(other: str) -> None:
    assert not found_in(CHECK, [*ILSE, BAKER], MARTA, [*NIGHT, other])


def test_is_silent_where_one_passage_says_both() -> None:
    both = "Tobias, the baker, who had been a blacksmith, was already out on the landing."
    assert not found_in(CHECK, [*ILSE, both], MARTA, [*NIGHT, "Ilse thought of Tobias, the blacksmith."])


def test_is_silent_where_two_go_by_one_name() -> None:
    rudd = ["“No,” said Mrs. Tobias. Mrs. Tobias took the pole.", "“Well,” said Mrs. Tobias, and Mrs. Tobias left."]
    scenes = [*ILSE, BAKER], MARTA, [*NIGHT, "Ilse thought of Tobias, the blacksmith."]
    assert found_in(CHECK, *scenes)
    assert not found_in(CHECK, *scenes, [*MARTA, *rudd])
