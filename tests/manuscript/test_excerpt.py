"""First and last sentences of paragraphs: where one ends, and that emphasis stays on its words.

The rules are those of UAX #29 (Unicode, sentence boundaries), made simple, from memory; titles and initials: common
practice.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.manuscript.blocks import Block, Run
from afterdraft.manuscript.excerpt import first_sentence, last_sentence

CASES = [
    ("The boat was late. Nobody minded.", "The boat was late.", "Nobody minded."),
    ("Only one.", "Only one.", "Only one."),
    ("No stop at all", "No stop at all", "No stop at all"),
    ("“Stop!” he cried. She did not.", "“Stop!” he cried.", "She did not."),
    ("“Stop.” She did not. “Why?”", "“Stop.”", "“Why?”"),
    ("Mr. Aske waited for J. Brenn. Then he left.", "Mr. Aske waited for J. Brenn.", "Then he left."),
    ("It was not I. It was the other one.", "It was not I.", "It was the other one."),
    ("It cost 3.50 in all. She paid.", "It cost 3.50 in all.", "She paid."),
    ("She waited… and waited. It rained.", "She waited… and waited.", "It rained."),
    ("Who? Who was it?! Nobody knew …", "Who?", "Nobody knew …"),
    ("The tide comes in,\nthe tide goes out.", "The tide comes in,", "the tide goes out."),
    ("« Déjà ? » Élise rit. Il pleut.", "« Déjà ? »", "Il pleut."),
    ("He said (quietly.) (Nobody heard.)", "He said (quietly.)", "(Nobody heard.)"),
    ("  One.  Two.  ", "One.", "Two."),
    ("", "", ""),
    (". . .", ". . .", ". . ."),
]


@pytest.mark.parametrize(("text", "first", "last"), CASES)
def test_first_and_last(text: str, first: str, last: str) -> None:
    assert (first_sentence(Block(text)).text, last_sentence(Block(text)).text) == (first, last)


def test_emphasis_stays_on_its_words() -> None:
    block = Block("The Heron came in. It was the Heron.", (Run(4, 9, "italic"), Run(13, 25, "bold")))
    assert first_sentence(block).runs == (Run(4, 9, "italic"), Run(13, 18, "bold"))
    assert last_sentence(block).runs == (Run(0, 6, "bold"),)


@given(st.text(alphabet="ab A.!?… \n”“", max_size=40), st.integers(0, 40), st.integers(0, 40))
def test_pieces_are_the_ends_of_the_text_and_runs_lie_inside(text: str, one: int, other: int) -> None:
    start, end = sorted((min(one, len(text)), min(other, len(text))))
    block = Block(text, (Run(start, end, "italic"),) if start < end else ())
    first, last = first_sentence(block), last_sentence(block)
    assert text.strip().startswith(first.text)
    assert text.strip().endswith(last.text)
    for piece in (first, last):
        assert all(0 <= run.start < run.end <= len(piece.text) for run in piece.runs)
