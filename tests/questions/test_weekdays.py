"""Weekdays against dates. Check values are of the Gregorian calendar: 14 February 1965 was a Sunday, 1 November 1985 a
Friday (any perpetual calendar)."""

import pytest

from afterdraft.questions.each.weekdays import CHECK
from afterdraft.questions.seen import Seen
from afterdraft.questions.wording import worded
from tests.questions.asked import found, quotes


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("Tuesday 14th February 1965\nSir, I write to say", "Tuesday 14th February 1965"),
        ("It was on Thursday, the first of November, 1985, that he came.", "Thursday, the first of November, 1985"),
        ("On November 1, 1985, a Monday, the mill stood.", "November 1, 1985, a Monday"),
        ("The first of November, 1985, was a Monday.", "first of November, 1985, was a Monday"),
        ("November 1, 1985 fell on a Monday.", "November 1, 1985 fell on a Monday"),
        ("Monday (1 November 1985)", "Monday (1 November 1985"),
        ("It was Monday—November 1, 1985—and wet.", "Monday—November 1, 1985"),
        ("*1 November 1985. Monday.* Rain.", "1 November 1985. Monday"),
        ("It was the first of November 1985, and a Monday.", "first of November 1985, and a Monday"),
        ("The first of November 1985 was, that year, a Monday.", "first of November 1985 was, that year, a Monday"),
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
        "He came on the first of November 1985. Monday he was gone.",
        "It rained on the first of November 1985 and on Monday.",
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
    assert worded(CHECK.id, one[0], ()) == (
        "If “Friday the thirteenth” is right, “Saturday the twentieth” is a Friday. Which of the two is meant?"
    )


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


RAN = [["It was Wednesday, October 15, and wet."], ["On Thursday, October 16, they set out."]]


@pytest.mark.parametrize(
    "said",
    [
        "“It came on the day. Tuesday the fifteenth, at five in the morning.”",
        "“Friday the fifteenth,” said Ilse. “I wrote it down.”",
        "“We went on the Tuesday, October 14th, no, Monday, October 14th,” said Ilse.",
        "He had written it down on Thursday the 14th, at noon.",
        "“The hearing is on Tuesday, the twenty-third of October,” said Ilse.",
        "“It’s to be Sun 25th, then,” he said.",
        "The 17th was a Saturday, and the mill stood still.",
        "Tues 15 Oct it was that the rope went.",
        "On Sunday, the twentieth, they came down again.",
        "“Thursday was the fifteenth,” she said.",
        "“Monday week, that will be the twenty-eighth,” said Ilse.",
    ],
)
def test_asks_about_a_day_that_is_talked_of_beside_those_told(said: str) -> None:
    assert len(found(CHECK, *RAN, [said])) == 1


def test_a_year_that_is_looked_back_on_is_not_the_days() -> None:
    # 10 June was a Friday in 2011, a Saturday in 1989 (any perpetual calendar)
    day = "The lodger came on a Saturday, the tenth of June."
    assert found(CHECK, ["It was the March of 2011 and it rained.", day])
    assert not found(CHECK, ["When Tobias died, in the March of 2011, it rained.", day])
    assert not found(CHECK, ["“‘With thanks, March of 2011,’” he read, and it rained.", day])


def test_days_without_a_month_are_held_against_those_of_near_scenes_only() -> None:
    first, other = "It was the third of March, a Wednesday.", "On the Friday, which was the ninth, he went."
    assert found(CHECK, [first], ["It rained."], [other])
    assert not found(CHECK, [first], *[["It rained."]] * 3, [other])


def test_a_day_alone_is_of_the_month_named_above_it() -> None:
    assert found(CHECK, *RAN, ["It had been quiet.", "“Tuesday the fifteenth,” said Ilse."])
    assert not found(CHECK, *RAN, ["It had been quiet early in June.", "“Tuesday the fifteenth,” said Ilse."])


@pytest.mark.parametrize(
    "said",
    [
        "“Wednesday the fifteenth, at five in the morning.”",
        "“It was Monday the fifteenth,” said Ilse. “In September.”",
        "“I saw him last on Saturday, the fifteenth of November,” she said.",
        "“It was a Tuesday, October 15, three years ago,” said Ilse.",
        "“It was Tuesday, October 15, the year before,” said Ilse.",
        "“It was Tuesday the fifteenth of June,” said Ilse.",
        "Three years earlier, on Sunday, October 9, he had gone over the rail.",
        "The voice says Sunday, October ninth, at noon.",
        "The paper was dated Sunday, October 12.",
        "There was a wreath, and on the stone it said Monday, October 20.",
        "“The first was a Monday man, the second a Tuesday man,” said Ilse.",
        "Monday was the first, and Tuesday the second time that he came.",
        "“Come on Friday the thirty-first,” said Ilse.",
    ],
)
def test_is_silent_about_what_is_talked_of_and_may_be(said: str) -> None:
    assert not found(CHECK, *RAN, [said])


def test_names_the_same_date_where_it_has_another_weekday() -> None:
    (one,) = found(CHECK, *RAN, ["It rained."], ["“Tuesday the fifteenth,” said Ilse."])
    assert one.words["first"] == "Wednesday, October 15"


def test_is_silent_about_two_days_of_another_year_in_a_scene_that_tells_its_own() -> None:
    """14 September 2014 was a Sunday, 9 October 2011 too, 13 October 2014 a Monday."""
    told = ["It’s Monday, October 13, and wet.", "On the fourteenth of September, a Sunday, she found it."]
    assert not found(CHECK, *RAN, [*told, "He went up on Sunday, October ninth, and it was windy."])


def test_one_day_alone_is_enough_only_where_it_is_near() -> None:
    """18 January 1963 was a Friday, 13 December 1963 too; 25 January 1963 as well."""
    told = ["It was the eighteenth of January, a Friday, and wet."]
    assert not found(CHECK, told, ["“We meet on Friday the thirteenth of December,” said Ilse."])
    assert found(CHECK, told, ["“We meet on Thursday the twenty-fifth of January,” said Ilse."])


def test_months_of_no_calendar_are_held_against_themselves_alone() -> None:
    first = ["Thursday, the tenth of Wrack"]
    assert len(found(CHECK, first, ["On Saturday, the thirteenth of Wrack, it rained."])) == 1
    assert len(found(CHECK, first, ["“Sunday was the twelfth of Wrack,” she said."])) == 1
    assert len(found(CHECK, [*first, "They spoke to her on Tuesday week, that was the second."])) == 1
    assert not found(CHECK, first, ["On Sunday, the thirteenth of Wrack, it rained."])
    assert not found(CHECK, first, ["On Saturday, the thirteenth of Smoke, it rained."])
    assert not found(CHECK, first, ["On Saturday, the thirteenth of May, it rained."])
    assert not found(CHECK, [*first, "They spoke to her on Wednesday, that was the second."])


def test_asks_about_the_headings_of_chapters() -> None:
    texts = (("It rained.",), ("Nobody came. The rope was wet.",))
    heads = (("1", "Friday, 3 May"), ("Sunday, 4 May",))
    (one,) = CHECK.find(Seen(texts=texts, heads=heads))
    assert (one.words["said"], one.words["was"]) == ("Sunday, 4 May", "Saturday")
    assert quotes([one]) == [["It rained.", "Nobody came."]]
    assert not list(CHECK.find(Seen(texts=texts, heads=(heads[0], ("Saturday, 4 May",)))))


def test_is_silent_about_a_day_without_its_month_beside_one_that_is_told_alone() -> None:
    """17 May and 30 August 2024 were Fridays both."""
    told = ["The wedding was on Friday, the thirtieth of August."], ["“She fell on Friday the seventeenth,” said Ilse."]
    assert not found(CHECK, *told)
    assert found(CHECK, told[0], ["“On Saturday the thirtieth,” said Ilse."])


def test_before_the_reform_a_day_is_of_either_calendar_if_the_others_are() -> None:
    """In 1730 the first of May was a Monday, the fourth a Thursday and 10 June a Saturday by the Gregorian calendar; 10
    June was a Wednesday by the Julian, eleven days behind."""
    kept = [
        "*Monday, 1 May 1730.* Rain.",
        "*Thursday, 4 May 1730.* Rain.",
        "*Wednesday, 10 June 1730.* By the old one.",
    ]
    (one,) = found(CHECK, [*kept, "*Friday, 2 July 1730.* Fair."])
    assert (one.words["told"], one.words["was"]) == ("Friday", "Sunday")
    assert not found(CHECK, kept)
    assert not found(CHECK, [*kept[:2], "*Friday, 2 July 1730.* Fair."])
    assert not found(CHECK, [*kept, "*Friday, 2 July 1730.* Fair.", "*Sunday, 20 July 1730.* Fair."])


def test_notices_in_capitals_name_days_too() -> None:
    """11 October 1994 was a Tuesday (any perpetual calendar)."""
    assert found(CHECK, ["MEETING in the Hall on THURSDAY 11th OCTOBER 1994 at noon."])
    assert not found(CHECK, ["MEETING in the Hall on TUESDAY 11th OCTOBER 1994 at noon."])


def test_a_feast_falls_on_its_weekday_or_its_date_that_year() -> None:
    told = ["It was Friday the seventh of November, and cold."]
    feast = "They lit the fire on the twelfth of November. Nobody knew why. This year it fell on a"
    assert found(CHECK, told, [f"{feast} Thursday."])
    assert not found(CHECK, told, [f"{feast} Wednesday."])
    fair = ["The fair was on the last Saturday in August, as ever; that year it was the twenty-sixth."]
    assert found(CHECK, fair, ["On Friday the twenty-sixth of August he was in the cabin."])
    assert not found(CHECK, fair, ["On Friday the twenty-fifth of August he was in the cabin."])


def test_the_second_tuesday_of_a_month_is_a_date_too() -> None:
    told = ["It was Friday the seventh of November, and cold."]
    assert found(CHECK, told, ["It was the second Thursday in November, the twelfth."])
    assert not found(CHECK, told, ["It was the second Wednesday in November, the twelfth."])


def test_a_day_that_is_shown_is_asked_about_only_where_it_is_one_step_beside_those_told() -> None:
    ran = [*RAN, ["On Saturday, October 18, it rained."]]
    assert found(CHECK, *ran, ["The page for Thursday, October 17, was torn."])
    assert not found(CHECK, *ran, ["The page for Thursday, October 16, was torn."])
    assert not found(CHECK, *ran, ["The page for Monday, October 17, was torn."])
    assert not found(CHECK, *ran, ["The page for Thursday, October 17, the year before, was torn."])


def test_the_same_date_with_the_weekday_beside_is_held_against_it_over_more_scenes() -> None:
    """In no month beside has a date the weekday before or after, but for a leap year's February."""
    told, rain = ["It was Thursday, the twenty-second, and cold."], [["It rained."]] * 6
    assert found(CHECK, told, *rain, ["“On the night of Wednesday the twenty-second,” he said."])
    assert not found(CHECK, told, *rain, ["“On the night of Saturday the twenty-second,” he said."])
    assert not found(CHECK, told, *rain, *rain, ["“On the night of Wednesday the twenty-second,” he said."])


def test_that_thursday_in_october_is_asked_about_where_none_was_told() -> None:
    told = [["MEETING in the Hall on TUESDAY 11th OCTOBER."], ["They met and nobody spoke."], ["It was May."]]
    said = "She had not spoken at the meeting, on that Thursday in October, and now she did."
    (one,) = found(CHECK, *told, [said])
    assert quotes([one]) == [["TUESDAY 11th OCTOBER", "that Thursday in October"]]
    assert worded(CHECK.id, one, ()) == (
        "“that Thursday in October”: of that month “TUESDAY 11th OCTOBER” is told, and no such day. "
        "Is that the day meant?"
    )
    assert not found(CHECK, *told, [said.replace("Thursday", "Tuesday night")])
    assert not found(CHECK, *told, [said.replace("October", "June")])
    assert not found(CHECK, *told, [said.replace("in October", "in October 1911")])
    assert not found(CHECK, told[0], ["On the Thursday she was ill."], *told[1:], [said])
    assert not found(CHECK, *told[1:], [said], told[0])


def test_a_year_of_old_photographs_is_not_the_years_of_days_that_agree_without_it() -> None:
    """In 1984 the 14th of June was a Thursday and the 10th of August a Friday; in 2024 a Friday and a Saturday."""
    photographs = "Under the dress were the photographs of the first of September 1984."
    office = "They had an appointment at ten on Friday the fourteenth of June."
    assert found(CHECK, [photographs], [office])
    assert found(CHECK, [photographs], [office], ["They met on Friday the tenth of August."])
    assert not found(CHECK, [photographs], [office], ["They met on Saturday the tenth of August."])


def test_a_day_without_its_month_is_not_held_against_a_named_one_that_is_talked_of_far_off() -> None:
    run = ["It was Thursday, the sixteenth.", "On Friday, the seventeenth, he went."]
    said = "“The twentieth of August, it was a Sunday,” she said."
    assert not found(CHECK, [said], *[["It rained."]] * 3, run)


def test_a_wedding_day_of_long_ago_says_no_month_of_now() -> None:
    """17 July 1982 was a Saturday; the twentieth of that month a Tuesday."""
    wedding = "They were married on the seventeenth of July, 1982, a Saturday, in great heat."
    assert not found(CHECK, [wedding], ["She came through the doors on the Saturday evening, the twentieth."])


def test_a_month_on_a_ticket_is_that_of_the_day_below_it() -> None:
    told, ticket = "It was Monday, the sixth of November.", "Tolland to Kell. 12 OCT. Coach C, seat 41."
    assert not found(CHECK, [told], ["It rained."], [ticket, "The twelfth was Thursday."])
    assert found(CHECK, [told], ["It rained."], ["Tolland to Kell. Coach C.", "The twelfth was Thursday."])


def test_is_silent_about_days_under_headings_of_other_years() -> None:
    """The 9th and the 18th of one month cannot be a Sunday and a Wednesday; of two they can."""
    texts = (("It fell upon the Sunday, the ninth.",), ("The eighteenth was a Wednesday.",))
    assert list(CHECK.find(Seen(texts=texts, heads=(("One",), ("Two",)))))
    assert not list(CHECK.find(Seen(texts=texts, heads=(("Part One: 1926",), ("Part Two: 1931",)))))
