"""Somebody is said to come from one part of the world, and later from another."""

from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, acts, after_name, behind, told_in_halves
from bench.faults.planted import Edit, Fault, Scenes

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
    return told_in_halves(
        scenes,
        random,
        "origin",
        lambda _: random.sample(random.choice(LANDS), 2),
        lambda person, place, half: _said(scenes, person, place, half, random),
        OFTEN,
    )


def _said(scenes: Scenes, person: Person, place: str, half: range, random: Random) -> Iterator[tuple[Edit, str]]:
    """Edits of sentences between two scenes, and the words that tell it."""
    free = [one for one in acts(scenes, person) if one.scene in half]
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
