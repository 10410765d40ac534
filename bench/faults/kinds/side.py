"""A lasting mark of somebody's body is told on one side, and later on the other."""

import re
from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, acts, after_name, behind, fitting, told_in_halves
from bench.faults.planted import Edit, Fault, Scenes

OFTEN = 12  # of the novel's people, the most named
OTHER = {"left": "right", "right": "left"}
SAYS = {  # {s} the side, {o} the other; others are of `Person.pronouns`
    "ear": (
        ("behind", "{n} had been deaf in the {s} ear since {he} was nine."),
        ("behind", "One had to keep to {his} {o} side, for {he} was deaf on the {s}."),
        ("behind", "{He} turned {his} good {o} ear to the door."),
        ("behind", "{His} {s} ear had been no use since the fever; {he} could hear nothing with it."),
        ("behind", "{He} put a hand behind {his} {o} ear, which was the one {he} could hear with."),
        ("name", ", who was stone-deaf in the {s} ear,"),
        ("name", ", with {his} deaf {s} ear to the company,"),
    ),
    "eye": (
        ("behind", "{His} {s} eye was of glass, and looked at nobody."),
        ("behind", "{n} was blind in one eye, the {s}."),
        ("behind", "{He} shut {his} good {o} eye, and was in the dark."),
        ("behind", "It was the {s} eye that {he} had lost, as a child, to a thorn."),
        ("name", ", with the black patch over {his} {s} eye,"),
        ("name", ", whose {s} eye was blind,"),
    ),
    "hand": (
        ("behind", "{n} had lost two fingers of {his} {s} hand in a chaff-cutter."),
        ("behind", "The thumb of {his} {s} hand was missing."),
        ("behind", "{He} rubbed what remained of the fingers of {his} {s} hand."),
        ("behind", "{He} held on with {his} sound {o} hand."),
        ("behind", "{He} laid {his} {s} hand down, and everybody saw that it was a finger short."),
        ("behind", "{His} {s} hand had only three fingers, and {he} kept it in a pocket."),
        ("name", ", whose {s} hand lacked a thumb,"),
        ("name", ", with {his} maimed {s} hand in a pocket,"),
    ),
    "leg": (
        ("behind", "{n} had a wooden leg, the {s}, and was proud of it."),
        ("behind", "{His} {s} leg was of cork from the knee down."),
        ("behind", "{He} put all {his} weight upon {his} good {o} leg."),
        ("name", ", who had lost the {s} leg as a child,"),
        ("name", ", with {his} wooden {s} leg stuck out,"),
    ),
    "mole": (
        ("behind", "{He} had a brown mole on the {s} cheek."),
        ("behind", "{His} {s} cheek had a mole on it, with three hairs."),
        ("behind", "{n} scratched the mole on {his} {s} cheek."),
        ("name", ", with the mole on {his} {s} cheek,"),
    ),
}
_TOLD = {
    "ear": r"\bdeaf|\bears?\b",
    "eye": r"\b(?:left|right) eye|\bblind\b|\bglass eye",
    "hand": r"\b(?:left|right) hand|\bfingers? (?:miss|short|gone|lost)|\bmaimed",
    "leg": r"\b(?:left|right) (?:leg|foot)|\bwooden leg|\blame\b",
    "mole": r"\bmole\b|\b(?:left|right) cheek",
}


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    return told_in_halves(
        scenes,
        random,
        "side",
        lambda person: _two(scenes, person, random),
        lambda person, thing, half: _said(scenes, person, thing, half, random),
        OFTEN,
    )


def _two(scenes: Scenes, person: Person, random: Random) -> tuple[str, str]:
    """A mark on one side and on the other, of which the author tells nothing where the name stands; "" for none."""
    near = [text for scene in scenes for text in scene if person.name in text]
    free = [part for part in SAYS if not any(re.search(_TOLD[part], text) for text in near)]
    part = random.choice(free) if free else ""
    first, other = random.sample(("left", "right"), 2)
    return (f"{part} {first}", f"{part} {other}") if part else ("", "")


def _said(scenes: Scenes, person: Person, thing: str, half: range, random: Random) -> Iterator[tuple[Edit, str]]:
    """Edits of sentences between two scenes, and the words that tell it."""
    part, _, side = thing.partition(" ")
    free = [one for one in acts(scenes, person) if one.scene in half and part]
    for one in random.sample(free, len(free)):
        how, pattern = random.choice(SAYS[part])
        said = pattern.format(s=side, o=OTHER[side], **person.pronouns)
        if not fitting(scenes, person, [one], how, pattern):
            continue
        edit = after_name(scenes, one, person.name, said) if how == "name" else behind(scenes, one, f" {said}")
        yield edit, said.strip(" ,")
