"""Who speaks each quotation: by sieves, surest first, then the best chain through the scene.

Who is named beside the words speaks them. Elsewhere everybody of the scene is weighed by what tells for them: a
pronoun's gender, who acts beside the words, who was called just before, whose turn it is, who was near; and a beam
search takes the chain of speakers that fits best as a whole (the sieves of
Muzny et al. 2017, weighed together).
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import exp
from operator import itemgetter
from types import MappingProxyType
from typing import Literal

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.cast import Cast
from afterdraft.whole.given import Given
from afterdraft.whole.speaking import Concerned, Heard, concerned, distance, heard
from afterdraft.whole.speaking_signs import SILENT, Asked, alone, before, in_chain
from afterdraft.whole.speaking_weights import WEIGHTS
from afterdraft.whole.sureness import of_name, of_odds
from afterdraft.whole.turns import Turn

How = Literal["named", "pronoun", "turn", "none"]
NONE_SAID: Mapping[tuple[int, int], str] = MappingProxyType({})
BEAM = 16  # chains kept at each turn; twice as many change nothing
MOST = 16  # candidates for a turn: those named nearest and most


@dataclass(frozen=True, slots=True)
class Spoken:
    """Who speaks one quotation of a scene's facts."""

    quote: int
    speaker: str | None
    how: How
    sure: float  # 0…1


@dataclass(frozen=True, slots=True)
class _Chain:
    score: float
    speakers: tuple[str | None, ...]


def speakers(scene: SceneFacts, cast: Cast, said: Mapping[tuple[int, int], str] = NONE_SAID) -> tuple[Spoken, ...]:
    """The speaker of every quotation of the scene, in order.

    `said` has by paragraph and start of a quotation whom the writer named for it, "" for nobody; it wins, and is a
    turn taken for all turns beside it. People who are not of the cast are passed over.
    """
    return spoken(scene, concerned(scene, cast, said))


def spoken(scene: SceneFacts, cast: Concerned) -> tuple[Spoken, ...]:
    """As `speakers`, from what of the cast concerns the scene."""
    seen = heard(scene, cast)
    weights = _Weights(seen)
    chains = [_Chain(0.0, ())]
    for number in range(len(seen.turns)):
        chains = _longer(chains, number, weights)
    best = chains[0].speakers
    return tuple(
        Spoken(quote, best[number], _how(turn, best[number]), _sure(number, best, weights))
        for number, turn in enumerate(seen.turns)
        for quote in turn.quotes
    )


def said_of(scene: int, given: Given) -> dict[tuple[int, int], str]:
    """What the writer said of the quotations of one scene, as `speakers` takes it."""
    return {
        (paragraph, start): person for (number, paragraph, start), person in given.speakers.items() if number == scene
    }


class _Weights:
    """What signs tell together, as logarithms of odds; the same asked again is looked up."""

    def __init__(self, seen: Heard) -> None:
        self.seen = seen
        self._alone: dict[tuple[str, int], float] = {}
        self._in_chain: dict[tuple[str, int, Asked], float] = {}

    def alone(self, person: str, number: int) -> float:
        known = self._alone.get(asked := (person, number))
        if known is None:
            known = self._alone[asked] = _weighed(alone(person, number, self.seen))
        return known

    def in_chain(self, person: str, number: int, after: Asked = SILENT) -> float:
        known = self._in_chain.get(asked := (person, number, after))
        if known is None:
            known = self._in_chain[asked] = _weighed(in_chain(person, number, after, self.seen))
        return known


def _weighed(signs: Iterable[str]) -> float:
    return sum(WEIGHTS.get(sign, 0.0) for sign in signs)


def _longer(chains: Sequence[_Chain], number: int, weights: _Weights) -> list[_Chain]:
    seen = weights.seen
    turn = seen.turns[number]
    fixed = _fixed(turn, seen)
    candidates = [fixed] if fixed else _candidates(turn, seen)
    if turn.said == "" or not candidates:
        return [_Chain(chain.score, (*chain.speakers, None)) for chain in chains]
    own = [
        (person, 0.0 if fixed else weights.alone(person, number), weights.in_chain(person, number))
        for person in candidates
    ]
    made: list[tuple[float, _Chain, str]] = []
    for chain in chains:
        after = before(number, chain.speakers, seen)
        for person, weight, silent in own:
            fits = weights.in_chain(person, number, after.of(person)) if person in after.spoke else silent
            made.append((chain.score + weight + fits, chain, person))
    best: dict[tuple[str | None, ...], _Chain] = {}
    for score, chain, person in sorted(made, key=itemgetter(0), reverse=True):
        end = (*chain.speakers[-3:], person)  # chains that end alike go on alike
        if end not in best:
            best[end] = _Chain(score, (*chain.speakers, person))
        if len(best) == BEAM:
            break
    return list(best.values())


def _fixed(turn: Turn, seen: Heard) -> str | None:
    """The speaker where words beside the quotation or the writer leave no doubt."""
    if turn.said:
        return turn.said
    if turn.tag == "self" and turn.plain:
        return seen.narrator
    return turn.named if turn.tag == "named" and turn.plain else None


def _candidates(turn: Turn, seen: Heard) -> list[str]:
    """Everybody named in the scene, the nearest and commonest first."""
    ranked = sorted(
        seen.named, key=lambda person: (distance(person, turn.paragraph, seen) - seen.counts[person], person)
    )
    return ranked[:MOST]


def _how(turn: Turn, speaker: str | None) -> How:
    if speaker is None:
        return "none"
    if turn.said:
        return "named"
    if turn.plain and turn.tag in ("named", "self"):
        return "named"
    return "pronoun" if turn.plain and turn.tag == "pronoun" else "turn"


def _sure(number: int, best: Sequence[str | None], weights: _Weights) -> float:
    """From how far the next best person is behind, all others being who they are."""
    seen = weights.seen
    turn = seen.turns[number]
    person = best[number]
    if turn.said is not None:
        return SAID
    if person is None:
        return 0.0
    if _fixed(turn, seen):
        return of_name(turn, person, seen)

    def whole(other: str) -> float:
        chain = [*best[:number], other, *best[number + 1 : number + 3]]
        return weights.alone(other, number) + sum(
            weights.in_chain(speaker, place, before(place, chain, seen).of(speaker))
            for place in range(number, len(chain))
            if (speaker := chain[place])
        )

    mine = whole(person)
    rest = sum(exp(whole(other) - mine) for other in _candidates(turn, seen) if other != person)
    return of_odds(1 / (1 + rest), turn, seen)


SAID = 1.0  # by the writer
