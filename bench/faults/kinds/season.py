"""A month, and a few paragraphs later weather, fields or flowers of another season; in a scene that tells of
neither."""

import re
from collections.abc import Iterator
from itertools import pairwise
from random import Random

from bench.faults.people import holds, narrated
from bench.faults.planted import Edit, Fault, Scenes, Shown

_SEASONS = re.compile(
    r"\b(?:January|February|March|April|May|June|July|August|September|October|November|December|spring|summer|autumn"
    r"|winter|snow\w*|frost\w*|ice|hay|harvest|corn|blossom\w*|Christmas|Easter|Midsummer)\b"
)
FAR = 8  # paragraphs between the month and the weather at most
SAYS = (
    "It was the third of {m}.",
    "It was the second week of {m}.",
    "They were in the middle of {m}.",
    "It was a {m} day like any other.",
    "{m} had come.",
    "It was on the ninth of {m}.",
    "It was {m} now.",
)
WINTER = (
    "Snow lay along the sills and in the corners of the road.",
    "It had begun to snow again, in large slow flakes.",
    "Snow was falling.",
    "The puddles were frozen hard.",
    "There was a white frost on the grass.",
    "The trees were bare, and one could see a long way through them.",
    "The leafless boughs did not move.",
    "It was snowing.",
)
SUMMER = (
    "The hay was down in the next field, and one smelt it everywhere.",
    "The apple trees were in full blossom.",
    "Somewhere behind the house they were mowing the hay.",
    "The corn was ripe, and men were at work in it.",
    "The lilac was in bloom along the wall.",
    "The bluebells were out under the trees.",
    "Wild roses were in flower all along the hedge.",
    "The wheat stood golden as far as one could see.",
)
OPPOSITE = {"December": SUMMER, "January": SUMMER, "June": WINTER, "July": WINTER, "August": WINTER}


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    free = [number for number, scene in enumerate(scenes) if not any(map(_SEASONS.search, scene))]
    for number in random.sample(free, len(free)):
        scene = scenes[number]
        told = [at for at, text in enumerate(scene) if text[-1:] in ".!?" and narrated(text) == text]
        pairs = [(at, later) for at, later in pairwise(told) if later - at <= FAR]
        if not pairs:
            continue
        at, later = random.choice(pairs)
        month = random.choice(list(OPPOSITE))
        said, sign = random.choice(SAYS).format(m=month), random.choice(OPPOSITE[month])
        edits = (Edit(number, at, (f"{scene[at]} {said}",)), Edit(number, later, (f"{scene[later]} {sign}",)))
        fault = Fault("season", edits, (Shown(number, sign), Shown(number, said)))
        if holds(scenes, fault):
            yield fault
