"""Somebody is said to have no brothers, children, wife or husband, and one is spoken of in the other half."""

import re
from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, acts, behind, fitting, told_in_halves
from bench.faults.planted import Edit, Fault, Scenes

OFTEN = 12  # of the novel's people, the most named
NONE = {
    "siblings": (
        "{n} had no brothers or sisters.",
        "{n} was an only child.",
        "{n} had been an only child, and was used to quiet.",
        "{He} had neither brother nor sister.",
        "{He} had never had a brother or a sister.",
        "It was well known that {n} had no brothers or sisters.",
    ),
    "children": ("{n} had no children.", "{n} was childless.", "{He} had never had any children."),
    "spouse": ("{n} had never married.", "{He} had never been married.", "It was a pity that {n} had never married."),
}
ONE = {
    "siblings": (
        "{n}’s elder brother had written from Canada that week.",
        "{He} had had a letter from {his} sister that morning.",
        "{n} thought of {his} younger brother, who kept bees.",
        "{n} had two sisters, both of them taller.",
        "It was a thing that {n}’s sister used to say.",
        "{n} was the youngest of five children.",
    ),
    "children": (
        "{n}’s eldest son had gone to sea.",
        "{n} had a daughter who was a schoolteacher.",
        "{n} thought of {his} two sons, who were both in business.",
    ),
    "spouse": (
        "{n}’s late {spouse} would have laughed at it.",
        "{n} thought of {his} first {spouse}, who had hated draughts.",
        "It was a thing that {n}’s dead {spouse} used to say.",
    ),
}
_KIN = r"(?:brother|sister|son|daughter|child|wife|husband|married)"


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    return told_in_halves(
        scenes,
        random,
        "no kin",
        lambda person: _two(scenes, person, random),
        lambda person, thing, half: _said(scenes, person, thing, half, random),
        OFTEN,
    )


def _two(scenes: Scenes, person: Person, random: Random) -> tuple[str, str]:
    """Of whom the author tells no kin right beside the name: what is denied, then told, or the other way about."""
    own = re.compile(rf"{re.escape(person.name)}’?'?s? (?:\w+ )?{_KIN}")
    if own.search("\n".join(text for scene in scenes for text in scene)):
        return "", ""
    kind = random.choice(tuple(NONE))
    pair = f"none {kind}", f"one {kind}"
    return pair if random.random() < 0.5 else pair[::-1]


def _said(scenes: Scenes, person: Person, thing: str, half: range, random: Random) -> Iterator[tuple[Edit, str]]:
    """Edits of sentences between two scenes, and the words that tell it."""
    told, _, kind = thing.partition(" ")
    free = [one for one in acts(scenes, person) if one.scene in half and told]
    spouse = "wife" if person.gender == "m" else "husband"
    for one in random.sample(free, len(free)):
        pattern = random.choice((NONE if told == "none" else ONE)[kind])
        if fitting(scenes, person, [one], "behind", pattern):
            said = pattern.format(spouse=spouse, **person.pronouns)
            yield behind(scenes, one, f" {said}"), said
