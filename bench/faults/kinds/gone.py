"""Somebody is told to have died, to be buried or to have left for good, and speaks in later scenes of the author's."""

import re
from collections.abc import Iterator
from random import Random

from bench.faults.people import TALKS, TITLES, Person, acts, holds, narrated, people
from bench.faults.planted import Edit, Fault, Scenes, Shown

SAYS = (
    "{n} died that night.",
    "{n} had died in the night, very quietly.",
    "Before morning {n} was dead.",
    "It was the last time that anybody saw {n} alive. They buried {him} on the Friday.",
    "{n} was buried two days afterwards, in the rain.",
    "When the doctor came {n} was already dead.",
    "Within the week {n} was in {his} grave.",
    "Then {he} gave a long sigh, and it was over: {n} was dead.",
    "A week later {n} sailed for Australia, and never came back.",
    "{n} left the country on the Monday, and was never seen there again.",
    "They found {n} in the morning, drowned.",
    "{He} fell, and did not get up again. {n} was dead.",
    "{He} never woke. By six o’clock {n} had breathed {his} last.",
    "The fever took {n} before the month was out.",
    "That was the end of {n}; the funeral was on the Thursday.",
    "{n} took {his} own life that evening.",
    "{n} was killed the next day by a fall from a horse.",
)
AFTER = 3  # scenes after it in which they speak, at least
_CLOSES = re.compile(r"[.!?][”’]*$")  # behind 'she said:' it would be speech
_LEADS_IN = re.compile(r"[:,]$")  # speech follows in a paragraph of its own
_BACK = re.compile(r"\b(?:had|would|used to|remember\w*|years ago)\b")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    chosen = list(people(scenes))
    random.shuffle(chosen)
    for person in chosen:
        spoken = list(_speaks(scenes, person))
        for place in random.sample(found := list(acts(scenes, person)), len(found)):
            later = tuple(one for one in spoken if one.scene > place.scene)
            if len({one.scene for one in later}) < AFTER or not _ends(scenes[place.scene][place.paragraph]):
                continue
            others = tuple(one for one in _named(scenes, person, place.scene) if one not in later)
            said = random.choice(SAYS).format(**person.pronouns)
            edit = _end(scenes, place.scene, place.paragraph, said)
            fault = Fault("gone", (edit,), (Shown(edit.scene, said), *later, *others))
            if holds(scenes, fault):
                yield fault


def _ends(text: str) -> bool:
    """Whether what is said behind the paragraph is no speech: a colon leads to some, and an open mark goes on."""
    return bool(_CLOSES.search(text)) and text.count("“") <= text.count("”")


def _end(scenes: Scenes, scene: int, paragraph: int, said: str) -> Edit:
    """The sentence at the end of the paragraph in which they were last told of."""
    return Edit(scene, paragraph, (f"{scenes[scene][paragraph]} {said}",))


def _named(scenes: Scenes, person: Person, after: int) -> Iterator[Shown]:
    """Where later scenes name them beside speech, in words that stand once: whoever speaks there, they are about."""
    for number in range(after + 1, len(scenes)):
        for text in scenes[number]:
            told = narrated(text)
            for match in _called(person).finditer(told) if told != text or _LEADS_IN.search(text) else ():
                words = text[max(0, match.start() - 40) : match.end() + 20]
                if sum(one.count(words) for one in scenes[number]) == 1:
                    yield Shown(number, words)


def _called(person: Person) -> re.Pattern[str]:
    """The name, also within a longer one: 'Mr. Pike' is Tom Pike, and so is 'Tom'."""
    title, _, surname = person.name.partition(" ")
    first = rf"|(?<![.] )\b(?!{'|'.join(one.strip('.') for one in TITLES)})[A-Z][a-z]+ {re.escape(surname)}\b"
    longer = rf"|\b{re.escape(person.name)}(?= [A-Z][a-z])" if not surname else first if title == "Mr." else ""
    return re.compile(person.pattern.pattern + longer)


def _speaks(scenes: Scenes, person: Person) -> Iterator[Shown]:
    """Where they speak by name, in words that do not look back and that stand once in their scene."""
    name = re.escape(person.name)
    talks = re.compile(rf"\b(?:{TALKS}) {name}\b(?! [A-Z])|(?<![A-Za-z.] ){name} (?:{TALKS})\b")
    for number, scene in enumerate(scenes):
        for text in scene:
            told = narrated(text)
            for match in talks.finditer(told):
                start, end = match.span()
                words = text[max(0, start - 40) : end]
                if not _BACK.search(told[start : end + 60]) and sum(one.count(words) for one in scene) == 1:
                    yield Shown(number, words)
                    break
