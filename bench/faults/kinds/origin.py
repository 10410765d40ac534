"""Somebody is said to come from one part of the world, and later from another."""

from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, acts, after_name, behind, holds, people
from bench.faults.planted import Edit, Fault, Scenes, Shown

OFTEN = 12  # of the novel's people, the most named
LANDS = (
    ("Devon", "Cornwall", "Yorkshire", "Norfolk", "Kent", "Lancashire", "Dorset", "Northumberland"),
    ("Ohio", "Vermont", "Alabama", "Texas", "Virginia", "Kansas"),
    ("Ireland", "Scotland", "France", "Holland", "Norway", "Canada", "Italy"),
)
FOLK = {"Ireland": "Irish{man}", "Scotland": "Scots{man}", "France": "French{man}", "Holland": "Dutch{man}"}
SAYS = (
    ("behind", "{n} had been born in {p}."),
    ("behind", "{He} was a native of {p}."),
    ("behind", "{n} came originally from {p}, and was proud of it."),
    ("behind", "It was well known that {n} was born in {p}."),
    ("behind", "Something had put {him} in mind of {his} native {p}."),
    ("behind", "{n} had spent {his} childhood in {p}, where {he} was born."),
    ("name", ", a native of {p},"),
    ("name", ", who was born in {p},"),
    ("name", ", who hailed from {p},"),
)


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    chosen = list(people(scenes)[:OFTEN])
    random.shuffle(chosen)
    half = len(scenes) // 2
    for person in chosen:
        one, other = random.sample(random.choice(LANDS), 2)
        for (first, words), (second, others) in zip(
            _said(scenes, person, one, 0, half, random),
            _said(scenes, person, other, half, len(scenes), random),
            strict=False,
        ):
            fault = Fault("origin", (first, second), (Shown(second.scene, others), Shown(first.scene, words)))
            if holds(scenes, fault):
                yield fault


def _said(
    scenes: Scenes, person: Person, place: str, first: int, last: int, random: Random
) -> Iterator[tuple[Edit, str]]:
    """Edits of sentences between two scenes, and the words that tell it."""
    free = [one for one in acts(scenes, person) if first <= one.scene < last]
    for one in random.sample(free, len(free)):
        if place in FOLK and random.random() < 0.5:
            folk = FOLK[place].format(man=person.pronouns["man"])
            an = "an" if folk[0] == "I" else "a"
            how, said = random.choice(
                (("behind", f"{person.name} was {an} {folk}."), ("name", f", {an} {folk} by birth,"))
            )
        else:
            how, pattern = random.choice(SAYS)
            said = pattern.format(p=place, **person.pronouns)
        edit = after_name(scenes, one, person.name, said) if how == "name" else behind(scenes, one, f" {said}")
        yield edit, said.strip(" ,")
