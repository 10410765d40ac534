"""Names that are verbs, months, days or adjectives besides, as reading takes them with the real language pipeline."""

import pytest

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.names_besides import is_meant, names_besides
from tests.questions.asked import read


def facts(*paragraphs: str) -> SceneFacts:
    return read([paragraphs]).facts[0]


def names(*paragraphs: str) -> list[str]:
    return [one.form for one in facts(*paragraphs).mentions if one.kind == "name"]


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("“No,” said Will, and Tobias laughed.", {"will"}),
        ("“No,” June said.", {"june"}),
        ("April looked at the boat.", {"april"}),
        ("Then May slowly nodded.", {"may"}),
        ("‘You,’ whispered Sunday.", {"sunday"}),
        ("She said Sunday was better.", set()),
        ("“It can wait,” she said. “June is early.”", set()),
        ("Will you come? May I ask?", set()),
        ("August came, and the river fell. June went by. Monday saw them off, and Friday opened wet.", set()),
        ("“It is late,” said June was what he meant.", set()),
    ],
)
def test_somebody_bears_such_a_name_who_speaks_or_acts(text: str, found: set[str]) -> None:
    assert names_besides([text]) == found


@pytest.mark.parametrize(
    ("word", "before", "after", "first", "meant"),
    [
        ("june", "at", ".", False, True),
        ("june", "in", ".", False, False),
        ("june", "3", "1922", False, False),
        ("june", "of", "1922", False, False),
        ("june", "second of", ".", False, False),
        ("june", "afraid of", ".", False, True),
        ("sunday", "last", ".", False, False),
        ("sunday", "", "morning", True, False),
        ("will", "", "had", True, True),
        ("will", "", "you", True, False),
        ("may", "", "i", True, False),
        ("may", "with", ".", False, True),
        ("christian", "and", "left", False, True),
    ],
)
def test_it_is_meant_where_no_time_and_no_verb_stands(
    word: str, before: str, after: str, *, first: bool, meant: bool
) -> None:
    assert is_meant(word, before.split(), after, first=first) is meant


@pytest.mark.slow
@pytest.mark.parametrize("name", ["Will", "June", "April", "May", "August", "Sunday", "Christian"])
def test_who_is_called_so_is_somebody_throughout_the_scene(name: str) -> None:
    found = facts(
        f"{name} came down to the ferry. The rope was wet.",
        f"“You’re early,” said {name}.",
        f"Tobias looked at {name}, and {name} laughed.",
        f"It was {name}’s hat.",
        "Will you come in May? In June it rained, and on Sunday. It was 3 April, and the second of August.",
    )
    mine = [one for one in found.mentions if one.kind == "name" and one.form == name.lower()]
    assert len(mine) == 5
    assert {one.entity for one in mine} <= {"", "person"}
    assert mine[0].subject


@pytest.mark.slow
def test_days_and_months_of_a_scene_without_such_people_are_nobody() -> None:
    assert names(
        "On Sunday Tobias came. In June it rained, and May was cold.",
        "Will you come? May I ask? Sunday passed. August had been dry.",
    ) == ["tobias"]


@pytest.mark.slow
@pytest.mark.parametrize(
    "name", ["Mr. Young", "Mrs. Church", "Miss French", "Dr. House", "Captain Street", "Mr. Will", "Miss March"]
)
def test_behind_a_title_such_a_word_is_a_surname(name: str) -> None:
    form = name.lower().replace(".", "")
    assert names(f"Then {name} came down.", f"“Late,” said {name}.") == [form, form]


@pytest.mark.slow
def test_behind_a_title_that_calls_it_is_none() -> None:
    assert "sir will" not in names("“Sir Will you come?” said Tobias.")
    assert "miss nothing" not in names("They miss nothing. Tobias would miss August.")


@pytest.mark.slow
@pytest.mark.parametrize("name", ["Ada Young", "Ada King", "Tom Bishop", "Maud Dean", "Ben Church", "Ruth March"])
def test_behind_a_given_name_it_is_a_surname(name: str) -> None:
    assert names(f"{name} came down to the ferry.", f"“Late,” said {name}.") == [name.lower(), name.lower()]


@pytest.mark.slow
def test_a_surname_alone_is_somebody_and_a_people_or_a_building_is_nobody() -> None:
    found = names(
        "“Late,” said French. Young looked at French, and French laughed.",
        "He had French wine and a young dog. The French laughed at the Church, and Young wine was sold.",
    )
    assert found.count("french") == 3
    assert found.count("young") == 1
    assert not names("The Church looked at him. The French laughed, and English ladies nodded.")
