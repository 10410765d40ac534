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
        ("He gave her a white envelope.", "“Put that by for me,” he said, “in the dresser.”"),
        ("He gave her a white envelope.", "“Open it when I am gone.”"),
        ("He gave her a white envelope.", "“She told me I wasn’t to read it until Easter.”"),
        ("He gave her a white envelope.", "Before Sunday, she promised herself, she’d know what was in it."),
        ("Under the clock lay a letter.", "“Into her own hand,” the boy said."),
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
        ["Joan had a packet in her glove.", "She never opened her eyes till noon."],
        ["Joan had a packet in her glove.", "He took the matter into his own hands."],
        ["“They will have it so,” he said.", "“You are to read it at once,” he said."],
        ["“Here is a basket that knocks my elbow.”", "“You shall carry that parcel,” she said."],
        ["There were letters.", "“Give them to my man on the sledge,” he said."],
        ["Joan had a packet in her glove.", "“You’ll keep that to yourself, please,” he said."],
    ],
)
def test_asks_nothing_without_a_thing_or_a_charge(scene: list[str]) -> None:
    assert not found(CHECK, scene, *REST)


def test_the_last_of_the_book_is_let_be() -> None:
    last = ["Joan had a flat packet in her glove.", "“You will put it into Ada’s hand,” she said."]
    assert not found(CHECK, *REST, last)


def test_what_is_sealed_is_meant_before_what_else_is_near() -> None:
    case = "She put her hand on the case. She would know what was in it before Sunday."
    (one,) = found(CHECK, ["He gave her a white envelope, sealed.", "They went up.", "It was cold.", case], *REST)
    assert one.words["thing"] == "envelope"


def test_another_packet_that_is_told_of_otherwise_is_not_that_one() -> None:
    given = "Joan gave her a flat packet, sealed in wax. The dog sat on the lawn with Tom."
    first = [given, "“Put that by,” said Joan."]
    later = "Tom had a packet of seeds for the lawn."
    assert found(CHECK, first, *REST[:4], [later], *REST[4:])
