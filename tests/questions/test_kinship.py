"""What one person is to another, told in two ways."""

import pytest

from afterdraft.questions.each.kinship import CHECK
from afterdraft.questions.wording import worded
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
FIRST = "“Ask Ilse’s brother Tobias,” said Marta."


@pytest.mark.parametrize(
    "other",
    [
        "Ilse’s cousin Tobias had the long pole.",
        "Tobias, Ilse’s nephew, had the long pole.",
        "Tobias was Ilse’s uncle, and nobody doubted it.",
        "Tobias was a cousin of Ilse.",
        "Ilse and Tobias were cousins.",
        "Ilse spoke of her cousin Tobias.",
        "Ilse, Tobias’s wife, had the long pole.",
        "Marta liked Ilse. Ilse, Tobias’s daughter, had the long pole.",
        "“My cousin Tobias has the pole,” said Ilse.",
        "“My niece Ilse has the pole,” said Tobias.",
        "Ilse’s son-in-law, Tobias, had the long pole.",
        "“Tobias is my mother’s brother,” said Ilse.",
    ],
)
def test_asks_where_two_people_are_kin_in_two_ways(other: str) -> None:
    (one,) = found_in(CHECK, [*ILSE, FIRST], MARTA, [*NIGHT, other])
    assert [span.scene for span in one.evidence] == [0, 2]
    assert "Tobias is the brother of Ilse in “One”" in worded(CHECK.id, one, ("One", "Two", "Three"))


@pytest.mark.parametrize(
    "other",
    [
        "Ilse’s brother Tobias had the long pole.",
        "Ilse’s elder brother, Tobias, had the long pole.",
        "Ilse, Tobias’s sister, had the long pole.",
        "Marta’s cousin Tobias had the long pole.",
        "Ilse’s half-brother Tobias had the long pole.",
        "They took Tobias for Ilse’s cousin Tobias.",
        "Was it Ilse’s cousin Tobias?",
        "Marta and Tobias were cousins.",
        "Marta met Ilse with her cousin Tobias.",
        "Ilse and Tobias were not cousins.",
        "It was not Ilse’s cousin Tobias who had the pole.",
        "“My cousin Tobias has the pole,” said Marta.",
        "Marta nodded to Ilse. She had the pole from her uncle Tobias.",
        "Ilse’s cousin Jonas had the long pole.",
    ],
)
def test_is_silent_about_one_relation_and_other_people(other: str) -> None:
    assert not found_in(CHECK, [*ILSE, FIRST], MARTA, [*NIGHT, other])


def test_asks_where_an_aunt_changes_sides() -> None:
    first, other = "“Marta is my father’s sister,” said Ilse.", "“Marta was my mother’s elder sister,” said Ilse."
    assert found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, first])
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, "Ilse’s aunt Marta kept the box."])
