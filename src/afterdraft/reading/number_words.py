"""Numbers as English writes them out: cardinals and ordinals to 99, and years."""

import re


def listed(words: str) -> list[str]:
    """In order."""
    return words.split()


_ONES = listed("one two three four five six seven eight nine")
_TEENS = listed("ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen")
_TENS = listed("twenty thirty forty fifty sixty seventy eighty ninety")
_FIRST = listed("first second third fourth fifth sixth seventh eighth ninth")
_TENTH = listed("tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth")
_TWENTIETH = listed("twentieth thirtieth fortieth fiftieth sixtieth seventieth eightieth ninetieth")

CARDINALS: dict[str, int] = {word: n for n, word in enumerate([*_ONES, *_TEENS], 1)}
CARDINALS |= {word: 10 * n for n, word in enumerate(_TENS, 2)}
ORDINALS: dict[str, int] = {word: n for n, word in enumerate([*_FIRST, *_TENTH], 1)}
ORDINALS |= {word: 10 * n for n, word in enumerate(_TWENTIETH, 2)}

CARDINAL = rf"(?:(?:{'|'.join(_TENS)})(?:[- ](?:{'|'.join(_ONES)}))?|{'|'.join([*_TEENS, *_ONES])})"
ORDINAL = rf"(?:(?:{'|'.join(_TENS)})[- ](?:{'|'.join(_FIRST)})|{'|'.join([*_TWENTIETH, *_TENTH, *_FIRST])})"
YEAR = (
    rf"(?:(?:seventeen|eighteen|nineteen) hundred(?: and {CARDINAL})?"
    rf"|(?:seventeen|eighteen|nineteen|twenty)[- ]{CARDINAL})"
)


def number(words: str) -> int | None:
    """ "thirty-one" 31, "twenty-first" 21, "17th" 17, "a" and "an" 1; None for what is no number up to 99."""
    words = words.lower().strip()
    if words in ("a", "an"):
        return 1
    if figures := re.fullmatch(r"(\d+)(?:st|nd|rd|th)?", words):
        return int(figures[1])
    parts = [CARDINALS.get(part) or ORDINALS.get(part) for part in re.split(r"[- ]+", words)]
    if not parts or None in parts or len(parts) > 2:
        return None
    return sum(part for part in parts if part)


def year(words: str) -> int | None:
    """ "eighteen hundred and forty-eight", "nineteen-twelve", "1897", "’forty-nine" without its century (49)."""
    words = words.lower().strip().lstrip("’'")
    if words.isdecimal():
        return int(words)
    if " hundred" in words:
        century, _, rest = words.partition(" hundred")
        tens = number(rest.removeprefix(" and ")) if rest else 0
        return None if tens is None else 100 * (number(century) or 0) + tens
    first, _, rest = re.sub("[- ]", " ", words, count=1).partition(" ")
    if first in ("seventeen", "eighteen", "nineteen", "twenty") and (number(rest) or 0) >= 10:
        return 100 * CARDINALS[first] + (number(rest) or 0)
    return number(words)
