"""What numbers count and measure, and how votes fell."""

import pytest

from afterdraft.questions.amounts import amounts
from afterdraft.questions.tallies import tallies


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("The barn had three hundred and four bales.", [(304, "bale", "had")]),
        ("A wood of ninety-one acres lay behind it.", [(91, "acre", "had")]),
        ("A ninety-one-acre wood lay behind it.", [(91, "acre", "")]),
        ("She owed them £1,460 or nothing.", [(1460, "pound", "")]),
        ("He paid twenty-three hundred dollars.", [(2300, "dollar", "")]),
        ("They rang all nine of the old bells.", [(9, "bell", "all")]),
        ("Nine bells in all hung up there.", [(9, "bell", "all")]),
        ("There are fourteen hives in the orchard.", [(14, "hive", "there")]),
        ("She climbed the hundred and nine stairs.", [(109, "stair", "the")]),
        ("The two long oars were gone.", [(2, "oar", "the")]),
        ("The hives stood in a row. Fourteen of them, and all painted.", [(14, "hive", "there")]),
        ("Height above the sea, four thousand and nineteen.", [(4019, "", "")]),
    ],
)
def test_what_is_counted_and_as_which_part_of_it(text: str, told: list[tuple[int, str, str]]) -> None:
    found = list(amounts(text))
    assert [(one.value, one.noun, one.frame) for one in found] == told
    assert all(one.sure for one in found)


@pytest.mark.parametrize(
    "text",
    [
        "The barn had about three hundred and four bales.",
        "It held three hundred to four hundred bales.",
        "Fourteen or fifteen hives stood there.",
        "If there were fourteen hives, he had not seen them.",
        "Were there fourteen hives there?",
        "Fourteen of the hives were empty.",
        "They wanted fourteen pounds a week.",
        "He was fourteen pounds short.",
        "A few hundred hives stood there.",
        "Another fourteen hives stood there.",
        "There must have been fourteen hives.",
    ],
)
def test_guesses_ranges_parts_and_rates_are_not_sure(text: str) -> None:
    assert not any(one.sure for one in amounts(text) if one.noun)


@pytest.mark.parametrize(
    "text",
    [
        "He waited fourteen minutes.",
        "It was in 1893.",
        "It was half past nine and the others came.",
        "Two million bales went down the river.",
        "He drew four and went out.",
        "Ten per cent bonds were all they had.",
    ],
)
def test_times_years_and_numbers_of_nothing_are_no_amounts(text: str) -> None:
    assert not list(amounts(text))


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Sixty-one for, and nineteen against.", [(61, 19)]),
        ("“Eight for the bridge,” said the clerk. “Eight against.”", [(8, 8)]),
        ("They voted by sixty-one to nineteen to stay.", [(61, 19)]),
        ("The motion was lost by 9 votes to 4.", [(9, 4)]),
        ("“Eight all, and nobody abstained.”", [(8, 8)]),
        ("It was five to three by the clock.", []),
        ("They carried it from nine to eleven.", [(9, 11)]),
        ("He offered ten to one.", []),
    ],
)
def test_how_votes_fell(text: str, told: list[tuple[int, int]]) -> None:
    assert [(one.won, one.lost) for one in tallies(text)] == told


def test_floors_of_air_are_no_count_of_floors() -> None:
    assert [one.sure for one in amounts("Beyond it there were nine floors of air.")] == [False]
    assert [one.sure for one in amounts("There were nine floors of offices.")] == [True]
