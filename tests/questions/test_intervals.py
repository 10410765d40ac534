"""How long it is between two days."""

import pytest

from afterdraft.questions.each.intervals import CHECK
from tests.questions.asked import dated


@pytest.mark.parametrize(
    ("first", "second", "apart"),
    [
        ("On the 3rd of May it rained.", "Two days later, on the 9th of May, they set out.", 6),
        ("It was Monday.", "Three days later, on Friday, they set out.", 4),
        ("It was Monday.", "The next morning, a Thursday, they set out.", 3),
        ("It was Monday.", "The next day was a Thursday.", 3),
        ("On the 3rd of May it rained.", "On the following day, the 9th of May, they set out.", 6),
        ("It was the 8th of May.", "The next morning, the 6th of May, they set out.", -2),
    ],
)
def test_asks_where_days_lie_otherwise_than_is_said(first: str, second: str, apart: int) -> None:
    (one,) = CHECK.find(dated([first], [second]))
    assert one.numbers["apart"] == apart


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("On the 3rd of May it rained.", "Six days later, on the 9th of May, they set out."),
        ("It was Monday.", "Four days later, on Friday, they set out."),
        ("It was Monday.", "A week later, on Monday, they set out."),
        ("It was Monday.", "“Three days later, on Friday, they set out,” she said."),
        ("It was Monday.", "They waited for three days. On Friday they set out."),
        ("It was Monday.", "The next day was a Tuesday."),
        ("It was Monday.", "They were to set out the next day, or by Friday."),
        ("It was Monday.", "The next Friday they set out."),
        ("It was Monday.", "After a week of rain they set out one Sunday."),
        ("There were three Sundays.", "The next day, Saturday, they set out."),
        ("They met at Christmas.", "Three weeks later they went home, and so at Easter."),
        ("It was the 3rd of May.", "Left the mill on the 1st of May, arriving early next morning."),
        ("On the 3rd of May it rained.", "On the 20th of May, twelve days after having begun, they were done."),
        ("On the 3rd of May it rained.", "On the 20th of May, a week after his return, the miller spoke."),
        ("On the 3rd of May it rained. In the morning they slept.", "The next day, the 5th of May, they set out."),
        ("On the 3rd of May it rained.", "They sailed for two days. The next day, the 6th of May, they landed."),
    ],
)
def test_is_silent_where_they_agree_or_nothing_is_said(first: str, second: str) -> None:
    assert not list(CHECK.find(dated([first], [second])))


@pytest.mark.parametrize(
    "alone", ["Eight days later he came.", "After eight days he came.", "A week after that he came."]
)
def test_asks_where_a_day_comes_before_the_days_that_have_passed(alone: str) -> None:
    (one,) = CHECK.find(dated(["On the 3rd of May it rained.", alone, "It was now the 6th of May."]))
    assert one.evidence[1].paragraph == 1
    assert not list(CHECK.find(dated(["On the 3rd of May it rained.", alone, "It was now the 12th of May."])))


@pytest.mark.parametrize(
    "alone",
    [
        "He had come eight days later.",
        "“Eight days later he came,” she said.",
        "He stayed eight days.",
        "Not eight days since he came.",
        "He knew that eight days later it would be over.",
    ],
)
def test_is_silent_about_days_that_have_not_passed(alone: str) -> None:
    assert not list(CHECK.find(dated(["On the 3rd of May it rained.", alone, "It was now the 6th of May."])))


@pytest.mark.parametrize(
    "evening",
    [
        "That same evening, the 5th of May, the dog barked.",
        "That night, the 5th of May, the dog barked.",
        "It was the evening of the same day, the 5th of May.",
        "In the afternoon of that same day, May 5, the dog barked.",
    ],
)
def test_asks_about_an_evening_of_another_day_than_it_says(evening: str) -> None:
    (one,) = CHECK.find(dated(["On the morning of the 3rd of May it rained.", "Nobody came.", evening]))
    assert one.numbers == {"days": 0, "apart": 2}
    assert not list(CHECK.find(dated(["On the 5th of May it rained.", "Nobody came.", evening])))


@pytest.mark.parametrize(
    "between", ["Two days later he came.", "The next morning he came.", "On Friday he came.", "A week went by."]
)
def test_is_silent_about_an_evening_that_time_has_passed_before(between: str) -> None:
    told = dated(["On the 3rd of May it rained.", between, "That evening, the 5th of May, the dog barked."])
    assert not list(CHECK.find(told))


@pytest.mark.parametrize(
    "second",
    [
        "They sat up on the Sunday night of the week after, and on the Tuesday they met.",
        "He came on the Friday of the next week, and on the Saturday he went.",
        "The following week, on Friday, they set out.",
        "The week after, on the Thursday, they set out.",
        "A week later, on the Friday, they set out.",
        "The next day but one, a Thursday, they set out.",
        "The day after Easter, a Friday, they set out.",
        "The day after he came, a Friday, they set out.",
        "Two days after Ada’s wedding, on the Friday, they set out.",
        "Two days later they buried him, and on the Friday Tom went.",
        "The next day she was ill; on Thursday she was dead.",
        "They left the next day and arrived on Friday.",
        "On Tuesday it rained, two days later, on the Friday, too.",
        "Not two days later, on Friday, they set out.",
        "More than two days later, on Friday, they set out.",
        "Some two days later, on a Friday, they set out.",
        "By the next evening, a Friday, they were gone.",
        "“Two days later,” she said on Friday, “I saw him.”",
        "The day before, Saturday, she was ill.",
        "Two days later he read the notice of the dance on the Friday.",
    ],
)
def test_is_silent_where_what_is_said_belongs_to_another_day(second: str) -> None:
    assert not list(CHECK.find(dated(["It was Monday."], [second])))


@pytest.mark.parametrize(
    "second",
    [
        "A week later, on the 9th of May, they set out.",
        "Between the next day and the 9th of May nobody came.",
        "Three days later came the news of the 9th of May.",
    ],
)
def test_is_silent_about_dates_likewise(second: str) -> None:
    assert not list(CHECK.find(dated(["On the 3rd of May it rained."], [second])))


@pytest.mark.parametrize("alone", ["The following week he came.", "Six days after the fire he came."])
def test_is_silent_about_days_of_which_it_is_not_said_that_they_have_passed(alone: str) -> None:
    assert not list(CHECK.find(dated(["On the 3rd of May it rained.", alone, "It was now the 6th of May."])))


@pytest.mark.parametrize(
    "second",
    [
        "Three days later they set out, on Friday.",
        "He set out on Friday, three days later.",
        "The following morning was Friday.",
        "Three days later, on the Friday, they set out, and on the Sunday they were there.",
    ],
)
def test_asks_where_what_is_said_belongs_to_the_day(second: str) -> None:
    assert list(CHECK.find(dated(["It was Monday."], [second])))
