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
    (one,) = found(CHECK, ["It was grey."] * 12, ["It was gray."] * 5)
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

    (one,) = ask(seen([["It was grey."] * 12, ["It was gray."] * 5]), checks=[CHECK])
    assert one.asks == "The book has “grey” 12 times, and “gray” five times. Which is meant?"
