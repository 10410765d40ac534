"""A passage that stands twice."""

from dataclasses import replace

import pytest

from afterdraft.questions.each.twice import CHECK
from tests.questions.asked import book, found, quotes

PASSAGE = "On the sill stood a jar of brass screws, and behind it the river went by as if it had been paid to."


def test_asks_where_a_passage_stands_in_two_scenes() -> None:
    one = found(CHECK, ["It rained.", f"He came in. {PASSAGE} Nobody spoke."], ["It was dry.", f"{PASSAGE} She sat."])
    assert quotes(one) == [[PASSAGE, PASSAGE]]
    assert one[0].numbers["words"] == 23


def test_what_was_joined_into_another_sentence_is_found_as_far_as_it_is_the_same() -> None:
    (one,) = found(CHECK, [f"So it was: {PASSAGE.lower()}"], [f"{PASSAGE}"])
    assert one.numbers["words"] == 23


def test_what_is_read_again_in_italics_is_meant() -> None:
    letter = "I have been told many times what it shows, and I wish to hear from you whose it was."
    told = book([[f"It said so. {letter}"], [f"{letter} He put it by."]])
    assert list(CHECK.find(told))
    slanted = {(0, 0): ((12, 12 + len(letter)),), (1, 0): ((0, len(letter)),)}
    assert not list(CHECK.find(replace(told, italics=slanted)))


def test_is_silent_about_few_words_and_refrains() -> None:
    assert not found(
        CHECK, ["On the sill stood a jar of brass screws, and he wept."], ["On the sill stood a jar of brass screws."]
    )
    assert not found(CHECK, [PASSAGE], [PASSAGE], [PASSAGE])


def test_what_is_said_again_is_asked_less_sharply() -> None:
    told = found(CHECK, [PASSAGE], [PASSAGE])
    long = f"“{PASSAGE} And I said so at the time, to anyone who would hear it.”"
    said = found(CHECK, [long], [long])
    assert said[0].strength < told[0].strength
    assert not found(CHECK, [PASSAGE], [f"“{PASSAGE}”"])


LONG = f"“{PASSAGE} And I said so at the time, to anyone who would hear it.”"


@pytest.mark.parametrize("before", ["She read it out again:", "The letter, the reader may remember, ran thus:—"])
def test_is_silent_about_what_is_led_in_as_said_before(before: str) -> None:
    assert not found(CHECK, ["It rained.", PASSAGE], ["It was dry.", before, PASSAGE])
    assert not found(CHECK, ["It rained.", PASSAGE], ["It was dry.", f"{before} {PASSAGE}"])


def test_is_silent_about_a_second_that_says_so_and_a_chorus() -> None:
    sill = PASSAGE.replace("On the sill stood a", "another").replace("jar", "tin jar")
    assert found(CHECK, [f"There stood a {sill[8:]}"], [f"There stood the {sill[8:]}"])
    assert not found(CHECK, [f"There stood a {sill[8:]}"], [f"There stood {sill}"])
    assert not found(CHECK, [PASSAGE], ["CHORUS, with feeling.", PASSAGE])


def test_is_silent_about_what_is_led_in_twice_or_is_spoken() -> None:
    assert not found(CHECK, ["It rained, and then:", PASSAGE], ["She wrote this:", PASSAGE])
    assert not found(CHECK, ["It rained.", LONG], ["She wrote this:", LONG])


@pytest.mark.parametrize("before", ["She remembered the ferry again.", "She wrote this:", "She asked again:"])
def test_asks_though_the_second_merely_stands_behind_such_words(before: str) -> None:
    assert len(found(CHECK, ["It rained.", PASSAGE], [before, PASSAGE])) == 1


def test_is_silent_about_a_scene_that_closes_with_the_words_it_opens_with() -> None:
    assert not found(CHECK, [PASSAGE, "It rained.", "Nobody came.", PASSAGE])
    assert len(found(CHECK, [PASSAGE, "It rained.", "Nobody came.", PASSAGE, "It was dry."])) == 1


def test_is_silent_about_what_is_set_in_marks_and_credited() -> None:
    quoted = f"I saw the room where, as Tobias wrote, ‘{PASSAGE[0].lower()}{PASSAGE[1:-1]}’, and I went in."
    assert not found(CHECK, [PASSAGE], [quoted])


LATER = (
    "She sold the ferry in the spring, and with it the rope, the bell and the blue enamel jug that had no lid "
    "and would not stand."
)


@pytest.mark.parametrize(
    "changed",
    [
        f"{PASSAGE} {LATER.replace('blue', 'white')}",
        f"{PASSAGE} {LATER.replace('the rope', 'the oars')}",
        f"{PASSAGE.replace('river', 'water')} {LATER}",
        f"{PASSAGE} Nobody spoke, or looked up. {LATER}",
        f"{PASSAGE.replace('river', 'brown river')} {LATER.replace('the spring', 'April')}",
    ],
)
def test_a_passage_that_was_changed_a_little_is_one_question(changed: str) -> None:
    (one,) = found(CHECK, [f"He came in. {PASSAGE} {LATER} He sat."], ["It was dry.", changed])
    assert one.numbers["changed"] > 0
    assert one.numbers["words"] > 35
    assert len(one.evidence) == 2


def test_two_passages_far_apart_are_two_questions() -> None:
    far = " ".join(f"Then he counted {number} boats, and was content." for number in ("two", "ten", "six", "nine"))
    assert len(found(CHECK, [f"{PASSAGE} {LATER}"], [f"{PASSAGE} {far} {LATER}"])) == 2


def test_the_question_says_that_it_was_changed() -> None:
    from afterdraft.questions.asking import ask
    from tests.questions.asked import book

    pages = [[f"{PASSAGE} {LATER}"], [f"{PASSAGE} {LATER.replace('blue', 'white')}"]]
    (one,) = ask(book(pages), checks=[CHECK])
    assert "in scene 1 and again, a little changed, in scene 2" in one.asks


@pytest.mark.parametrize(
    "when",
    [
        "on the Friday before the bridge came down, at ten minutes to six in the evening",
        "in the spring of the year after the flood, when the ferry still ran at night",
        "at half past nine on the last day of the season, with the boats all in",
    ],
)
def test_is_silent_about_a_time_that_is_taken_up_again(when: str) -> None:
    assert not found(CHECK, [f"{when.capitalize()}, Tobias sold the boat."], [f"I was on the quay {when}; I saw it."])
    first = f"{when.capitalize()}, Tobias sold the boat to Marta Kell for nine pounds and a dog."
    assert len(found(CHECK, [first], [f"She said it. {first}"])) == 1


BARGE = (
    "The barge was never a barge. It had been a chapel once, and on a wet night the boards gave up a smell of wax "
    "and of old hymns, so that he slept well."
)


def test_a_passage_with_a_change_in_every_line_stands_twice() -> None:
    again = BARGE.replace("had been", "was").replace("gave up", "still had").replace("slept well", "had to sing")
    (one,) = found(CHECK, ["It rained.", BARGE], ["It was dry.", again])
    assert one.numbers["words"] >= 25
    assert one.numbers["changed"] > 0


@pytest.mark.parametrize(
    "again",
    [
        "The barge was never a ship. It had been a barn, and on a dry day the boards had a smell of hay.",
        "It was a barge. It had been a chapel once, and so had he.",
    ],
)
def test_is_silent_about_a_few_words_of_it(again: str) -> None:
    assert not found(CHECK, ["It rained.", BARGE], ["It was dry.", again])
