"""Somebody we have met who is brought in as if we had not."""

import pytest

from afterdraft.questions.each.introduced import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, MARTA

pytestmark = pytest.mark.slow
MET = "Anna Kell was fifty, and had kept the inn since the flood."


@pytest.mark.parametrize(
    "again",
    [
        "The inn was kept by a woman named Anna Kell.",
        "At the door stood a stout woman called Anna Kell.",
        "The chairman was a small, neat person by the name of Anna Kell, fifty or so.",
        "The board kept an inspector for our district by the name of Anna Kell.",
        "This was a Miss Kell, who wore a large hat.",
    ],
)
def test_asks_where_somebody_is_brought_in_twice(again: str) -> None:
    assert quotes(found_in(CHECK, [*ILSE, MET], MARTA, [again])) == [[MET, again]]


def test_a_given_name_counts_where_that_person_was_there() -> None:
    again = "The ferry was rowed by a man called Tobias."
    assert found_in(CHECK, ILSE, MARTA, [again])


@pytest.mark.parametrize(
    "again",
    [
        "The inn was kept by a woman named Ruth Orde.",
        "“There was a woman called Anna Kell,” said Marta.",
        "Anna Kell kept the inn.",
        "They stopped there, and asked for a lady of the name of Anna Kell.",
        "She had a hatred for every woman named Anna Kell.",
        "There is a woman called Anna Kell here whom you would like.",  # to somebody who does not know her
    ],
)
def test_asks_nothing_where_somebody_is_new_or_new_to_somebody(again: str) -> None:
    assert not found_in(CHECK, [*ILSE, MET], MARTA, [again])


def test_who_has_a_surname_is_not_brought_in_by_the_given_name() -> None:
    again = "The ferry was rowed by a man called Tobias."
    assert not found_in(CHECK, ILSE, [*MARTA, "Tobias Renn shut the door."], [again])


def test_within_one_scene_it_is_one_bringing_in() -> None:
    assert not found_in(CHECK, ILSE, MARTA, [MET, "The inn was kept by a woman named Anna Kell."])


def test_a_full_name_told_with_its_age_twice_is_brought_in_twice() -> None:
    first, again = (
        "Tobias Renn, who was sixty-one, kept the boat.",
        "Tobias Renn, sixty-one, sat in the boat.",
    )
    assert quotes(found_in(CHECK, [*ILSE, first], MARTA, [*ILSE, again])) == [[first, again]]
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*ILSE, "Tobias was sixty-one, after all."])
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*ILSE, "“Tobias Renn is sixty-one,” said Ilse."])
