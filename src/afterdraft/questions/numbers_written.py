"""Whole numbers as prose writes them: 'two hundred and twelve', 'twenty-eight hundred', '2,180'."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.reading.time_words import ONES, TENS

_ONE = "|".join(ONES)
_DIGIT = "one|two|three|four|five|six|seven|eight|nine"
_TEN = "|".join(TENS)
NUMBER_WORDS = rf"{_ONE}|{_TEN}|hundred|thousand"
_BELOW = rf"(?:(?:{_TEN})(?:[\s-](?:{_DIGIT}))?|(?:{_DIGIT})-and-(?:{_TEN})|{_ONE})"
_HUNDREDS = rf"(?:(?:(?:{_BELOW}|an?)[\s-])?hundred(?:,?\sand\s{_BELOW}|[\s-]{_BELOW})?|{_BELOW})"
_WORDS = rf"(?:(?:{_HUNDREDS}|an?)[\s-]thousand(?:,?\s(?:and\s)?{_HUNDREDS})?|{_HUNDREDS})"
_NUMBER = re.compile(
    rf"(?<![\w’'.,-])(?P<sign>[£$€])?(?:(?P<words>{_WORDS})|(?P<figures>\d{{1,3}}(?:,\d{{3}})+|\d{{1,7}}))"
    r"(?!\w|[.,:/]\d|-(?:and|odd|some|fold)\b|[’']s?\w)",
    re.IGNORECASE,
)
_NO_NUMBER = re.compile(r"\s(?:hundreds?|thousands?|millions?|dozen|score|and\sa\shalf)\b|\s?(?:½|%|per\s?cent\b)")


@dataclass(frozen=True, slots=True)
class Number:
    value: int
    sign: str  # of money before it
    in_figures: bool  # 1893, which may be a year, and not 1,893
    start: int
    end: int


def numbers(text: str) -> Iterator[Number]:
    """In order; not those that go on as no whole number: 'two million', 'ten per cent'.

    >>> [one.value for one in numbers("Twenty-eight hundred dollars, the hundred and ten steps, £4,018.")]
    [2800, 110, 4018]
    """
    for match in _NUMBER.finditer(text):
        if not _NO_NUMBER.match(text, match.end()):
            plain = bool(match["figures"]) and "," not in match["figures"] and not match["sign"]
            yield Number(value(match["words"] or match["figures"]), match["sign"] or "", plain, *match.span())


def value(words: str) -> int:
    """
    >>> value("Thirty-eight thousand and four hundred"), value("five-and-twenty"), value("1,200")
    (38400, 25, 1200)
    """
    total = here = 0
    for word in re.split(r"[\s-]+", words.lower().replace(",", "")):
        if word.isdigit():
            return int(word)
        if word == "hundred":
            here = (here or 1) * 100
        elif word == "thousand":
            total, here = (here or 1) * 1000, 0
        else:
            here += ONES.get(word) or TENS.get(word) or 0
    return total + here


def significant(number: int) -> int:
    """How many of its digits are not the noughts at its end.

    >>> significant(2180), significant(200)
    (3, 1)
    """
    return len(str(number).rstrip("0"))


def rounds(exact: int, other: int) -> bool:
    """Whether the other number is what people say for the exact one; up to twenty they count.

    >>> rounds(212, 200), rounds(212, 240), rounds(87, 90), rounds(18, 20)
    (True, False, True, False)
    """
    step = 10 ** (len(str(other)) - significant(other))
    return other > 20 and step > 1 and exact != other and abs(exact - other) <= step / 2


def is_near_double(one: int, other: int) -> bool:
    """Whether one digit differs, or two have changed places.

    >>> is_near_double(2180, 2280), is_near_double(38400, 34800), is_near_double(212, 240)
    (True, True, False)
    """
    first, second = str(one), str(other)
    apart = [place for place, (a, b) in enumerate(zip(first, second, strict=False)) if a != b]
    if len(first) != len(second) or not apart:
        return False
    return len(apart) == 1 or (len(apart) == 2 and sorted(first) == sorted(second))


def is_exact(low: int, high: int) -> bool:
    """Whether two figures are no round ones: one has three digits before its noughts, or both are of thousands and have
    two; none has two that end in a five.

    >>> is_exact(212, 240), is_exact(2800, 3200), is_exact(1500, 1820), is_exact(120, 140)
    (True, True, False, False)
    """
    digits = [significant(one) for one in (low, high)]
    if any(count == 2 and str(one)[1] == "5" for count, one in zip(digits, (low, high), strict=True)):
        return False
    return min(digits) > 1 and (max(digits) > 2 or low >= 1000)
