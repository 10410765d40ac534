"""Numbers as headings print them. Roman numerals are checked against the rules of the standard subtractive form
(seven signs, four to six subtractions) written out again here; number words by counting up in English."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.manuscript.structure.numerals import Numeral, read

ROMAN = ((100, "C"), (90, "XC"), (50, "L"), (40, "XL"), (10, "X"), (9, "IX"), (5, "V"), (4, "IV"), (1, "I"))
ONES = [
    "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
    "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
]  # fmt: skip
TENS = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"]


def roman(number: int) -> str:
    out = ""
    for value, sign in ROMAN:
        out, number = out + sign * (number // value), number % value
    return out


def words(number: int) -> str:
    if number >= 100:
        rest = f" and {words(number % 100)}" if number % 100 else ""
        return f"{ONES[number // 100 - 1]} hundred{rest}"
    if number < 20:
        return ONES[number - 1]
    return TENS[number // 10 - 2] + (f"-{ONES[number % 10 - 1]}" if number % 10 else "")


@given(st.integers(1, 399))
def test_every_number_is_read_in_every_form(number: int) -> None:
    assert read(roman(number)) == Numeral(number, "roman")
    assert read(roman(number).lower()) == Numeral(number, "roman")
    assert read(str(number)) == Numeral(number, "figures")
    assert read(words(number)) == Numeral(number, "words")
    assert read(words(number).title().replace("-", " ")) == Numeral(number, "words")


@pytest.mark.parametrize(
    ("text", "value"), [("first", 1), ("Twenty-First", 21), ("thirtieth", 30), ("2nd", 2), ("XIIII", 14), ("IIII", 4)]
)
def test_ordinals_and_old_forms(text: str, value: int) -> None:
    found = read(text)
    assert found is not None
    assert found.value == value


@pytest.mark.parametrize("text", ["", "Ferry", "Iv", "IVX", "VV", "1912", "one ferry", "twenty-ten", "mix", "D"])
def test_what_is_no_number(text: str) -> None:
    assert read(text) is None
