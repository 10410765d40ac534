from collections.abc import Iterable

import pytest

from afterdraft.whole.cast import Cast, Person, find_cast
from tests.reading.hand import scenes


def cast(*texts: Iterable[str]) -> Cast:
    return find_cast(scenes(texts))


def person(found: Cast, form: str) -> Person:
    return next(one for one in found.people if one.id == found.by_form[form])


def test_title_given_name_and_surname_are_one_person() -> None:
    found = cast(["Ada Lamb came in.", "“Sit,” said Ada.", "“No,” said Miss Lamb.", "So Ada sat and Miss Lamb smiled."])
    assert set(person(found, "ada").aliases) == {"ada", "ada lamb", "miss lamb"}
    assert person(found, "ada").gender == "f"


def test_sisters_with_one_surname_stay_two() -> None:
    found = cast(
        ["Ada Lamb came in.", "“Sit,” said Ada.", "“No,” said Joan Lamb.", "“Yes,” said Ada.", "“Never,” said Joan."],
        ["Then Ada and Joan came back.", "“Well,” said Joan Lamb.", "“Oh,” said Ada Lamb."],
    )
    assert person(found, "ada") != person(found, "joan")
    assert "joan lamb" in person(found, "joan").aliases


def test_husband_and_wife_stay_two() -> None:
    found = cast(["“Sit,” said Mr. Lamb.", "“No,” said Mrs. Lamb.", "“Why?” said Mr. Lamb.", "“Oh,” said Mrs. Lamb."])
    assert person(found, "mr lamb") != person(found, "mrs lamb")


def test_a_given_name_that_is_a_title_too_is_nobody_else_s() -> None:
    found = cast(["“No,” said Josie Lamb.", "“Yes,” said Dean Lamb. He and Josie sat.", "Then Dean rose."])
    assert {person.aliases[0].split()[0] for person in found.people} == {"josie", "dean"}


def test_a_nickname_is_its_owner() -> None:
    found = cast(["William Pike came in.", "“Sit,” said Bill.", "“No,” said Ada.", "“Yes,” said Bill Pike."])
    assert person(found, "bill") == person(found, "william pike")


@pytest.mark.parametrize(
    ("name", "short"),
    [("Archibald", "Archie"), ("Beatrice", "Trixie"), ("Cecilia", "Cissie"), ("Theodore", "Ted"), ("Jeremy", "Jerry")],
)  # common knowledge of English names
def test_short_forms_that_are_no_beginnings(name: str, short: str) -> None:
    found = cast([f"{name} Pike came in.", f"“Sit,” said {short}.", "“No,” said Wren.", f"“Yes,” said {short} Pike."])
    assert person(found, short.lower()) == person(found, f"{name.lower()} pike")


def test_two_joined_by_and_are_two_though_one_could_be_short_for_the_other() -> None:
    found = cast(
        ["William and Bill came in.", "“Sit,” said William.", "“No,” said Bill.", "Then William and Bill sat."],
        ["“Yes,” said William.", "“Why?” said Bill."],
    )
    assert person(found, "william") != person(found, "bill")


@pytest.mark.parametrize("word", ["Majesty", "Dearest", "Lordship"])
def test_forms_of_address_are_nobody(word: str) -> None:
    found = cast([f"“Sit, your {word},” said Ada. “So, {word}, sit.”", f"“No, {word},” said Ada. “Your {word} sat.”"])
    assert [one.name for one in found.people] == ["ada"]


def test_a_word_that_only_begins_sentences_is_nobody() -> None:
    found = cast(["“Sit,” said Ada. Fiasco. Then Ada sat.", "Fiasco was there. Fiasco came in.", "“No,” said Ada."])
    assert "fiasco" not in found.by_form


def test_somebody_known_by_a_role_only_is_a_person() -> None:
    found = cast(["“Sit,” said the miller.", "“No,” said Ada.", "“Why?” asked the miller."])
    assert person(found, "miller").mentions == 2


def test_a_role_beside_a_name_is_that_person() -> None:
    found = cast(
        ["There came Mr. Pike, the vicar.", "“Sit,” said the vicar.", "“No,” said Ada.", "“Why?” asked the vicar."],
        ["“Well,” said Mr. Pike."],
    )
    assert person(found, "vicar") == person(found, "mr pike")


def test_animals_that_speak_are_people() -> None:
    found = cast(["“Who goes?” said the Owl.", "“I,” said the Mouse.", "“Why?” said the Owl.", "“Oh,” said the Mouse."])
    assert {one.name for one in found.people} == {"owl", "mouse"}


def test_the_narrator_is_whom_others_call_where_an_i_answers() -> None:
    told = ["I came in, and I looked at my hat.", "“Sit down, Wren,” said Ada.", "“No,” I said. I was tired of my day."]
    found = cast(told, told)
    assert found.narrator is not None
    assert found.narrator.aliases == ("wren",)


def test_a_narrator_nobody_calls_is_a_person_too() -> None:
    told = ["I came in, and I looked at my hat.", "“Sit down,” said Ada.", "“No,” I said. I was tired of my day."]
    found = cast(told)
    assert found.narrator is not None
    assert found.narrator.aliases == ()


def test_nobody_narrates_where_an_i_only_speaks() -> None:
    found = cast(["“I saw my own hat, and I knew that I was lost; I said so myself,” said Ada."] * 3)
    assert found.narrator is None


def test_a_place_is_no_person() -> None:
    found = cast(["They lived in Marlow.", "“Come to Marlow,” said Ada.", "She was in Marlow by night."])
    assert [one.name for one in found.people] == ["ada"]


def test_the_narrator_s_name_does_not_go_to_whoever_else_is_near() -> None:
    told = [
        "I came in, and I looked at my hat.",
        "“Sit down, Wren,” said Ada.",
        "“No,” I said. I was tired of my day.",
        "“Well, Wren?” said Pike.",
        "“Well,” said Ada.",
    ]
    found = cast(told, told)
    assert found.narrator is not None
    assert found.narrator.aliases == ("wren",)


def test_father_and_son_stay_two() -> None:
    found = cast(["“Sit,” said Sir Thomas Lamb.", "“No,” said Tom Lamb.", "He turned.", "“Why?” said Sir Thomas."])
    assert person(found, "tom lamb") != person(found, "sir thomas lamb")
    assert person(found, "sir thomas") == person(found, "sir thomas lamb")


def test_a_title_that_changes_hands_parts_the_names_not_the_people() -> None:
    found = cast(
        ["Roland Vane came in.", "“Sit,” said Roland Vane.", "“No,” said Lord Vane.", "“Why?” said Roland Vane."],
        ["Then Roland Vane and Lord Vane came back.", "“Well,” said Lord Vane.", "“Oh,” said Roland."],
    )
    assert person(found, "roland") == person(found, "roland vane")
    assert person(found, "lord vane") != person(found, "roland vane")


def test_a_narrator_may_tell_of_himself_by_another_name() -> None:
    told = ["I came in, and I looked at my hat.", "“Sit down, Wren,” said Ada.", "“No,” I said. I was tired of my day."]
    own = [
        "So they saw Rupert Wren. Then Rupert Wren sat, and he smiled. I was Rupert Wren. They left Rupert Wren there."
    ]
    found = cast([*told, *own], [*told, *own])
    assert found.narrator is not None
    assert {"wren", "rupert wren"} <= set(found.narrator.aliases)
