"""Somebody with a rank or another such title, who has a different one in a single place."""

import re
from collections import defaultdict
from collections.abc import Iterator
from random import Random

from bench.faults.planted import Edit, Fault, Scenes, Shown

LEAST = 8  # times that the title stands before the name
CONTEXT = 15  # characters of the words shown on either side
OTHERS = {
    "Captain": ("Major", "Colonel", "Lieutenant"),
    "Major": ("Captain", "Colonel"),
    "Colonel": ("Captain", "Major", "General"),
    "General": ("Colonel", "Major"),
    "Lieutenant": ("Captain", "Sergeant"),
    "Sergeant": ("Corporal", "Inspector"),
    "Inspector": ("Superintendent", "Sergeant", "Constable"),
    "Superintendent": ("Inspector",),
    "Constable": ("Sergeant",),
    "Doctor": ("Captain", "Inspector"),
    "Dr.": ("Captain", "Inspector"),
    "Professor": ("Captain", "Colonel"),
    "Admiral": ("Captain",),
    "Bishop": ("Dean",),
    "Judge": ("Colonel",),
}
_TITLED = re.compile(rf"\b({'|'.join(map(re.escape, OTHERS))}) ([A-Z][a-z]+)\b(?! [A-Z])(?!-)")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    found: defaultdict[tuple[str, str], list[tuple[int, int, int]]] = defaultdict(list)
    for number, scene in enumerate(scenes):
        for at, text in enumerate(scene):
            for match in _TITLED.finditer(text):
                found[match[1], match[2]].append((number, at, match.start()))
    often = [one for one, places in found.items() if len(places) >= LEAST]
    for title, name in random.sample(often, len(often)):
        inner = found[title, name][2:-2]
        for number, at, start in random.sample(inner, len(inner)):
            text = scenes[number][at]
            other = random.choice(OTHERS[title])
            end = start + len(f"{other} {name}")
            text = text[:start] + other + text[start + len(title) :]
            words = text[max(0, start - CONTEXT) : end + CONTEXT]
            yield Fault("rank", (Edit(number, at, (text,)),), (Shown(number, words),), enough=1)
