"""Somebody is said to have one trade, and later quite another."""

from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, acts, after_name, behind, fitting, told_in_halves
from bench.faults.planted import Edit, Fault, Scenes

OFTEN = 12  # of the novel's people, the most named
MEN = ("baker", "sailor", "schoolmaster", "carpenter", "solicitor", "painter", "farmer", "tailor", "chemist", "miller")
WOMEN = ("dressmaker", "nurse", "schoolmistress", "painter", "baker", "housekeeper", "singer", "bookseller")
SAYS = (
    ("name", ", the {t},"),
    ("name", ", a {t} by trade,"),
    ("name", ", who was a {t},"),
    ("behind", "{n} was a {t}."),
    ("behind", "{n} had been a {t} all {his} life."),
    ("behind", "{He} was a {t} by trade."),
    ("behind", "{n} worked as a {t}."),
    ("behind", "For a {t}, {n} was neat with {his} hands."),
)


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    return told_in_halves(
        scenes,
        random,
        "trade",
        lambda person: random.sample(MEN if person.gender == "m" else WOMEN, 2),
        lambda person, trade, half: _said(scenes, person, trade, half, random),
        OFTEN,
    )


def _said(scenes: Scenes, person: Person, trade: str, half: range, random: Random) -> Iterator[tuple[Edit, str]]:
    """Edits of sentences between two scenes, and the words that tell it."""
    free = [one for one in acts(scenes, person) if one.scene in half]
    for one in random.sample(free, len(free)):
        how, pattern = random.choice(SAYS)
        if not fitting(scenes, person, [one], how, pattern):
            continue
        said = pattern.format(t=trade, **person.pronouns)
        edit = after_name(scenes, one, person.name, said) if how == "name" else behind(scenes, one, f" {said}")
        yield edit, said.strip(" ,")
