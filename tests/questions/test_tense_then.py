"""The tense changes: a paragraph in the past within a scene told in the present."""

import pytest

from afterdraft.questions.each.tense import CHECK
from tests.questions.asked import found_in, quotes

pytestmark = pytest.mark.slow
BEFORE = [
    "Ilse Brandt comes down to the ferry before it is light. The rope is wet, and she coils it twice.",
    "“You’re early,” says Tobias. “The river’s up.”",
    "Ilse sits down in the bow. Tobias takes the long pole from its hook and looks at the water.",
    "The bank goes away behind them. She watches the lamp in the window of the toll house, and she counts the boats.",
]
BEHIND = [
    "“Then we’ll be slow,” says Tobias, and he leans on the pole.",
    "Ilse says nothing. She puts the basket under the seat and turns up her collar.",
    "He steers for the landing. The dog stands up in the bow, and the rope runs out over the rail.",
]
MINE = [
    "I come down to the ferry before it is light. The rope is wet, and I coil it twice.",
    "“You’re early,” says Tobias. “The river’s up.”",
    "I sit down in the bow. Tobias takes the long pole from its hook and looks at the water.",
]


@pytest.mark.parametrize(
    "then",
    [
        "Tobias leaned on the pole and looked at her. The lamp went out in the window, and he shook his head.",
        "Then she got up and went to the rail. She took the rope out of his hands and threw it on the seat.",
        "Marta Kell stood on the landing in her coat. At noon she came down to the water and held up the lamp.",
        "Suddenly the boat struck the bank. Ilse fell against the rail, and Tobias caught her by the collar.",
        "He turned the pole in his hands. He stared at the water, and for a moment he looked like a boy.",
        "Ilse lifted the basket and set it on the seat. She opened it, took out the bread and broke it in two.",
        "They sat in the boat and watched the lamp. Tobias picked up the pole again, and Ilse closed her eyes.",
        "The dog got up, walked to the bow and lay down on the rope. Tobias laughed and gave it the bread.",
        "She nodded slowly. She pulled her collar up and reached for the basket, and he held the boat for her.",
    ],
)
def test_asks_about_what_happens_there_and_then(then: str) -> None:
    (one,) = found_in(CHECK, [*BEFORE, then, *BEHIND])
    assert quotes([one]) == [[then]]
    assert (one.words["told"], one.words["tense"]) == ("present", "past")


@pytest.mark.parametrize(
    "then",
    [
        "Her father taught her to row on this river. He stood on the bank and shouted, and she went round in a ring.",
        "Last night he sat in the toll house and drank. Marta took the bottle away and put it under the seat.",
        "She had a boat of her own when she was nine. She painted it red and kept it under the bridge.",
        "They met in the toll house. She was with somebody else. He bought her a beer and looked at her shoes.",
        "Tobias was born in the house by the weir. His mother died there, and he sold it to Marta Kell.",
        "The year the bridge went, the ferry carried coal. Tobias worked the pole with his brother, and sang.",
        "He used to sing. He stood up in the bow and sang to the cows, and they came down to the water.",
        "On Thursday she waited for an hour. He came at nine, took her basket and said nothing.",
        "He had fallen asleep on the seat. She took the pole, and the boat went its own way.",
        "The river took the landing in the flood. It carried the toll house to the weir, and nobody looked for it.",
        "Marta told her about the boat. It belonged to a doctor, who bought it for his wife and left it in the reeds.",
        "If she looked at him he turned away. If she spoke he took up the pole.",
        "As a boy he ran away to sea. He got as far as the weir, sat down on the bank and cried.",
        "His brother drowned here. They pulled him out at the weir and laid him on the landing.",
    ],
)
def test_is_silent_about_what_was_before(then: str) -> None:
    assert not found_in(CHECK, [*BEFORE, then, *BEHIND])


@pytest.mark.parametrize(
    ("before", "behind"),
    [
        ("She remembers the day of the flood.", BEHIND[0]),
        ("It is like this:", BEHIND[0]),
        ("He tells her the story of the boat.", BEHIND[0]),
        (BEFORE[3], "Now the boat lies still, and he takes the pole."),
        (BEFORE[3], "But that was in spring. He takes the pole."),
        (BEFORE[3], "She shut the box. She went out to the landing, and he followed her."),
    ],
)
def test_is_silent_where_the_telling_goes_back(before: str, behind: str) -> None:
    then = "Tobias leaned on the pole and looked at her. The lamp went out in the window, and he shook his head."
    assert not found_in(CHECK, [*BEFORE, before, then, behind, *BEHIND])


def test_asks_where_an_i_tells() -> None:
    then = "Tobias put the pole down and came over to me. He took the basket from my knees and held it up to the lamp."
    assert quotes(found_in(CHECK, [*MINE, then, *BEHIND])) == [[then]]


def test_is_silent_about_what_an_i_did_before() -> None:
    then = "I took the pole and left her at the weir. I tied up under the bridge, and I walked."
    assert not found_in(CHECK, [*MINE, then, *BEHIND])


def test_is_silent_in_a_scene_that_tells_by_turns() -> None:
    past = "Ilse sat down in the bow. Tobias took the pole from its hook and looked at the water."
    assert not found_in(CHECK, [*BEFORE, past, BEHIND[1], past, BEHIND[2], past, *BEFORE[:1]])
