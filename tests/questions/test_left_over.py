"""A name left over from before a renaming."""

from dataclasses import replace

import pytest

from afterdraft.questions.each.left_over import CHECK
from afterdraft.whole.given import Given, GivenPerson
from tests.questions.asked import found_in, quotes, read
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


@pytest.mark.parametrize(
    "last",
    [
        "“It was only the wind,” said Edgar.",
        "“It was only the wind,” said Mrs Orde.",
        "“It was only the wind,” growled Morgan, with his back to them.",
    ],
)
def test_asks_about_somebody_who_speaks_there_once(last: str) -> None:
    assert quotes(found_in(CHECK, ILSE, MARTA, [*NIGHT, last])) == [[last]]


@pytest.mark.parametrize(
    "last",
    [
        "“It was only the wind,” said Tobias.",
        "A man called Edgar shut the window.",
        "“It was only the wind,” said Edgar, the miller’s son.",
        "“It was only the wind,” said Mrs Orde from the inn.",
        "“You want Edgar,” said Tobias.",
        "As Homer says, the sea is dark.",
        "Mrs Orde shut the window and went up.",
    ],
)
def test_is_silent_where_it_is_said_who_that_is(last: str) -> None:
    assert not found_in(CHECK, ILSE, MARTA, [*NIGHT, last])


def test_a_name_of_somebody_on_her_list_is_let_be() -> None:
    seen = read([ILSE, MARTA, [*NIGHT, "“It was only the wind,” said Edgar."]])
    assert list(CHECK.find(seen))
    edgar = Given(people=(GivenPerson("p1", "Kit", ("kit", "edgar")),))
    assert not list(CHECK.find(replace(seen, given=edgar)))


def test_a_name_one_letter_from_a_known_one_is_a_spelling() -> None:
    assert not found_in(CHECK, ILSE, MARTA, ILSE, [*NIGHT, "“It was only the wind,” said Tobjas."])


def test_a_name_that_may_have_drifted_is_asked_about_as_that() -> None:
    fern = "“It was only the wind,” said Mr Fern."
    assert quotes(found_in(CHECK, ILSE, MARTA, [*NIGHT, fern])) == [[fern]]
    farrow = ["Mr Ferrow came down for the box, and Mr Ferrow went up again.", *MARTA]
    assert not found_in(CHECK, ILSE, farrow, [*NIGHT, fern])
