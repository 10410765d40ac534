"""Somebody cannot do something at all, or never does it, and does it in the other half of the novel."""

import re
from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, acts, after_name, behind, fitting, told_in_halves
from bench.faults.planted import Edit, Fault, Scenes

OFTEN = 12  # of the novel's people, the most named
CLAIMS = (
    ("behind", "{n} had never learned to {v}."),
    ("behind", "{n} could not {v}, and had never wished to."),
    ("behind", "Nobody had ever taught {him} to {v}."),
    ("behind", "{He} did not know how to {v}."),
    ("behind", "It was known to everybody that {n} could not {v} at all."),
    ("name", ", who had never been taught to {v},"),
    ("name", ", who could not {v} to save {his} life,"),
)
NEVER = (
    ("behind", "{n} did not {v}."),
    ("behind", "{He} never {d} in {his} life."),
    ("behind", "{n} never {d}."),
    ("behind", "It was known that {n} did not {v}."),
)
DEEDS = {  # what one is able to do, with how it is done
    "swim": ("{He} swam out to the boat and back.", "{n} swam the last hundred yards on {his} back."),
    "drive": ("{He} drove the car round to the gate.", "{n} drove home alone, with both windows down."),
    "ride": ("{He} rode the grey mare home.", "{n} rode over to the farm before breakfast."),
    "cook": ("{He} cooked supper for six.", "{n} made an omelette, and a good one."),
    "type": ("{He} typed two letters before noon.", "{n} typed the list out, and signed it."),
    "knit": ("{He} knitted while {he} listened.", "{n} sat by the fire and knitted a sock."),
    "skate": ("{He} skated across the pond and back.", "{n} skated in a wide ring."),
    "row": ("{He} rowed the boat across.", "{n} rowed them back to the landing."),
    "whistle": ("{He} whistled for the dog.", "{n} whistled two bars of a march."),
    "play the piano": ("{He} played a waltz on the piano.", "{n} sat down and played the piano till supper."),
    "speak German": ("{He} answered the porter in German.", "“Good evening,” {n} said in German."),
}
HABITS = {
    "smoke": ("smoked", ("{He} lit a cigarette.", "{n} sat on the step and smoked a cigar.")),
    "drink": ("drank", ("{He} drank a glass of brandy.", "{n} poured {him}self a whisky.")),
}
_TOLD = {
    "swim": r"\bswim|\bswam", "drive": r"\bdr[io]v", "ride": r"\brid|\brode\b", "cook": r"\bcook|\bomelet",
    "type": r"\btyp", "knit": r"\bknit", "skate": r"\bskat", "row": r"\brow(?:ed|ing|s)?\b|\boars?\b",
    "whistle": r"\bwhistl", "play the piano": r"\bpiano|\bplay", "speak German": r"\bGerman",
    "smoke": r"\bsmok|\bcigar|\bpipe", "drink": r"\bdr[iau]nk|\bwine|\bbrandy|\bwhisk",
}  # fmt: skip


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    return told_in_halves(
        scenes,
        random,
        "ability",
        lambda person: _two(scenes, person, random),
        lambda person, thing, half: _said(scenes, person, thing, half, random),
        OFTEN,
    )


def _two(scenes: Scenes, person: Person, random: Random) -> tuple[str, str]:
    """What is claimed and what is done, of which the author tells nothing where the name stands; "" for none. Who never
    does a thing may have done it before: there the claim comes first."""
    near = [text for scene in scenes for text in scene if person.name in text]
    free = [one for one in (*DEEDS, *HABITS) if not any(re.search(_TOLD[one], text) for text in near)]
    if not free:
        return "", ""
    one = random.choice(free)
    pair = f"claim {one}", f"deed {one}"
    return pair if one in HABITS or random.random() < 0.7 else pair[::-1]


def _said(scenes: Scenes, person: Person, thing: str, half: range, random: Random) -> Iterator[tuple[Edit, str]]:
    """Edits of sentences between two scenes, and the words that tell it."""
    told, _, verb = thing.partition(" ")
    free = [one for one in acts(scenes, person) if one.scene in half and told]
    for one in random.sample(free, len(free)):
        if told == "deed":
            how, pattern = "behind", random.choice(HABITS[verb][1] if verb in HABITS else DEEDS[verb])
        else:
            how, pattern = random.choice(NEVER if verb in HABITS else CLAIMS)
        said = pattern.format(v=verb, d=HABITS[verb][0] if verb in HABITS else "", **person.pronouns)
        if not fitting(scenes, person, [one], how, pattern):
            continue
        edit = after_name(scenes, one, person.name, said) if how == "name" else behind(scenes, one, f" {said}")
        yield edit, said.strip(" ,")
