"""A thing that is to be given on or opened later."""

import pytest

from afterdraft.questions.each.charges import CHECK
from tests.questions.asked import found, quotes

REST = [["It rained, and the mill stood still all day."]] * 8


@pytest.mark.parametrize(
    ("named", "charge"),
    [
        ("Joan had a flat packet in her glove.", "“You will put it into Ada’s hand,” she said."),
        ("She held out a parcel, stitched shut.", "“You're not to open it till Easter.”"),
        ("He gave her a small brass key.", "“I’ll see what that opens,” said Ada."),
        ("There was a letter in it.", "“Give it to my son when he is grown.”"),
        ("It was a tin box.", "“Keep it safe,” said Joan."),
        ("The envelope was not to be opened before his death.", ""),
    ],
)
def test_asks_where_it_does_not_come_back(named: str, charge: str) -> None:
    (one,) = found(CHECK, ["They stood in the yard.", named, *([charge] if charge else [])], *REST)
    assert quotes([one])[0][0] == named


@pytest.mark.parametrize(
    "later",
    ["Ada took out the flat packet at last.", "She had lost Joan’s packet in the snow."],
)
def test_asks_nothing_where_it_does(later: str) -> None:
    first = ["Joan had a flat packet, sealed in wax.", "“You will put it into Ada’s hand,” said Joan."]
    assert not found(CHECK, first, *REST[:4], [later], *REST[4:])


@pytest.mark.parametrize(
    "scene",
    [
        ["She had to stick it out.", "“You will put this right,” he said."],
        ["“You will put it right,” he said."],
        ["Joan had a packet in her glove.", "“Give it to me,” he said."],
        ["Joan had a packet in her glove.", "She kept it for years."],
        ["Joan had a packet in her glove.", "“You’ll keep that to yourself, please,” he said."],
    ],
)
def test_asks_nothing_without_a_thing_or_a_charge(scene: list[str]) -> None:
    assert not found(CHECK, scene, *REST)


def test_the_last_of_the_book_is_let_be() -> None:
    last = ["Joan had a flat packet in her glove.", "“You will put it into Ada’s hand,” she said."]
    assert not found(CHECK, *REST, last)
