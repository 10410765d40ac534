"""Dates that run back."""

from dataclasses import replace

import pytest

from afterdraft.questions.each.dates_in_order import CHECK
from tests.questions.asked import dated


def test_asks_about_a_day_that_does_not_lie_between_its_neighbours() -> None:
    told = dated(["On the 3rd of May it rained."], ["On the 28th of May he came."], ["On the 5th of May they set out."])
    (one,) = CHECK.find(told)
    assert one.words == {"before": "3rd of May", "one": "28th of May", "after": "5th of May"}


def test_asks_about_an_entry_of_a_diary() -> None:
    told = dated(["3 May.—It rained.", "Nothing came.", "14 May.—He came.", "5 May.—They set out."])
    (one,) = CHECK.find(told)
    assert one.words["one"] == "14 May"


@pytest.mark.parametrize(
    "middle",
    [
        "On the 4th of May he came.",
        "He had come on the 28th of May.",
        "“He came on the 28th of May,” she said.",
        "It was to be ready by the 28th of May.",
        "On the 28th of November he came.",
    ],
)
def test_is_silent_about_days_that_fit_or_are_of_another_time(middle: str) -> None:
    told = dated(["On the 3rd of May it rained."], [middle], ["On the 5th of May they set out."])
    assert not list(CHECK.find(told))


def test_is_silent_about_feasts() -> None:
    """'At Christmas' is a week, and 'Christmas' is spoken of all the year."""
    told = dated(["It rained at Christmas."], ["He came on the 23rd of December."], ["They set out at Christmas."])
    assert not list(CHECK.find(told))


def test_is_silent_where_documents_of_several_hands_are_put_together() -> None:
    entries = [f"{day} May.—A line." for day in (3, 5, 4, 6, 9, 7, 8, 12, 10, 11)]
    assert not list(CHECK.find(dated(entries)))


@pytest.mark.parametrize(
    "middle",
    [
        "On the 28th of May he went up from the mill to the house and drew back.",
        "It was now the 28th of May. He went before the others, after all.",
        "On the morning of the 28th of May he read by the window.",
        "On the 28th of May he went round by the mill and the weir, with the paper in his hand.",
    ],
)
def test_asks_whatever_else_the_sentence_tells(middle: str) -> None:
    told = dated(["On the 3rd of May it rained."], [middle], ["On the 5th of May they set out."])
    (one,) = CHECK.find(told)
    assert one.words["one"] == "28th of May"


@pytest.mark.parametrize(
    "middle",
    [
        "He stayed until the 28th of May.",
        "It lasted from the 28th of May.",
        "It would be the 28th of May.",
        "His letter was of the 28th of May.",
        "They waited for the 28th of May.",
        "He was to come on the 28th of May.",
        "It was going to be the 28th of May.",
        "Her birthday, on the 28th of May, came nearer.",
        "We have seen how he came on the 28th of May.",
        "The mill burns—A meeting by night—The key—The night of the 28th of May.",
        "Of the men who came on the 28th of May two were left.",
    ],
)
def test_is_silent_about_days_that_are_looked_to(middle: str) -> None:
    told = dated(["On the 3rd of May it rained."], [middle], ["On the 5th of May they set out."])
    assert not list(CHECK.find(told))


def test_is_silent_about_a_letter_that_tells_what_went_before() -> None:
    told = dated(["3 May.—It rained.", "14 May.—I have much to tell.", "5 May, the ice began to move. We saw it."])
    assert not list(CHECK.find(told))


def test_is_silent_about_what_is_told_of_another_season() -> None:
    told = dated(["On the 15th of May it rained."], ["On the 2nd of February he fell."], ["It was the 19th of May."])
    assert not list(CHECK.find(told))


@pytest.mark.parametrize(
    "middle",
    [
        "From the chart I find that the ice was off from noon on 28 May to midnight on 29 May.",
        "> In his view the rope went at noon on 28 May.",
        "*On 28 May the rope went.*",
        "The report had the rope going on 28 May.",
        "In my opinion the rope went at noon on 28 May.",
        "On the card it said Mon 28 May, home; Mon 4 June, away.",
        "At noon on 28 May, and again on 29 May, the rope went.",
        "The record of the 28th of May lay on the table.",
        "Death took place at noon on 28 May.",
        "The minutes of the 28th of May were read.",
    ],
)
def test_is_silent_about_what_a_document_looks_back_on(middle: str) -> None:
    told = dated(["On the 3rd of May it rained."], [middle], ["On the 5th of May they set out."])
    assert not list(CHECK.find(told))


def test_a_report_that_is_set_in_is_no_order_of_telling() -> None:
    told = ["On the 4th of March it rained.", "I came on the 3rd of February.", "On the 6th of March it cleared."]
    seen = dated(told)
    assert list(CHECK.find(seen))
    assert not list(CHECK.find(replace(seen, set_in=frozenset({(0, 1)}))))
