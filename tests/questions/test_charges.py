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


@pytest.mark.parametrize(
    "said",
    [
        "“You are not to take it personally,” she said.",
        "“You’re to take it easy till Monday,” she said.",
        "“You will take it as read when he comes,” she said.",
        "“You must put it down to nerves,” she said.",
        "“You are to leave it at that. Keep it up. Let it go,” she said.",
        "“You will give it a rest until Easter,” she said.",
        "“You’ll take it to the post before five,” she said.",
        "“You must give it to me straight when he comes,” she said.",
        "“You’ll keep it, will you?” she said.",
        "“Open it when you like,” she said.",
        "“Open it only a crack,” she said of the window.",
        "“Take it to Mr. Vane on Monday,” she said.",
        "“I can’t read it before supper,” she said.",
        "She would see what was in it when she had eaten.",
        "“Read it when you’ve a minute,” she said.",
        "“Keep it for me while I dance,” she said.",
        "“They don’t open it till nine,” she said of the mill.",
        "She put that by to think about.",
        "“I put that by to think about,” she said.",
        "She put that by.",
    ],
)
def test_what_may_be_meant_of_anything_lays_no_thing_by(said: str) -> None:
    assert not found(CHECK, ["They stood in the yard.", "He gave her a white envelope.", said], *REST)


@pytest.mark.parametrize(
    "named",
    [
        "Behind the town there was a ring road.",
        "It was the key question.",
        "There was a note of hope in it.",
        "There was a letter box in the wall.",
        "They found the pane before the letter S.",
        "They found the pane before the letter A.",
        "There was fire in his chest, and he had a plan.",
        "She held him to the letter.",
        "It shone like a ring, and she took his arm.",
        "She thought of the letter for a long time.",
    ],
)
def test_a_word_before_another_and_a_letter_of_the_alphabet_are_no_things(named: str) -> None:
    assert not found(CHECK, ["They stood in the yard.", named, "“You will put it into Ada’s hand,” he said."], *REST)


@pytest.mark.parametrize(
    ("named", "said"),
    [
        ("He pressed a small parcel on her.", "“You are to open it on your birthday, not before.”"),
        ("She gave Tom a locket.", "“Give it to Ada when she marries,” she said."),
        ("He gave me a box tied with string.", "“Don’t open it till you’re on the train,” he said."),
        ("She handed me a letter.", "“You must put it into Mr. Vane’s own hands.”"),
        ("He had a key in his hand.", "“And I mean to find out what it opens,” he said. “I’ll see what it fits.”"),
    ],
)
def test_asks_where_a_thing_is_given_with_words_for_later(named: str, said: str) -> None:
    assert len(found(CHECK, ["They stood in the yard.", named, said], *REST)) == 1


@pytest.mark.parametrize(
    ("here", "later"),
    [
        ("He went out, and she opened it.", "It rained."),
        ("He went out, and she broke the seal.", "It rained."),
        ("He went out.", "On the stairs she tore open the envelope."),
        ("He went out.", "She read the white envelope in bed."),
    ],
)
def test_asks_nothing_where_it_is_opened_soon(here: str, later: str) -> None:
    given = ["He gave her a white envelope.", "“You’re not to open it till Easter.”"]
    assert not found(CHECK, [*given, here], [later], *REST)
    assert found(CHECK, [*given, "He went out, and she opened the window."], ["She had not opened it."], *REST)
