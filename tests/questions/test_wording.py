"""What the sentences of all checks share."""

import pytest

from afterdraft.questions.question import Finding, Span
from afterdraft.questions.wording import worded

TWO = (Span(0, 0, 0, 3, "I was forty-five."), Span(4, 0, 0, 3, "I was thirty-eight."))


@pytest.mark.parametrize(
    ("check", "words", "begins"),
    [
        ("age", {"name": "the narrator", "first": "45", "other": "38"}, "The narrator is 45"),
        ("compass", {"place": "the sea", "first": "lies to the east", "other": "lies to the west"}, "The sea lies"),
        ("person", {"said": "I"}, "“The lamp” is told"),
        ("weekday", {"said": "sunday the 3rd", "was": "Monday", "told": "Sunday"}, "“sunday the 3rd”"),
    ],
)
def test_a_sentence_begins_with_a_capital_and_what_is_quoted_stays(
    check: str, words: dict[str, str], begins: str
) -> None:
    assert worded(check, Finding(TWO, 0.7, words=words), ["The lamp"]).startswith(begins)
