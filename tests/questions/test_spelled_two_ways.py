"""One name spelled two ways."""

import pytest

from afterdraft.questions.each.spelled_two_ways import CHECK
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


def test_asks_about_a_name_one_letter_away() -> None:
    (one,) = found_in(CHECK, ILSE, MARTA, [*NIGHT, "She heard Tobyas on the stairs."])
    assert (one.words["usual"], one.words["rare"]) == ("Tobias", "Tobyas")
    assert one.evidence[0].quote == "She heard Tobyas on the stairs."


@pytest.mark.parametrize(
    "last",
    [
        "They spoke of Mathias, who was dead.",
        "The Tobiases had always had the ferry.",
        "Tobias’s boots stood by the door.",
    ],
)
def test_is_silent_about_other_names_and_forms(last: str) -> None:
    assert not found_in(CHECK, ILSE, MARTA, [*NIGHT, last])
