"""A scene as its speakers are looked for: turns of speech, and who is near, acts and is named where."""

from bisect import bisect_left
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from afterdraft.reading.facts import Gender, SceneFacts
from afterdraft.whole.cast import Cast
from afterdraft.whole.turns import Turn, guessed, meant, turns

RARE = 0.012  # share of all names in the book below which somebody is hardly named
RECENT = 6  # people last named or acting that are kept beside each turn


@dataclass(frozen=True, slots=True)
class Concerned:
    """All that who speaks in a scene depends on besides the scene's own facts; people are ids of the cast."""

    people: tuple[str | None, ...]  # beside each mention, whom it names
    narrator: str | None
    genders: Mapping[str, Gender]
    seldom: frozenset[str]  # whom the book hardly names
    said: Mapping[tuple[int, int], str]  # by paragraph and start of a quotation, as the writer has it


@dataclass(frozen=True, slots=True)
class Heard:
    """A scene as its speakers are looked for; `recent` and `acted` stand beside the turns, the latest first."""

    turns: tuple[Turn, ...]
    named: Mapping[str, tuple[int, ...]]  # in order: paragraphs in which each person is named outside speech, or called
    acting: Mapping[int, str]  # by paragraph without speech: who acts last in it
    answering: Mapping[int, str]  # the same, where that is told as an answer: 'Ada said that it was late'
    recent: tuple[tuple[str, ...], ...]  # who was named, called or likely meant before the turn
    acted: tuple[tuple[str, ...], ...]  # who acted before it in the narration
    counts: Counter[str]
    genders: Mapping[str, Gender]
    seldom: frozenset[str]
    narrator: str | None


def concerned(scene: SceneFacts, cast: Cast, said: Mapping[tuple[int, int], str]) -> Concerned:
    """`said` as `speakers` takes it; people who are not of the cast are passed over."""
    people = meant(scene, cast)
    narrator = cast.narrator.id if cast.narrator else None
    known = {person.id: person for person in cast.people}
    said = {place: person for place, person in said.items() if person in known or not person}
    here = {person for person in (*people, narrator, *said.values()) if person}
    rare = RARE * sum(person.mentions for person in cast.people)
    return Concerned(
        people=people,
        narrator=narrator,
        genders={person: known[person].gender for person in here if person in known},
        seldom=frozenset(person for person in here if person in known and 0 < known[person].mentions < rare),
        said=said,
    )


def heard(scene: SceneFacts, cast: Concerned) -> Heard:
    """The scene as its speakers are looked for."""
    people, genders = cast.people, cast.genders
    guesses = guessed(scene, people, genders)
    found = turns(scene, people, guesses, cast.said, genders)
    talking = {turn.paragraph for turn in found}
    named: dict[str, list[int]] = {}
    acting: dict[int, str] = {}
    answering: dict[int, str | None] = {}
    counts: Counter[str] = Counter()
    for mention, person, guess in zip(scene.mentions, people, guesses, strict=True):
        if guess and mention.subject and mention.paragraph not in talking:
            acting[mention.paragraph] = guess
            answering[mention.paragraph] = guess if mention.answers else None
            named.setdefault(guess, []).append(mention.paragraph)
        if person is None:
            continue
        counts[person] += 1
        if not mention.spoken or mention.called:
            named.setdefault(person, []).append(mention.paragraph)
        if not mention.spoken and mention.subject and mention.paragraph not in talking:
            acting[mention.paragraph] = person
            answering[mention.paragraph] = person if mention.answers else None
    recent, acted = _latest(scene, people, guesses, found)
    return Heard(
        turns=found,
        named={person: tuple(places) for person, places in named.items()},
        acting=acting,
        answering={place: person for place, person in answering.items() if person},
        recent=recent,
        acted=acted,
        counts=counts,
        genders=genders,
        seldom=cast.seldom,
        narrator=cast.narrator,
    )


def _latest(
    scene: SceneFacts, people: Sequence[str | None], guesses: Sequence[str | None], found: Sequence[Turn]
) -> tuple[tuple[tuple[str, ...], ...], tuple[tuple[str, ...], ...]]:
    """Beside each turn, who was named and who acted before its paragraph, the latest first."""
    recent: list[tuple[str, ...]] = []
    acted: list[tuple[str, ...]] = []
    named: dict[str, None] = {}  # in the order of their last mention
    acting: dict[str, None] = {}
    mentions = iter(zip(scene.mentions, people, guesses, strict=True))
    waiting = next(mentions, None)
    for turn in found:
        while waiting and waiting[0].paragraph < turn.paragraph:
            mention, person, guess = waiting
            who = person or guess
            if who and (not mention.spoken or mention.called):
                named.pop(who, None)
                named[who] = None
                if mention.subject and not mention.spoken:
                    acting.pop(who, None)
                    acting[who] = None
            waiting = next(mentions, None)
        recent.append(tuple(reversed(named))[:RECENT])
        acted.append(tuple(reversed(acting))[:RECENT])
    return tuple(recent), tuple(acted)


def distance(person: str, paragraph: int, seen: Heard) -> int:
    """Paragraphs to the nearest in which the person is named."""
    places = seen.named[person]
    after = bisect_left(places, paragraph)
    return min(abs(paragraph - place) for place in places[max(0, after - 1) : after + 1])
