"""The person changes within a scene."""

import pytest

from afterdraft.questions.each.person import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
OF_OTHERS = "She had her coat on. He gave her his arm, and they went down to the rope he had tied for them."
OTHERS = [ILSE + MARTA] * 12  # a book that is told of others throughout


def test_asks_about_an_i_in_the_telling() -> None:
    told = "She crossed the yard. I took the lamp and I shut the door."
    one = found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, told])
    assert quotes(one) == [["I took the lamp and I shut the door."]]


@pytest.mark.parametrize(
    "told",
    [
        "“I took the lamp,” she said, “and I shut the door.”",
        "*I took the lamp,* she told herself.",
        "I must not look, she thought.",
    ],
)
def test_is_silent_about_speech_and_thoughts(told: str) -> None:
    assert not found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, told])


def test_is_silent_where_a_teller_says_i_now_and_then() -> None:
    scene = [*ILSE, *MARTA, *NIGHT, "I do not know what she did then."]
    assert not found_in(CHECK, *[scene] * 6)


TELLER = [
    "I took the lamp down to the ferry, and I lit my pipe.",
    "I heard the water under the boards. I had my coat on, and I was cold for all that.",
    "I counted the boats. I had nothing else to do, and my hands were stiff.",
    "I thought of my supper. It rained, and I let it rain on me.",
]
STRAY = "He heard the bell, and he put his pipe away. He was late for his supper, and he ran."


def test_asks_about_a_he_whom_nobody_near_can_be() -> None:
    one = found_in(CHECK, [*TELLER, *TELLER, STRAY, *TELLER])
    assert quotes(one) == [[STRAY]]
    assert one[0].words["said"] == "he"


def test_is_silent_where_somebody_is_near() -> None:
    assert not found_in(CHECK, [*TELLER, *TELLER, "Tobias came down to the landing.", STRAY, *TELLER])


def test_is_silent_where_the_i_wonders() -> None:
    asks = "Did he sleep in the boathouse? Had he the key to it, and was it he that took the oars?"
    assert not found_in(CHECK, [*TELLER, *TELLER, asks, *TELLER])


def test_a_name_with_me_in_it_and_a_letter_are_no_i() -> None:
    cup = "She took up the god-forgive-me, and he gave her the spoon, and she drank what he had left her."
    letter = "I had your letter, and I took it to the ferry for you."
    old = "I found thy letter, and carried thy false promise to the ferry; I wept, and I went home."
    assert not found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, cup], [*NIGHT, *MARTA, letter], [*NIGHT, *MARTA, old])


def test_asks_about_what_an_i_does_beside_what_it_thinks() -> None:
    told = "I rose and crossed the boathouse. I thought of the key, and said nothing."
    assert quotes(found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, told])) == [
        ["I rose and crossed the boathouse."]
    ]


@pytest.mark.parametrize(
    "told",
    ["Chance, I fancy, was the god of all ferrymen on that river.", "Marta No, I took the key and I shut the box."],
)
def test_is_silent_about_a_teller_who_fancies_and_about_a_play(told: str) -> None:
    assert not found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, told])


def test_a_man_who_is_only_spoken_of_near_by_may_be_meant() -> None:
    before = "I had left the rope for Tobias, and my hands were cold."
    assert not found_in(CHECK, [*TELLER, *TELLER, before, STRAY, *TELLER])
    mixed = f"I had left the rope on its hook, and my hands were cold. {STRAY}"
    assert not found_in(CHECK, [*TELLER, "I had left the rope for Tobias, and I sat down.", mixed, *TELLER])


def test_asks_about_sentences_among_those_of_the_i() -> None:
    mixed = f"I had left the rope on its hook, and my hands were cold. {STRAY}"
    assert quotes(found_in(CHECK, [*TELLER, *TELLER, mixed, *TELLER])) == [[STRAY]]


def test_in_a_book_that_an_i_tells_an_i_among_others_is_the_teller() -> None:
    told = "I rose and crossed the boathouse. I took the key, and I went."
    others = [*NIGHT, *MARTA, OF_OTHERS, told]
    assert found_in(CHECK, *OTHERS, others)
    assert not found_in(CHECK, *OTHERS, others, *[[*TELLER, *TELLER]] * (2 * len(OTHERS)))


def test_a_teller_who_does_nothing_is_let_be() -> None:
    told = "I only use the word for a monster in a castle, and nobody can tell me what it did with them."
    assert not found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, told])


@pytest.mark.parametrize(
    "told",
    [
        "The sixth had lost his cap; he was pale, and his coat was wet, and he felt the cold.",
        "He feels more than he says, and his eyes see what he wants.",
        "The ferryman put his pipe away, for he felt cold, and he ran.",
    ],
)
def test_is_silent_about_somebody_without_a_name_and_what_is_always_so(told: str) -> None:
    assert not found_in(CHECK, [*TELLER, *TELLER, told, *TELLER])


def test_is_silent_about_whom_a_scene_begins_with() -> None:
    assert not found_in(CHECK, [STRAY, *TELLER, *TELLER])
