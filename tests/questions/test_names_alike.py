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
