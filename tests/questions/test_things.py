"""Things that scenes make much of: the texts are invented, the log-likelihood ratio is Dunning's (1993)."""

import pytest

from afterdraft.questions.each.unpaid import CHECK as UNPAID
from afterdraft.questions.each.unprepared import CHECK as UNPREPARED
from afterdraft.questions.things import log_likelihood, things
from tests.questions.asked import found, quotes

DAY = ["Ilse coiled the rope and went down to the landing, where nobody was waiting for the boat that day."] * 12
PARCEL = [
    "A man had left a parcel with Ilse, to be called for.",
    "It was a flat parcel. Ilse put the parcel on the shelf, and looked at it.",
]
SIGNAL = [
    "On her knee lay a trowel. She turned the trowel in the sun.",
    "It was the trowel that had been the signal, and now he saw it.",
]


def test_asks_about_a_parcel_that_nobody_calls_for() -> None:
    (one,) = found(UNPAID, DAY, PARCEL, *[DAY] * 8)
    assert quotes([one]) == [
        ["A man had left a parcel with Ilse, to be called for.", "Ilse put the parcel on the shelf, and looked at it."]
    ]
    assert one.words == {"thing": "parcel"}


@pytest.mark.parametrize(
    "scenes",
    [
        [DAY, PARCEL, *[DAY] * 6, ["He asked for the parcel."], DAY],
        [*[DAY] * 9, PARCEL],
        [DAY, ["A parcel lay on the shelf. It was a flat parcel."], *[DAY] * 8],
        [DAY, ["He was like a parcel, to be called for."], *[DAY] * 8],
        [DAY, ["They locked up the parcel.", "It was a flat parcel, and the parcel was dry."], *[DAY] * 8],
        [DAY, [f"“{text}”" for text in PARCEL], *[DAY] * 8],
    ],
)
def test_is_silent_about_what_comes_back_or_weighs_nothing(scenes: list[list[str]]) -> None:
    assert not found(UNPAID, *scenes)


def test_asks_about_a_thing_on_which_the_end_turns() -> None:
    (one,) = found(UNPREPARED, *[DAY] * 9, SIGNAL)
    assert quotes([one])[0] == ["On her knee lay a trowel.", SIGNAL[1]]


@pytest.mark.parametrize(
    "scenes",
    [
        [DAY, ["The trowel hung by the door."], *[DAY] * 7, SIGNAL],
        [DAY, SIGNAL, *[DAY] * 8],
        [*[DAY] * 9, [SIGNAL[0], "She put the trowel by."]],
    ],
)
def test_is_silent_about_what_stood_before_and_what_turns_nothing(scenes: list[list[str]]) -> None:
    assert not found(UNPREPARED, *scenes)


def test_singular_and_plural_are_one_thing() -> None:
    (one,) = things([["Two keys.", "A key."]])
    assert (one.name, len(one.spans)) == ("key", 2)


def test_a_word_as_common_as_elsewhere_is_not_distinctive() -> None:
    assert log_likelihood(5, 1000, 50, 10000) == 0
