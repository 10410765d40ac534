"""What happens: words that tell of an actual, specific, asserted event (the definition of LitBank).

Sims, Park & Bamman (2019), Literary Event Detection. A logistic model in two steps: the signs of each word by itself,
then those of its surroundings. Weights are learned from LitBank by `python -m bench.measures.learn`.
"""

from collections.abc import Iterable, Iterator, Sequence
from itertools import chain
from math import exp

from afterdraft.reading.counted import Event
from afterdraft.reading.event_nearby import nearby
from afterdraft.reading.event_signs import Clue, clues
from afterdraft.reading.event_weights import BIAS, LEAST, NEARBY, OWN, weights
from afterdraft.reading.grammar import Grammar

Found = tuple[int, Clue]  # paragraph, word


def events(paragraphs: Sequence[Grammar]) -> tuple[Event, ...]:
    """Of a scene, in order."""
    found = list(candidates(paragraphs))
    scores = scored(found, [own_score(clue.signs) for _, clue in found])
    return tuple(
        Event(number, paragraphs[number].of.starts[clue.token], paragraphs[number].of.end(clue.token))
        for (number, clue), score in zip(found, scores, strict=True)
        if score >= LEAST
    )


def candidates(paragraphs: Sequence[Grammar]) -> Iterator[Found]:
    return chain.from_iterable(((number, clue) for clue in clues(one)) for number, one in enumerate(paragraphs))


def own_score(signs: Iterable[str]) -> float:
    """Log odds of a word by its own signs."""
    known = weights()
    return BIAS + sum(known.get(sign, 0.0) for sign in signs)


def scored(found: Sequence[Found], own: Sequence[float]) -> list[float]:
    """Log odds of each word of a scene, its surroundings counted in."""
    rings = surroundings(found, own)
    return [
        OWN[0] + OWN[1] * score + sum(w * ring for w, ring in zip(NEARBY, some, strict=True))
        for score, some in zip(own, rings, strict=True)
    ]


def surroundings(found: Sequence[Found], own: Sequence[float]) -> list[tuple[float, ...]]:
    """For each word what `nearby` says, from the scores of all words by themselves."""
    return nearby([1 / (1 + exp(-score)) for score in own], list(_sentences(found)), [clue.spoken for _, clue in found])


def _sentences(found: Iterable[Found]) -> Iterator[int]:
    """Numbers of sentences with a candidate, over the whole scene."""
    number, before = -1, None
    for paragraph, clue in found:
        place = (paragraph, clue.sentence)
        number += place != before
        before = place
        yield number
