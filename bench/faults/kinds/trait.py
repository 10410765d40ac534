"""Eyes, hair, beard, height, or the side of a scar or a lame leg, told of one person twice, and differently.

Where the author tells somebody's colour, a later sentence about the same person gets another; else two sentences do.
"""

import re
from collections.abc import Iterator, Sequence
from random import Random

from bench.faults.people import (
    Person,
    Place,
    acts,
    after_name,
    behind,
    fitting,
    holds,
    mostly,
    narrated,
    people,
    sentences,
    stands_once,
    tags,
)
from bench.faults.planted import Edit, Fault, Scenes, Shown

OFTEN = 12  # of the novel's people, the most named
EYES = (
    ("blue", "pale blue", "washed-out blue", "china-blue"),
    ("brown", "deep brown", "nut-brown"),
    ("green", "sea-green"),
    ("grey", "cold grey", "slate-grey"),
    ("black", "very dark"),
)
EYES_APART = ((0, 1), (0, 2), (0, 4), (3, 1), (3, 2), (3, 4), (2, 1), (2, 4))
HAIR = (("fair", "golden", "flaxen", "straw-coloured"), ("black", "very dark", "raven-black"), ("red", "ginger"))
HAIR_APART = ((0, 1), (0, 2), (1, 2))
SAYS = {  # {c} a colour or side; others are of `Person.pronouns`
    "eyes": (
        ("behind", "{His} {c} eyes were fixed on nothing in particular."),
        ("behind", "There was no telling what went on behind those {c} eyes."),
        ("behind", "{He} had eyes of a {c} that people remembered afterwards."),
        ("behind", "{n}’s eyes, which were {c}, did not move."),
        ("behind", "For a moment {his} {c} eyes were half shut, as if the light hurt them."),
        ("behind", "The {c}-eyed {man} did not seem to be in any hurry."),
        ("behind", "Something came and went in the {c} eyes."),
        ("name", ", whose eyes were {c},"),
        ("name", ", with {his} {c} eyes on the door,"),
        ("tag", ", lifting {his} {c} eyes"),
        ("tag", ", and {his} {c} eyes shone"),
    ),
    "hair": (
        ("behind", "{His} {c} hair had come down over one ear."),
        ("behind", "{He} pushed the {c} hair back from {his} forehead."),
        ("behind", "{He} had {c} hair, and a great deal of it."),
        ("behind", "The light lay on {n}’s {c} hair."),
        ("behind", "The {c}-haired {man} did not seem to be in any hurry."),
        ("behind", "{His} hair was {c}, and wanted brushing."),
        ("name", ", whose hair was {c},"),
        ("name", ", with {his} {c} hair in disorder,"),
        ("tag", ", running a hand through {his} {c} hair"),
    ),
    "beard": (
        ("behind", "{He} passed a hand over {his} {c} beard."),
        ("behind", "{His} beard, which was {c}, had not been combed that day."),
        ("tag", ", stroking {his} {c} beard"),
        ("name", ", whose beard was {c},"),
    ),
    "height": (
        ("behind", "{He} was a {c} {man}, and it showed beside the others."),
        ("behind", "Among so many people one noticed how {c} {he} was."),
        ("name", ", who was {c} for a {man},"),
    ),
    "scar": (
        ("behind", "The old scar on {his} {c} cheek was very plain in that light."),
        ("behind", "{He} rubbed the scar that {he} had on the {c} cheek."),
        ("name", ", with the scar across {his} {c} cheek,"),
        ("tag", ", and touched the scar on {his} {c} cheek"),
    ),
    "leg": (
        ("behind", "{He} was lame of the {c} leg, and could not go fast."),
        ("behind", "{His} {c} leg, which had been lame from childhood, was stretched out."),
        ("name", ", who limped with the {c} leg,"),
    ),
}
_COLOURS = {word.split()[-1].split("-")[-1]: group for group, words in enumerate(EYES) for word in words}
_HAIRS = {"fair": 0, "golden": 0, "flaxen": 0, "blond": 0, "yellow": 0, "black": 1, "dark": 1, "red": 2, "ginger": 2}
_SHADES = "blue|brown|green|gr[ea]y|black|dark|hazel|violet|fair|golden|flaxen|yellow|red|ginger|auburn|white|pale"
_PARTS = {
    **{
        part: re.compile(rf"\b(?:{_SHADES})\b.*\b{part}|\b{part}.*\b(?:{_SHADES})\b")
        for part in ("eyes", "hair", "beard")
    },
    "height": re.compile(r"\b(?:tall|short)\b"),
    "scar": re.compile(r"\bscar"),
    "leg": re.compile(r"\b(?:lame\b|limp|crutch)"),
}
_TOLD = re.compile(r"\b(his|her|[A-Z]\w+’s) (?:\w+,? ){0,2}?(\w+) (eyes|hair)\b")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    chosen = list(people(scenes)[:OFTEN])
    random.shuffle(chosen)
    for person in chosen:
        told = list(_told(scenes, person))
        random.shuffle(told)
        for part, group, place in told:
            yield from _against(scenes, person, part, group, place, told, random)
    for person in chosen:
        yield from _both(scenes, person, random)


def _told(scenes: Scenes, person: Person) -> Iterator[tuple[str, int, Place]]:
    """Eyes and hair that the author gives the person in a sentence that names nobody else: which, and where."""
    others = [one.pattern for one in people(scenes) if one.name not in person.name and person.name not in one.name]
    for number, scene in enumerate(scenes):
        for at, text in enumerate(scene):
            told = narrated(text)
            for start, end in sentences(told) if person.name in told else ():
                said = told[start:end]
                match, named = _TOLD.search(said), person.pattern.search(said)
                if not match or not named or any(other.search(said) for other in others):
                    continue
                owner, colour, part = match.groups()
                whose = owner == f"{person.name}’s" or (owner == person.pronouns["his"] and named.end() < match.start())
                group = (_COLOURS if part == "eyes" else _HAIRS).get(colour.replace("gray", "grey"))
                if whose and group is not None:
                    yield part, group, Place(number, at, start, end)


def _against(
    scenes: Scenes,
    person: Person,
    part: str,
    group: int,
    place: Place,
    told: Sequence[tuple[str, int, Place]],
    random: Random,
) -> Iterator[Fault]:
    """A later sentence of another colour than the author's."""
    apart = EYES_APART if part == "eyes" else HAIR_APART
    others = [(set(pair) - {group}).pop() for pair in apart if group in pair]
    same = [one for kind, which, one in told if kind == part and which == group]
    if any(kind == part and which != group for kind, which, _ in told):
        return  # the author differs already
    shown = [Shown(one.scene, _words(scenes, one)) for one in (place, *same, *_also(scenes, person, part, group))]
    shown = [one for one in shown if stands_once(scenes, (), one)]
    for edit, words in _said(scenes, person, part, random.choice(others), place.scene + 1, len(scenes), random):
        fault = Fault("trait", (edit,), (Shown(edit.scene, words), *dict.fromkeys(shown)))
        if holds(scenes, fault):
            yield fault


def _also(scenes: Scenes, person: Person, part: str, group: int) -> Iterator[Place]:
    """Where 'his' are of that colour, in sentences that name nobody: likely the same person's."""
    for number, scene in enumerate(scenes):
        for at, text in enumerate(scene):
            told = narrated(text)
            for match in _TOLD.finditer(told):
                owner, colour, found = match.groups()
                known = (_COLOURS if part == "eyes" else _HAIRS).get(colour.replace("gray", "grey"))
                if found == part and known == group and owner == person.pronouns["his"]:
                    yield Place(number, at, *next(one for one in sentences(f"{told}.") if match.start() < one[1]))


def _may_be_told(scenes: Scenes, person: Person, part: str) -> bool:
    """Whether a sentence that names the person, or that begins with 'he' or 'his' near the name, tells of that part:
    what is planted would disagree with it, too."""
    begins = tuple(person.pronouns[one] for one in ("He", "His"))
    for scene in scenes:
        for before, text in zip(("", *scene), scene, strict=False):
            if person.name not in f"{before} {text}" or not _PARTS[part].search(text):
                continue
            said = [narrated(text)[start:end] for start, end in sentences(narrated(text))]
            if any(_PARTS[part].search(one) and (person.name in one or one.startswith(begins)) for one in said):
                return True
    return False


def _both(scenes: Scenes, person: Person, random: Random) -> Iterator[Fault]:
    part = random.choice(("eyes", "eyes", "eyes", "hair", "hair", "height", "scar", "leg", "beard"))
    part = "hair" if part == "beard" and person.gender == "f" else part
    pair = list(random.choice(EYES_APART if part == "eyes" else HAIR_APART if part in ("hair", "beard") else ((0, 1),)))
    random.shuffle(pair)
    if _may_be_told(scenes, person, part):
        return
    half = len(scenes) // 2
    firsts = _said(scenes, person, part, pair[0], 0, half, random)
    for (one, words), (other, others) in zip(
        firsts, _said(scenes, person, part, pair[1], half, len(scenes), random), strict=False
    ):
        fault = Fault("trait", (one, other), (Shown(other.scene, others), Shown(one.scene, words)))
        if holds(scenes, fault):
            yield fault


def _said(
    scenes: Scenes, person: Person, part: str, group: int, first: int, last: int, random: Random
) -> Iterator[tuple[Edit, str]]:
    """Edits of sentences between two scenes, and the words that tell it."""
    words = {"eyes": EYES, "hair": HAIR, "beard": HAIR, "height": (("tall",), ("short",))}.get(
        part, (("left",), ("right",))
    )[group]
    grey = mostly(scenes, "grey", "gray")
    places = {"tag": list(tags(scenes, person)), "name": list(acts(scenes, person))}
    places["behind"] = places["name"]
    for _ in range(len(SAYS[part]) * 2):
        how, pattern = random.choice(SAYS[part])
        colour = random.choice(words).replace("grey", grey)
        if "-" in pattern and (" " in colour or "-" in colour):
            continue
        if "of a {c}" in pattern and colour.startswith("very"):
            continue  # 'of a very dark' is no English
        said = pattern.format(c=colour, **person.pronouns)
        free = [place for place in places[how] if first <= place.scene < last]
        free = fitting(scenes, person, free, how, pattern)
        if free:
            place = random.choice(free)
            if how == "name":
                yield after_name(scenes, place, person.name, said), said.strip(" ,")
            else:
                yield behind(scenes, place, said if how == "tag" else f" {said}"), said.strip(" ,")


def _words(scenes: Scenes, place: Place) -> str:
    return scenes[place.scene][place.paragraph][place.start : place.end]
