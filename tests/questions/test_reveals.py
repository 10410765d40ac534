"""What is learned twice, or spoken of too soon."""

import pytest

from afterdraft.questions.each import reveal_early, reveal_twice
from afterdraft.questions.marks import Line, Marks, Point
from tests.questions.asked import read
from tests.questions.marked import found_of
from tests.questions.people import ILSE, MARTA, NIGHT

TOBIAS = "read:tobias"


def _learns(*points: tuple[int, str | None]) -> Marks:
    made = tuple(Point(scene, "learns", person) for scene, person in points)
    return Marks(lines=(Line("reveal", "The bridge company owns the landing", made),))


def test_asks_where_one_person_learns_it_twice() -> None:
    (one,) = found_of(reveal_twice.CHECK, _learns((2, None), (7, None), (7, TOBIAS)))
    assert one.words["who"] == "the reader"
    assert one.numbers == {"first": 2, "again": 7}


def test_is_silent_where_several_learn_it_once_each() -> None:
    assert not found_of(reveal_twice.CHECK, _learns((2, None), (7, TOBIAS), (2, TOBIAS.upper())))


@pytest.mark.slow
def test_asks_where_somebody_speaks_of_it_before_they_learn_it() -> None:
    says = "“The bridge company has the landing,” said Tobias."
    (one,) = reveal_early.CHECK.find(read([[*ILSE, says], MARTA, NIGHT], _learns((2, TOBIAS))))
    assert one.words["who"] == "Tobias"
    assert (one.numbers["early"], one.numbers["learns"]) == (0, 2)


@pytest.mark.slow
def test_is_silent_where_somebody_else_speaks_of_it_or_later() -> None:
    says = "“The bridge company has the landing,” said Ilse."
    assert not list(reveal_early.CHECK.find(read([[*ILSE, says], MARTA, NIGHT], _learns((2, TOBIAS)))))
    says = "“The bridge company has the landing,” said Tobias."
    assert not list(reveal_early.CHECK.find(read([ILSE, MARTA, [*NIGHT, says]], _learns((2, TOBIAS)))))


@pytest.mark.slow
def test_asks_where_somebody_acts_on_it_before_they_learn_it() -> None:
    acts = "Tobias wrote to the bridge company about the landing."
    (one,) = reveal_early.CHECK.find(read([[*ILSE, acts], MARTA, NIGHT], _learns((2, TOBIAS))))
    assert [span.quote for span in one.evidence] == [acts]
    for other in ("Tobias wrote to the company.", "Ilse wrote to the bridge company about the landing."):
        assert not list(reveal_early.CHECK.find(read([[*ILSE, other], MARTA, NIGHT], _learns((2, TOBIAS)))))
