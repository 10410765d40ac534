"""A thought or feeling of somebody else, in a scene that is told from one person's inside."""

import re
from collections import Counter
from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, acts, alone, behind, holds, narrated, people
from bench.faults.planted import Fault, Scenes, Shown

OWN = 4  # thoughts that the scene tells of its one person, at least
MANY = 0.4  # share of scenes with somebody's thoughts that tell those of two, from which the telling knows all
SAYS = (
    "{n} wondered how much longer this would go on.",
    "{n} wished that {he} had stayed at home.",
    "Inwardly {n} was far less calm, and thought of the money.",
    "{n} felt a stab of envy, and was ashamed of it.",
    "{He} did not believe a word of it, but kept {his} thoughts to {him}self.",
    "{n} remembered a summer long ago, and said nothing of it.",
    "It seemed to {n}, who let nothing of it be seen, that everything was lost.",
    "{n} hoped with all {his} heart that nobody would ask.",
    "{n} was secretly relieved.",
    "{n} thought, not for the first time, that it had all been a mistake.",
    "{n} knew that it was a lie, and decided to let it pass.",
    "In {his} heart {n} despised them all.",
    "{n} dreaded the evening, and longed to be alone.",
    "{n} had long suspected as much, and felt nothing but weariness.",
)
_THINKS = (
    r"(?:had |\w+ly |never |not |could |did )*"
    r"(?:thought|wondered|felt|knew|wished|hoped|remembered|realized|realised|feared|believed)\b"
)
_SELF = re.compile(rf"\bI {_THINKS}")
_PRONOUN = {"m": re.compile(rf"\b[Hh]e {_THINKS}"), "f": re.compile(rf"\b[Ss]he {_THINKS}")}
TELLER = 15  # of 1,000 words outside speech that are 'I', in a scene that an I tells


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    known = people(scenes)
    thoughts = [_thoughts("\n".join(map(narrated, scene)), known) for scene in scenes]
    minded = [one for one in thoughts if one]
    if not minded or sum(len(one) > 1 for one in minded) > MANY * len(minded):
        return
    inside = {number: next(iter(one)) for number, one in enumerate(thoughts) if len(one) == 1 and one.total() >= OWN}
    places = [
        (place, one) for one in known for place in acts(scenes, one) if inside.get(place.scene, one.name) != one.name
    ]
    for place, person in random.sample(places, len(places)):
        free = alone(scenes, person, place)
        said = random.choice([one for one in SAYS if "{n}" in one or free]).format(**person.pronouns)
        edit = behind(scenes, place, f" {said}")
        fault = Fault("viewpoint", (edit,), (Shown(edit.scene, said),), enough=1)
        if holds(scenes, fault):
            yield fault


def _thoughts(told: str, known: tuple[Person, ...]) -> Counter[str]:
    """By whose name they are, 'I' where the scene is told so; pronouns go to who thinks by name, else to who is named
    most of that gender."""
    if 1000 * len(re.findall(r"\bI\b", told)) > TELLER * len(told.split()):
        found = Counter({"I": len(_SELF.findall(told))})
    else:
        found = Counter()
    for one in known:
        if times := len(re.findall(rf"\b{re.escape(one.name)} {_THINKS}", told)):
            found[one.name] += times
    for gender, pronoun in _PRONOUN.items():
        named = [(len(one.pattern.findall(told)), one.name) for one in known if one.gender == gender]
        if (times := len(pronoun.findall(told))) and named and max(named)[0] and "I" not in found:
            own = [one.name for one in known if one.gender == gender and one.name in found]
            found[own[0] if own else max(named)[1]] += times
    return +found
