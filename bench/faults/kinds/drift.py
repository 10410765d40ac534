"""Somebody who has a title has another surname in one scene: one that begins with the same sound."""

import re
from collections import Counter
from collections.abc import Iterator
from random import Random

from bench.faults.listed import listed
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import TITLES, WORD

LEAST, MOST = 4, 120  # times that the name stands in the book
OFTEN = 3  # times that it does at most in the scene in which it drifts
CONTEXT = 12  # characters of the words shown on either side
ENDINGS = listed("aker ickland edwell oner utton anning olland ingham elmer arrow oster unter ayle eece ibley udge")
_TITLED = re.compile(rf"\b(?:{TITLES})\.? ([A-Z][a-z]{{3,}})\b(?![’'-]?[A-Z])")
_SOUND = re.compile(r"[^aeiouy]+|[aeiouy]+", re.IGNORECASE)


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    counted = Counter(word for scene in scenes for text in scene for word in WORD.findall(text))
    titled = Counter(name for scene in scenes for text in scene for name in _TITLED.findall(text))
    names = [name for name, times in titled.items() if times >= LEAST and counted[name] <= MOST]
    for name in random.sample(names, len(names)):
        stands = re.compile(rf"\b{name}\b")
        found = [
            (number, at, match)
            for number, scene in enumerate(scenes)
            for at, text in enumerate(scene)
            for match in stands.finditer(text)
        ]
        sound = _SOUND.findall(name)[0]
        new = [one for ending in ENDINGS if (one := f"{sound}{ending}") not in counted and ending[0] not in sound]
        by_scene = Counter(number for number, _, _ in found)
        late = [number for number in by_scene if number > found[0][0] and by_scene[number] <= OFTEN]
        some = [number for number in late if any(name in _TITLED.findall(text) for text in scenes[number])]
        if some and new:
            yield _fault(scenes, random.choice(some), stands, random.choice(new))


def _fault(scenes: Scenes, number: int, stands: re.Pattern[str], other: str) -> Fault:
    edits = [
        Edit(number, at, (stands.sub(other, text),)) for at, text in enumerate(scenes[number]) if stands.search(text)
    ]
    shown = []
    for edit in edits:
        text = edit.becomes[0]
        at = text.index(other)
        shown.append(Shown(number, text[max(0, at - CONTEXT) : at + len(other) + CONTEXT]))
    return Fault("drift", tuple(edits), tuple(shown), enough=1)
