"""The wife, husband, mother or father of somebody is named, and has another name later."""

from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, acts, behind, holds, people
from bench.faults.planted import Edit, Fault, Scenes, Shown

OFTEN = 12  # of the novel's people, the most named
WOMEN = ("Judith", "Deborah", "Winifred", "Harriet", "Sophia", "Barbara", "Phoebe", "Leonora")
MEN = ("Gilbert", "Matthew", "Roderick", "Hubert", "Stephen", "Laurence", "Barnaby", "Cuthbert")
SAYS = (
    "{n} spoke of {his} {kin} {k}.",
    "{n} thought of {k}, {his} {kin}.",
    "{n} had had a letter from {his} {kin} {k} that morning.",
    "{His} {kin}, whose name was {k}, had used to say so.",
    "{n}’s {kin} {k} would have laughed at it.",
    "{n}’s {kin} was called {k}, and people liked her for it.",
    "{He} wished that {his} {kin} {k} had been there.",
    "{n}’s {kin}, {k}, had never cared for the place.",
)


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    chosen = list(people(scenes)[:OFTEN])
    random.shuffle(chosen)
    written = {word.strip(".,;:!?’”“") for scene in scenes for text in scene for word in text.split()}
    half = len(scenes) // 2
    for person in chosen:
        kin = random.choice(("mother", "father", "wife" if person.gender == "m" else "husband"))
        names = [name for name in (MEN if kin in ("father", "husband") else WOMEN) if name not in written]
        if len(names) < 2:
            continue
        one, other = random.sample(names, 2)
        firsts = _said(scenes, person, kin, one, 0, half, random)
        for (first, words), (second, others) in zip(
            firsts, _said(scenes, person, kin, other, half, len(scenes), random), strict=False
        ):
            fault = Fault("relation", (first, second), (Shown(second.scene, others), Shown(first.scene, words)))
            if holds(scenes, fault):
                yield fault


def _said(
    scenes: Scenes, person: Person, kin: str, name: str, first: int, last: int, random: Random
) -> Iterator[tuple[Edit, str]]:
    free = [one for one in acts(scenes, person) if first <= one.scene < last]
    for one in random.sample(free, len(free)):
        said = random.choice(SAYS).format(k=name, kin=kin, **person.pronouns)
        if kin in ("father", "husband"):
            said = said.replace("liked her", "liked him")
        yield behind(scenes, one, f" {said}"), said
