"""Events, by the definition of LitBank: actual, specific, asserted."""

from math import log

import pytest

from afterdraft.reading.event_nearby import nearby
from afterdraft.reading.event_weights import weights
from afterdraft.reading.events import events
from tests.reading.rows import parsed

SHE_OPENED = "She/PRON/nsubj/1 opened/VERB/ROOT/1 the/DET/det/3 door/NOUN/dobj/1 ./PUNCT/punct/1"
SHE_WOULD = (
    "She/PRON/nsubj/3 would/AUX/aux/3 never/ADV/neg/3 open/VERB/ROOT/3 the/DET/det/5 door/NOUN/dobj/3 ./PUNCT/punct/3"
)
IF_SHE = (
    "If/SCONJ/mark/2 she/PRON/nsubj/2 opened/VERB/advcl/6 it/PRON/dobj/2 he/PRON/nsubj/6 would/AUX/aux/6"
    " go/VERB/ROOT/6 ./PUNCT/punct/6"
)


def happening(*rows: str) -> list[str]:
    one = parsed(*rows)
    return [one.of.text[event.start : event.end] for event in events([one])]


@pytest.mark.parametrize(("row", "expected"), [(SHE_OPENED, ["opened"]), (SHE_WOULD, []), (IF_SHE, [])])
def test_what_happens_is_told_from_what_might(row: str, expected: list[str]) -> None:
    assert happening(row) == expected


def test_no_words_no_events() -> None:
    assert events([]) == ()


def test_surroundings_leave_out_the_word_itself() -> None:
    # Two words in the first sentence, one in the second; 0.1 and one word more are added in each place.
    first, *_ = nearby([0.5, 0.2, 0.8], [0, 0, 1], [False, True, False])
    assert first == pytest.approx(
        (
            log(0.15 / 0.85),  # (0.2 + 0.1) / (1 + 1)
            log(0.45 / 0.55),  # (0.8 + 0.1) / (1 + 1)
            log(0.1 / 0.9),  # nothing further off: 0.1 / 1
            log(0.45 / 0.55),  # the other word outside speech
        )
    )


def test_weights_are_signs_of_the_three_parts_of_speech() -> None:
    assert {sign[:2] for sign in weights()} == {"V ", "N ", "A "}
    assert len(weights()) > 1000
