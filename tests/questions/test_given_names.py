"""A surname with another given name: the text is invented, the given names are those that many know."""

import pytest

from afterdraft.questions.each.given_names import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, NIGHT

pytestmark = pytest.mark.slow
TOLL = [
    "Martha Kell kept the toll in a cigar box. She counted it at noon, when nobody came.",
    "“Four and six,” said Martha. “That’s the week.”",
    "Martha Kell shut the box. Martha heard him whistle for the dog.",
    "“Last year there was no bridge,” said Martha Kell.",
]


def test_asks_where_a_surname_has_another_given_name_once() -> None:
    (one,) = found_in(CHECK, ILSE, TOLL, [*NIGHT, "Deborah Kell came in with the box."])
    assert quotes([one])[0] == [
        "Deborah Kell came in with the box.",
        "“Last year there was no bridge,” said Martha Kell.",
    ]
    assert one.words == {"surname": "Kell", "usual": "Martha", "rare": "Deborah"}


@pytest.mark.parametrize(
    "other",
    [
        "Patty Kell came in with the box.",
        "Edward Kell came in with the box.",
        "Her sister, Deborah Kell, came in with the box.",
        "Deborah Kell and Martha came in.",
        "Deborah Lamb came in with the box.",
        "Deborah Kell came in. “Good evening,” said Deborah. Deborah sat down.",
    ],
)
def test_is_silent_about_short_forms_families_and_other_people(other: str) -> None:
    assert not found_in(CHECK, ILSE, TOLL, [*NIGHT, other])
