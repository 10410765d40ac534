"""How full of events the places round a word are: events come in runs, and so do habits, views and reflections."""

from collections.abc import Sequence
from itertools import accumulate
from math import log

NEAR = (0, 2, 8)  # sentences on either side: its own, the next ones, the stretch it lies in
_PRIOR = 0.1  # what one word more would be, in each place: about the share of words that are events
_LEAST, _MOST = 0.001, 0.9


def nearby(chances: Sequence[float], sentences: Sequence[int], spoken: Sequence[bool]) -> list[tuple[float, ...]]:
    """For each word of a scene, log odds of its surroundings, the word itself left out: for each ring of `NEAR` round
    the ring before, then of all that is spoken, or all that is not, as the word is.

    `sentences` numbers each word's sentence, rising from 0.
    """
    ends = _ends(sentences)
    sums = [0.0, *accumulate(chances)]
    sides = {
        side: (sum(c for c, is_side in zip(chances, spoken, strict=True) if is_side is side), spoken.count(side))
        for side in (False, True)
    }
    found = []
    for chance, sentence, side in zip(chances, sentences, spoken, strict=True):
        total, words = chance, 1
        rings = []
        for near in NEAR:
            first = ends[max(0, sentence - near)]
            end = ends[min(len(ends) - 1, sentence + near + 1)]
            rings.append(_odds(sums[end] - sums[first] - total, end - first - words))
            total, words = sums[end] - sums[first], end - first
        found.append((*rings, _odds(sides[side][0] - chance, sides[side][1] - 1)))
    return found


def _ends(sentences: Sequence[int]) -> list[int]:
    """Where each sentence's words begin among all, and where the last end."""
    starts = [place for place, number in enumerate(sentences) if not place or number != sentences[place - 1]]
    return [*starts, len(sentences)]


def _odds(total: float, words: int) -> float:
    share = min(_MOST, max(_LEAST, (total + _PRIOR) / (words + 1)))
    return log(share / (1 - share))
