"""A full moon on one day, and another, or a new one, on a day that it cannot fall on."""

import re
from collections.abc import Iterator
from datetime import timedelta
from random import Random

from bench.faults import days
from bench.faults.people import holds
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import leaps, names, opened, takes_a_day

SCENES = 3  # apart at most
DAY = ("On {day},", "It was {day}.")
FULL = ("The moon was full that evening.", "A full moon stood over the roofs.", "There was a full moon.")
NEW = ("A thin moon hung over the roofs.", "The moon was new.", "There was a crescent moon, very white.")
OFF = {FULL: (9, 10, 11, 13, 17, 18, 20), NEW: (1, 2, 3, 4, 27, 28, 29, 30)}  # days on which it is neither
_MOON = re.compile(r"\bmoon")
_NAMED = re.compile(rf"\b(?:{'|'.join((*days.WEEKDAYS, *days.MONTHS))}|\d+(?:st|nd|rd|th)|1[5-9]\d\d)\b")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    if sum(bool(_MOON.search(text)) for scene in scenes for text in scene) > len(scenes):
        return  # a book of moons has its own
    known = names(scenes, 20)
    free = [_places(scene, known) for scene in scenes]
    order = [number for number, places in enumerate(free) if places]
    for number in random.sample(order, len(order)):
        later = [n for n in range(number + 1, min(number + SCENES + 1, len(scenes))) if free[n]]
        if not later:
            continue
        other = random.choice(later)
        if leaps(scenes, (number, 0), (other, len(scenes[other]) - 1)):
            continue
        day, style = days.some_day(random), random.choice(days.STYLES)
        second = random.choice((FULL, NEW))
        off = timedelta(random.choice(OFF[second]))
        edits, shown = [], []
        for scene, moons, when in ((number, FULL, day), (other, second, day + off)):
            at = random.choice(free[scene])
            said, phrase = random.choice(moons), random.choice(DAY).format(day=days.said(when, style))
            edits.append(Edit(scene, at, (f"{opened(phrase, scenes[scene][at])} {said}",)))
            shown.append(Shown(scene, said))
        fault = Fault("moon", tuple(edits), tuple(reversed(shown)))
        if holds(scenes, fault):
            yield fault


def _places(scene: tuple[str, ...], known: list[str]) -> list[int]:
    """Paragraphs that take a day, of a scene in which no other day is named, and no moon."""
    if any(map(_NAMED.search, scene)) or any(map(_MOON.search, scene)):
        return []
    return [at for at, text in enumerate(scene) if takes_a_day(text, known) and text[-1:] in ".!?"]
