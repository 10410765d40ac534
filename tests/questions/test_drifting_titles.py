"""Two names behind one title, quite unlike but for the first letter, and offices of which there is one."""

import pytest

from afterdraft.questions.each.name_drift import CHECK
from afterdraft.questions.shared_words import at_least
from tests.questions.asked import Scenes, found

LONG_ROUND = [  # words that stand twice, so that what two places share may be chance
    "The lane ran down between hedges to a gate, with a pump beside it and nettles about the pump.",
    "Somebody had painted the gate green, years before, and tied a bucket on with string.",
    "Nettles stood by the hedges, and beside the lane a bucket, green inside, without its string.",
    "Years before there had been a pump, and somebody had painted that and written a number there.",
    "A number was written on the barn as well, in letters that the weather had nearly taken.",
    "Weather like that had nearly taken the barn, and letters came a week late from anywhere.",
]


def book(usual: str, other: str) -> Scenes:
    return [[usual], [LONG_ROUND[0], LONG_ROUND[1]], LONG_ROUND[2:4], LONG_ROUND[4:], [other]]


SURGEON = (
    "Dr Mellor was a short woman in orange slippers, who explained things over her folded arms. “Well,” said Dr Mellor."
)


@pytest.mark.parametrize(
    "other",
    [
        "Dr Madani, in her orange slippers, stood with folded arms.",
        "“She can go home,” said Dr Madani. Her arms were folded, and so were the orange slippers.",
    ],
)
def test_asks_where_two_of_one_letter_are_told_of_in_the_same_seldom_words(other: str) -> None:
    (one,) = found(CHECK, *book(SURGEON, other))
    assert one.words == {"usual": "Dr Mellor", "other": "Dr Madani"}
    assert [span.scene for span in one.evidence] == [0, 4]


@pytest.mark.parametrize(
    "other",
    [
        "Dr Madani came up the lane and asked for a bucket.",  # told of in other words
        "Dr Rashid, in her orange slippers, stood with folded arms.",  # another letter
        "Mrs Madani, in her orange slippers, stood with folded arms.",  # another title
        "Dr Madani, the other surgeon, wore orange slippers too, over folded arms.",
        "Her sister, Dr Madani, had the orange slippers on, and folded arms.",
        "Dr Madani, in orange slippers, with folded arms, looked at Dr Mellor.",
    ],
)
def test_is_silent_about_somebody_else_of_the_title(other: str) -> None:
    assert not found(CHECK, *book(SURGEON, other))


def test_shows_the_place_that_is_most_like_the_other() -> None:
    usual = [
        ["Dr Mellor is late.", "Dr Mellor rang."],
        *book(SURGEON, "Dr Madani, arms folded, had orange slippers on."),
    ]
    (one,) = found(CHECK, *usual)
    assert one.evidence[0].quote.startswith("Dr Mellor was a short woman")


ABBEY = ["Prior Odo was seventy. He had a red nose.", "“No,” said the Prior.", "The Prior shut the book."]


def test_asks_where_an_office_of_one_has_two_names() -> None:
    (one,) = found(CHECK, ABBEY, ["The Prior said Mass."], ["She had thought of it at Prior Luke’s table."])
    assert one.words == {"usual": "Prior Odo", "other": "Prior Luke"}
    assert one.evidence[0].quote == "Prior Odo was seventy."


@pytest.mark.parametrize(
    "other",
    [
        "The late Prior Luke had built it.",
        "Prior Luke, who came before him, had built it.",
        "Prior Odo and Prior Luke sat down.",
        "Brother Luke sat down.",
        "Prior Luke sat down. Prior Luke rose. “No,” said Prior Luke.",
    ],
)
def test_is_silent_about_who_had_the_office_before(other: str) -> None:
    assert not found(CHECK, ABBEY, ["The Prior said Mass."], [other])


def test_is_silent_where_the_office_has_no_one_man() -> None:
    odo, luke = ["Prior Odo was seventy. He had a red nose."], ["She had thought of it at Prior Luke’s table."]
    assert not found(CHECK, odo, ["The Prior of another house came."], luke)
    assert not found(CHECK, ABBEY, ["Prior Giles was at the gate."], luke)


def test_what_chance_would_share() -> None:
    assert at_least(1, 1.0) == pytest.approx(0.632, abs=0.001)
    assert at_least(3, 0.5) == pytest.approx(0.0144, abs=0.0001)
    assert at_least(0, 2.0) == 1
