"""A name that is another one for a page. The text is invented; so are the names."""

import pytest

from afterdraft.questions.each.name_drift import CHECK
from tests.questions.asked import book, found, quotes

REST = ["It rained on the quay all day, and nobody came. The boats lay side by side.", "The bell went at four."]


def told(usual: str, other: str, between: int = 1) -> list[list[str]]:
    return [[usual, *REST], [usual, *REST], *[REST] * between, [*REST, other]]


@pytest.mark.parametrize(
    ("usual", "other"),
    [
        ("“No,” said Mr Sallow. “No.”", "“We run for it,” said Mr Sawyer, and counted the men."),
        ("“What now, Mr Sallow?” he asked.", "“What do you say, Mr Sawyer?”"),
        ("Dr. Hollis put the lamp down.", "Dr. Holt put the lamp down."),
        ("She had asked Mrs Pemberton for the key.", "Mrs Pendleton had the key."),
        ("Inspector Hale read it twice.", "Inspector Hayes read it twice."),
        ("Father Doyle shut the book.", "Father Dolan shut the book."),
        ("Sergeant Cobb took his hat off.", "Sergeant Cole took his hat off."),
        ("Miss Garrick rang the bell.", "Miss Barrick rang the bell."),
        ("Aunt Maude sat by the fire.", "Aunt Mabel sat by the fire."),
        ("Nurse Prior came in with the tray.", "Nurse Price came in with the tray."),
        ("Deputy Ruiz had the map.", "Deputy Rubio had the map."),
        ("Captain Reeve said nothing.", "“Aye, Captain Reese,” they said."),
        ("Constable Webb looked at Susan Marsh.", "Susan Marks came in with the tray."),
        ("Tamsin laughed. “No,” said Tamsin.", "“No,” said Tabitha. She sat down."),
        ("Perrin took the rope.", "Perrott took the rope."),
        ("Mr Stallow had the wheel.", "“Aye,” said Mr Stride, and had the wheel."),
        ("The dentist, Dr. Alder, washed his hands.", "Dr. Quill, the dentist, washed his hands."),
        ("Mr Sallow, the mate, was at the rail.", "Harker, the mate, was at the rail."),
        ("The barman Tim Ashe dried a glass.", "The barman Joe Crewe dried a glass."),
        ("He gave it to her agent, Lena Voss.", "His agent, Greta Horn, rang at nine."),
        ("The cook, Marrable, banged a lid.", "Mrs Trimble the cook banged a lid."),
    ],
)
def test_asks_where_a_name_is_another_one_for_a_while(usual: str, other: str) -> None:
    (one,) = found(CHECK, *told(usual, other))
    assert any(other.find(quote) >= 0 for quote in quotes([one])[0])
    assert one.evidence[0].scene == 1


@pytest.mark.parametrize(
    "other",
    [
        "“Sit down, Mr Lamb,” he said.",  # nothing like it
        "A Mr Sawyer came about the boats.",
        "There was a man named Mr Sawyer at the gate.",
        "Mr Sawyer, the new vicar, came about the boats.",
        "Mr Sawyer of the harbour board was at the gate.",
        "Mr Sawyer, who kept the inn, was at the gate.",
        "Mr Sallow and Mr Sawyer were at the gate.",
        "Captain Sawyer was at the gate.",
        "His brother, Mr Sawyer, was at the gate.",
        "Mr Sawyer’s Patent Lamp stood at the gate.",
        "Old Mr Sawyer was at the gate.",
        "“Sir,” it ended, “Mr Sawyer, *Harbour Master*.”",
        "The late Mr Sawyer had built the gate.",
        "Mr Sawyer was at the gate. Mr Sawyer had gone in; Mr Sawyer had the cart. Mr Sawyer sat down. Mr Sawyer rose.",
    ],
)
def test_is_silent_about_somebody_else(other: str) -> None:
    usual = "“No,” said Mr Sallow."
    assert not found(CHECK, *told(usual, other))


def test_is_silent_about_a_thing_that_begins_a_sentence_with_a_capital() -> None:
    assert found(CHECK, *told("Connie took the rope.", "Corrin sat down on the Friday."))
    assert not found(CHECK, *told("Connie took the rope.", "Completion was on the Friday."))
    assert not found(CHECK, *told("Connie took the rope.", "Contentment came on the Friday."))


def test_is_silent_where_both_are_in_one_place() -> None:
    both = ["“No,” said Mr Sallow.", "“Yes,” said Mr Sawyer.", *REST]
    assert not found(CHECK, *told("“No,” said Mr Sallow.", "It rained."), both)


def test_only_names_that_look_alike_are_asked_about_far_apart() -> None:
    assert found(CHECK, *told("“No,” said Mr Sallow.", "“No,” said Mr Sawyer.", between=12))
    assert not found(CHECK, *told("“No,” said Mr Sallow.", "“No,” said Mr Stride.", between=12))
    assert not found(CHECK, *told("“No,” said Sallow.", "“No,” said Sawyer.", between=12))


def test_asks_where_one_has_a_title_and_the_other_none() -> None:
    assert found(CHECK, *told("“No,” said Mr Sallow.", "“No,” said Sawyer."))
    assert found(CHECK, *told("“No,” Sallow said. Sallow sat.", "“No,” said Mr Sawyer."))
    assert found(CHECK, *told("'No,' Sallow said. Sallow sat.", "'No,' said Mr Sawyer."))
    assert not found(CHECK, *told("The Saltings was a low place.", "“No,” said Mr Sallow."))
    assert not found(CHECK, *told("“No,” said Mr Sallow.", "Sawing was heard in the yard."))


def test_asks_of_names_that_hardly_stand_where_a_rare_word_is_beside_both() -> None:
    pages = told("She sent him to Dr. Amory with the tooth.", "She told Dr. Ames it was the tooth.", between=12)
    (one,) = found(CHECK, *pages)
    assert one.strength > 0.7


@pytest.mark.parametrize(
    ("usual", "other"),
    [
        ("It was in the days of our Lord Charles the Second.", "Lord Churchley sat down."),  # a king
        ("They rowed to Mr Sallow’s Hole.", "Mr Sawyer sat down."),  # a place
        ("Miss Marchant sat by young Maddock.", "The Miss Maddocks sat by the fire."),  # more than one
    ],
)
def test_is_silent_where_the_usual_name_is_nobodys_or_the_other_is_several(usual: str, other: str) -> None:
    assert not found(CHECK, *told(usual, other))


def test_is_silent_where_the_title_comes_later() -> None:
    before = [["Elinor sat by the fire.", *REST], ["Elinor rang the bell.", *REST]]
    assert not found(CHECK, *before, [*REST, "Miss Elodie had the key."], ["Miss Elinor read it.", *REST])


def test_is_silent_where_two_may_be_meant() -> None:
    usual = "“No,” said Mr Sallow. Mr Savage was silent."
    assert not found(CHECK, *told(usual, "“No,” said Mr Sawyer."))


def test_is_silent_about_a_married_name() -> None:
    assert not found(CHECK, *told("Susan Marsh sat down, and Mrs Marsh rose.", "Susan Marks sat down."))


def test_is_silent_about_one_person_by_two_parts_of_a_name() -> None:
    assert not found(CHECK, *told("Tim Ashe sat down. Ashe, the barman, rose.", "The barman Tim came in."))


def test_the_question_names_both() -> None:
    from afterdraft.questions.asking import ask

    (one,) = ask(book(told("“No,” said Mr Sallow.", "“No,” said Mr Sawyer.")), checks=[CHECK])
    assert one.asks == "“Mr Sawyer” stands in scene 4 and nowhere else. Is Mr Sallow meant?"


def test_is_silent_about_somebody_who_is_named_on_every_page() -> None:
    often = ["Mr Sallow came in, and Mr Sallow sat down. Mr Sallow had nothing to say to Mr Sallow’s wife."] * 11
    assert not found(CHECK, often, REST, ["Mr Stride had nothing to say."])
    assert found(CHECK, often, REST, ["Mr Sawyer had nothing to say."])
    assert not found(CHECK, often * 4, REST, ["Mr Sawyer had nothing to say."])


@pytest.mark.parametrize("other", ["Sprat Street", "Sprat Row", "Sprat Road"])
def test_asks_where_a_street_is_another_kind_of_street_once(other: str) -> None:
    (one,) = found(CHECK, ["She lived in Sprat Lane.", *REST, "Sprat Lane was dark."], REST, [f"They met in {other}."])
    assert one.words == {"usual": "Sprat Lane", "other": other}


@pytest.mark.parametrize(
    "other",
    [
        "They met in Herring Street.",
        "They met in Upper Sprat Street.",
        "The Sprat Street Mission was shut.",
        "A sprat.",
    ],
)
def test_is_silent_about_other_streets(other: str) -> None:
    assert not found(CHECK, ["She lived in Sprat Lane.", *REST, "Sprat Lane was dark."], REST, [other])
    lanes = ["They went up Church Lane.", *REST, "Church Lane was dark."]
    assert not found(CHECK, lanes, REST, ["They met in Church Street."])
    assert not found(CHECK, ["Sprat Lane is no more. Now it is Sprat Street.", *REST, "In Sprat Lane it was dark."])


@pytest.mark.parametrize("other", ["Nadia Crewe", "Nadia Pryor"])
def test_asks_where_somebody_called_by_the_given_name_has_another_surname(other: str) -> None:
    usual = ["Nadia Vane came in. Nadia had the map.", *REST]
    (one,) = found(CHECK, usual, usual, REST, [f"{other} came in.", "Nadia had the map."])
    assert one.words == {"usual": "Nadia Vane", "other": other}


@pytest.mark.parametrize(
    "other",
    [
        ["Another Nadia, Nadia Crewe, came in.", "Nadia had the map."],
        ["A Nadia Crewe came in.", "Nadia had the map."],
        ["Nadia Crewe, the new vet, came in.", "Nadia had the map."],
        ["Her cousin Nadia Crewe came in.", "Nadia had the map."],
        ["Nadia Crewe came in.", "Nobody had the map."],
        ["The Nadia Vanes of this world came in.", "Nadia had the map."],
        ["Mrs Crewe came in. Nadia Crewe had the map.", "Nadia sat down."],
    ],
)
def test_is_silent_about_a_namesake_and_a_married_name(other: list[str]) -> None:
    usual = ["Nadia Vane came in. Nadia had the map.", *REST]
    assert not found(CHECK, usual, usual, REST, other)


@pytest.mark.parametrize("other", ["Young Dr. Holt put the lamp down.", "“Well?” Then Mr. Holt put the lamp down."])
def test_asks_of_a_title_behind_another_word(other: str) -> None:
    title = "Dr." if "Dr." in other else "Mr."
    (one,) = found(CHECK, *told(f"{title} Hollis put the lamp down.", other))
    assert one.words["other"] == f"{title} Holt"


@pytest.mark.parametrize(
    ("usual", "other"),
    [
        ("Dr. Merridale put the lamp down.", "Young Dr. Merriman, who had been up two nights, fell asleep."),
        ("Dr. Merridale put the lamp down.", "Dr. Merriman and Susan put the lamp down."),
        ("Dr. Ashendale met Mr Ashcombe.", "The lamp was put down by Dr. Ashendell."),
    ],
)
def test_what_is_told_of_one_who_is_nearly_the_usual_one_is_not_heard(usual: str, other: str) -> None:
    assert found(CHECK, *told(usual, other, between=12))


def test_one_who_is_nearly_the_usual_one_may_have_the_title_first() -> None:
    pages = told("Giles Ashendale put the lamp down.", "It was put down by Mr Ashendell.")
    assert found(CHECK, *pages, [*REST, "Mr Ashendale had a lamp."])
    assert not found(CHECK, *told("Giles Ashendale sat.", "Mr Astbury sat down."), [*REST, "Mr Ashendale had a lamp."])


FULL = ["Nadia Penrose came about the roof.", *REST]


@pytest.mark.parametrize("other", ["Nadia Pascoe", "Nadia Renrose"])
def test_asks_where_somebody_named_in_full_alone_has_another_surname_like_it(other: str) -> None:
    (one,) = found(CHECK, FULL, REST, [*REST, f"{other} came again. “It’s the roof,” said Nadia."])
    assert one.words == {"usual": "Nadia Penrose", "other": other}


@pytest.mark.parametrize(
    "other",
    [
        "Nadia Crewe came about the roof.",  # unlike
        "Her cousin Nadia Pascoe came about the roof.",
        "Nadia Pascoe, the new vet, came about the roof.",
        "Nadia Pascoe came. She had been a Penrose.",
        "Nadia Pascoe came, and Mrs Pascoe.",
        "The Nadia Pascoe Prize was given.",
    ],
)
def test_is_silent_about_another_of_the_given_name(other: str) -> None:
    assert not found(CHECK, FULL, REST, [*REST, "“No,” said Nadia.", other])
    assert not found(CHECK, [*REST, "Nadia Pascoe was a child then.", "“No,” said Nadia."], REST, FULL, FULL)


def test_is_silent_about_somebody_of_whom_another_has_the_look() -> None:
    like = "A tall man stood there, with a look of Nadia Pascoe. “It’s the roof,” said Nadia."
    assert not found(CHECK, FULL, REST, [*REST, like])


@pytest.mark.parametrize(("before", "asks"), [("the ", False), ("", True)])
def test_is_silent_about_what_is_named_after_a_place(before: str, asks: bool) -> None:
    """'The Vane Rifles' are nobody."""
    usual = [f"There sat {before}Vane Rifles. There came {before}Vane Rifles. Vane had the map. Rifles took it.", *REST]
    other = [f"It was said by {before}Vane Courier. Vane had the map. Courier took it."]
    assert bool(found(CHECK, usual, usual, REST, other)) == asks
