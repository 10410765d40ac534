"""Two people are kin in one way, and in another way in the other half of the novel."""

import re
from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, acts, behind, holds, people
from bench.faults.planted import Edit, Fault, Scenes, Shown

OFTEN = 8  # of the novel's people, the most named
WAYS = (("brother", "sister"), ("cousin", "cousin"), ("nephew", "niece"), ("uncle", "aunt"))
SAYS = (
    "{n} thought of {his} {kin} {k}.",
    "It was known to everybody that {n} was {k}’s {back}.",
    "{n} was the {back} of {k}.",
    "{n} looked for {k}, {his} {kin}.",
    "{k} was {n}’s {kin}, and it showed.",
    "{n}’s {kin} {k} would have laughed at it.",
)
BACK = {"brother": 0, "cousin": 1, "nephew": 3, "uncle": 2}  # what the other is then


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    chosen = list(people(scenes)[:OFTEN])
    pairs = [(one, other) for one in chosen for other in chosen if one is not other and _plain(one, other)]
    random.shuffle(pairs)
    text = "\n".join(text for scene in scenes for text in scene)
    half = len(scenes) // 2
    for one, other in pairs:
        first, second = random.sample(WAYS, 2)
        if _told(one, other, text) or _told(other, one, text):
            continue
        earlier = _said(scenes, one, other, first, range(half), random)
        for (edit, words), (later, others) in zip(
            earlier, _said(scenes, one, other, second, range(half, len(scenes)), random), strict=False
        ):
            fault = Fault("kinship", (edit, later), (Shown(later.scene, others), Shown(edit.scene, words)))
            if holds(scenes, fault):
                yield fault


def _plain(one: Person, other: Person) -> bool:
    """Whether both go by one name."""
    return " " not in one.name + other.name


def _told(one: Person, other: Person, text: str) -> bool:
    """Whether the author has them for kin, or the one speaks of the other so."""
    kin = "|".join(word for way in WAYS for word in way)
    return re.search(rf"\b{one.name}’?'?s (?:\w+ )?(?:{kin})|(?:{kin}),? {other.name}\b", text) is not None


def _said(
    scenes: Scenes, one: Person, other: Person, way: tuple[str, str], half: range, random: Random
) -> Iterator[tuple[Edit, str]]:
    """Edits of sentences between two scenes, and the words that tell it."""
    back = WAYS[BACK[way[0]]][one.gender == "f"]
    free = [place for place in acts(scenes, one) if place.scene in half]
    for place in random.sample(free, len(free)):
        said = random.choice(SAYS).format(k=other.name, kin=way[other.gender == "f"], back=back, **one.pronouns)
        yield behind(scenes, place, f" {said}"), said
