"""Passages carried to the next draft: still there, changed, gone; and what has no place in it."""

from collections.abc import Sequence

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.comparison.carrying import Carrier
from afterdraft.comparison.compare import compare
from afterdraft.comparison.offcuts import offcuts
from afterdraft.comparison.told import Told, ToldScene

MILL = "The mill stood at the end of the lane, and nobody had ground corn in it since her grandfather died."
FERRY = "Old Tobias rowed the ferry over twice a day, whether anyone wanted to cross or not, for it kept him warm."
BELL = "At six the chapel bell rang cracked and flat, and the rooks went up out of the elms like thrown soot."
GATE = "She shut the gate behind her with great care. She shut the gate of the yard as well, and went in."


def told(*paragraphs: str) -> Told:
    return Told(paragraphs, (ToldScene(0, len(paragraphs), 0),))


def carried(old: Sequence[str], new: Sequence[str], quote: str, nth: int = 0) -> tuple[str, str]:
    """The state, and the words that stand at the place found. `nth` of the quote's places in the old draft."""
    carrier = Carrier(compare(told(*old), told(*new)))
    places = [(n, at) for n, text in enumerate(old) for at in range(len(text)) if text.startswith(quote, at)]
    paragraph, start = places[nth]
    found = carrier.carried(paragraph, start, start + len(quote))
    return found.state, "" if found.paragraph is None else new[found.paragraph][found.start : found.end]


@pytest.mark.parametrize(
    ("new", "quote", "expected"),
    [
        ([MILL, FERRY, BELL], "cracked and flat", ("there", "cracked and flat")),
        ([BELL, MILL, FERRY], "cracked and flat", ("there", "cracked and flat")),
        (
            [MILL, FERRY, BELL.replace("cracked", "harsh")],
            "bell rang cracked and flat",
            ("changed", "bell rang harsh and flat"),
        ),
        ([MILL, FERRY], "cracked and flat", ("gone", "")),
        ([MILL, FERRY, BELL.replace("cracked and flat", "as clear as glass")], "cracked and flat", ("gone", "")),
        (
            [MILL + " The rooks went up out of the elms like thrown soot, that day.", FERRY],
            "went up out of the elms like thrown soot",
            ("there", "went up out of the elms like thrown soot"),
        ),
    ],
)
def test_a_passage_follows_its_words(new: list[str], quote: str, expected: tuple[str, str]) -> None:
    assert carried([MILL, FERRY, BELL], new, quote) == expected


@pytest.mark.parametrize("nth", [0, 1])
def test_of_the_same_words_twice_each_keeps_its_place(nth: int) -> None:
    new = [MILL, "That evening, " + GATE]
    carrier = Carrier(compare(told(MILL, GATE), told(*new)))
    quote = "She shut the gate"
    at = GATE.index(quote, nth)
    found = carrier.carried(1, at, at + len(quote))
    assert (found.state, found.start) == ("there", at + len("That evening, "))


DOORS = "He shut the door and stood. She opened the window, and looked long at the door of the barn."


@pytest.mark.parametrize(
    ("new", "quote", "nth", "expected"),
    [
        ("He shut the door and stood. She opened the window.", "the door", 1, ("gone", "")),
        ("He shut the door and stood. She opened the window.", "the door", 0, ("there", "the door")),
        ("He stood. She opened the window, and looked long at the door of the barn.", "door", 0, ("gone", "")),
        ("He shut the lid and stood. She opened the barn, and looked long at it.", "barn", 0, ("gone", "")),
        ("She opened the window, and looked long. He stood by the barn.", "window", 0, ("there", "window")),
        ("At the barn he stood. And then she opened the window.", "opened", 0, ("there", "opened")),
        ("At the barn he stood, looked long at its door, and had opened the window.", "opened", 0, ("gone", "")),
    ],
)
def test_a_word_that_stands_again_elsewhere_is_not_taken_for_one_that_is_gone(
    new: str, quote: str, nth: int, expected: tuple[str, str]
) -> None:
    assert carried([MILL, DOORS, BELL], [MILL, new, BELL], quote, nth) == expected


@given(st.permutations([MILL, FERRY, BELL, GATE]), st.integers(0, 3), st.data())
def test_in_an_unchanged_paragraph_every_passage_is_still_there(order: list[str], at: int, data: st.DataObject) -> None:
    old = [MILL, FERRY, BELL, GATE]
    start = data.draw(st.integers(0, len(old[at]) - 1))
    end = data.draw(st.integers(start + 1, len(old[at])))
    found = Carrier(compare(told(*old), told(*order))).carried(at, start, end)
    assert (found.state, found.paragraph, found.start, found.end) == ("there", order.index(old[at]), start, end)


def test_offcuts_are_what_has_no_place_in_the_new_draft() -> None:
    old = told(MILL, FERRY, BELL, GATE)
    new = told(MILL.replace(", and nobody had ground corn in it since her grandfather died", ""), GATE, FERRY)
    found = [(one.paragraph, old.paragraphs[one.paragraph][one.start : one.end]) for one in offcuts(compare(old, new))]
    assert found == [(0, ", and nobody had ground corn in it since her grandfather died."), (2, BELL)]


def test_a_draft_beside_itself_has_no_offcuts() -> None:
    assert offcuts(compare(told(MILL, FERRY), told(MILL, FERRY))) == ()
