"""How long it is between two days."""

import pytest

from afterdraft.questions.each.intervals import CHECK
from tests.questions.asked import dated


@pytest.mark.parametrize(
    ("first", "second", "apart"),
    [
        ("On the 3rd of May it rained.", "Two days later, on the 9th of May, they set out.", 6),
        ("It was Monday.", "Three days later, on Friday, they set out.", 4),
    ],
)
def test_asks_where_days_lie_otherwise_than_is_said(first: str, second: str, apart: int) -> None:
    (one,) = CHECK.find(dated([first], [second]))
    assert one.numbers["apart"] == apart


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("On the 3rd of May it rained.", "Six days later, on the 9th of May, they set out."),
        ("It was Monday.", "Four days later, on Friday, they set out."),
        ("It was Monday.", "A week later, on Monday, they set out."),
        ("It was Monday.", "“Three days later, on Friday, they set out,” she said."),
        ("It was Monday.", "They waited for three days. On Friday they set out."),
    ],
)
def test_is_silent_where_they_agree_or_nothing_is_said(first: str, second: str) -> None:
    assert not list(CHECK.find(dated([first], [second])))
