"""Weekdays against dates. Check values are of the Gregorian calendar: 14 February 1965 was a Sunday, 1 November 1985 a
Friday (any perpetual calendar)."""

import pytest

from afterdraft.questions.each.weekdays import CHECK
from tests.questions.asked import found, quotes


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("Tuesday 14th February 1965\nSir, I write to say", "Tuesday 14th February 1965"),
        ("It was on Thursday, the first of November, 1985, that he came.", "Thursday, the first of November, 1985"),
        ("On November 1, 1985, a Monday, the mill stood.", "November 1, 1985, a Monday"),
        ("The first of November, 1985, was a Monday.", "first of November, 1985, was a Monday"),
        ("November 1, 1985 fell on a Monday.", "November 1, 1985 fell on a Monday"),
    ],
)
def test_asks_where_the_calendar_of_a_year_says_otherwise(text: str, said: str) -> None:
    assert quotes(found(CHECK, [text])) == [[said]]


@pytest.mark.parametrize(
    "text",
    [
        "Sunday 14th February 1965",
        "On Friday, the first of November 1985, the mill stood.",
        "It was the fourteenth of February, 1965, a Sunday.",
        "Tuesday, the 3rd of March 1523, by the old reckoning.",
        "He came on Tuesday. The first of November was wet.",
    ],
)
def test_is_silent_where_they_agree_or_nothing_is_known(text: str) -> None:
    assert found(CHECK, [text]) == []


def test_asks_where_the_year_stands_a_little_before() -> None:
    """1 November 1985 was a Friday, and so 8 November."""
    first = "He came on the first of November, 1985."
    assert quotes(found(CHECK, [first, "On Monday, the eighth of November, he went."])) == [
        ["Monday, the eighth of November", "first of November, 1985"]
    ]
    assert not found(CHECK, [first, "On Friday, the eighth of November, he went."])
    assert not found(CHECK, [first, "On Monday, the eighth of June, he went."])


@pytest.mark.parametrize("first", ["It was October of 1985.", "In October, 1985, he came.", "That was October 1985."])
def test_asks_where_a_month_and_year_stand_a_little_before(first: str) -> None:
    (one,) = found(CHECK, [first, "On Monday, the eighth of November, he went."])
    assert one.words["was"] == "Friday"
    assert not found(CHECK, [first, "On Friday, the eighth of November, he went."])


def test_is_silent_where_a_book_has_a_calendar_of_its_own() -> None:
    first = "He came on the first of November, 1985."
    told = ["On Monday, the eighth of November, he went.", "On Tuesday, the ninth of November, she went."]
    assert not found(CHECK, [first, *told])


def test_asks_where_two_days_near_each_other_cannot_both_be() -> None:
    one = found(CHECK, ["She was to report on Friday the thirteenth."], ["They drew lots on Saturday the twentieth."])
    assert quotes(one) == [["Friday the thirteenth", "Saturday the twentieth"]]
    assert one[0].words["was"] == "Friday"


def test_is_silent_about_days_that_fit_over_the_end_of_a_month() -> None:
    assert not found(CHECK, ["Saturday the thirtieth was wet."], ["Monday the second was dry."])


def test_is_silent_about_what_is_said_of_another_time() -> None:
    told = ["Saturday the thirtieth was wet."], ["“Saturday the third,” he said, “that was years ago.”"]
    assert not found(CHECK, *told)


def test_is_silent_about_a_day_of_another_season() -> None:
    """18 January 1963 was a Friday; 22 November 1985 too. No page says the years."""
    told = ["Friday the twenty-second of November."], ["The eighteenth of January, a Thursday."]
    assert not found(CHECK, *told)


def test_is_silent_about_days_that_may_be_of_two_years() -> None:
    forty = ["It was Friday the thirteenth of June, ’forty-eight, and wet."]
    assert not found(CHECK, forty, ["They drew lots on Monday the twentieth of June."])
    apart = [["It was dry."]] * 20
    assert not found(CHECK, ["It was Friday the thirteenth."], *apart, ["They drew lots on Saturday the twentieth."])
