"""Where people come from: the text is invented; what lies where is common knowledge."""

import pytest

from afterdraft.questions.each.origins import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
BORN = "Ilse had been born in Cornwall."


def test_asks_where_somebody_comes_from_two_places() -> None:
    (one,) = found_in(CHECK, [*ILSE, BORN], MARTA, [*NIGHT, "Ilse was a native of Suffolk."])
    assert (one.words["name"], one.words["first"], one.words["other"]) == ("Ilse", "Cornwall", "Suffolk")
    assert quotes([one]) == [[BORN, "Ilse was a native of Suffolk."]]


@pytest.mark.parametrize(
    "other",
    [
        "Ilse was a Frenchwoman.",
        "“I was born in Alabama,” said Ilse.",
        "She thought of her native Tolland, in Vermont.",
    ],
)
def test_asks_about_peoples_and_states(other: str) -> None:
    assert found_in(CHECK, [*ILSE, BORN], MARTA, ["Ilse came in.", other, *NIGHT])


@pytest.mark.parametrize(
    "other",
    [
        "Ilse was an Englishwoman.",
        "Ilse was a native of Ashwater.",
        "Marta was a native of Suffolk.",
        "Ilse was not born in Suffolk.",
        "Ilse had come from Suffolk that day.",
    ],
)
def test_is_silent_about_what_can_be_true_together(other: str) -> None:
    assert not found_in(CHECK, [*ILSE, BORN], MARTA, [*NIGHT, other])
