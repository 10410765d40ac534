"""`read_book`: the facts of all scenes to the cast, who speaks, and who is where."""

from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.cast import Cast, Person, find_cast
from afterdraft.whole.evidence import told_by_i
from afterdraft.whole.given import NOTHING, Given
from afterdraft.whole.headed import names_over
from afterdraft.whole.speakers import Spoken, said_of, spoken
from afterdraft.whole.speaking import Concerned, concerned
from afterdraft.whole.tellers import told_in
from afterdraft.whole.turns import guessed, meant

Presence = Literal["point of view", "on page", "mentioned"]
FEELINGS = 3  # verbs of perception and thought from which somebody may be a scene's viewpoint; common practice
LEAD = 1.5  # times as many as the next


@dataclass(frozen=True, slots=True)
class Appearance:
    """A person in a scene."""

    scene: int
    person: str
    presence: Presence
    mentions: int  # by name or role, or as 'I' of the narrator
    words_spoken: int


@dataclass(frozen=True, slots=True)
class BookRead:
    """`spoken` has one entry a scene, each beside that scene's quotes; `told` is the cast as each scene has it, whose
    narrator is the I of that scene."""

    cast: Cast
    told: tuple[Cast, ...]
    spoken: tuple[tuple[Spoken, ...], ...]
    appearances: tuple[Appearance, ...]

    def words_spoken(self) -> Counter[str]:
        """By person."""
        total: Counter[str] = Counter()
        for one in self.appearances:
            total[one.person] += one.words_spoken
        return total


Speak = Callable[[int, SceneFacts, Concerned], tuple[Spoken, ...]]  # as `spoken`, with the scene's number before


def speak_anew(_: int, scene: SceneFacts, cast: Concerned) -> tuple[Spoken, ...]:
    return spoken(scene, cast)


def read_book(
    scenes: Sequence[SceneFacts],
    given: Given = NOTHING,
    speak: Speak = speak_anew,
    heads: Sequence[Sequence[str]] = (),
) -> BookRead:
    """Everything that the facts of the scenes, in order, tell of people and speech, with what the writer has said;
    `heads` has for each scene the lines of the heading right over it."""
    cast = find_cast(scenes, given, heads)
    over = names_over(heads, cast.by_form) or ("",) * len(scenes)
    whose = [cast.by_form.get(name, "") for name in over]
    told = tuple(told_in(scene, cast, one) for scene, one in zip(scenes, whose, strict=True))
    said = tuple(
        speak(number, scene, concerned(scene, told[number], said_of(number, given)))
        for number, scene in enumerate(scenes)
    )
    appearances = tuple(
        one
        for number, scene in enumerate(scenes)
        for one in _appearances(number, scene, said[number], told[number], whose[number])
    )
    return BookRead(cast, told, said, appearances)


def _appearances(
    number: int, scene: SceneFacts, said: Sequence[Spoken], cast: Cast, whose: str
) -> Iterator[Appearance]:
    people = meant(scene, cast)
    mentions: Counter[str] = Counter()
    present: set[str] = {one.speaker for one in said if one.speaker}
    for mention, person in zip(scene.mentions, people, strict=True):
        if person:
            mentions[person] += 1
            if mention.called or (mention.subject and not mention.spoken):
                present.add(person)
    words: Counter[str] = Counter()
    for one in said:
        if one.speaker:
            words[one.speaker] += scene.quotes[one.quote].words
    viewpoint = whose if whose in present and not told_by_i(scene) else _viewpoint(scene, people, cast)
    for who in cast.people:
        if who.id in mentions or who.id in present:
            how: Presence = "on page" if who.id in present else "mentioned"
            how = "point of view" if who.id == viewpoint else how
            yield Appearance(number, who.id, how, mentions[who.id], words[who.id])


def _viewpoint(scene: SceneFacts, people: Sequence[str | None], cast: Cast) -> str | None:
    """The I that tells; else who perceives and thinks outside speech, where one person plainly does most."""
    if told_by_i(scene):
        return cast.narrator.id if cast.narrator else None
    guesses = guessed(scene, people, genders(cast.people))
    felt: Counter[str] = Counter()
    for mention, person, guess in zip(scene.mentions, people, guesses, strict=True):
        who = person or guess
        if who and mention.feels and not mention.spoken:
            felt[who] += 1
    ranked = felt.most_common(2)
    if not ranked or ranked[0][1] < FEELINGS:
        return None
    return ranked[0][0] if len(ranked) == 1 or ranked[0][1] >= LEAD * ranked[1][1] else None


def genders(people: Sequence[Person]) -> Mapping[str, Literal["f", "m", "n", ""]]:
    """By person's id."""
    return {person.id: person.gender for person in people}
