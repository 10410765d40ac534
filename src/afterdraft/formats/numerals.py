"""Numbers in the formats of automatic numbering (ST_NumberFormat, ECMA-376 part 1, §17.18.59); words in English."""

from collections.abc import Callable, Mapping

_ROMAN = (
    (1000, "M"), (900, "CM"), (500, "D"), (400, "CD"), (100, "C"), (90, "XC"),
    (50, "L"), (40, "XL"), (10, "X"), (9, "IX"), (5, "V"), (4, "IV"), (1, "I"),
)  # fmt: skip
_ONES = (
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
    "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
)  # fmt: skip
_TENS = ("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_ORDINALS = {
    "one": "first", "two": "second", "three": "third", "five": "fifth",
    "eight": "eighth", "nine": "ninth", "twelve": "twelfth",
}  # fmt: skip
_MOST_IN_WORDS = 9_999
_MOST_ROMAN = 3_999
_MOST_LETTERS = 780  # thirty times the alphabet, as far as word processors go


def numeral(number: int, format: str) -> str:
    """`number` (0 or more) as `format` prints it; a format not known here prints figures."""
    return _FORMATS.get(format, str)(number)


def _roman(number: int) -> str:
    if not 0 < number <= _MOST_ROMAN:
        return str(number)
    result = ""
    for worth, sign in _ROMAN:
        result += sign * (number // worth)
        number %= worth
    return result


def _letter(number: int) -> str:
    """A…Z, then AA, BB, …"""
    if not 0 < number <= _MOST_LETTERS:
        return str(number)
    times, which = divmod(number - 1, 26)
    return chr(ord("A") + which) * (times + 1)


def _ordinal(number: int) -> str:
    teens = 10 <= number % 100 <= 20
    return f"{number}{'th' if teens else {1: 'st', 2: 'nd', 3: 'rd'}.get(number % 10, 'th')}"


def _words(number: int) -> str:
    if number < 20:
        return _ONES[number]
    if number < 100:
        tens, ones = divmod(number, 10)
        return _TENS[tens] + (f"-{_ONES[ones]}" if ones else "")
    worth, name = (1000, "thousand") if number >= 1000 else (100, "hundred")
    more, rest = divmod(number, worth)
    return f"{_words(more)} {name}" + (f" {_words(rest)}" if rest else "")


def _ordinal_words(number: int) -> str:
    before, last = _parted(_words(number))
    if last in _ORDINALS:
        return before + _ORDINALS[last]
    return before + (f"{last[:-1]}ieth" if last.endswith("y") else f"{last}th")


def _parted(words: str) -> tuple[str, str]:
    """Up to the last word, and the last word."""
    at = max(words.rfind(" "), words.rfind("-")) + 1
    return words[:at], words[at:]


def _in_words(say: Callable[[int], str]) -> Callable[[int], str]:
    return lambda number: say(number).capitalize() if number <= _MOST_IN_WORDS else str(number)


_FORMATS: Mapping[str, Callable[[int], str]] = {
    "decimalZero": lambda number: f"{number:02}",
    "upperRoman": _roman,
    "lowerRoman": lambda number: _roman(number).lower(),
    "upperLetter": _letter,
    "lowerLetter": lambda number: _letter(number).lower(),
    "ordinal": _ordinal,
    "cardinalText": _in_words(_words),
    "ordinalText": _in_words(_ordinal_words),
    "numberInDash": lambda number: f"- {number} -",
    "none": lambda _: "",
    "bullet": lambda _: "",
}
