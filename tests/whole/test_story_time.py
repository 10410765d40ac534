"""When scenes happen: dates, entries, intervals, flashbacks, contradictions.

Weekdays: the standard library's calendar.
"""

import datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.time import Time
from afterdraft.reading.times import times
from afterdraft.whole.calendar import easter, span
from afterdraft.whole.story_time import StoryTime, story_time


def scene(*paragraphs: str) -> SceneFacts:
    return SceneFacts(len(paragraphs), times=tuple(one for n, text in enumerate(paragraphs) for one in times(text, n)))


def story(*scenes: str, **more: object) -> StoryTime:
    """Each scene as one text, its paragraphs parted by a bar."""
    return story_time([scene(*text.split("|")) for text in scenes], **more)  # type: ignore[arg-type]


def bounds(found: StoryTime) -> list[tuple[str, str]]:
    return [(one.earliest, one.latest) for one in found.scenes]


def test_a_date_in_the_opening_is_the_scene_s_and_what_follows_is_no_earlier() -> None:
    found = story("On the 3rd of May, 1893, it rained.", "She slept.", "On the 9th of May she woke.")
    assert bounds(found) == [
        ("1893-05-03", "1893-05-03"),
        ("1893-05-03", "1893-05-09"),
        ("1893-05-09", "1893-05-09"),
    ]


def test_without_a_year_dates_still_give_the_order() -> None:
    found = story("30 December.—Snow.", "2 January.—Thaw.", "9 May.—Sun.")
    assert bounds(found)[0] == ("XXXX-12-30", "XXXX-12-30")
    assert [one.days for one in found.scenes] == [(0, 0), (2, 3), (129, 130)]
    assert not any(one.flashback for one in found.scenes)


def test_entries_of_several_hands_are_dated_each_by_its_own() -> None:
    found = story("3 May.—Rain.|It fell.|5 May.—Sun.|It shone.", "4 May.—Wind.")
    assert [one.first for one in found.dated] == ["XXXX-05-03", "XXXX-05-05", "XXXX-05-04"]
    assert bounds(found)[0] == ("XXXX-05-03", "XXXX-05-05")


def test_three_days_later_the_next_morning() -> None:
    found = story("On 3 May 1893 it rained.", "Three days later it stopped.", "The next morning she left.")
    assert bounds(found)[1:] == [("1893-05-06", "1893-05-06"), ("1893-05-07", "1893-05-07")]
    assert found.scenes[2].part_of_day == "morning"


def test_the_heading_dates_the_scene_under_it() -> None:
    found = story("It rained.", "It shone.", heads=[["3 May 1893"], []])
    assert bounds(found)[0] == ("1893-05-03", "1893-05-03")


def test_a_heading_that_says_a_year_places_what_stands_under_it() -> None:
    heads = [["Part One: 1921"], [], ["Part Two: 1926"], ["1931"], ["1936 to 1940"]]
    found = story("It rained.", "It shone.", "On the 9th of May it rained.", "It shone.", "It blew.", heads=heads)
    assert [one.earliest for one in found.scenes] == [
        "1921-01-01",
        "1921-01-01",
        "1926-05-09",
        "1931-01-01",
        "1931-01-01",
    ]
    assert found.scenes[0].latest == "1921-12-31"
    assert not found.contradictions


@pytest.mark.parametrize("day", ["the 29th of February", "the 31st of June"])
def test_a_day_that_the_year_of_its_heading_has_not_leaves_the_year(day: str) -> None:
    found = story(f"It was {day}.", heads=[["Part Two: 1926"]])
    assert bounds(found) == [("1926-01-01", "1926-12-31")]


def test_what_she_says_wins() -> None:
    found = story("On 3 May 1893 it rained.", "It shone.", hers={0: "10 June 1901, in the evening"})
    assert bounds(found)[0] == ("1901-06-10T17:00", "1901-06-10T23:00")
    assert found.scenes[0].part_of_day == "evening"


def test_a_date_in_passing_whose_year_is_not_said_goes_on_and_not_back() -> None:
    found = story("It was the 1st of June.", "It was Christmas Eve.", "It was the 18th of February.")
    assert [one.days[1] for one in found.scenes] == [0, 206, 262]
    before = story("It was Christmas Day.", "She slept.", "It was the 1st of July, 1866.")
    assert (before.scenes[0].earliest, before.scenes[2].earliest) == ("1865-12-25", "1866-07-01")
    assert not any(one.flashback for one in (*found.scenes, *before.scenes))


def test_a_day_of_a_month_that_is_not_said_is_the_next() -> None:
    found = story("It was the 28th of May, 1893.", "On the 17th the post came.", "On the 20th, she left.")
    assert [one.earliest for one in found.scenes] == ["1893-05-28", "1893-06-17", "1893-06-20"]


def test_a_date_that_is_looked_to_from_another_time_dates_no_scene() -> None:
    found = story("It was the 1st of June, 1893.", "The rain lasted until the 15th of August.", "On 3 June it stopped.")
    assert [one.latest for one in found.scenes] == ["1893-06-01", "1893-06-03", "1893-06-03"]


def test_telling_that_goes_back_is_a_flashback() -> None:
    found = story("On 3 May 1893 it rained.", "On 3 May 1880 she was a child.", "On 4 May 1893 it shone.")
    assert [one.flashback for one in found.scenes] == [False, True, False]


def test_ten_years_before_is_one_too() -> None:
    found = story("On 3 May 1893 it rained.", "Ten years before, she was a child.")
    assert found.scenes[1].flashback
    assert found.scenes[1].latest < "1884"


def test_an_interval_against_dates_is_a_contradiction_with_both_places() -> None:
    found = story("On 3 May 1893 it rained.", "Two weeks later, on 5 May 1893, it shone.")
    (slip,) = found.contradictions
    assert slip.what == "time"
    assert [(one.scene, one.start) for one in sorted(slip.said)] == [(0, 3), (1, 0), (1, 20)]


@pytest.mark.parametrize(("day", "slips"), [("Wednesday", 0), ("Thursday", 1)])
def test_a_weekday_is_held_against_its_date(day: str, slips: int) -> None:
    assert datetime.date(1893, 5, 3).strftime("%A") == "Wednesday"
    assert len(story(f"On {day}, 3 May 1893, it rained.").contradictions) == slips


def test_weekdays_of_an_unsaid_year_are_held_against_one_another() -> None:
    assert not story("Monday, 1 May.—Rain.", "Monday, 8 May.—Sun.").contradictions
    assert [one.what for one in story("Monday, 1 May.—Rain.", "Sunday, 8 May.—Sun.").contradictions] == ["weekday"]


def test_nothing_said_is_nothing_known() -> None:
    found = story("She slept.", "She woke.")
    assert bounds(found) == [("", ""), ("", "")]
    assert story_time([]).scenes == ()


@pytest.mark.parametrize(
    ("year", "day"), [(1818, (3, 22)), (1897, (4, 18)), (1943, (4, 25)), (2000, (4, 23)), (2026, (4, 5))]
)
def test_easter_is_when_the_tables_say(year: int, day: tuple[int, int]) -> None:
    """The earliest and latest possible (1818, 1943) and others: published tables of the Western Easter, from memory."""
    assert easter(year) == datetime.date(year, *day)


@given(st.dates(datetime.date(2, 1, 1), datetime.date(9000, 12, 31)))
def test_every_day_is_its_own_minutes(day: datetime.date) -> None:
    assert span(Time(0, 0, 1, "date", day.isoformat()), None) == (day.toordinal() * 1440, day.toordinal() * 1440 + 1439)


@given(st.lists(st.text(alphabet="3 May 1893,later next day before.Onw", max_size=60), max_size=6))
def test_any_words_give_each_scene_a_time(texts: list[str]) -> None:
    assert len(story(*texts).scenes) == len(texts)


@given(st.lists(st.text(alphabet="1926 Part:-May29thFebruary", max_size=30), min_size=3, max_size=3))
def test_any_headings_give_each_scene_a_time(heads: list[str]) -> None:
    texts = ["It was the 29th of February.", "On the ninth it rained.", "Three days later."]
    assert len(story(*texts, heads=[[one] for one in heads]).scenes) == len(texts)
