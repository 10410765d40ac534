"""Of which month and year a day is of which that is not said. Check values are of the Gregorian calendar (any perpetual
calendar)."""

import pytest

from afterdraft.questions.each.weekdays import CHECK
from afterdraft.questions.seen import Seen
from tests.questions.asked import found, quotes

RAIN = [["It rained."]] * 5
BARE = "The dinner was on Thursday, the fourteenth, in the yard."


@pytest.mark.parametrize(
    "ahead",
    [
        "He was coming on Thursday 19 October.",
        "They would sail on Thursday 19 October.",
        "They had till Thursday 19 October to pay.",
        "It was Thursday 19 October.",
    ],
)
def test_a_day_that_lies_ahead_does_not_give_its_month_to_an_earlier_one(ahead: str) -> None:
    """In 2023 the 14th of September was a Thursday, and the 19th of October."""
    assert not found(CHECK, [BARE, ahead])
    assert not found(CHECK, [BARE], [ahead])


@pytest.mark.parametrize(
    "announced", ["The hearing was fixed for Thursday 19 October.", "The hearing would be on Thursday 19 October."]
)
def test_a_day_that_is_announced_gives_its_month_to_no_day_but_the_one_that_has_come(announced: str) -> None:
    assert not found(CHECK, [announced], [BARE])
    assert found(CHECK, [announced], ["On Friday the nineteenth they got up in the dark."])


def test_the_month_of_a_day_is_that_of_the_heading_of_its_chapter() -> None:
    told, bare = "It was Thursday 19 October, and wet.", "They drew lots on Saturday, the twentieth."
    texts, no_heads = ((told,), (bare,)), (("One",), ("Two",))
    assert list(CHECK.find(Seen(texts=texts, heads=no_heads)))
    assert list(CHECK.find(Seen(texts=texts, heads=(("One", "October"), ()))))
    assert not list(CHECK.find(Seen(texts=texts, heads=(("One: Ada, October",), ("Two: Tom, November",)))))
    both = (("They met on Friday the thirteenth.",), (bare,))
    assert list(CHECK.find(Seen(texts=both, heads=(("SEPTEMBER",), ()))))
    assert not list(CHECK.find(Seen(texts=both, heads=(("SEPTEMBER",), ("OCTOBER 1950",)))))


def test_a_month_to_come_that_is_named_above_a_day_is_not_the_days() -> None:
    told = "They met on Friday 20 October."
    assert not found(CHECK, [f"The show was to be in October. {BARE}", told])
    assert not found(CHECK, ["It was Tuesday 10 October."], [f"It had been dry until June. {BARE}"])


def test_a_day_between_two_of_one_month_is_of_that_month() -> None:
    said, behind = (
        ["“It was Friday the twelfth,” he said."],
        ["It was Sunday, October 15.", "It was Monday, October 16."],
    )
    assert found(CHECK, ["It was Wednesday, October 11."], *RAIN, said, behind)
    assert not found(CHECK, *RAIN, said, behind)


@pytest.mark.parametrize(
    "background",
    [
        "In September of 1985 he was appointed to the mill.",
        "The mill was built in the September of 1985.",
        "He came to live there in September 1985.",
        "A brass plate in the hall said September 1985.",
        "The lease ran from September 1985.",
        "By September 1985 he was alone.",
    ],
)
def test_a_year_told_in_the_background_is_not_the_days(background: str) -> None:
    """8 November 1985 was a Friday, 8 November 1986 a Saturday."""
    day = "On Saturday, the eighth of November, he went."
    assert found(CHECK, ["It was September of 1985, and dry.", day])
    assert not found(CHECK, [background, day])


@pytest.mark.parametrize(
    "event", ["They met in September 1985 and quarrelled.", "It was in September 1985 that the bridge came down."]
)
def test_a_month_and_year_without_a_day_are_those_of_what_stands_right_behind(event: str) -> None:
    day = "On Saturday, the eighth of November, he went."
    assert found(CHECK, [event, day])
    assert not found(CHECK, [event, "It rained.", "They slept.", "The dog barked.", day])
    for told in ("It was September 1985.", "Mill House, September 1985", "On the first of September 1985 they met."):
        assert found(CHECK, [told, "It rained.", "They slept.", "The dog barked.", day])


@pytest.mark.parametrize("between", ["In his second year he was ill.", "Two years later it rained.", "A year went by."])
def test_a_year_is_not_the_days_where_years_pass_between(between: str) -> None:
    told, day = "It was September of 1985, and dry.", "On Saturday, the eighth of November, he went."
    assert not found(CHECK, [told, between, day])
    assert found(CHECK, [told, "Tom was eight years old. Happy New Year, he said.", day])


def test_a_year_on_which_fewer_days_agree_than_on_another_is_not_theirs() -> None:
    """In 1985 the 22nd of November was a Friday; in 1986 the 8th, the 22nd and the 29th were Saturdays."""
    told = ["It was September of 1985, and dry.", "On Saturday, the eighth of November, he went."]
    rest = ["On Saturday, the twenty-ninth of November, it snowed."], ["On Tuesday, the second of December, it thawed."]
    assert [one.numbers for one in found(CHECK, told)] == [{"year": 1985}]
    assert not found(CHECK, told, *RAIN, *rest)
    slip = ["On Friday, the twenty-second of November, it froze."]
    asked = found(CHECK, told, *RAIN, slip, *rest)
    assert [quotes([one])[0][1] for one in asked] == ["Friday, the twenty-second of November"]


def test_one_that_fits_neither_year_is_held_against_the_others() -> None:
    told = ["It was September of 1985, and dry.", "On Tuesday, the eighth of November, he went."]
    rest = (
        ["On Saturday, the fifteenth of November, it froze."],
        ["On Saturday, the twenty-ninth of November, it snowed."],
    )
    (one,) = found(CHECK, told, *RAIN, *rest)
    assert "year" not in one.numbers


def test_feasts_that_are_told_with_their_weekday_agree_on_a_year_too() -> None:
    """25 December was a Wednesday in 1985, a Thursday in 1986."""
    told = ["It was September of 1985, and dry.", "On Saturday, the eighth of November, he went."]
    assert not found(CHECK, told, ["Christmas Day was a Thursday, and it snowed."])
    assert not found(CHECK, told, ["They came back on the Thursday, Christmas Day."])
    assert found(CHECK, told, ["Christmas Day was a Wednesday, and it snowed."])
