"""Ages beside years of birth, years, and how many years ago."""

import pytest

from afterdraft.questions.each.ages_and_years import CHECK
from afterdraft.questions.wording import worded
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
NOW = ["It was the 3rd of May, 1987. The river was low.", *ILSE, "Ilse was thirty-seven years old."]


@pytest.mark.parametrize(
    "other",
    [
        "Ilse was born in 1941, in the boathouse.",
        "“Ilse was born in the winter of 1944,” said Tobias.",
        "Ilse was nineteen in the summer of 1974.",
        "“Ilse had the pole in 1974, when she was nineteen,” said Tobias.",
        "Ilse had been twelve when the mill burned, thirty-three years ago.",
        "Ilse was slow. She was nineteen in 1975.",
    ],
)
def test_asks_where_an_age_and_a_year_make_no_sum(other: str) -> None:
    (one,) = found_in(CHECK, NOW, MARTA, [*NIGHT, other])
    assert one.words["name"] == "Ilse"
    assert one.evidence[0].quote == NOW[-1]


@pytest.mark.parametrize(
    "other",
    [
        "Ilse was born in 1949, in the boathouse.",
        "Ilse was born in 1950, in the boathouse.",
        "Ilse was nineteen in the summer of 1969.",
        "Marta was nineteen in the summer of 1974.",
        "Ilse was nearly nineteen in the summer of 1974.",
        "Ilse had been seven when the mill burned, thirty years ago.",
        "Ilse had been ten when the mill burned, some thirty years ago.",
        "Ilse had the pole from a man who was born in 1941.",
        "Tobias told Ilse that he was born in 1941.",
        "Ilse was one in a hundred in 1974.",
    ],
)
def test_is_silent_where_they_do_or_may(other: str) -> None:
    assert not found_in(CHECK, NOW, MARTA, [*NIGHT, other])


def test_needs_the_year_of_the_story_only_where_a_year_is_told() -> None:
    now = [*ILSE, "Ilse was thirty-seven years old."]
    assert not found_in(CHECK, now, MARTA, [*NIGHT, "Ilse was nineteen in the summer of 1974."])
    told = "Ilse was born in 1941, in the boathouse."
    assert len(found_in(CHECK, [*ILSE, told], MARTA, [*NIGHT, "Ilse was nineteen in the summer of 1974."])) == 1
    ago = "Ilse had been twelve when the mill burned, thirty-three years ago."
    assert len(found_in(CHECK, now, MARTA, [*NIGHT, ago])) == 1


def test_what_is_asked() -> None:
    (one,) = found_in(CHECK, NOW, MARTA, [*NIGHT, "Ilse was born in 1941, in the boathouse."])
    asks = worded(CHECK.id, one, ("the river", "the toll", "the lamp"))
    assert asks == (
        "Ilse is 37 in one passage and born 1941 in another: the two put the birth eight years apart. Which is meant?"
    )


SHEET = "Born at the ferry in June 1941; died 3rd of May, 1987"


@pytest.mark.parametrize(
    ("sheet", "asks"),
    [
        (["ILSE BRANDT", SHEET], True),
        ([f"*Ilse Brandt. {SHEET}*"], True),
        (["Ilse Brandt, 1941–1987. She kept the ferry."], True),
        (["*Ilse Brandt*", "*1941–1987*"], True),
        (["ILSE BRANDT", SHEET.replace("1941", "1949")], False),
        (["Ilse Brandt, 1949–1987. She kept the ferry."], False),
        (["MARTA KELL", SHEET], False),
        (["THE FERRY", SHEET], False),
        (["Ilse Brandt came down again.", SHEET], False),
    ],
)
def test_a_stone_or_a_sheet_tells_the_birth_below_the_name(sheet: list[str], asks: bool) -> None:
    assert bool(found_in(CHECK, NOW, MARTA, [*NIGHT, *sheet])) == asks


def test_scenes_without_a_year_are_of_those_of_the_book_where_most_are_known() -> None:
    """The story time of a scene before the first date has no beginning."""
    before = [*ILSE, "Ilse was thirty-seven years old."]
    dated = [[f"It was the {day} of May, 1987. The river was low.", *MARTA] for day in ("3rd", "5th", "7th")]
    told = [*NIGHT, "Ilse was born in 1941, in the boathouse."]
    assert len(found_in(CHECK, before, *dated, told)) == 1
    assert not found_in(CHECK, before, *dated, ["It was the 5th of May, 1990."], told)
    assert not found_in(CHECK, before, dated[0], MARTA, told)
