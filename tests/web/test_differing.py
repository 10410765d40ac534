"""Which words of passages that stand side by side are marked."""

import pytest

from afterdraft.web.differing import differing


@pytest.mark.parametrize(
    ("passages", "asks", "marked"),
    [
        (
            ("He had eyes so dark that she saw nothing.", "A light blue, with red rims."),
            "He has dark eyes and blue ones.",
            [["eyes", "dark"], ["blue"]],
        ),
        (("the lamp swung twice", "the lamp swung once"), "Which?", [["twice"], ["once"]]),
        (("all the same words", "all the same words"), "Are both meant?", [[], []]),
        (("Then Mr TK came.",), "“TK” stands there. What is to stand there?", [["TK"]]),
        (("TK",), "“TK” stands there.", [[]]),
        (
            ("He’d said that he was sixty.", "Denholm was thirty-seven."),
            "Denholm Rudd is 60 and 37. Are both meant?",
            [["sixty"], ["thirty-seven"]],
        ),
        (
            ("Then Ottla Bren left.", "It was Ottla Brenn."),
            "“Ottla Bren” stands here. Is Ottla Brenn meant?",
            [["Bren"], ["Brenn"]],
        ),
        (
            ("A book-case stood there.", "He went to the bookcase, which was locked."),
            "The book has “bookcase” nine times, and “book-case” here. Which is meant?",
            [["book-case"], ["bookcase"]],
        ),
        (
            ("It was the 3rd of May.", "The next day, the 9th of May, they set out."),
            "“The next day” stands between “3rd of May” and “9th of May”. Which is meant?",
            [["3rd of May"], ["The next day", "9th of May"]],
        ),
        (("He stroked his chin.", "Later he stroked his chin."), "“stroked his chin”?", [["stroked his chin"]] * 2),
        (
            ("Wednesday, October 15", "Tuesday the fifteenth"),
            "If “Wednesday, October 15” is right, “Tuesday the fifteenth” is a Wednesday. Which of the two is meant?",
            [["Wednesday"], ["Tuesday"]],
        ),
        (
            ("The rope was wet.", "the 17th was a Sat."),
            "If “Thurs 16 Oct” is right, “the 17th was a Sat.” is a Friday. Which of the two is meant?",
            [[], ["Sat"]],
        ),
        (
            ("Monday, the eighth of November", "first of November, 1985"),
            "“Monday, the eighth of November”: by the calendar that day was a Friday. Is Monday meant?",
            [["Monday"], []],
        ),
        (
            ("Tuesday 14th February 1965",),
            "“Tuesday 14th February 1965”: by the calendar that day was a Sunday. Is Tuesday meant?",
            [["Tuesday"]],
        ),
        (
            ("Friday had grey eyes.", "The eyes of Friday, brown as ale."),
            "Friday has grey eyes and brown ones. Are both meant?",
            [["grey"], ["brown"]],
        ),
        (
            ("Three years earlier he had gone.", "Dean was forty-one years old.", "“He’d have been fifty in July.”"),
            "Dean died at 41, “three years earlier”, which makes 44. Is “He’d have been fifty in July” meant?",
            [["Three years earlier"], ["forty-one"], ["He’d have been fifty in July"]],
        ),
        (
            ("He had a left hand.", "It was his right, which hurt.", "The left one, on the right side."),
            "The maimed hand of Bram is on the left and on the right. Which is meant?",
            [["left"], ["right"], ["left", "right"]],
        ),
        (
            ("“It is quite all right,” he said, and left, his right knee stiff.", "She saw the limp of the left leg."),
            "The bad leg of Bram is on the right and on the left. Which is meant?",
            [["right"], ["left"]],
        ),
        (
            ("He left at once, right as rain.", "The patch was on the right."),
            "The bad eye of Bram is on the left and on the right. Which is meant?",
            [["left", "right"], ["right"]],
        ),
        (
            ("He was sixteen, and the eldest of four.", "Toby would be eighty in June, they said; all four knew it."),
            "Toby Lark is 16 in Scene 1 and 79 in Scene 4. Are both meant?",
            [["sixteen"], ["eighty"]],
        ),
        ((), "Nothing follows.", []),
        (("four", "", "three"), "four or three", [["four"], [], ["three"]]),
    ],
)
def test_words_that_tell_passages_apart(passages: tuple[str, ...], asks: str, marked: list[list[str]]) -> None:
    found = differing(passages, asks)
    assert [[text[slice(*place)] for place in some] for text, some in zip(passages, found, strict=True)] == marked
