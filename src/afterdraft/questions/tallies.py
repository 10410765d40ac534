"""How votes fell: 'three hundred and eleven for, and eighty-four against', 'by nine to four', 'twenty-three all'."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from afterdraft.questions.numbers_written import Number, numbers

FAR = 120  # characters on either side in which it is said that there is a vote; chosen by hand
LEAST = 3  # votes on either side
_VOTE = re.compile(
    r"\b(?:vot\w+|motions?|ballots?|carried|majority|show\sof\shands|abst\w+|blank|ayes?|noes)\b", re.IGNORECASE
)
_TO = re.compile(r"(?:\svotes?)?(?:\sto|,?\sagainst)\s")
_FOR = re.compile(r"\s(?:votes?\s|voices?\s|hands?\s)?(?:for|in\sfavou?r)\b[^\d]{0,40}")
_AGAINST = re.compile(r"\s(?:votes?\s|voices?\s|hands?\s)?(?:were\s)?against\b")
_ALL = re.compile(r"\sall\b(?=[\s]?[,.;!”’\"])")


@dataclass(frozen=True, slots=True)
class Tally:
    won: int
    lost: int
    start: int
    end: int


def tallies(text: str) -> Iterator[Tally]:
    """Of a paragraph.

    >>> [(one.won, one.lost) for one in tallies("They voted by thirty-one to nine. “Nine all,” the ballot said.")]
    [(31, 9), (9, 9)]
    """
    said = list(numbers(text))
    for one, other in [*pairwise(said), *((one, one) for one in said if _ALL.match(text, one.end))]:
        if min(one.value, other.value) >= LEAST and _is_vote(text, one, other):
            yield Tally(one.value, other.value, one.start, other.end)


def _is_vote(text: str, one: Number, other: Number) -> bool:
    between = text[one.end : other.start]
    if _FOR.fullmatch(between) and _AGAINST.match(text, other.end):
        return True
    near = text[max(0, one.start - FAR) : other.end + FAR]
    return (one == other or bool(_TO.fullmatch(between))) and bool(_VOTE.search(near))
