"""A surname with another given name: the text is invented, the given names are those that many know."""

import pytest

from afterdraft.questions.each.given_names import CHECK
from tests.questions.asked import found, found_in, quotes
from tests.questions.people import ILSE, NIGHT

pytestmark = pytest.mark.slow
TOLL = [
    "Martha Kell kept the toll in a cigar box. She counted it at noon, when nobody came.",
    "“Four and six,” said Martha. “That’s the week.”",
    "Martha Kell shut the box. Martha heard him whistle for the dog.",
    "“Last year there was no bridge,” said Martha Kell.",
]


def test_asks_where_a_surname_has_another_given_name_once() -> None:
    (one,) = found_in(CHECK, ILSE, TOLL, [*NIGHT, "Deborah Kell came in with the box."])
    assert quotes([one])[0] == [
        "Deborah Kell came in with the box.",
        "“Last year there was no bridge,” said Martha Kell.",
    ]
    assert one.words == {"surname": "Kell", "usual": "Martha", "rare": "Deborah"}


def test_who_is_named_in_full_with_a_title_alone_is_met_too() -> None:
    titled = [text.replace("Martha Kell", "Miss Martha Kell") for text in TOLL]
    assert found_in(CHECK, ILSE, titled, [*NIGHT, "Miss Deborah Kell came in with the box."])


@pytest.mark.parametrize(
    "other",
    [
        "Patty Kell came in with the box.",
        "Edward Kell came in with the box.",
        "Her sister, Deborah Kell, came in with the box.",
        "Deborah Kell and Martha came in.",
        "Deborah Lamb came in with the box.",
        "Deborah Kell came in. “Good evening,” said Deborah. Deborah sat down.",
    ],
)
def test_is_silent_about_short_forms_families_and_other_people(other: str) -> None:
    assert not found_in(CHECK, ILSE, TOLL, [*NIGHT, other])


DOLPHIN = [
    "Terry Lomas was a loose man in a waistcoat. He dried a glass.",
    "“Half past nine,” said Lomas. “It was the darts.”",
]
MOP = ["The door was on the latch. {} Lomas was in there with a mop.", "“Oh, heck,” said Lomas."]


@pytest.mark.parametrize("other", ["Barry", "Jerry", "Kelvin", "Desmond", "Lenny"])
def test_asks_where_somebody_called_by_the_surname_has_another_given_name(other: str) -> None:
    (one,) = found(CHECK, DOLPHIN, ["It rained."], [text.format(other) for text in MOP])
    assert quotes([one])[0][0] == f"{other} Lomas was in there with a mop."
    assert one.words == {"surname": "Lomas", "usual": "Terry", "rare": other}


@pytest.mark.parametrize(
    "other",
    [
        ["His brother, Barry Lomas, was in there with a mop.", "“Oh, heck,” said Lomas."],
        ["Old Barry Lomas was in there with a mop.", "“Oh, heck,” said Lomas."],
        ["Barry Lomas was in there with a mop.", "“Oh, heck,” said Barry."],
        ["Margaret Lomas was in there with a mop.", "Old Lomas looked at Terry. “Oh, heck,” said Lomas."],
        ["Barry Lomas and Terry were there with a mop.", "“Oh, heck,” said Lomas."],
        ["Captain Lomas was in there with a mop.", "“Oh, heck,” said Lomas."],
        ["Captains Lomas and Ashe were in there.", "“Oh, heck,” said Lomas."],
        ["Barry Lomas had a mop.", "“Oh, heck,” said Lomas.", "Barry sat down. Barry sighed."],
    ],
)
def test_is_silent_about_somebody_else_of_the_surname(other: list[str]) -> None:
    known = ["Terry Lomas dried a glass. Terence was what his mother called him.", *DOLPHIN]
    assert not found(CHECK, known, ["It rained."], other)


def test_is_silent_about_a_place_and_what_comes_from_it() -> None:
    place = ["They brought it to Sallow Lomas by boat.", "There is nothing in Lomas but lace."]
    assert not found(CHECK, place, ["It rained."], ["Real Lomas, said the ticket.", "It was a long way to Lomas."])


@pytest.mark.parametrize(
    ("short", "long"), [("Peg", "Margaret"), ("Hank", "Henry"), ("Elsie", "Elizabeth"), ("Bea", "Beatrice")]
)
def test_is_silent_about_pet_forms(short: str, long: str) -> None:
    first = [
        f"{short} Lomas dried a glass. {short} sang.",
        f"“Now,” said {short}. {short} sat.",
        f"{short} Lomas sang.",
    ]
    assert not found(CHECK, [*first, *first], ["It rained."], [f"{long} Lomas was in there with a mop."])


@pytest.mark.parametrize("before", ["Then Mr", "But", "Miss Ilse and Mr"])
def test_what_stands_before_a_full_name_hides_it_not(before: str) -> None:
    mop = [f"{before} Barry Lomas was in there with a mop.", "“Oh, heck,” said Lomas."]
    assert found(CHECK, DOLPHIN, ["It rained, but then it was dry."], mop)


FARM = ["Graeme Oddie had the next farm, and two ploughs.", "“Not tonight,” said Graeme."]
SUPPER = ["There were ten at the table.", "{} Oddie told them about the plough."]


def supper(other: str) -> list[str]:
    return [text.format(other) for text in SUPPER]


@pytest.mark.parametrize("other", ["Gordon", "Gareth", "Mr. Gordon", "Jaeme", "“No, no.” And Gordon"])
def test_asks_where_two_given_names_of_one_surname_begin_alike(other: str) -> None:
    (one,) = found(CHECK, FARM, ["It rained."], supper(other))
    assert (one.words["usual"], one.words["surname"]) == ("Graeme", "Oddie")
    assert one.evidence[0].scene == 2


def test_asks_of_two_that_stand_once_whatever_is_told_of_the_second() -> None:
    (one,) = found(CHECK, FARM[:1], ["It rained."], ["Gordon Oddie, who had been brought to eat, sat by the wall."])
    assert (one.words["usual"], one.words["rare"]) == ("Graeme", "Gordon")


@pytest.mark.parametrize(
    "other",
    ["Edwin", "Graeson", "Old Gordon", "A Gordon", "Gordon and Edwin", "His brother, Gordon", "Gladys and Graeme"],
)
def test_is_silent_about_unlike_names_short_forms_and_kin(other: str) -> None:
    assert not found(CHECK, FARM, ["It rained."], supper(other))


def test_is_silent_where_both_are_in_one_scene_or_the_surname_is_a_word() -> None:
    assert not found(CHECK, FARM, ["It rained."], [*FARM, *supper("Gordon")])
    assert not found(CHECK, FARM, ["It was oddie."], supper("Gordon"))
    assert not found(CHECK, [*FARM, "Gareth Oddie had sheep."], ["It rained."], supper("Gordon"))


@pytest.mark.parametrize("other", ["Gillian", "Gaynor", "Gwen"])
def test_is_silent_about_husband_and_wife(other: str) -> None:
    assert not found(CHECK, FARM, ["It rained."], supper(other))


@pytest.mark.parametrize(("one", "other", "asked"), [("Royal", "Radio", False), ("Maewyn", "Mordred", True)])
def test_names_that_nobody_knows_have_to_do_something(one: str, other: str, asked: bool) -> None:
    does = "{} Oddie came about the plough." if asked else "She had it from {} Oddie that there was a plough."
    assert bool(found(CHECK, [does.format(one)], ["It rained."], [does.format(other)])) is asked
