"""The tense changes within a scene."""

import pytest

from afterdraft.questions.each.tense import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, MARTA

pytestmark = pytest.mark.slow
BEFORE, AFTER = "She came to the steps.", "Nobody spoke."


@pytest.mark.parametrize(
    "turns",
    [
        "Tobias lifts the lamp and goes down.",
        "He takes the rope, and he ties it.",
        "She opens the box. There is a key in it.",
    ],
)
def test_asks_about_the_present_in_a_scene_told_in_the_past(turns: str) -> None:
    assert quotes(found_in(CHECK, [*ILSE, *MARTA, f"{BEFORE} {turns} {AFTER}"])) == [[turns]]


@pytest.mark.parametrize(
    "told",
    [
        "“Tobias lifts the lamp and goes down,” she said.",
        "There is a kind of man who never lifts a lamp.",
        "The river always runs north here.",
        "He said that Tobias goes down.",
        "Tobias lifted the lamp and went down.",
    ],
)
def test_is_silent_about_speech_and_what_is_always_so(told: str) -> None:
    assert not found_in(CHECK, [*ILSE, *MARTA, f"{BEFORE} {told} {AFTER}"])


def test_is_silent_in_a_scene_told_in_the_present() -> None:
    scene = ["Tobias lifts the lamp.", "She opens the box and takes the key.", "He goes down. She follows him."] * 3
    assert not found_in(CHECK, scene)


def test_asks_about_a_paragraph_of_an_i_in_the_present() -> None:
    mine = [
        "I came to the steps. Nobody spoke, and I listened for the dog.",
        "I closed the gate and went up to the house.",
    ]
    now = "I take the lamp and go down. I open the box and find the key."
    assert quotes(found_in(CHECK, [*mine * 9, now])) == [[now]]
    assert not found_in(CHECK, [*mine * 9, "I know now that I was wrong. I think of it every year."])
