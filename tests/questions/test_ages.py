"""Ages that do not fit."""

import pytest

from afterdraft.questions.each.ages import CHECK
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


def test_asks_where_an_age_runs_back() -> None:
    first, other = "Ilse was forty-two years old.", "Ilse was thirty-eight years old."
    (one,) = found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])
    assert (one.words["first"], one.words["other"]) == ("42", "38")
    assert [span.quote for span in one.evidence] == [first, other]


@pytest.mark.parametrize(
    "other",
    [
        "Ilse was slow. She was thirty-eight that year.",
        "“I am thirty-eight,” said Ilse.",
        "Ilse was slow. She was a woman of thirty-eight.",
        "At thirty-eight, Ilse was slow.",
    ],
)
def test_asks_however_it_is_told(other: str) -> None:
    assert len(found_in(CHECK, [*ILSE, "Ilse was forty-two years old."], MARTA, [*NIGHT, other])) == 1


@pytest.mark.parametrize(
    ("between", "other"),
    [
        ("It rained.", "Ilse was forty-three years old."),
        ("Six years went by.", "Ilse was forty-eight years old."),
        ("It rained.", "When Ilse was twelve years old the bridge came down."),
        ("It rained.", "Marta was thirty-eight years old."),
        ("It rained.", "At thirty-eight, Ilse had sold the ferry."),
    ],
)
def test_is_silent_where_time_passes_or_another_time_is_told(between: str, other: str) -> None:
    assert not found_in(CHECK, [*ILSE, "Ilse was forty-two years old."], [*MARTA, between], [*NIGHT, other])
