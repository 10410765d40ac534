"""Two trades: the text is invented; which go together is common sense."""

import pytest

from afterdraft.questions.each.trades import CHECK
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
BAKER = "“There is Tobias, the baker,” said Marta."


def test_asks_where_somebody_is_called_by_two_trades() -> None:
    (one,) = found_in(CHECK, [*ILSE, BAKER], MARTA, [*NIGHT, "Ilse thought of Tobias, the blacksmith."])
    assert (one.words["name"], one.words["first"], one.words["other"]) == ("Tobias", "baker", "blacksmith")


@pytest.mark.parametrize(
    "other",
    [
        "Ilse thought of Tobias, the baker.",
        "Ilse thought of Tobias, the blacksmith, and the priest.",
        "Ilse thought of Henry, the blacksmith.",
        "Ilse thought of Tobias.",
    ],
)
def test_is_silent_about_one_trade_other_people_and_lists(other: str) -> None:
    assert not found_in(CHECK, [*ILSE, BAKER], MARTA, [*NIGHT, other])
