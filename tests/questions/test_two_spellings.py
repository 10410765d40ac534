"""A word that is spelled in two ways."""

import pytest

from afterdraft.questions.each.two_spellings import CHECK
from tests.questions.asked import found, quotes


def book(often: str, seldom: str, times: int = 6) -> list[list[str]]:
    return [
        [f"The {often} stood by the weir, in the race of the mill, for arm and chair." for _ in range(times)],
        ["It rained.", f"One {seldom} was left."],
    ]


@pytest.mark.parametrize(
    ("often", "seldom"),
    [
        ("grey", "gray"),
        ("harbour", "harbor"),
        ("recognised", "recognized"),
        ("travellers", "travelers"),
        ("theatre", "theater"),
        ("armchair", "arm-chair"),
        ("mill-race", "millrace"),
        ("toward", "towards"),
        ("realizing", "realising"),
    ],
)
def test_asks_where_a_word_is_now_and_then_spelled_otherwise(often: str, seldom: str) -> None:
    """Pairs as dictionaries of British and American English have them, from memory."""
    (one,) = found(CHECK, *book(often, seldom))
    assert (one.words["often"], one.words["seldom"], one.numbers["often"]) == (often, seldom, 6)
    assert quotes([one])[0][0] == f"One {seldom} was left."


@pytest.mark.parametrize(
    ("often", "seldom"),
    [
        ("grey", "Gray"),
        ("grey", "grey"),
        ("for", "four"),
        ("hours", "hors"),
        ("recover", "re-cover"),
        ("filled", "filed"),
        ("forward", "forwards"),
        ("rivals", "rivalled"),
        ("weir", "we-ir"),
        ("rigour", "rigor mortis"),
    ],
)
def test_is_silent_about_other_words(often: str, seldom: str) -> None:
    assert not found(CHECK, *book(often, seldom))


def test_forms_of_one_word_and_words_of_one_ending_are_asked_about_together() -> None:
    (one,) = found(CHECK, ["He shewed it. She shewed it.", *["They shew it."] * 5], ["He showed it.", "They show it."])
    assert (one.words["often"], one.words["seldom"]) == ("shewed", "showed, show")
    assert one.numbers["often"] == 7
    (one,) = found(CHECK, ["The harbour had honour and colour."] * 4, ["It rained.", "A parlor, and a favor."])
    assert (one.words["seldom"], one.numbers["often"]) == ("parlor, favor", 12)


def test_is_silent_about_a_handful() -> None:
    assert not found(CHECK, *book("grey", "gray", times=4))


def test_asks_less_sharply_where_both_are_common() -> None:
    (one,) = found(CHECK, ["It was grey."] * 12, [*["It was gray."] * 5, "It was grey."])
    assert one.strength < found(CHECK, ["It was grey."] * 12, ["It was gray."])[0].strength
    assert len(one.evidence) == 4
    assert one.numbers["seldom"] == 5


def test_is_silent_about_speech_and_verse_that_spell_in_their_own_way() -> None:
    often = ["The grey stood by the weir."] * 6
    assert not found(CHECK, often, ["“It was gray,” she said."])
    assert not found(CHECK, often, ["O gray the day,\nO gray the sea"])


def test_asks_of_the_commonest_few_alone() -> None:
    pairs = [("grey", "gray"), ("harbour", "harbor"), ("theatre", "theater"), ("plough", "plow")]
    scenes = [scene for pair in pairs for scene in book(*pair)]
    assert len(found(CHECK, *scenes)) == 3


def test_the_question_says_both_and_judges_neither() -> None:
    from afterdraft.questions.asking import ask
    from tests.questions.asked import book as seen

    (one,) = ask(seen(book("grey", "gray")), checks=[CHECK])
    assert one.asks == "The book has “grey” six times, and “gray” in scene 2. Which is meant?"


def test_the_question_names_the_strays_of_one_ending() -> None:
    from afterdraft.questions.asking import ask
    from tests.questions.asked import book as seen

    (one,) = ask(seen([["The harbour had honour."] * 4, ["A parlor, and a favor."]]), checks=[CHECK])
    assert (
        one.asks
        == "The book has -our (“honour”) eight times, and -or (“parlor” and “favor”) two times. Which is meant?"
    )


def test_the_question_counts_both_where_not_all_are_shown() -> None:
    from afterdraft.questions.asking import ask
    from tests.questions.asked import book as seen

    (one,) = ask(seen([["It was grey."] * 12, [*["It was gray."] * 5, "It was grey."]]), checks=[CHECK])
    assert one.asks == "The book has “grey” 13 times, and “gray” five times. Which is meant?"


def test_shows_the_same_word_in_both_spellings_where_the_teller_has_it() -> None:
    (one,) = found(
        CHECK,
        ["He organised it. She recognised it."] * 3,
        ["They agonized. They agonized. It was civilized.", "They harmonized."],
        ["She recognized it.", "“We organized it,” she said.", "He organised it."],
    )
    assert "She recognized it." in quotes([one])[0]
    assert quotes([one])[0][-1] == "She recognised it."


@pytest.mark.parametrize(
    "opening", ["Civilization was far.", "“No.” Civilization was far.", "So: Civilization was far."]
)
def test_a_capital_at_the_beginning_of_a_sentence_is_no_name(opening: str) -> None:
    (one,) = found(CHECK, ["It was civilisation."] * 6, ["It rained.", opening])
    assert one.words["seldom"] == "civilization"


def test_a_word_that_is_also_a_name_counts_where_it_is_small() -> None:
    assert not found(CHECK, ["It was grey."] * 6, ["Gray sat down.", "Then came Gray."])


def test_says_where_the_book_turns_from_one_spelling_to_the_other() -> None:
    from afterdraft.questions.asking import ask
    from tests.questions.asked import book as seen

    (one,) = ask(seen([["He shewed it."], ["She shewed it. They shew it."], ["He showed it."] * 3]), checks=[CHECK])
    assert one.asks == (
        "The book has “shew” (and other forms of it) up to scene 2, and “showed” from scene 3 on. Which is meant?"
    )
    (stray,) = ask(seen([["It was grey."] * 6, ["It was gray."], ["It was grey."]]), checks=[CHECK])
    assert stray.strength < one.strength
    mixed = [["He organised it."] * 3, ["He recognized it."] * 3, ["He apologised."]]
    assert "up to" not in ask(seen(mixed), checks=[CHECK])[0].asks


def test_two_words_are_told_of_where_a_hyphen_and_one_word_stand() -> None:
    from afterdraft.questions.asking import ask
    from tests.questions.asked import book as seen

    dunes = ["The sand and the hills. We came to the sand-hills."] * 6
    (one,) = ask(seen([dunes, ["It rained.", "Beyond the sand hills, the sandhills began."]]), checks=[CHECK])
    assert one.asks == (
        "The book has “sand-hills” six times, and “sandhills” in scene 2, and “sand hills” once besides. "
        "Which is meant?"
    )


def test_a_doubled_l_is_one_question_with_all_its_words() -> None:
    (one,) = found(CHECK, ["They travelled and quarrelled."] * 4, ["It rained.", "A woolen sock.", "He liked dueling."])
    assert one.words["seldom"] == "woolen, dueling"


@pytest.mark.parametrize(
    "aside",
    [
        "Mo its me. Im ok. Dont look for me, I cant talk and they wont let me out. It was gray.",
        "> It was gray. The letter went on.",
        "*Dear Ilse, it was gray all day.*",
        "_It was gray when they found him_",
    ],
)
def test_is_silent_about_what_is_dashed_off_or_set_in(aside: str) -> None:
    assert not found(CHECK, ["It was grey."] * 6, [aside])


@pytest.mark.parametrize("sung", ["I was wait-ing for the ing of it.", "O wait-ing by the riv-er for a flow-er."])
def test_is_silent_about_words_drawn_out_in_song(sung: str) -> None:
    assert not found(CHECK, ["They were waiting by the river for a flower. Wait there."] * 6, [sung])
