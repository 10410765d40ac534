"""A name that is spelled otherwise once, in the later half of the book: a letter doubled or left out, two letters
changed about, one vowel for another."""

import re
from collections.abc import Iterator
from random import Random

from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import WORD, names

LEAST = 20  # times that the name stands
SHORTEST = 4  # letters
VOWELS = {"a": "e", "e": "ai", "i": "ey", "o": "ua", "u": "o", "y": "i"}
CONTEXT = 12  # characters of the words shown on either side


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    known = [name for name in names(scenes, LEAST) if len(name) >= SHORTEST]
    written = {word.lower() for scene in scenes for text in scene for word in WORD.findall(text)}
    places = [(number, at) for number, scene in enumerate(scenes) for at in range(len(scene))]
    late = places[len(places) // 2 :]
    for name in random.sample(known, len(known)):
        slips = sorted(one for one in _slips(name) if one.lower() not in written)
        pattern = re.compile(rf"\b{name}\b(?!’[^s])")
        having = [(scene, at) for scene, at in late if pattern.search(scenes[scene][at])]
        if slips and having:
            scene, at = random.choice(having)
            text, slip = scenes[scene][at], random.choice(slips)
            match = random.choice(list(pattern.finditer(text)))
            becomes = text[: match.start()] + slip + text[match.end() :]
            begin, end = max(0, match.start() - CONTEXT), match.start() + len(slip) + CONTEXT
            yield Fault("name", (Edit(scene, at, (becomes,)),), (Shown(scene, becomes[begin:end]),), enough=1)


def _slips(name: str) -> set[str]:
    """Of the letters behind the first."""
    found = set()
    for at in range(1, len(name)):
        before, letter, rest = name[:at], name[at], name[at + 1 :]
        if letter not in VOWELS and letter in "lnrstmpdtcg":
            found.add(before + letter + letter + rest)
        if letter == name[at - 1]:
            found.add(before + rest)
        if letter in VOWELS:
            found.update(before + other + rest for other in VOWELS[letter])
        if rest and rest[0] != letter:
            found.add(before + rest[0] + letter + rest[1:])
    return {one for one in found if not re.search(r"(.)\1\1", one)} - {name}
