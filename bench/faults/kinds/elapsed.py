"""How long somebody is dead, told twice a few scenes apart, and differently; or how old they died and would be."""

import re
from collections.abc import Iterator
from random import Random

from bench.faults.kinds.age import words
from bench.faults.people import holds
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import is_told, leaps

SCENES = 4  # apart at most
NAMES = ("Edmund Farrow", "Judith Farrow", "Abel Pinnock", "Hester Vane", "Silas Orme", "Dinah Quill")
LOST = (
    "{n} had died {a} years ago.",
    "It was {a} years since {n} died.",
    "{n} had been dead for {a} years.",
    "{n} had lain {a} years in the churchyard.",
    "They had buried {n} {a} years ago.",
    "{n} had been drowned {a} years before.",
    "{n}, {a} years dead, had never been spoken of there.",
    "They had lost {n} {a} years back.",
    "There was the pipe of {n}, who had been {a} years in the grave.",
)
AGED = ("{n} died at {o}, {a} years ago.", "{n} was {o} years old. {He} died {a} years ago.")
WOULD = ("{n} would have been {w} this year.", "{n} would have been {w} in the spring.", "{n} would be {w} now.")
YEARS = {
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "seven": 7,
    "eight": 8,
    "nine": 9,
    "eleven": 11,
    "fourteen": 14,
}
OLD = (31, 41, 44, 52, 58)


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    free = [[at for at, text in enumerate(scene) if is_told(text)] for scene in scenes]
    order = [number for number, places in enumerate(free) if places]
    for number in random.sample(order, len(order)):
        name = random.choice(NAMES)
        later = [n for n in range(number + 1, min(number + SCENES + 1, len(scenes))) if free[n]]
        if not later or _stands(scenes, name):
            continue
        other = random.choice(later)
        if leaps(scenes, (number, 0), (other, len(scenes[other]) - 1)):
            continue
        first, second = _sayings(name, random)
        edits, shown = [], []
        for scene, said in ((number, first), (other, second)):
            at = random.choice(free[scene])
            edits.append(Edit(scene, at, (f"{scenes[scene][at]} {said}",)))
            shown.append(Shown(scene, said))
        if holds(scenes, fault := Fault("elapsed", tuple(edits), tuple(reversed(shown)))):
            yield fault


def _sayings(name: str, random: Random) -> tuple[str, str]:
    years = random.choice(list(YEARS)[:8])
    if random.random() < 0.6:
        far = [word for word in YEARS if abs(YEARS[word] - YEARS[years]) >= 3]
        one, other = (_said(random.choice(LOST), name, a=word) for word in (years, random.choice(far)))
        return one, other
    old = random.choice(OLD)
    wrong = old + YEARS[years] + random.choice((-5, -4, -3, 3, 4, 5, 10))
    return _said(random.choice(AGED), name, a=years, o=words(old)), _said(random.choice(WOULD), name, w=words(wrong))


def _said(way: str, name: str, **numbers: str) -> str:
    he = "She" if name.split()[0] in ("Judith", "Hester", "Dinah") else "He"
    return way.format(n=name, He=he, **numbers)


def _stands(scenes: Scenes, name: str) -> bool:
    """Whether the novel has somebody of one of the names."""
    either = re.compile(rf"\b(?:{'|'.join(name.split())})\b")
    return any(either.search(text) for scene in scenes for text in scene)
