"""Somebody renamed through the whole book but for one or two late places, where the old name still stands."""

import re
from collections.abc import Iterator, Sequence
from random import Random

from bench.faults.listed import listed
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import TITLES, WORD, names

LEAST = 20  # times that the name stands
SHORTEST = 4  # letters
MOST = 0.2  # share of the book's paragraphs in which it stands: others are left for other faults
LATE = 0.6  # share of the book before the first place that is left
TWO = 0.4  # share of faults with two places
CONTEXT = 12  # characters of the words shown on either side
SURNAMES = listed(
    "Pinder Halloway Strake Bellingham Corder Thwaite Maddock Gedge Quarles Winterbourne Ashgrove Tresilian"
)
WOMEN = listed("Hester Philippa Rosamund Cordelia Winifred Lavinia Beatrix Sybil Honoria Gwendolen")
MEN = listed("Barnaby Roland Lionel Cuthbert Jasper Rupert Everard Hubert Septimus Crispin")
_NEW = re.compile(r"\b(?:called|named|(?:an?|one|certain)(?:\s\w+)?)\s(?:\w+\.?\s)?$")
_SHE, _HE = re.compile(r"\b(?:she|her|herself)\b"), re.compile(r"\b(?:he|his|him|himself)\b")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    return (fault for fault, _, _ in left(scenes, random))


def left(scenes: Scenes, random: Random) -> Iterator[tuple[Fault, str, str]]:
    """Faults with the earlier name and the one that took its place."""
    known = [name for name in names(scenes, LEAST) if len(name) >= SHORTEST]
    written = {word for scene in scenes for text in scene for word in WORD.findall(text)}
    places = [(number, at) for number, scene in enumerate(scenes) for at in range(len(scene))]
    for name in random.sample(known, len(known)):
        pattern = re.compile(rf"\b{name}(?=s?\b)")
        having = [(scene, at) for scene, at in places if pattern.search(scenes[scene][at])]
        begin = int(LATE * len(places))
        late = [
            place for place in having if place >= places[begin] and _may_be_left(scenes[place[0]][place[1]], pattern)
        ]
        new = [one for one in _of_its_kind(scenes, pattern) if one not in written]
        if len(late) < 2 or not new or len(having) > MOST * len(places):
            continue
        left = random.sample(late, 2 if random.random() < TWO else 1)
        other = random.choice(new)
        fault = Fault(
            "leftover",
            tuple(
                Edit(scene, at, (pattern.sub(other, scenes[scene][at]),))
                for scene, at in having
                if (scene, at) not in left
            ),
            tuple(Shown(scene, _around(scenes[scene][at], pattern)) for scene, at in sorted(left)),
            enough=1,
        )
        yield fault, name, other


def _may_be_left(text: str, pattern: re.Pattern[str]) -> bool:
    """Whether it stands there once, and not as that of somebody new."""
    found = list(pattern.finditer(text))
    return len(found) == 1 and not _NEW.search(text[: found[0].start()])


def _around(text: str, pattern: re.Pattern[str]) -> str:
    match = pattern.search(text)
    assert match
    return text[max(0, match.start() - CONTEXT) : match.end() + CONTEXT]


def _of_its_kind(scenes: Scenes, pattern: re.Pattern[str]) -> Sequence[str]:
    """Invented names: surnames for who mostly has a title, else given names by the pronouns that follow."""
    titled = times = she = he = 0
    for text in (text for scene in scenes for text in scene):
        for match in pattern.finditer(text):
            times += 1
            titled += bool(re.search(rf"\b(?:{TITLES})\.?\s$", text[: match.start()]))
            behind = text[match.end() : match.end() + 60]
            she += bool(_SHE.search(behind))
            he += bool(_HE.search(behind))
    if 5 * titled >= times:
        return SURNAMES
    return WOMEN if she > he else MEN
