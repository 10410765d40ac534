"""Letters for what runs through the book: one or two capitals, each its own among things of its kind."""

import re
from collections.abc import Collection
from itertools import chain, product
from string import ascii_uppercase

_LETTER = re.compile(r"[A-Z]{1,2}")


def is_letter(text: str) -> bool:
    """Whether it is one or two capitals, A to Z."""
    return _LETTER.fullmatch(text) is not None


def free_letter(name: str, used: Collection[str]) -> str:
    """A letter that nothing has yet: the name's first that is free, then any, then two.

    Raises `ValueError` when all 702 are used.
    """
    own = [letter for letter in name.upper() if letter in ascii_uppercase]
    pairs = ("".join(pair) for pair in product(ascii_uppercase, repeat=2))
    for letter in chain(own[:1], own[1:], ascii_uppercase, pairs):
        if letter not in used:
            return letter
    raise ValueError("no letter is left")
