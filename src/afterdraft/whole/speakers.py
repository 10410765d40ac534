"""Who speaks each quotation: by sieves, surest first, then the best chain through the scene.

Who is named beside the words speaks them. Elsewhere everybody of the scene is weighed by what tells for them: a
pronoun's gender, who acts beside the words, who was called just before, whose turn it is, who was near; and a beam
search takes the chain of speakers that fits best as a whole (the sieves of
Muzny et al. 2017, weighed together).
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import exp
from types import MappingProxyType
from typing import Literal

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.cast import Cast
from afterdraft.whole.given import Given
from afterdraft.whole.speaking import Heard, distance, heard
from afterdraft.whole.speaking_signs import FAR_BACK, alone, in_chain
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
    known = {person.id for person in cast.people} | {""}
    seen = heard(scene, cast, {place: person for place, person in said.items() if person in known})
    chains = [_Chain(0.0, ())]
    for number in range(len(seen.turns)):
        chains = _longer(chains, number, seen)
    best = chains[0].speakers
    return tuple(
        Spoken(quote, best[number], _how(turn, best[number]), _sure(number, best, seen))
        for number, turn in enumerate(seen.turns)
        for quote in turn.quotes
    )


def said_of(scene: int, given: Given) -> dict[tuple[int, int], str]:
    """What the writer said of the quotations of one scene, as `speakers` takes it."""
    return {
        (paragraph, start): person for (number, paragraph, start), person in given.speakers.items() if number == scene
    }


def _longer(chains: Sequence[_Chain], number: int, seen: Heard) -> list[_Chain]:
    turn = seen.turns[number]
    if turn.said == "":
        return [_Chain(chain.score, (*chain.speakers, None)) for chain in chains]
    fixed = _fixed(turn, seen)
    candidates = [fixed] if fixed else _candidates(turn, seen)
    if not candidates:
        return [_Chain(chain.score, (*chain.speakers, None)) for chain in chains]
    own = {person: 0.0 if fixed else weighed(alone(person, number, seen)) for person in candidates}
    silent: dict[str, float] = {}  # who has not spoken for long is weighed alike after every chain

    def fits(person: str, before: tuple[str | None, ...]) -> float:
        if person in before[-FAR_BACK:]:
            return weighed(in_chain(person, number, before, seen))
        if person not in silent:
            silent[person] = weighed(in_chain(person, number, before, seen))
        return silent[person]

    made = [
        _Chain(chain.score + own[person] + fits(person, chain.speakers), (*chain.speakers, person))
        for chain in chains
        for person in candidates
    ]
    best: dict[tuple[str | None, ...], _Chain] = {}
    for chain in sorted(made, key=lambda one: -one.score):  # chains that end alike go on alike
        best.setdefault(chain.speakers[-4:], chain)
        if len(best) == BEAM:
            break
    return list(best.values())


def weighed(signs: Iterable[str]) -> float:
    """How much signs tell together, as a logarithm of odds."""
    return sum(WEIGHTS.get(sign, 0.0) for sign in signs)


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


def _sure(number: int, best: Sequence[str | None], seen: Heard) -> float:
    """From how far the next best person is behind, all others being who they are."""
    turn = seen.turns[number]
    person = best[number]
    if turn.said is not None:
        return SAID
    if person is None:
        return 0.0
    if _fixed(turn, seen):
        return of_name(turn, person, seen)

    def whole(other: str) -> float:
        chain = [*best[:number], other, *best[number + 1 :]]
        after = range(number + 1, min(number + 3, len(best)))
        return weighed(alone(other, number, seen)) + sum(
            weighed(in_chain(speaker, place, chain, seen)) for place in (number, *after) if (speaker := chain[place])
        )

    mine = whole(person)
    rest = sum(exp(whole(other) - mine) for other in _candidates(turn, seen) if other != person)
    return of_odds(1 / (1 + rest), turn, seen)


SAID = 1.0  # by the writer
