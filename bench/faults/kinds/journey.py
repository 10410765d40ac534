"""The way between two places of the novel is told twice: half as long again and more, or the other way round."""

import re
from collections import Counter
from collections.abc import Iterator
from random import Random

from bench.faults.people import holds, narrated
from bench.faults.planted import Edit, Fault, Scenes, Shown

LEAST = 4  # times that a place is named behind a preposition of place
_IN = re.compile(r"\b(?:in|at|to|from|near|for|of) ([A-Z][a-z]{3,})\b(?! [A-Z]|[’'])")
_NAMED = re.compile(
    r"\b(?:Mr|Mrs|Miss|Sir|Lady|Lord|Dr|Captain|Colonel)\.? ([A-Z][a-z]+)|\b([A-Z][a-z]+) (?:said|asked|cried|replied)"
)
_NO_PLACE = re.compile(
    r"^(?:January|February|March|April|May|June|July|August|September|October|November|December|\w+day|Christmas|Easter"
    r"|Heaven|Chapter|English|French|German|Latin|Lord|Lady|Mister|Miss|Street|Road|Park)$"
)
LONG = (
    ("It was {c} miles from {a} to {b}.", (4, 9, 14, 30)),
    ("{a} lay {c} miles from {b}.", (5, 11, 16, 40)),
    ("From {a} to {b} it was {c} miles by the road.", (6, 12, 20, 45)),
    ("There were {c} miles between {a} and {b}.", (7, 12, 25, 50)),
    ("{a} is {c} miles from {b}, and the road is bad.", (3, 8, 15, 35)),
    ("It was a matter of {c} miles from {b} to {a}.", (4, 10, 18, 40)),
)
HOURS = (
    ("It was {c} days’ journey from {a} to {b}.", (2, 4, 7, 12)),
    ("It was {c} hours’ drive from {a} to {b}.", (2, 4, 7, 12)),
)
SIDES = (
    ("{a} lies to the north of {b}.", "{a} lies to the south of {b}."),
    ("{a} is west of {b}.", "{a} lay due east of {b}."),
    ("{a} was {c} miles north of {b}.", "{b} was {c} miles north of {a}."),
)
_SMALL = (
    "two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen"
)
_LARGE = {20: "twenty", 25: "twenty-five", 30: "thirty", 35: "thirty-five", 40: "forty", 45: "forty-five", 50: "fifty"}
WORDS = {**dict(enumerate(_SMALL.split(), 2)), **_LARGE}


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    counted = Counter(name for scene in scenes for text in scene for name in _IN.findall(text))
    people = {name for scene in scenes for text in scene for pair in _NAMED.findall(text) for name in pair}
    small = {word for scene in scenes for text in scene for word in re.findall(r"\b[a-z]+\b", text)}
    known = [
        name
        for name, times in sorted(counted.items())
        if times >= LEAST and name not in people and name.lower() not in small and not _NO_PLACE.match(name)
    ]
    free = [
        (number, at)
        for number, scene in enumerate(scenes)
        for at, text in enumerate(scene)
        if text[-1:] in ".!?" and narrated(text) == text
    ]
    while len(known) > 1 and len(free) > 1:
        (a, b), places = random.sample(known, 2), sorted(random.sample(free, 2))
        said = _said(a, b, random)
        edits = tuple(
            Edit(number, at, (f"{scenes[number][at]} {words}",))
            for (number, at), words in zip(places, said, strict=True)
        )
        fault = Fault("journey", edits, (Shown(places[1][0], said[1]), Shown(places[0][0], said[0])))
        if holds(scenes, fault):
            yield fault


def _said(a: str, b: str, random: Random) -> tuple[str, str]:
    """Two sentences that cannot both be true."""
    if random.random() < 1 / 3:
        one, other = random.choice(SIDES)
        return one.format(a=a, b=b, c="nine"), other.format(a=a, b=b, c="nine")
    if random.random() < 1 / 4:
        pattern, counts = random.choice(HOURS)
        first, second = random.sample(counts, 2)
        return pattern.format(a=a, b=b, c=_word(first)), pattern.format(a=a, b=b, c=_word(second))
    (one, counts), (other, others) = random.choice(LONG), random.choice(LONG)
    first = random.choice(counts)
    second = random.choice([count for count in others if max(first, count) >= 2 * min(first, count)])
    return one.format(a=a, b=b, c=_word(first)), other.format(a=a, b=b, c=_word(second))


def _word(count: int) -> str:
    return WORDS[count]
