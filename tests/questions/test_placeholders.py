"""Words to be written later. The signs are common practice."""

import pytest

from afterdraft.questions.each.placeholders import CHECK
from tests.questions.asked import found, quotes


@pytest.mark.parametrize(
    "text",
    [
        "He gave her the key to TK and went.",
        "The inspector, Mr TKTK, came at noon.",
        "It was XXX miles to the ferry.",
        "She [check: which hand?] took the oar.",
        "They came [insert name] and sat down.",
        "He was ??? years old.",
        "TODO the fight on the stairs.",
        "[Missing: the dinner at the mill.]",
        "[Ask my editor whether the boat is too early here.]",
        "[To be signed by all of them before the second volume.]",
        "[Note to self: she has to have the key by now.]",
        "[Here Ilse finds out about the boat before the others do.]",
    ],
)
def test_asks_where_words_are_still_to_come(text: str) -> None:
    assert quotes(found(CHECK, ["A quiet day.", text])) == [[text]]


@pytest.mark.parametrize(
    "text",
    [
        "In the reign of Henry XX the ferry ran twice a day.",
        "What? What did you say??",
        "He wrote his name, Tobias Kerr, and the initials T.K. under it.",
        "They sailed on the Atkins and the Natkat.",
        "She had read it in the paper.[1] It was true.",
        "[Here ended the second part in the early editions of this book.]",
        "[Note by the editor: the ferry is gone.]",
        "Owed to [a name, illegible], five pounds [crossed out], three pounds.",
    ],
)
def test_is_silent_where_nothing_is_missing(text: str) -> None:
    assert found(CHECK, [text]) == []


def test_brackets_that_are_a_manner_of_the_book_are_let_be() -> None:
    letters = [f"I saw him in the yard [of house {number}] again." for number in range(6)]
    assert found(CHECK, letters) == []
    assert len(found(CHECK, letters[:1])) == 1
