"""The person changes within a scene."""

from dataclasses import replace

import pytest

from afterdraft.questions.each.person import CHECK
from tests.questions.asked import found_in, quotes, read
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


NELL = [
    "Nell",
    "I took the lamp down to the ferry, and I lit the stove. “You’re late, Nell,” said Tobias.",
    "I heard the water under the boards. I had my coat on, and I was cold for all that. “Sit down, Nell,” said Tobias.",
    "I counted the boats. I had nothing else to do, and my hands were stiff. “Nell?” said Marta.",
    "“It rains,” said Tess. Tess shut the window, and she gave me my cup.",
]
TESS = [line.replace("Tess", "Nobody").replace("Nell", "Tess").replace("Nobody", "Nell") for line in NELL]
BACK = ["Tobias put the kettle on. “Nell and Tess,” said Marta. “Both of you.”", "I looked at him, and I took my cup."]


def _headed(*scenes: list[str]) -> list[list[str]]:
    """What is quoted, where the first line of each scene is the name over it."""
    seen = read([scene[1:] for scene in scenes])
    return quotes(list(CHECK.find(replace(seen, heads=tuple((scene[0],) for scene in scenes)))))


@pytest.mark.parametrize(
    "told",
    [
        "Nell screwed the cap back on and didn’t look at him.",
        "Then Nell got up and shut the door.",
        "“It’s the rope,” said Nell.",
        "Tobias looked at Nell and shook his head.",
        "He handed Nell the cup.",
        "The cup was hot in Nell’s hands.",
    ],
)
def test_asks_where_the_i_of_a_chapter_is_told_of_by_name(told: str) -> None:
    assert _headed([*NELL, *BACK, told, BACK[1]], TESS, [*NELL, *BACK], TESS) == [[told]]
    assert not _headed([*NELL, *BACK], [*TESS, *BACK, told, BACK[1]], [*NELL, *BACK], TESS)


@pytest.mark.parametrize(
    "told",
    [
        "“Nell screwed the cap on,” said Tobias.",
        "Nell, I told myself, screw the cap back on.",
        "It was as if Nell had gone home and left my hands there.",
        "He called the boat Nell and painted it red.",
        "NELL SCREWED THE CAP ON: it would look well in the paper.",
        "Nell was my mother’s name too, and I got her coat.",
        "Nell Brandt, Ferry Landing.",
        "There was a letter for Nell on the table.",
    ],
)
def test_is_silent_about_a_name_that_the_i_may_say(told: str) -> None:
    assert not _headed([*NELL, *BACK, told, BACK[1]], TESS, [*NELL, *BACK], TESS)


def test_is_silent_where_the_i_often_goes_by_name() -> None:
    told = "Nell screwed the cap back on and didn’t look at him."
    assert not _headed(*[[*NELL, *BACK, told, BACK[1]], TESS] * 3)


@pytest.mark.parametrize(
    "told",
    [
        "I am not to look, and I have the key. I took it from the nail and I keep it.",
        "He was tired. I took the key, he thought. I put it in the box.",
        "I took the key, thinks Marta, and I put it in the box.",
        "I took the boats, the river seemed to say. I took the men.",
        "The river said nothing for a while. I took the boats, said the river. I took the men.",
    ],
)
def test_is_silent_about_what_they_say_to_themselves_without_marks(told: str) -> None:
    assert not found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, told])


def test_asks_about_one_sentence_of_an_i_that_lay_awake() -> None:
    told = "That was what it was like. I had imagined a lot of ways to lose it, lying awake, and this was none of them."
    slip = told.split(". ", 1)[1]
    assert quotes(found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, told])) == [[slip]]


@pytest.mark.parametrize(
    "around",
    [
        (["FERRY REPORT.", "3 May 1987."], ["T. Brandt."]),
        (["Dear Marta,"], ["Tobias."]),
        (["She had it typed by noon:"], []),
        ([], ["T. Brandt"]),
    ],
)
def test_is_silent_about_a_report_set_into_the_text(around: tuple[list[str], list[str]]) -> None:
    told = "I counted the boats on that day, and I found the rope cut. I sent word to the landing."
    before, behind = around
    assert not found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, *before, told, *behind, *ILSE])
    assert found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, told, *ILSE])


def test_is_silent_about_a_letter_that_is_read_without_marks() -> None:
    letter = (
        "They read them night after night, and Marta read his aloud in a slow voice. The water is up, he wrote. The "
        "water is down. The dog has had five. I carried a sack on Tuesday and I rowed it over. Ada was lame."
    )
    assert not found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, letter])
    sat = letter.replace(", he wrote", "").replace("read his aloud", "sat").replace("read them", "sat there")
    assert found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, sat])


def test_an_i_that_is_read_out_tells_no_scene() -> None:
    paper = (
        "I have told Tobias that I know of it. I have not told him that I know of the rest, and I mean to. I am tired."
    )
    told = "Then Nell got up and shut the door."
    assert _headed(["Nell", paper, told], TESS, [*NELL, *BACK], TESS) == [[told]]
    assert not _headed(["Nell", f"The last page said: {paper}", told], TESS, [*NELL, *BACK], TESS)
