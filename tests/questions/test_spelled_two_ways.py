"""One name spelled two ways."""

import pytest

from afterdraft.questions.each.spelled_two_ways import CHECK
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


def test_asks_about_a_name_one_letter_away() -> None:
    (one,) = found_in(CHECK, ILSE, MARTA, [*NIGHT, "She heard Tobyas on the stairs."])
    assert (one.words["usual"], one.words["rare"]) == ("Tobias", "Tobyas")
    assert one.evidence[0].quote == "She heard Tobyas on the stairs."


@pytest.mark.parametrize(
    "last",
    [
        "They spoke of Mathias, who was dead.",
        "He signed himself Tobyas in the book.",
        "“Tobyas” stood in the book.",
        "They called him Tobyas.",
        "He had been christened Tobyas.",
        "The Tobiases had always had the ferry.",
        "Tobias’s boots stood by the door.",
        "“Tobyas them to Ada, then,” she said.",  # a verb, by what stands behind it
    ],
)
def test_is_silent_about_other_names_and_forms(last: str) -> None:
    assert not found_in(CHECK, ILSE, MARTA, [*NIGHT, last])


@pytest.mark.parametrize("said", ["“No,” said Tobyas.", "“No,” said Tobais.", "Tobyas took the lamp and went down."])
def test_asks_though_somebody_speaks_under_the_other_spelling(said: str) -> None:
    (one,) = found_in(CHECK, ILSE, MARTA, [*NIGHT, said])
    assert one.words["usual"] == "Tobias"


@pytest.mark.parametrize(("name", "short"), [("Ilse", "Isle"), ("Kell", "Kall")])
def test_asks_about_a_short_name_that_stands_often(name: str, short: str) -> None:
    often = [f"{name} went down.", f"{name} came up again.", f"“No,” said {name}.", f"{name} sat by the stove."] * 4
    (one,) = found_in(CHECK, ILSE, often, MARTA, [f"Then {short} took the lamp."])
    assert (one.words["usual"], one.words["rare"]) == (name, short)


@pytest.mark.parametrize(
    "last",
    [
        "“Tobyas,” said Marta, “mind the rope.”",  # called by it, not quoting it
        "She heard Tobyas, who had a pronounced limp.",
        "She heard Tobiass on the stairs.",  # no plural of a name in -s
        "It was Tobyas’s Pole that she wanted.",
        "“Ask Tobyas,” said Marta, “about the child that is to be christened.”",
    ],
)
def test_asks_wherever_it_stands(last: str) -> None:
    (one,) = found_in(CHECK, ILSE, MARTA, [*NIGHT, last])
    assert one.words["usual"] == "Tobias"


@pytest.mark.parametrize(
    ("name", "slip"),
    [("Kell", "Kel"), ("Vyse", "Vysi"), ("Thornby", "Thornbi"), ("Westenra", "Westenre"), ("George", "Georga")],
)
def test_asks_about_the_last_letter_of_a_surname(name: str, slip: str) -> None:
    often = [f"Mr. {name} went down.", f"“No,” said Mr. {name}.", f"Mr. {name} sat by the stove."] * 6
    (one,) = found_in(CHECK, ILSE, often, MARTA, [f"Then Mr. {slip} took the lamp."])
    assert (one.words["usual"], one.words["rare"]) == (name, slip)


@pytest.mark.parametrize(("name", "form"), [("George", "Georgy"), ("Maria", "Marie"), ("Louise", "Louisa")])
def test_is_silent_about_forms_of_given_names(name: str, form: str) -> None:
    often = [f"{name} went down.", f"“No,” said {name}.", f"{name} sat by the stove."] * 6
    assert not found_in(CHECK, ILSE, often, MARTA, [f"Then {form} took the lamp."])


def test_asks_where_several_people_bear_the_name() -> None:
    often = ["“No,” said Mrs. Winthrop.", "Mrs. Winthrop went down.", "Aaron Winthrop was slow.", "“Yes,” said Dolly."]
    (one,) = found_in(CHECK, ILSE, often * 4, MARTA, ["It was Dolly Witnhrop’s lamp.", "Dolly Winthrop took it back."])
    assert one.words["rare"] == "Witnhrop"


def test_asks_within_a_double_name() -> None:
    often = ["“No,” said Mr. Peel-Swann.", "Mr. Peel-Swann went down.", "Mr. Peel-Swann sat by the stove."] * 6
    (one,) = found_in(CHECK, ILSE, often, MARTA, ["Then Mr. Pael-Swann took the lamp."])
    assert one.words["usual"] == "Peel"


def test_asks_where_the_slip_is_in_one_of_several_names_of_somebody() -> None:
    often = ["“No,” said Mrs. Gryce.", "Mrs. Gryce went down.", "Percy sat by the stove.", "“Yes,” said Percy."]
    (one,) = found_in(CHECK, ILSE, often * 4, MARTA, ["Then Mrs. Parcy Gryce took the lamp."])
    assert one.words["usual"] == "Percy"


def test_is_silent_where_the_next_paragraph_tells_how_it_is_spelled() -> None:
    told = ["Then Tobyas took the lamp.", "He always signed himself “Tobias”, as his father had."]
    assert not found_in(CHECK, ILSE, MARTA, [*NIGHT, *told])


KELL = ["Mr. Kellow went down.", "“No,” said Mr. Kellow.", "Mr. Kellow sat by the stove."] * 6


@pytest.mark.parametrize(
    "last",
    [
        "Nobody spoke of Bellow.",  # another first letter
        "Nobody spoke of Kelbow.",  # a letter that is not like the other
        "There was a picture by Kelmow on the wall.",
        "“Henry Kelow was a mayor for many years,” he read.",  # a given name that nobody of that name has
    ],
)
def test_is_silent_about_what_neither_hand_nor_ear_takes_for_the_name(last: str) -> None:
    assert not found_in(CHECK, ILSE, KELL, [last])


@pytest.mark.parametrize("slip", ["Kellov", "Kelkow", "Kellaw", "Kelllow", "Kelolw", "Ekllow", "Kelow", "Kellpw"])
def test_asks_about_what_a_hand_or_an_ear_takes_for_the_name(slip: str) -> None:
    (one,) = found_in(CHECK, ILSE, KELL, [f"Nobody spoke of {slip}."])
    assert one.words["rare"] == slip


def test_is_silent_about_several_of_another_name() -> None:
    mars = ["Mars Brandt went down.", "“No,” said Mars.", "Mars sat by the stove."] * 6
    assert not found_in(CHECK, ILSE, mars, ["There were battles on the wall, and three Highland Marys."])


def test_is_silent_about_a_name_cut_short_in_speech() -> None:
    book = [[text.replace("Tobias", "Thirza") for text in scene] for scene in (ILSE, MARTA, NIGHT)]
    assert not found_in(CHECK, *book, ["“You should go, Thirz,” she said."])
    assert found_in(CHECK, *book, ["She heard Thirz on the stairs."])


def test_is_silent_about_a_word_that_begins_a_sentence() -> None:
    hunter = ["Mrs. Hunter went down.", "“No,” said Mrs. Hunter.", "Mrs. Hunter sat by the stove."] * 6
    assert not found_in(CHECK, ILSE, hunter, ["They hunt the fox here.", "Hunted all day, it got away."])


def test_a_name_over_a_chapter_in_capitals_is_one() -> None:
    (one,) = found_in(CHECK, ILSE, ["TOBIAS AT THE FERRY", *MARTA], [*NIGHT, "She heard Tobyas on the stairs."])
    assert one.words["usual"] == "Tobias"


def test_asks_about_a_trade_that_is_somebodys_name() -> None:
    miller = ["Miss Miller went down.", "“No,” said Miss Miller.", "Miss Miller sat by the stove."] * 6
    (one,) = found_in(CHECK, ILSE, miller, ["Then Miss Milller took the lamp."])
    assert one.words["usual"] == "Miller"
    assert not found_in(CHECK, ILSE, ["They went down to the miller.", *miller], ["Then the Milller took the lamp."])


POSY = ["Posy went down.", "“No,” said Posy.", "Posy sat by the stove.", "It was cold, and Posy was cold."] * 5


@pytest.mark.parametrize("said", ["“Good day, Pose?” he said.", "“Pose!” he said.", "“Mind the stair, Pose,” he said."])
def test_is_silent_about_a_pet_form_that_somebody_is_called_by(said: str) -> None:
    assert not found_in(CHECK, ILSE, POSY, MARTA, [said])


@pytest.mark.parametrize("slip", ["Then Pose took the lamp.", "“Pose took it,” he said.", "“Good day, Psoy,” he said."])
def test_asks_where_it_is_no_pet_form(slip: str) -> None:
    (one,) = found_in(CHECK, ILSE, POSY, MARTA, [slip])
    assert one.words["usual"] == "Posy"
