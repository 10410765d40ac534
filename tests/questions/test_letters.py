"""Letters dated after they are read."""

import pytest

from afterdraft.questions.each.letters import CHECK
from tests.questions.asked import dated

DAY = "On the 3rd of May a letter came."


def test_asks_where_a_letter_is_dated_later() -> None:
    (one,) = CHECK.find(dated([DAY, "She read it by the window.", "Harrow Quay, 7th May", "Dear Ilse, …"]))
    assert one.numbers == {"days": 4}


@pytest.mark.parametrize(
    "scene",
    [
        [DAY, "Harrow Quay, 1st May", "Dear Ilse, …"],
        ["On the 3rd of May it rained.", "Harrow Quay, 7th May", "It rained again."],
        ["They had sailed on the 3rd of May, and a letter came.", "Harrow Quay, 7th May"],
        [DAY, "4 May.—Rain.", "5 May.—Rain.", "6 May.—Rain."],
    ],
)
def test_is_silent_where_it_may_be_so(scene: list[str]) -> None:
    assert not list(CHECK.find(dated(scene)))
