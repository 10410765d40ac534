"""Something still to tell."""

import pytest

from afterdraft.questions.each.promised import CHECK
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
EDGAR = [
    "Edgar Lum came over with the noon boat. Edgar had been a pilot once.",
    "“I saw who cut the rope,” said Edgar. “I’ll tell you when we are alone.”",
    "“Tell me now,” said Ilse.",
    "“No,” said Edgar, and Edgar went up the bank.",
]


def test_asks_where_somebody_has_still_to_tell_and_is_not_met_again() -> None:
    (one,) = found_in(CHECK, ILSE, EDGAR, MARTA, NIGHT)
    assert one.words["name"] == "Edgar Lum"
    assert one.evidence[0].quote == "“I’ll tell you when we are alone.”"


def test_is_silent_where_they_come_again() -> None:
    assert not found_in(CHECK, ILSE, EDGAR, MARTA, [*NIGHT, "“It was Marta,” said Edgar."])


def test_is_silent_where_it_is_told_at_once() -> None:
    told = [*EDGAR[:1], "“I’ll tell you this,” said Edgar. “It was Marta.”", *EDGAR[2:]]
    assert not found_in(CHECK, ILSE, told, MARTA, NIGHT)
