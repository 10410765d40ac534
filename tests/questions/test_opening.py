"""Openings: backstory, and many people at once."""

import pytest

from afterdraft.questions.each import backstory, many_at_once
from tests.questions.asked import found_in, read
from tests.questions.people import ILSE, MARTA, NIGHT

BACK = (
    "She had come to the river in the year of the flood. She had married there. They had built the house together, and "
    "he had painted it. The children had gone. He had died in the spring."
)
NOW = "She shut the door. She went down to the water and untied the boat. It was late. The wind dropped. Nobody came."


@pytest.mark.slow
def test_asks_where_the_opening_looks_back_and_the_rest_does_not() -> None:
    (one,) = found_in(backstory.CHECK, [NOW, BACK], *[[NOW, NOW]] * 5)
    assert one.numbers["share"] == 0.5
    assert one.evidence[0].quote == BACK


@pytest.mark.slow
def test_is_silent_where_the_whole_book_looks_back_or_none_of_it() -> None:
    assert not found_in(backstory.CHECK, *[[NOW, BACK]] * 6)
    assert not found_in(backstory.CHECK, *[[NOW, NOW]] * 6)


GUESTS = (
    "Anna Bell",
    "Edgar Lum",
    "Judith Frome",
    "Walter Pike",
    "Rose Hatch",
    "Simon Orde",
    "Clara Wynn",
    "Peter Gale",
    "Hester Quill",
    "Martin Dray",
)


def _party(names: tuple[str, ...]) -> list[str]:
    return [f"“I am here,” said {name}." for name in names]


@pytest.mark.slow
def test_asks_where_ten_people_are_named_within_two_pages() -> None:
    rest = [ILSE + MARTA + NIGHT] * 12
    (one,) = many_at_once.CHECK.find(read([_party(GUESTS), *rest]))
    assert one.numbers["people"] >= len(GUESTS)
    assert all(name in one.words["names"] for name in GUESTS)


@pytest.mark.slow
@pytest.mark.parametrize("few", [3, 6])
def test_is_silent_about_a_few(few: int) -> None:
    rest = [ILSE + MARTA + NIGHT] * 12
    assert not list(many_at_once.CHECK.find(read([_party(GUESTS[:few]), *rest])))
