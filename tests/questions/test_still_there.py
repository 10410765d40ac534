"""Somebody who has left the scene and goes on in it."""

import pytest

from afterdraft.questions.each.still_there import CHECK
from afterdraft.questions.wording import worded
from tests.questions.asked import found_in, quotes

pytestmark = pytest.mark.slow

COME = [
    "Ilse thought that the kitchen had never been so cold. Marta and Tobias sat at the table, and Tobias had his boots "
    "off.",
    "“You might have asked,” said Marta.",
    "“I might,” said Tobias. Ilse wondered what he meant.",
]
STAY = ["The clock struck. Ilse put another log on and felt the heat on her face."]
SPEAKS = ["“It will snow,” said Tobias. Ilse thought so too."]


@pytest.mark.parametrize(
    "left",
    [
        "Tobias went out, and the bell over the door rang.",
        "Tobias got up and left the room.",
        "Then Tobias walked out without a word.",
        "Tobias took his hat and went home.",
        "Tobias nodded and drove away.",
        "Tobias slammed the door behind him.",
        "Ilse watched Tobias cross the yard and drive away.",
        "Tobias took his leave of them.",
        "By then Tobias had gone up to bed.",
        "Tobias reached for his cap, and kissed his mother. They heard the cart go down the lane.",
        "Tobias nodded, and the door closed behind him.",
    ],
)
def test_asks_where_somebody_who_has_left_speaks(left: str) -> None:
    (one,) = found_in(CHECK, [*COME, left, *STAY, *SPEAKS])
    assert quotes([one]) == [[left, "“It will snow,” said Tobias."]]


@pytest.mark.parametrize(
    "does", ["Tobias rose and tapped his glass.", "Tobias poured himself a cup.", "Tobias smiled."]
)
def test_asks_where_they_do_something(does: str) -> None:
    assert quotes(found_in(CHECK, [*COME, "Tobias left the room.", *STAY, does]))[0][1] == does


@pytest.mark.parametrize(
    "between",
    [
        "Tobias came back with the lamp.",
        "Tobias was back before the kettle boiled.",
        "An hour later it was quite dark.",
        "The next morning the snow lay up to the sill.",
        "Tobias returned with the axe over his shoulder.",
        "Ilse followed him into the yard.",
        "Presently the door opened.",
        "The telephone rang.",
    ],
)
def test_asks_nothing_where_they_come_back_or_time_goes_by(between: str) -> None:
    assert not found_in(CHECK, [*COME, "Tobias left the room.", between, *STAY, *SPEAKS])


@pytest.mark.parametrize(
    "left",
    [
        "Tobias would have left the room, if he had dared.",
        "When Tobias left the room they all breathed again.",
        "Tobias never left the house now.",
        "Tobias went out to the pump, and came in with the pail.",
        "“Tobias left the room,” said Marta.",
        "Tobias went away every spring.",
        "Tobias ran on about the price of hay.",
        "Tobias looked up. They heard the cart stop.",
        "Tobias rose and Marta rose. They heard the cart go down the lane.",
        "Ilse and Tobias went out, and the bell over the door rang.",
        "Tobias went out and did his turn with the spoons.",
        "Tobias had gone out along the beam, on his knees.",
    ],
)
def test_asks_nothing_where_nobody_leaves(left: str) -> None:
    assert not found_in(CHECK, [*COME, left, *STAY, *SPEAKS])


@pytest.mark.parametrize(
    "then",
    [
        "“It will snow,” said Tobias, as he walked up the lane.",
        "“It will snow,” Tobias called through the window.",
        "“Where is Tobias?” said Marta.",
        "Marta was fond of Tobias.",
        "Tobias had said that it would snow.",
    ],
)
def test_asks_nothing_where_the_telling_goes_with_them_or_they_are_only_spoken_of(then: str) -> None:
    assert not found_in(CHECK, [*COME, "Tobias left the room.", *STAY, then])


def test_asks_nothing_of_the_one_with_whom_the_scene_is() -> None:
    gone = ["Ilse went out, and felt the cold. She thought of the road.", "“It will snow,” said Ilse."]
    assert not found_in(CHECK, [*COME, *gone])


@pytest.mark.parametrize(
    "away",
    [
        "Tobias had sent word that he was staying at home with his leg up.",
        "Tobias alone was missing.",
        "Tobias had gone up to his sister’s with a cold, and the dog with him.",
        "Tobias begged to be excused.",
        "Tobias took the van to Tolland for a new wick.",
        "Tobias caught the keys, whistled for the dog, and went.",
    ],
)
def test_asks_where_somebody_who_is_away_speaks(away: str) -> None:
    (one,) = found_in(CHECK, [*COME, away, *STAY, *SPEAKS])
    assert quotes([one]) == [[away, "“It will snow,” said Tobias."]]


@pytest.mark.parametrize(
    "away",
    [
        "Tobias had gone to his sister’s when he was a boy.",
        "Tobias was often missing.",
        "Tobias had gone to the window.",
        "Tobias took the lamp to Marta.",
        "Tobias was away every spring for years.",
    ],
)
def test_asks_nothing_where_somebody_was_away_once(away: str) -> None:
    assert not found_in(CHECK, [*COME, away, *STAY, *SPEAKS])


def test_says_whether_they_leave_or_are_away() -> None:
    (left,) = found_in(CHECK, [*COME, "Tobias left the room.", *STAY, *SPEAKS])
    (away,) = found_in(CHECK, [*COME, "Tobias alone was missing.", *STAY, *SPEAKS])
    assert worded(CHECK.id, left, ("One",)).startswith("Tobias leaves in “One” and goes on in it.")
    assert worded(CHECK.id, away, ("One",)).startswith("Tobias is away in “One”, and speaks or acts there")
