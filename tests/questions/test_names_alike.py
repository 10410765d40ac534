"""Names a reader may confuse."""

import pytest

from afterdraft.questions.each.names_alike import CHECK
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


def _of(name: str) -> list[list[str]]:
    """The household, with a guest of that name in two of its scenes."""
    says = [f"“Is there tea?” said {name}.", f"{name} sat down by the stove. “I walked,” said {name}."]
    return [[*ILSE, *says], [*MARTA, *says], NIGHT]


def test_asks_about_two_names_a_letter_apart() -> None:
    (one,) = found_in(CHECK, *_of("Marka"))
    assert {one.words["one"].split()[0], one.words["other"].split()[0]} == {"Marta", "Marka"}


@pytest.mark.parametrize("name", ["Magnus", "Harka", "Kell"])
def test_is_silent_about_names_that_differ_and_about_families(name: str) -> None:
    assert not found_in(CHECK, *_of(name))


def _with_tobias(name: str, *, often: int) -> list[list[str]]:
    """The household, and somebody else who is met beside Tobias in three scenes."""
    talk = [f"“{said}” said {one}." for said in ("Pull.", "Hold on.", "It leaks.") for one in ("Tobias", name)]
    return [[*ILSE, *talk * often], [*MARTA, *talk * often], [*NIGHT, *talk * often]]


def test_asks_about_two_of_one_sex_who_begin_alike_and_are_met_together_often() -> None:
    (one,) = found_in(CHECK, *_with_tobias("Thomas", often=3))
    assert one.words == {"one": "Tobias", "other": "Thomas"}


@pytest.mark.parametrize(("name", "often"), [("Thomas", 1), ("Theresa", 3), ("Henry", 3), ("Mr. Thorne", 3)])
def test_is_silent_about_one_letter_where_something_else_tells_them_apart(name: str, often: int) -> None:
    """Seldom met, of the other sex, another letter, or with a title."""
    assert not found_in(CHECK, *_with_tobias(name, often=often))


def test_a_title_keeps_names_apart_that_are_a_letter_apart() -> None:
    assert not found_in(CHECK, *_of("Mrs. Marka"))


def test_shows_the_passages_that_lie_nearest_to_each_other() -> None:
    (asked,) = found_in(CHECK, *_of("Marka"))
    assert sorted(span.paragraph for span in asked.evidence) == [4, 5]
