"""Who speaks each quotation: by sieves, surest first, then the best chain through the scene.

Who is named beside the words speaks them. Elsewhere everybody of the scene is weighed by what tells for them: a
pronoun's gender, who acts beside the words, who was called just before, whose turn it is, who was near; and a beam
search takes the chain of speakers that fits best as a whole (the sieves of
Muzny et al. 2017, weighed together). Weights are set by hand, chosen on the tuning half of the dialogue corpus.
"""

from bisect import bisect_left
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import exp, log
from typing import Literal

from afterdraft.reading.facts import Gender, SceneFacts
from afterdraft.whole.cast import Cast
from afterdraft.whole.turns import Turn, guessed, meant, turns

How = Literal["named", "pronoun", "turn", "none"]
BEAM = 16  # chains kept at each turn; twice as many change nothing
MOST = 16  # candidates for a turn: those named nearest and most

WRONG_GENDER = -12.0
NO_GENDER = -2.0
ACTS_BESIDE = 10.0  # subject of the narration beside the words
GUESSED = 4.0  # the pronoun of the tag most likely means
GUESSED_BEFORE = 2.0  # the pronoun that acts before the words does
ACTS_BEFORE = 5.0
AROUND = 1.0
CALLS_SELF = -10.0
SPEAKS_OF_SELF = -4.0
WAS_CALLED = 5.0
SAME_AGAIN = -6.0  # two paragraphs of speech in a row are two people's
SAME_AFTER_TELLING = -1.0
TURN_BACK = 5.0  # who spoke before the last one
TURN_BACK_FAR = 1.5
LAST_ACTING = 3.0  # acts last in the narration right before
NEAR = (4.0, 3.5, 3.0, 2.0, 2.0, 1.0, 1.0, 1.0)  # by paragraphs since last named or speaking
NOT_YET = -2.0  # first named later in the scene
COMMON = 1.2  # times the logarithm of how often named in the scene
CONTINUES = 20.0


@dataclass(frozen=True, slots=True)
class Spoken:
    """Who speaks one quotation of a scene's facts."""

    quote: int
    speaker: str | None
    how: How
    sure: float  # 0…1


@dataclass(frozen=True, slots=True)
class _Scene:
    turns: tuple[Turn, ...]
    named: Mapping[str, tuple[int, ...]]  # in order: paragraphs in which each person is named outside speech, or called
    acting: Mapping[int, str]  # by paragraph without speech: who acts last in it
    counts: Counter[str]
    genders: Mapping[str, Gender]
    narrator: str | None


@dataclass(frozen=True, slots=True)
class _Chain:
    score: float
    speakers: tuple[str | None, ...]


def speakers(scene: SceneFacts, cast: Cast) -> tuple[Spoken, ...]:
    """The speaker of every quotation of the scene, in order."""
    people = meant(scene, cast)
    seen = _seen(scene, people, cast)
    chains = [_Chain(0.0, ())]
    for number in range(len(seen.turns)):
        chains = _longer(chains, number, seen)
    best = chains[0].speakers
    return tuple(
        Spoken(quote, best[number], _how(turn, best[number]), _sure(number, best, seen))
        for number, turn in enumerate(seen.turns)
        for quote in turn.quotes
    )


def _seen(scene: SceneFacts, people: Sequence[str | None], cast: Cast) -> _Scene:
    genders = {person.id: person.gender for person in cast.people}
    guesses = guessed(scene, people, genders)
    said = turns(scene, people, guesses)
    talking = {turn.paragraph for turn in said}
    named: dict[str, list[int]] = {}
    acting: dict[int, str] = {}
    counts: Counter[str] = Counter()
    for mention, person, guess in zip(scene.mentions, people, guesses, strict=True):
        if guess and mention.subject and mention.paragraph not in talking:
            acting[mention.paragraph] = guess
            named.setdefault(guess, []).append(mention.paragraph)
        if person is None:
            continue
        counts[person] += 1
        if not mention.spoken or mention.called:
            named.setdefault(person, []).append(mention.paragraph)
        if not mention.spoken and mention.subject and mention.paragraph not in talking:
            acting[mention.paragraph] = person
    narrator = cast.narrator
    return _Scene(
        turns=said,
        named={person: tuple(places) for person, places in named.items()},
        acting=acting,
        counts=counts,
        genders=genders,
        narrator=narrator.id if narrator else None,
    )


def _longer(chains: Sequence[_Chain], number: int, seen: _Scene) -> list[_Chain]:
    turn = seen.turns[number]
    fixed = _fixed(turn, seen)
    candidates = [fixed] if fixed else _candidates(turn, seen)
    if not candidates:
        return [_Chain(chain.score, (*chain.speakers, None)) for chain in chains]
    own = {person: 0.0 if fixed else _alone(person, turn, seen) for person in candidates}
    made = [
        _Chain(chain.score + own[person] + _in_chain(person, number, chain.speakers, seen), (*chain.speakers, person))
        for chain in chains
        for person in candidates
    ]
    best: dict[tuple[str | None, ...], _Chain] = {}
    for chain in sorted(made, key=lambda one: -one.score):  # chains that end alike go on alike
        best.setdefault(chain.speakers[-4:], chain)
        if len(best) == BEAM:
            break
    return list(best.values())


def _fixed(turn: Turn, seen: _Scene) -> str | None:
    """The speaker where words beside the quotation leave no doubt."""
    if turn.tag == "self" and turn.plain:
        return seen.narrator
    return turn.named if turn.tag == "named" and turn.plain else None


def _candidates(turn: Turn, seen: _Scene) -> list[str]:
    """Everybody named in the scene, the nearest and commonest first."""
    ranked = sorted(
        seen.named, key=lambda person: (_distance(person, turn.paragraph, seen) - seen.counts[person], person)
    )
    return ranked[:MOST]


def _distance(person: str, paragraph: int, seen: _Scene) -> int:
    places = seen.named[person]
    after = bisect_left(places, paragraph)
    return min(abs(paragraph - place) for place in places[max(0, after - 1) : after + 1])


def _alone(person: str, turn: Turn, seen: _Scene) -> float:
    """What tells for a person whoever spoke before."""
    score = COMMON * log(1 + seen.counts[person])
    if turn.gender and turn.tag == "pronoun":
        score += _gender_fits(turn.gender, seen.genders.get(person, ""), plain=turn.plain)
    if turn.tag in ("named", "self") and person == (turn.named or seen.narrator):
        score += ACTS_BESIDE
    if turn.tag == "pronoun" and person == seen.narrator:
        score += WRONG_GENDER
    score += GUESSED * (person == turn.guess) + GUESSED_BEFORE * (person == turn.guess_before)
    score += ACTS_BEFORE * (person == turn.before) + ACTS_BESIDE * (person == turn.beside and turn.tag == "none")
    score += AROUND * (person in turn.around)
    score += CALLS_SELF * (person in turn.called) + SPEAKS_OF_SELF * (person in turn.spoken_of)
    score += LAST_ACTING * (person == seen.acting.get(turn.paragraph - 1))
    return score


def _gender_fits(asked: Gender, known: Gender, *, plain: bool) -> float:
    if not known:
        return NO_GENDER
    return 0.0 if asked == known else WRONG_GENDER if plain else WRONG_GENDER / 2


def _in_chain(person: str, number: int, before: Sequence[str | None], seen: _Scene) -> float:
    """What tells for a person after those who spoke before."""
    turn = seen.turns[number]
    score = _nearness(person, number, before, seen)
    if not number:
        return score
    last = seen.turns[number - 1]
    gap = turn.paragraph - last.paragraph
    if person == before[number - 1]:
        if turn.goes_on and gap <= 1:
            return score + CONTINUES
        score += SAME_AGAIN if gap == 1 else SAME_AFTER_TELLING if gap == 2 else 0.0
    elif turn.goes_on and gap <= 1:
        score -= CONTINUES
    if gap <= 2 and person in last.called:
        score += WAS_CALLED
    if number > 1 and person == before[number - 2] and person != before[number - 1]:
        far = turn.paragraph - seen.turns[number - 2].paragraph
        score += TURN_BACK if far == 2 else TURN_BACK_FAR if far <= 5 else 0.0
    return score


def _nearness(person: str, number: int, before: Sequence[str | None], seen: _Scene) -> float:
    """By paragraphs since the person was named or spoke."""
    here = seen.turns[number].paragraph
    places = seen.named.get(person, ())
    before_here = bisect_left(places, here)
    last = places[before_here - 1] if before_here else None
    for back in range(number - 1, max(-1, number - 8), -1):
        if before[back] == person:
            last = max(last or 0, seen.turns[back].paragraph)
            break
    if last is None:
        return NOT_YET
    return NEAR[here - last] if here - last < len(NEAR) else 0.0


def _how(turn: Turn, speaker: str | None) -> How:
    if speaker is None:
        return "none"
    if turn.plain and turn.tag in ("named", "self"):
        return "named"
    return "pronoun" if turn.plain and turn.tag == "pronoun" else "turn"


def _sure(number: int, best: Sequence[str | None], seen: _Scene) -> float:
    """From how far the next best person is behind, all others being who they are."""
    turn = seen.turns[number]
    person = best[number]
    if person is None:
        return 0.0
    if _fixed(turn, seen):
        return NAMED

    def whole(other: str) -> float:
        chain = [*best[:number], other, *best[number + 1 :]]
        after = range(number + 1, min(number + 3, len(best)))
        return _alone(other, turn, seen) + sum(
            _in_chain(speaker, place, chain, seen) for place in (number, *after) if (speaker := chain[place])
        )

    mine = whole(person)
    rest = sum(exp(SOFT * (whole(other) - mine)) for other in _candidates(turn, seen) if other != person)
    return min(UNNAMED, 1 / (1 + rest))


NAMED = 0.96  # measured on the tuning half
UNNAMED = 0.95  # never surer than with a name
SOFT = 0.23  # how much a point of score is worth as odds; chosen on the tuning half
