"""Rows of codes as a person types them."""

import pytest

from afterdraft.desk.codes import typed_codes
from tests.desk.test_arranging import own_order


@pytest.mark.parametrize(
    ("text", "lines"),
    [
        ("A B C\nD E\nF", ["s0 s1 s2", "s3 s4", "s5"]),
        ("a, b; c | d e | f", ["s0 s1 s2", "s3 s4", "s5"]),
        ("| A B C |\n\n  \nD E\r\n| F |", ["s0 s1 s2", "s3 s4", "s5"]),
        ("A B C || D E F", ["s0 s1 s2", "", "s3 s4 s5"]),
        ("| | A B C | D E F | |", ["", "s0 s1 s2", "s3 s4 s5", ""]),
        ("A. B. C.\n—\nD - E\n· · ·\n[f]", ["s0 s1 s2", "s3 s4", "s5"]),
    ],
)
def test_all_codes_typed(text: str, lines: list[str]) -> None:
    typed = typed_codes(own_order(), text)
    assert [" ".join(line) for line in typed.lines] == lines
    assert (typed.right, typed.unknown, typed.twice, typed.left_out) == (True, (), (), ())


def test_unknown_double_and_missing_codes_are_told() -> None:
    typed = typed_codes(own_order(), "A Z9 B A\nD z9 Q D D")
    assert (typed.unknown, typed.twice, typed.left_out) == (("Z9", "Q"), ("A", "D"), ("C", "E", "F"))
    assert not typed.right


@pytest.mark.parametrize("text", ["", " \n ", "|", "||\n|", "— …\n,"])
def test_nothing_typed_is_not_right(text: str) -> None:
    assert not typed_codes(own_order(), text).right
