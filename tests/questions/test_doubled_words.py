"""A small word twice in a row, and speech that is not closed."""

import pytest

from afterdraft.questions.asking import ask
from afterdraft.questions.each import doubled_words, open_speech
from tests.questions.asked import book, found, quotes

PLAIN = ["She came in.", "“Sit,” he said.", "“No.”"]


@pytest.mark.parametrize(
    "text",
    ["She put it on the the shelf.", "He had to to go.", "A letter from from Kell came.", "The The mill was shut."],
)
def test_asks_about_a_word_twice_in_a_row(text: str) -> None:
    assert quotes(found(doubled_words.CHECK, PLAIN, [text])) == [[text]]


@pytest.mark.parametrize(
    "text",
    [
        "She had had enough.",
        "He said that that was all.",
        "When she reached it it was gone.",
        "“The the shelf,” he said.",
        "He looked in, in the end.",
        "It was, was it not, late?",
        "He went to and fro.",
        "Bye-bye, the theatre said.",
    ],
)
def test_asks_nothing_of_words_that_may_stand_twice(text: str) -> None:
    assert not found(doubled_words.CHECK, PLAIN, [text])


def test_one_question_for_the_book() -> None:
    asked = ask(book([["She put it on the the shelf."], ["He had to to go."]]), checks=[doubled_words.CHECK])
    assert [one.asks for one in asked] == [
        "A word stands twice in a row in two places: “the the” and “to to”. Is one of the two meant?"
    ]


@pytest.mark.parametrize(
    ("scene", "opened"),
    [
        (["“Sit down, he said.", "She sat."], "“Sit down, he said."),
        (["“Sit,” he said. “I have news.", "She sat."], "“I have news."),
        (['"Sit down, he said.', "She sat."], '"Sit down, he said.'),
        (['"Sit," he said. "I have news.', "She sat."], '"I have news.'),
    ],
)
def test_asks_where_speech_is_opened_and_not_closed(scene: list[str], opened: str) -> None:
    assert quotes(found(open_speech.CHECK, scene)) == [[opened]]


@pytest.mark.parametrize(
    "scene",
    [
        ["“I have news.", "“It is bad,” he said."],  # speech of two paragraphs
        ["“Sit,” he said. “I have news.”", "She sat."],
        ["“It goes like this:", "‘Down the river\nand up the lane’", "So she sang."],
        ["“It goes like this:", "Down the river", "So she sang."],
        ["“I have news.”"],
        ['"They must go by the carrier," she thought; "and how odd!', "To the left foot, by the fender.", 'How odd!"'],
        ['""tis so," he said. "It is."', "She sat."],  # marks that were mixed up
        ["She sat."],
    ],
)
def test_asks_nothing_where_it_goes_on_or_is_closed(scene: list[str]) -> None:
    assert not found(open_speech.CHECK, scene)


def test_a_manner_of_the_book_is_let_be() -> None:
    assert not found(open_speech.CHECK, *[["“Sit down, he said.", "She sat."]] * 3)
