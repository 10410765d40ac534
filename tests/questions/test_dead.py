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
    "told",
    [
        "When the doctor came Tobias was already dead.",
        "They buried Tobias on the Friday.",
        "Before morning Tobias was dead.",
        "The fever took Tobias before the month was out.",
        "Tobias was slow that year. He died in the spring.",
        "Marta found Tobias in the morning, drowned.",
        "Tobias sailed for Norway, and never came back.",
        "It was the last time that anybody saw Tobias alive.",
    ],
)
def test_asks_however_it_is_told(told: str) -> None:
    assert len(found_in(CHECK, ILSE, [*MARTA, told], NIGHT)) == 1


@pytest.mark.parametrize(
    "middle",
    [
        "They buried Tobias’s uncle on the Friday.",
        "When Tobias died she would have the ferry.",
        "Tobias left the door open, and she never saw it.",
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
