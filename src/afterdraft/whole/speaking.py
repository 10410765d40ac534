"""What tells for a person as the speaker of a turn, by itself and after those who spoke before.

Weights are set by hand, chosen on the tuning half of the dialogue corpus.
"""

from bisect import bisect_left
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import log

from afterdraft.reading.facts import Gender, SceneFacts
from afterdraft.whole.cast import Cast
from afterdraft.whole.turns import Turn, guessed, meant, turns

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
PARTED = -12.0  # two whose tags differ within a paragraph
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
class Heard:
    """A scene as its speakers are looked for."""

    turns: tuple[Turn, ...]
    named: Mapping[str, tuple[int, ...]]  # in order: paragraphs in which each person is named outside speech, or called
    acting: Mapping[int, str]  # by paragraph without speech: who acts last in it
    counts: Counter[str]
    genders: Mapping[str, Gender]
    narrator: str | None


def heard(scene: SceneFacts, cast: Cast, said: Mapping[tuple[int, int], str]) -> Heard:
    """The scene as its speakers are looked for; `said` by paragraph and start of a quotation, as the writer has it."""
    people = meant(scene, cast)
    genders = {person.id: person.gender for person in cast.people}
    guesses = guessed(scene, people, genders)
    found = turns(scene, people, guesses, said, genders)
    talking = {turn.paragraph for turn in found}
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
    return Heard(
        turns=found,
        named={person: tuple(places) for person, places in named.items()},
        acting=acting,
        counts=counts,
        genders=genders,
        narrator=narrator.id if narrator else None,
    )


def distance(person: str, paragraph: int, seen: Heard) -> int:
    """Paragraphs to the nearest in which the person is named."""
    places = seen.named[person]
    after = bisect_left(places, paragraph)
    return min(abs(paragraph - place) for place in places[max(0, after - 1) : after + 1])


def alone(person: str, turn: Turn, seen: Heard) -> float:
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


def in_chain(person: str, number: int, before: Sequence[str | None], seen: Heard) -> float:
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
        score += (PARTED, SAME_AGAIN, SAME_AFTER_TELLING)[gap] if gap <= 2 else 0.0
    elif turn.goes_on and gap <= 1:
        score -= CONTINUES
    if gap <= 2 and person in last.called:
        score += WAS_CALLED
    if number > 1 and person == before[number - 2] and person != before[number - 1]:
        far = turn.paragraph - seen.turns[number - 2].paragraph
        score += TURN_BACK if far == 2 else TURN_BACK_FAR if far <= 5 else 0.0
    return score


def _nearness(person: str, number: int, before: Sequence[str | None], seen: Heard) -> float:
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
