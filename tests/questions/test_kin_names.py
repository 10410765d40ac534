"""One relation with two names."""

import pytest

from afterdraft.questions.each.kin_names import CHECK
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
FIRST = "Tobias spoke of his wife Judith."


def test_asks_where_a_wife_has_two_names() -> None:
    (one,) = found_in(CHECK, [*ILSE, FIRST], MARTA, [*NIGHT, "Tobias spoke of his wife Anna."])
    assert (one.words["relation"], one.words["first"], one.words["other"]) == ("wife", "Judith", "Anna")


@pytest.mark.parametrize(
    "other", ["Tobias spoke of his wife Judith Kell.", "Tobias spoke of his sister Anna.", "Tobias spoke of his wife."]
)
def test_is_silent_about_one_name_and_other_relations(other: str) -> None:
    assert not found_in(CHECK, [*ILSE, FIRST], MARTA, [*NIGHT, other])


@pytest.mark.parametrize(
    "other",
    [
        "Tobias thought of Anna, his wife.",
        "“Tobias’s wife was called Anna,” said Marta.",
        '"Tobias\'s wife was called Anna," said Marta.',
        "“Anna Kell, my old woman,” said Tobias.",
    ],
)
def test_asks_in_whatever_order_they_are_told(other: str) -> None:
    (one,) = found_in(CHECK, [*ILSE, FIRST], MARTA, [*NIGHT, other])
    assert one.words["relation"] == "wife"


def test_shows_every_name_there_is() -> None:
    (one,) = found_in(
        CHECK, [*ILSE, FIRST], [*MARTA, "Tobias spoke of his wife Anna."], [*NIGHT, "Tobias’s wife was called Ruth."]
    )
    assert [span.scene for span in one.evidence] == [0, 1, 2]
