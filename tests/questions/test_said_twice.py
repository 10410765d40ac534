"""What is told once, and told again far away in nearly the same words."""

from itertools import product

import pytest

from afterdraft.questions.each.said_twice import CHECK
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from tests.questions.asked import found, quotes

_NAMES = (
    "ferry",
    "lamp",
    "kettle",
    "orchard",
    "stove",
    "ledger",
    "heron",
    "barrow",
    "gate",
    "quay",
    "sexton",
    "ladder",
)
_DOES = ("stood", "waited", "leaned", "dripped", "creaked", "rusted", "shone", "settled", "rattled", "dozed")
_WHERE = ("behind the wall", "under the eaves", "beside the road", "in the rain", "at the landing", "by the well")


def far(first: int) -> list[str]:
    """Some 2,000 words that lie between, in which no two sentences are the same."""
    some = [f"The {one} {does} {where}." for one, does, where in product(_NAMES, _DOES, _WHERE)]
    return [" ".join(some[at : at + 5]) for at in range(first * 330, (first + 1) * 330, 5)]


BETWEEN = far(0)
REMARK = "A harbour is a question that the sea puts to a town, and most towns answer it badly."
REMARK_AGAIN = (
    "A harbour, he sometimes thought, is a question put to the town by a sea, and most of the towns answer badly."
)


def asked(first: str, again: str) -> list[Finding]:
    return found(CHECK, [first, *BETWEEN[:40]], [*BETWEEN[40:], again])


@pytest.mark.parametrize(
    ("first", "again"),
    [
        (REMARK, REMARK_AGAIN),
        (  # somebody's looks
            "Orla Fenn was a long stooping woman with a wall eye and a braid down to her belt, who smelled of cloves.",
            "She was a long, stooping woman, was Orla, with a wall eye, a braid that came down to her belt, and a coat "
            "that smelled of cloves.",
        ),
        (  # a picture
            "The smoke stood up from the chimneys like washing that somebody had starched and forgotten to take in.",
            "Smoke was standing up out of all the chimneys, like washing somebody starched and then forgot to take in.",
        ),
        (  # a joke, told at table
            "“So the goat ate the hymn book, and the curate said that at least one of the flock was digesting it.”",
            "“The goat had eaten the hymn book, you see, and the curate says at least one of his flock is digesting.”",
        ),
        (  # with who says it
            "“Trust a tinker with your purse before your kettle,” said Orla, “for he knows what a purse is worth.”",
            "“You may trust your purse to a tinker before your kettle,” she said, “since he knows what the purse is "
            "worth.”",
        ),
        (  # how somebody came to what he has
            "His grandfather had won the watch from a drowned purser at cribbage, and it had never kept time since.",
            "It was his grandfather who had won that watch, at cribbage, from a purser who drowned; it never kept "
            "time.",
        ),
        (  # a house
            "Nobody had ever counted the stairs of the house, because at the ninth you had to duck for the old beam, "
            "and lost your place.",
            "The stairs of the house had never been counted by anybody, since at the ninth one had to duck for a beam "
            "and lost one's place.",
        ),
        (  # a habit
            "She salted her porridge standing, with her back to the window, and ate it before the clock had struck.",
            "She salted the porridge standing up, her back to the window, and she ate it before the clock struck.",
        ),
        (  # news
            "The bank at Orme had shut its doors on Friday and the manager was seen boarding the packet in a false "
            "beard.",
            "On Friday the bank at Orme shut its doors, and its manager had been seen to board the packet wearing a "
            "false beard.",
        ),
        (  # with its parts in another order
            "The school smelled of floor wax and oranges, and you could hear the radiators think.",
            "It smelled of oranges and floor wax, that school, and the radiators could be heard thinking.",
        ),
        (  # in two sentences
            "Rust is patient. It can wait for a bridge longer than a bridge can wait for a painter.",
            "Rust, she reflected, is patient, and it can wait longer for the bridge than the bridge for its painter.",
        ),
        (  # a smell that brings something back
            "The cellar smelled of apples, wet rope and paraffin, so that he was seven years old until he had shut "
            "the door.",
            "That cellar smelled of apples and paraffin and wet rope, and he was seven years old until the door was "
            "shut.",
        ),
    ],
)
def test_asks_where_the_same_is_told_twice(first: str, again: str) -> None:
    assert quotes(asked(first, again)) == [[first, again]]


def test_says_with_which_words_either_begins() -> None:
    (one,) = asked(f"Tobias shrugged. {REMARK}", f"Orla wept. {REMARK_AGAIN}")
    assert one.words == {"first": "A harbour is a question that the", "again": "A harbour, he sometimes thought, is a"}


@pytest.mark.parametrize(
    ("first", "again"),
    [
        (REMARK, REMARK),  # word for word: another check has it
        (REMARK, "He thought once more that a harbour is a question put to a town by the sea."),
        (REMARK, "As Orla had said, a harbour is a question put to a town by the sea, and most towns answer it badly."),
        (REMARK, "“A harbour,” said Orla, “is a question put to a town by the sea, and most towns answer it badly.”"),
        (f"“{REMARK}”", "“You said a harbour is a question put to a town by the sea, and most towns answer it badly.”"),
        (  # asked of two people
            "“Where were you on the night of the storm, between the striking of nine and the turning of the tide?”",
            "“Now, where were you, the night of that storm, between nine striking and the tide turning?”",
        ),
        (REMARK, "The town had a harbour, and the sea was often in it."),
        (  # names
            "The Honourable Miss Augusta Pell of Pell Hall and Sir Rufus Dray of Upper Dray sat down.",
            "There was the Honourable Miss Augusta Pell of Pell Hall, and there was Sir Rufus Dray of Upper Dray.",
        ),
    ],
)
def test_is_silent_where_it_is_meant_or_another_thing(first: str, again: str) -> None:
    assert not asked(first, again)


def test_what_stands_three_times_is_a_refrain() -> None:
    third = "A harbour is but a question that the sea had put to some town, and most towns have answered badly."
    assert not found(CHECK, [REMARK, *BETWEEN], [REMARK_AGAIN, *far(1)], [third])


def test_near_by_it_is_taken_up() -> None:
    assert not found(CHECK, [REMARK, *BETWEEN[:20]], [REMARK_AGAIN])


def test_a_letter_tells_again_what_was_told() -> None:
    scenes = ((REMARK, *BETWEEN), (REMARK_AGAIN,))
    assert list(CHECK.find(Seen(scenes)))
    assert not list(CHECK.find(Seen(scenes, set_in=frozenset({(1, 0)}))))
