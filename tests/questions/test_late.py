"""Somebody decisive who comes late."""

import pytest

from afterdraft.questions.each.late import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
BOOK = [ILSE, MARTA, NIGHT, ILSE, MARTA]
LAST = "It was old Mrs Averay who settled it."


def test_asks_who_settles_it() -> None:
    assert quotes(found_in(CHECK, *BOOK, [*NIGHT, LAST])) == [[LAST]]


def test_asks_about_somebody_who_counts_for_much_and_comes_so_late() -> None:
    talk = "the ferry and the bridge and what each of them had cost in every year since the flood, to the last penny"
    says = [f"“I will tell you about {talk},” said Edgar Lum." for _ in range(6)]
    one = found_in(CHECK, *BOOK * 6, [*NIGHT, *says], [*ILSE, *says])
    assert [finding.words["name"] for finding in one] == ["Edgar Lum"]


def test_is_silent_about_one_of_a_family_that_is_known() -> None:
    talk = "the ferry and the bridge and what each of them had cost in every year since the flood, to the last penny"
    says = [f"“I will tell you about {talk},” said Edgar Lum." for _ in range(6)]
    known = [*ILSE, "The Lum orchard lay on the other bank."]
    assert not found_in(CHECK, known, *BOOK * 6, [*NIGHT, *says], [*ILSE, *says])


def test_is_silent_about_somebody_who_was_met() -> None:
    assert not found_in(CHECK, [*ILSE, "“Good day,” said Mrs Averay."], *BOOK, [*NIGHT, LAST])
    assert not found_in(CHECK, *BOOK, [*NIGHT, "It was old Mrs Averay who kept the geese."])
