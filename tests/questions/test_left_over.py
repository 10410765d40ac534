"""A name left over from before a renaming."""

import pytest

from afterdraft.questions.each.left_over import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


@pytest.mark.parametrize("last", ["“It was only the wind,” said Edgar.", "Mrs Orde shut the window and went up."])
def test_asks_about_somebody_who_stands_there_once(last: str) -> None:
    assert quotes(found_in(CHECK, ILSE, MARTA, [*NIGHT, last])) == [[last]]


@pytest.mark.parametrize(
    "last",
    [
        "“It was only the wind,” said Tobias.",
        "A man called Edgar shut the window.",
        "“It was only the wind,” said Edgar, the miller’s son.",
        "“You want Edgar,” said Tobias.",
        "As Homer says, the sea is dark.",
    ],
)
def test_is_silent_where_it_is_said_who_that_is(last: str) -> None:
    assert not found_in(CHECK, ILSE, MARTA, [*NIGHT, last])
