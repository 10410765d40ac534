"""Numbers as headings print them: in figures, in roman numerals, in English words."""

import re
from dataclasses import dataclass
from typing import Literal

Form = Literal["figures", "roman", "words"]


@dataclass(frozen=True, slots=True)
class Numeral:
    value: int
    form: Form


LARGEST = 999  # no book has more chapters; a larger figure is a year or a page
FIGURES = re.compile(r"(\d{1,3})(?:st|nd|rd|th)?", re.IGNORECASE)
ROMAN = re.compile(
    r"(?=[ivxlc])c{0,3}(l?x{0,4}|x[lc])(v?i{0,4}|i[vx])", re.IGNORECASE
)  # below 400: D and M are initials
ROMAN_VALUES = {"i": 1, "v": 5, "x": 10, "l": 50, "c": 100}

UNITS = {
    word: value
    for value, words in enumerate(
        (
            "one first",
            "two second",
            "three third",
            "four fourth",
            "five fifth",
            "six sixth",
            "seven seventh",
            "eight eighth",
            "nine ninth",
            "ten tenth",
            "eleven eleventh",
            "twelve twelfth",
            "thirteen thirteenth",
            "fourteen fourteenth",
            "fifteen fifteenth",
            "sixteen sixteenth",
            "seventeen seventeenth",
            "eighteen eighteenth",
            "nineteen nineteenth",
        ),
        start=1,
    )
    for word in words.split()
}
TENS = {
    word: value
    for value, words in zip(
        range(20, 100, 10),
        (
            "twenty twentieth",
            "thirty thirtieth",
            "forty fortieth fourty",
            "fifty fiftieth",
            "sixty sixtieth",
            "seventy seventieth",
            "eighty eightieth",
            "ninety ninetieth",
        ),
        strict=True,
    )
    for word in words.split()
}
HUNDRED = {"hundred", "hundredth"}


def read(text: str) -> Numeral | None:
    """The number that `text` is, nothing else beside it; None where it is none, or above `LARGEST`."""
    text = text.strip()
    figures = FIGURES.fullmatch(text)
    if figures:
        value = int(figures[1])
        return Numeral(value, "figures") if value <= LARGEST else None
    if ROMAN.fullmatch(text) and (text.isupper() or text.islower()):
        return Numeral(_roman(text.lower()), "roman")
    spelled = _spelled(re.split(r"[\s\-‐‑–]+", text.lower()))
    return Numeral(spelled, "words") if spelled else None


def _roman(text: str) -> int:
    values = [ROMAN_VALUES[letter] for letter in text]
    following = [*values[1:], 0]
    return sum(-value if value < after else value for value, after in zip(values, following, strict=True))


def _spelled(words: list[str]) -> int | None:
    """`["one", "hundred", "and", "five"]` → 105; None for anything that is no number below a thousand."""
    if len(words) >= 2 and words[1] in HUNDRED and (words[0] in UNITS or words[0] == "a"):
        hundreds = 100 * UNITS.get(words[0], 1)
        rest = [word for word in words[2:] if word != "and"]
        below = _below_hundred(rest) if rest else 0
        return None if below is None else hundreds + below
    return _below_hundred(words)


def _below_hundred(words: list[str]) -> int | None:
    match words:
        case [only]:
            return UNITS.get(only) or TENS.get(only)
        case [tens, unit] if tens in TENS and UNITS.get(unit, 10) < 10:
            return TENS[tens] + UNITS[unit]
        case _:
            return None
