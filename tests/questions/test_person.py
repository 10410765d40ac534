"""The person changes within a scene."""

import pytest

from afterdraft.questions.each.person import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
OTHERS = [ILSE + MARTA] * 12  # a book that is told of others throughout


def test_asks_about_an_i_in_the_telling() -> None:
    told = "She crossed the yard. I took the lamp and I shut the door."
    others = "She had her coat on. He gave her his arm, and they went down to the rope he had tied for them."
    one = found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, others, told])
    assert quotes(one) == [["I took the lamp and I shut the door."]]


@pytest.mark.parametrize(
    "told",
    [
        "“I took the lamp,” she said, “and I shut the door.”",
        "*I took the lamp,* she told herself.",
        "I must not look, she thought.",
    ],
)
def test_is_silent_about_speech_and_thoughts(told: str) -> None:
    assert not found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, told])


def test_is_silent_where_a_teller_says_i_now_and_then() -> None:
    scene = [*ILSE, *MARTA, *NIGHT, "I do not know what she did then."]
    assert not found_in(CHECK, *[scene] * 6)
