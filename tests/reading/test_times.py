"""What fiction says of time. Forms of dates, weekdays, clock, durations: ISO 8601; unknown years and seasons: EDTF."""

import datetime
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.reading.time_words import FEASTS, number, year
from afterdraft.reading.times import times

Told = list[tuple[str, str]]


def said(text: str) -> Told:
    """The words and their values."""
    return [(text[one.start : one.end], one.value) for one in times(text, 0)]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("3 May. Rain on the quay.", [("3 May", "XXXX-05-03")]),
        ("On the 3rd of May, 1893, it rained.", [("3rd of May, 1893", "1893-05-03")]),
        ("The 19th, 20th, and 21st of October, were fair.", [("21st of October", "XXXX-10-21")]),
        ("the fifteenth day of June", [("fifteenth day of June", "XXXX-06-15")]),
        ("June the 15th", [("June the 15th", "XXXX-06-15")]),
        ("June 15th, 1914", [("June 15th, 1914", "1914-06-15")]),
        ("Sept. 23rd", [("Sept. 23rd", "XXXX-09-23")]),
        ("the fourth of May, Eighteen hundred", [("fourth of May, Eighteen hundred", "1800-05-04")]),
        ("June ’forty-nine", [("June ’forty-nine", "XX49-06")]),
        ("30–31 October, near midnight", [("30–31 October", "XXXX-10-30/XXXX-10-31"), ("midnight", "T00:00")]),
        ("1897-05-03", [("1897-05-03", "1897-05-03")]),
        ("all through October", [("October", "XXXX-10")]),
        ("She may march in the march past.", []),
        ("the May Queen", []),
        ("It was 1897.", [("1897", "1897")]),
        ("1,897 sheep for £1897", []),
        ("40 May flies", []),
        ("Christmas Eve, 1921", [("Christmas Eve, 1921", "1921-12-24")]),
        ("on Tuesday", [("Tuesday", "XXXX-WXX-2")]),
        ("half past six", [("half past six", "T06:30")]),
        ("a quarter to nine in the evening", [("a quarter to nine in the evening", "T20:45")]),
        ("twenty to six", [("twenty to six", "T05:40")]),
        ("ten o'clock at night", [("ten o'clock at night", "T22:00")]),
        ("8:35 p.m. and 12:10 a.m.", [("8:35 p.m.", "T20:35"), ("12:10 a.m.", "T00:10")]),
        ("at eight, and not at eight of them", [("eight", "T08:00")]),
        ("by noon", [("noon", "T12:00")]),
        ("late that afternoon", [("that afternoon", "T12:00/T18:00")]),
        ("in the spring of 1920", [("spring of 1920", "1920-21")]),
        ("She would spring and fall.", []),
        ("three days later", [("three days later", "P3D")]),
        ("a fortnight ago", [("a fortnight ago", "-P2W")]),
        ("the next morning", [("the next morning", "P1D"), ("morning", "T05:00/T12:00")]),
        ("the day before", [("the day before", "-P1D")]),
        ("the following week", [("the following week", "P1W")]),
        ("some years later", [("some years later", "P3Y~")]),
        ("within the hour; for two hours", [("within the hour", "PT1H"), ("two hours", "PT2H")]),
        ("Yesterday it rained.", [("Yesterday", "-P1D")]),
        ("She was seventeen, and he was thirty years old.", [("seventeen", "P17Y"), ("thirty years old", "P30Y")]),
        ("He was one of them.", []),
        ("aged 30", [("30", "P30Y")]),
        ("", []),
    ],
)
def test_what_is_said_of_time(text: str, expected: Told) -> None:
    assert said(text) == expected


@pytest.mark.parametrize(
    ("words", "value"),
    [("a", 1), ("nine", 9), ("twenty-one", 21), ("twenty first", 21), ("thirtieth", 30), ("17th", 17), ("door", None)],
)
def test_numbers_in_words(words: str, value: int | None) -> None:
    assert number(words) == value


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("1897", "1897"),
        ("eighteen hundred", "1800"),
        ("eighteen hundred and forty-eight", "1848"),
        ("nineteen-twelve", "1912"),
        ("’forty-nine", "XX49"),
    ],
)
def test_years_in_words(words: str, value: str) -> None:
    assert year(words) == value


@given(st.dates(datetime.date(1700, 1, 1), datetime.date(2099, 12, 31)))
def test_every_day_of_the_calendar_is_read_however_it_is_written(day: datetime.date) -> None:
    # the standard library writes the month's name: the outside reference for it
    month, number_of_day = day.strftime("%B"), day.day
    ending = "th" if 11 <= number_of_day <= 13 else {1: "st", 2: "nd", 3: "rd"}.get(number_of_day % 10, "th")
    forms = (
        f"{number_of_day} {month} {day.year}",
        f"{month} {number_of_day}, {day.year}",
        f"the {number_of_day}{ending} of {month}, {day.year}",
        day.isoformat(),
    )
    for form in forms:
        assert [value for _, value in said(f"It was {form}, and raining.")] == [day.isoformat()], form


@given(st.times())
def test_every_minute_of_the_clock_is_read(at: datetime.time) -> None:
    written = f"{at.hour % 12 or 12}:{at.minute:02} {'p.m.' if at.hour >= 12 else 'a.m.'}"
    assert [value for _, value in said(f"It was {written} by the lock.")] == [f"T{at.hour:02}:{at.minute:02}"]


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("It was the first Sunday in June, the second of the month.", ["XXXX-06", "XXXX-06-02"]),
        ("It was shut from the 9th of May, 1893, to the 16th.", ["1893-05-09", "1893-05-16"]),
        ("In June, on Sunday the 12th, it rained.", ["XXXX-06", "XXXX-06-12"]),
        ("It was shut from the 30th of May to the 12th.", ["XXXX-05-30", "XXXX-XX-12"]),
        ("She came in June. On the 12th, it rained.", ["XXXX-06", "XXXX-XX-12"]),
    ],
)
def test_a_day_has_the_month_that_its_sentence_names_before_it(text: str, values: list[str]) -> None:
    assert [one.value for one in times(text, 0) if one.kind == "date"] == values


def test_a_day_has_no_month_that_somebody_else_names() -> None:
    text = "“Not in June,” she said on the 12th."
    assert [one.value for one in times(text, 0, [(0, 14)])] == ["XXXX-06", "XXXX-XX-12"]


def test_feasts_are_days_of_the_calendar() -> None:
    for value in FEASTS.values():
        datetime.date.fromisoformat(f"2000-{value}")


@given(st.text(max_size=80))
def test_no_text_is_too_odd_and_what_is_found_lies_in_it(text: str) -> None:
    found = times(text, 3)
    assert all(0 <= one.start < one.end <= len(text) and one.paragraph == 3 for one in found)
    assert all(a.start <= b.start for a, b in pairwise(found))


@pytest.mark.parametrize("text", ["“Next Monday. First. You will see.”", "“First—and I mean it—”"])
def test_a_day_by_itself_in_talk_heads_nothing(text: str) -> None:
    assert not any(one.dateline for one in times(text, 0, [(0, len(text))]))


def test_what_is_said_in_speech_is_marked() -> None:
    text = "“On Tuesday,” she said on Friday."
    assert [(one.value, one.spoken) for one in times(text, 0, [(1, 12)])] == [
        ("XXXX-WXX-2", True),
        ("XXXX-WXX-5", False),
    ]


def test_a_long_paragraph_takes_no_long_time() -> None:
    assert times("twenty one hundred and " * 4000, 0) == ()


@pytest.mark.parametrize(
    ("text", "heads"),
    [
        ("3 May. Harrow Quay.—Left at noon.", True),
        ("*Harrow Quay, 24 August.*\nMy dear,", True),
        ("19th.—Nothing yet.", True),
        ("Saturday, 13th.—Rain.", True),
        ("Telegram, October 28th.", True),
        ("On 6 July we finished taking in cargo.", False),
        ("It was the 3rd of May.", False),
    ],
)
def test_a_date_that_heads_its_paragraph_is_a_dateline(text: str, heads: bool) -> None:
    assert [one.dateline for one in times(text, 0) if one.kind == "date"] == [heads]


@pytest.mark.parametrize(
    ("text", "heads"),
    [
        ("“Harrow Quay, March 18th, 17—.”", True),
        ("“*Harrow Quay, 24 August.*", True),
        ("“May 12, 1827. Mr. Lamb in the chair.”", True),
        ("“4 October, noon.—Rain.", True),
        ("“London, 3rd May.”", True),
        ("“10th December, 18—.", True),
        ("“*5 September.* Better today.”", True),
        ("“*25 September, 6:30 p.m.*", True),
        ("“21st May.—Left at noon.”", True),
        ("“22nd.—Left at noon.", True),
        ("“The 29th.”", False),
        ("“The 29th,” he said, “is soon.”", False),
        ("“March the third, I think, sir.”", False),
        ("“March the third,” he said, “or near it.”", False),
        ("'Four weeks yesterday. Thirty-first of March. You will have to wait.'", False),
        ("'Four weeks yesterday. 31 March 1893. You will have to wait.'", False),
        ("'Thirty-first of March. You will have to wait.'", False),
        ("'Ninth of June, 1733. From the north.'", False),
        ("“31 March. You will have to wait.”", False),
        ("“Tuesday, the 24th of July.”", False),
        ("“Yes, June 15th.”", False),
        ("“London, 3rd May.” She put it down.", False),
    ],
)
def test_a_letter_that_is_read_out_has_its_date_and_talk_has_none(text: str, heads: bool) -> None:
    assert [one.dateline for one in times(text, 0, [(0, len(text))]) if one.kind == "date"] == [heads]


@pytest.mark.parametrize(
    ("text", "aside"),
    [
        ("It rained until the 15th of August.", True),
        ("She had not been so busy since Christmas.", True),
        ("The days before Christmas were short.", True),
        ("It was the Christmas holidays.", True),
        ("They had their family Christmas first.", True),
        ("A storm—The boat—The 3rd of May—Ashore at last.", True),
        ("It was the 3rd of May.", False),
        ("On the 3rd of May the boat sailed.", False),
        ("Christmas came, and nobody wrote.", False),
        ("She was alone that Christmas.", False),
        ("The next day, May 3, they sailed.", False),
    ],
)
def test_a_date_that_is_looked_to_from_another_time(text: str, aside: bool) -> None:
    assert [one.aside for one in times(text, 0) if one.kind == "date"] == [aside]


def test_a_movable_feast_waits_for_its_year() -> None:
    assert [(one.value, one.movable) for one in times("Ash Wednesday, 1893", 0)] == [("1893", "-46")]
