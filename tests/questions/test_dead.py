"""Somebody dead who speaks."""

import pytest

from afterdraft.questions.each.dead import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


def test_asks_where_somebody_dead_speaks_later() -> None:
    one = found_in(CHECK, ILSE, [*MARTA, "Tobias died in the spring, of his chest."], NIGHT)
    assert quotes(one) == [["Tobias died in the spring, of his chest.", "“She’s wanted to for years,” said Tobias."]]


@pytest.mark.parametrize(
    "middle",
    [
        "She thought that Tobias was dead.",
        "Tobias was dead tired.",
        "Tobias nearly died of laughing.",
        "“Tobias died in the spring,” said Marta.",
        "If Tobias died, who would take the pole?",
    ],
)
def test_is_silent_where_nobody_is_dead_for_certain(middle: str) -> None:
    assert not found_in(CHECK, ILSE, [*MARTA, middle], NIGHT)


def test_is_silent_about_what_somebody_said_before() -> None:
    assert not found_in(CHECK, ILSE, NIGHT, [*MARTA, "Tobias died in the spring, of his chest."])
    last = ["The house was quiet.", "“Nobody buys a ferry,” Tobias had said, the year before."]
    assert not found_in(CHECK, [*ILSE, "Tobias died in the spring, of his chest."], last)
