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
        "He signed himself Tobyas in the book.",
        "“Tobyas” stood in the book.",
        "They called him Tobyas.",
        "The Tobiases had always had the ferry.",
        "Tobias’s boots stood by the door.",
    ],
)
def test_is_silent_about_other_names_and_forms(last: str) -> None:
    assert not found_in(CHECK, ILSE, MARTA, [*NIGHT, last])


@pytest.mark.parametrize("said", ["“No,” said Tobyas.", "“No,” said Tobais.", "Tobyas took the lamp and went down."])
def test_asks_though_somebody_speaks_under_the_other_spelling(said: str) -> None:
    (one,) = found_in(CHECK, ILSE, MARTA, [*NIGHT, said])
    assert one.words["usual"] == "Tobias"


@pytest.mark.parametrize(("name", "short"), [("Ilse", "Isle"), ("Kell", "Kall")])
def test_asks_about_a_short_name_that_stands_often(name: str, short: str) -> None:
    often = [f"{name} went down.", f"{name} came up again.", f"“No,” said {name}.", f"{name} sat by the stove."] * 4
    (one,) = found_in(CHECK, ILSE, often, MARTA, [f"Then {short} took the lamp."])
    assert (one.words["usual"], one.words["rare"]) == (name, short)
