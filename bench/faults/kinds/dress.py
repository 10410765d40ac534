"""What somebody wears has two colours within one scene, in which nobody dresses and little time passes."""

import re
from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, Place, acts, behind, fitting, holds, people
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import between, passes_time

OFTEN = 15  # of the novel's people, the most named
FAR = 40  # paragraphs apart at most
MEN, WOMEN = ("coat", "hat", "waistcoat", "scarf", "overcoat"), ("dress", "hat", "cloak", "shawl", "gown")
COLOURS = (("blue", "yellow"), ("white", "green"), ("red", "black"), ("yellow", "black"), ("green", "red"))
SAYS = (
    "{n} wore a {c} {w}.",
    "{He} was wearing a {c} {w}.",
    "{n} was in a {c} {w} that day.",
    "{n}’s {c} {w} was wet at the hem.",
    "{n} had on a {c} {w}.",
    "{His} {c} {w} was quite new.",
    "The light fell on {his} {c} {w}.",
)
_DRESSES = re.compile(r"\b(?:dress\w*|undress\w*|chang\w+|put on|took off|clothes|coat|hat|gown|cloak|shawl|scarf)\b")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    chosen = list(people(scenes)[:OFTEN])
    random.shuffle(chosen)
    for person in chosen:
        pairs = list(_pairs(scenes, person))
        for one, other in random.sample(pairs, len(pairs)):
            worn = random.choice(MEN if person.gender == "m" else WOMEN)
            colours = random.sample(random.choice(COLOURS), 2)
            told = [
                _told(scenes, person, place, colour, worn, random)
                for place, colour in zip((one, other), colours, strict=True)
            ]
            if any(words is None for _, words in told):
                continue
            edits = tuple(edit for edit, _ in told)
            shown = tuple(Shown(one.scene, words) for _, words in reversed(told) if words)
            fault = Fault("dress", edits, shown)
            if holds(scenes, fault):
                yield fault


def _pairs(scenes: Scenes, person: Person) -> Iterator[tuple[Place, Place]]:
    """Sentences of one scene between which nobody dresses and nothing passes time."""
    done = list(acts(scenes, person))
    for at, one in enumerate(done):
        for other in done[at + 1 :]:
            near = other.scene == one.scene and 0 < other.paragraph - one.paragraph <= FAR
            texts = list(between(scenes, (one.scene, one.paragraph), (other.scene, other.paragraph))) if near else []
            if near and not any(_DRESSES.search(text) or passes_time(text) for text in texts):
                yield one, other


def _told(
    scenes: Scenes, person: Person, place: Place, colour: str, worn: str, random: Random
) -> tuple[Edit, str | None]:
    pattern = random.choice(SAYS)
    said = pattern.format(c=colour, w=worn, **person.pronouns)
    may = fitting(scenes, person, [place], "behind", pattern)
    return behind(scenes, place, f" {said}"), said if may else None
