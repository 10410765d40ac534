"""Somebody in two places at one time."""

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.when_and_where import Known, known, same_day
from afterdraft.reading.time import Time
from afterdraft.whole.turns import meant

NEAR = 15  # minutes between two clock times of one day, in which nobody is in two places; chosen by hand
EARLY = 3  # paragraphs of a scene in which its clock time is looked for, likewise
APART = 2  # scenes between: from one scene to the next people walk over
SURE = 0.5  # of where a scene is set


@dataclass(frozen=True, slots=True)
class _When:
    scene: int
    day: int  # since the first scene
    minute: int
    said: Time


def find(seen: Seen) -> Iterator[Finding]:
    told = list(_told(seen))
    asked = {(one.people[0], one.all_scenes) for one in told}
    yield from told
    timed = [when for number in seen.scenes if (when := _when(seen, number))]
    for one, other in combinations(timed, 2):
        if one.day == other.day and abs(one.minute - other.minute) <= NEAR and other.scene - one.scene >= APART:
            places = _places(seen, one.scene, other.scene)
            for person in _on_page(seen, one.scene) & _on_page(seen, other.scene) if places else ():
                if (person, (one.scene, other.scene)) not in asked:
                    yield _finding(seen, person, one, other)


def _told(seen: Seen) -> Iterator[Finding]:
    """Of two sentences, in two scenes, that put one person in two places at one time."""
    by: defaultdict[tuple[str, int], list[Known]] = defaultdict(list)
    for one in known(seen):
        by[one.person, one.minute].append(one)
    for (person, _), said in by.items():
        for one, other in combinations(said, 2):
            if one.span.scene != other.span.scene and same_day(one.day, other.day) and not one.where & other.where:
                yield Finding(
                    evidence=(one.span, other.span),
                    strength=0.85,
                    subject=f"two places: {seen.name(person).lower()}",
                    words={"name": seen.name(person)},
                    numbers={"minutes": 0},
                    people=(person,),
                )


def _when(seen: Seen, number: int) -> _When | None:
    """Day and minute of a scene's opening, where both are known."""
    least, most = seen.story.scenes[number].days
    if least is None or least != most:
        return None
    for one in seen.facts[number].times:
        if one.kind == "clock" and not one.spoken and one.paragraph < EARLY and not one.twelve:
            return _When(number, least, int(one.value[1:3]) * 60 + int(one.value[4:6]), one)
    return None


def _places(seen: Seen, one: int, other: int) -> bool:
    """Whether the scenes are set in two places, as far as that is known well enough."""
    first, second = seen.places.settings[one], seen.places.settings[other]
    return bool(first and second and first.place != second.place and min(first.sure, second.sure) >= SURE)


def _on_page(seen: Seen, number: int) -> set[str]:
    return {one.person for one in seen.book.appearances if one.scene == number and one.presence != "mentioned"}


def _finding(seen: Seen, person: str, one: _When, other: _When) -> Finding:
    return Finding(
        evidence=tuple(
            span
            for when in (one, other)
            for span in (_sentence(seen, when.scene, when.said), _acts(seen, person, when))
        ),
        strength=0.75,
        subject=f"two places: {seen.name(person).lower()}",
        words={"name": seen.name(person)},
        numbers={"minutes": abs(one.minute - other.minute)},
        people=(person,),
    )


def _acts(seen: Seen, person: str, when: _When) -> Span:
    """Where they are first named in the scene."""
    scene = seen.facts[when.scene]
    for mention, who in zip(scene.mentions, meant(scene, seen.book.cast), strict=True):
        if who == person and not mention.spoken:
            text = seen.texts[when.scene][mention.paragraph]
            return seen.span(when.scene, mention.paragraph, *sentence(text, mention.start, mention.end))
    return _sentence(seen, when.scene, when.said)


def _sentence(seen: Seen, number: int, one: Time) -> Span:
    return seen.span(number, one.paragraph, *sentence(seen.texts[number][one.paragraph], one.start, one.end))


CHECK = Check(
    id="two places",
    name="Somebody in two places at once",
    family="continuity",
    looks_at="Somebody on the page in two scenes of one day, within a quarter of an hour, in two places; or said to be "
    "in two places at one hour of one day.",
    method="Scenes whose day is known from story time and whose opening says the hour, whose settings are two, and "
    "in which the same person speaks or acts; and sentences outside speech with a date, an hour, a place, and somebody "
    "who is plainly the one meant. The rule is our own.",
    blind="Most scenes do not say their hour. Where somebody is said to have been, in talk. Places that lie next to "
    "each other are asked about.",
    reads=("words", "cast", "time"),
    find=find,
    recipe=2,
)
