"""Somebody's full name stands once with another given name."""

import re
from collections import Counter
from collections.abc import Iterator
from random import Random

from bench.faults.planted import Edit, Fault, Scenes, Shown

LEAST = 3  # times that the full name stands, and at least as often the given name alone
CONTEXT = 12  # characters of the words shown on either side
WOMEN = ("Harriet", "Barbara", "Winifred", "Sophia", "Judith", "Beatrice", "Dorothy", "Margaret")
MEN = ("Gilbert", "Stephen", "Roderick", "Hubert", "Matthew", "Laurence", "Edmund", "Walter")
_FULL = re.compile(r"(?<![\w.’-] )(?<![\w’-])([A-Z][a-z]+) ([A-Z][a-z]+)\b(?!’|-)")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    counted = Counter(word for scene in scenes for text in scene for word in re.findall(r"[^\W\d_]+", text))
    places = [
        (number, at, match)
        for number, scene in enumerate(scenes)
        for at, text in enumerate(scene)
        for match in _FULL.finditer(text)
    ]
    full = Counter(match.group() for *_, match in places)
    names = [name for name, times in full.items() if times >= LEAST and _is_person(name, counted)]
    for name in random.sample(names, len(names)):
        given, surname = name.split()
        others = [other for other in (WOMEN if _is_woman(given, scenes) else MEN) if not counted[other]]
        own = [(number, at, match) for number, at, match in places[1:] if match.group() == name]
        if not others or not own:
            continue
        number, at, match = random.choice(own)
        text, other = scenes[number][at], f"{random.choice(others)} {surname}"
        becomes = text[: match.start()] + other + text[match.end() :]
        begin, end = max(0, match.start() - CONTEXT), match.start() + len(other) + CONTEXT
        yield Fault("given name", (Edit(number, at, (becomes,)),), (Shown(number, becomes[begin:end]),), enough=1)


def _is_woman(given: str, scenes: Scenes) -> bool:
    """By the pronouns that follow the given name within its sentences."""
    behind = re.compile(rf"\b{given}\b[^.!?\n]*?\b(he|his|him|she|her)\b")
    found = Counter(match for scene in scenes for text in scene for match in behind.findall(text))
    return found["she"] + found["her"] > found["he"] + found["his"] + found["him"]


def _is_person(name: str, counted: Counter[str]) -> bool:
    """Whether both words are written large alone, and the first is used alone too."""
    given, surname = name.split()
    return not counted[given.lower()] and not counted[surname.lower()] and counted[given] >= 2 * LEAST
