"""Moons: twenty-nine and a half days from one to the next, as every almanac has it."""

import pytest

from afterdraft.questions.each.moon import CHECK
from tests.questions.asked import dated, quotes

FIRST = ["It was the third of May.", "A full moon stood over the landing."]


def test_asks_about_two_full_moons_a_fortnight_apart() -> None:
    (one,) = CHECK.find(dated(FIRST, ["It was the seventeenth of May.", "The full moon came up over the rail."]))
    assert quotes([one]) == [["A full moon stood over the landing.", "The full moon came up over the rail."]]
    assert one.numbers == {"days": 14}


def test_a_day_that_is_told_within_a_scene_counts() -> None:
    begins = ["Ilse came down to the landing.", "She had a basket with her."]
    found = list(
        CHECK.find(dated([*begins, *FIRST], [*begins, "It was the seventeenth of May.", "The moon was full."]))
    )
    assert [one.numbers for one in found] == [{"days": 14}]
    gone_on = "Two days later the rope broke."
    assert not list(
        CHECK.find(dated(FIRST, [*begins, "It was the seventeenth of May.", gone_on, "The moon was full."]))
    )


def test_asks_about_a_new_moon_right_after_a_full_one() -> None:
    assert list(CHECK.find(dated(FIRST, ["It was the fifth of May.", "A thin moon hung over the rail."])))


@pytest.mark.parametrize(
    "other",
    [
        ["It was the first of June.", "The full moon came up over the rail."],
        ["It was the seventeenth of May.", "A thin moon hung over the rail."],
        ["It was the seventeenth of May.", "“There’s a full moon,” said Ilse."],
        ["It was the seventeenth of May.", "Her face was like a full moon."],
        ["It was some time in May.", "The full moon came up over the rail."],
        ["It was the fifth of May.", "The full moon came up over the rail."],
    ],
)
def test_is_silent_where_it_may_be_so(other: list[str]) -> None:
    assert not list(CHECK.find(dated(FIRST, other)))


FULL = "A full moon stood over the landing."
PAST = "There was a moon coming up, lopsided, three days past full."


@pytest.mark.parametrize(
    ("first", "later", "other"),
    [
        (PAST, "twelfth", FULL),
        (FULL, "twelfth", "The moon was two nights from the full."),
        (FULL, "eighth", "A sliver of moon hung over the rail."),
        (FULL, "eighth", "The moon was no more than a paring."),
        (FULL, "fifth", "It was the dark of the moon."),
        (FULL, "seventeenth", "The moon rose, round and yellow."),
        (FULL, "seventeenth", "She saw that the clouds had gone, and a big full moon was standing there."),
        (FULL, "thirty-first", "A half-moon hung over the rail."),
        (FULL, "fourth", "The moon was half."),
        ("The moon was in its first quarter.", "fifteenth", "A crescent moon hung there."),
        ("A thin new moon lay on its back.", "sixth", "The moon was nearly full."),
        ("A waxing moon, a day short of full, came up.", "ninth", "The moon, white and full, stood there."),
        ("A three-day-old moon hung in the west.", "ninth", "There was a harvest moon."),
        (FULL, "eleventh", "A waxing moon came up."),
    ],
)  # fmt: skip
def test_asks_however_the_moon_is_told(first: str, later: str, other: str) -> None:
    told = dated(["It was the third of May.", first], [f"It was the {later} of May.", other])
    assert len(list(CHECK.find(told))) == 1


@pytest.mark.parametrize(
    ("first", "later", "other"),
    [
        (PAST, "fourth", "A waning moon came up."),
        (PAST, "twenty-ninth", FULL),
        (FULL, "tenth", "A half-moon hung over the rail."),
        (FULL, "twelfth", "A half-moon hung over the rail."),
        (FULL, "twelfth", "A half-moon of chairs stood round the stove."),
        (FULL, "eighth", "She remembered a thin moon over the rail."),
        (FULL, "eighth", "The moon had been a thin moon at Easter."),
        (FULL, "eighth", "The month begins with the dark of the moon."),
        (FULL, "eighth", "There was no thin moon, and no star."),
        (FULL, "eighth", "The lamp was a thin moon, she thought, like those of a stage."),
        (FULL, "seventh", "The moon was three days past the full."),
        ("A thin new moon lay on its back.", "fourteenth", "The moon was nearly full."),
        (FULL, "eighth", "For the last quarter of an hour the moon had shone."),
    ],
)
def test_is_silent_about_moons_that_may_follow(first: str, later: str, other: str) -> None:
    told = dated(["It was the third of May.", first], [f"It was the {later} of May.", other])
    assert not list(CHECK.find(told))


def test_counts_by_weekdays_where_no_day_is_known() -> None:
    thin, full = "A thin new moon lay on its back.", "The moon was up over the water, full, and very bright."
    saturday, monday = "On Saturday it was calm.", "They went up the hill on Monday, singing."
    assert len(list(CHECK.find(dated([saturday, thin], [monday, full])))) == 1
    assert len(list(CHECK.find(dated([saturday], [thin], [full], [monday])))) == 1
    assert len(list(CHECK.find(dated([thin, "Nobody spoke.", full])))) == 1
    assert not list(CHECK.find(dated([saturday, thin], ["A week later they came out.", monday, full])))
    assert not list(CHECK.find(dated([saturday, thin], ["It was wet on Friday.", monday, full])))
    assert not list(CHECK.find(dated([thin], [full])))


def test_asks_about_two_moons_at_once() -> None:
    """Each moon is in one question at most."""
    told = dated(
        FIRST,
        ["It was the seventeenth of May.", FULL],
        ["It was the first of July.", FULL],
        ["It was the 8th of July.", FULL],
    )
    assert [one.numbers["days"] for one in CHECK.find(told)] == [14, 7]
