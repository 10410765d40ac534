"""Two ages of one person, told a few scenes apart, that do not fit the time between."""

import re
from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, Place, acts, after_name, behind, fitting, holds, in_its_marks, people, tags
from bench.faults.planted import Edit, Fault, Scenes, Shown

OFTEN = 12  # of the novel's people, the most named
NEAR = 4  # scenes between, for one who is suddenly much older
GROWN, YOUNG, OLD = 22, 16, 58  # a married woman's age at least, anybody's at least, and at most
AT = ", at {a},"  # before 'had': of the time when they were
SAYS = (
    ("behind", "{He} was {a} that year."),
    ("behind", "{n} was {a} years old."),
    ("behind", "At {a}, {he} had given up expecting to be surprised."),
    ("behind", "{He} was a {man} of {a}, and looked it."),
    ("behind", "{He} was only {a}, after all."),
    ("behind", "{n} was {a}, and had begun to feel it."),
    ("behind", "{He} was {a} years of age, and nobody would have guessed it."),
    ("name", ", who was {a},"),
    ("name", ", aged {a},"),
    ("name", AT),
    ("name", ", a {man} of {a},"),
    ("tag", ", who was {a}"),
    ("tag", ". “I am {a},” {he} added"),
)
_PASS = re.compile(
    r"\byears? (?:later|after\w*|passed|pass|went|rolled|gone)\b|\b(?:after|next|following) (?:\w+ )?years?\b"
)
_ONES = (
    "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen "
    "eighteen nineteen"
)
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy")
_NUMBER = rf"(?:(?:{'|'.join(_TENS)})(?:-\w+)?|\w+teen|\d\d|\w+-and-(?:{'|'.join(_TENS)}))"
_AGED = re.compile(
    rf"\b{_NUMBER} years? (?:old|of age)\b"
    rf"|\b(?:aged|turned|was|woman of|man of|girl of|boy of|at) {_NUMBER}(?=[,.;:—])",
    re.I,
)


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    chosen = [one for one in people(scenes)[:OFTEN] if not _has_an_age(scenes, one)]
    random.shuffle(chosen)
    for person in chosen * 3:
        age = random.randrange(GROWN + 6 if person.name.startswith(("Mrs.", "Mr.", "Dr.")) else YOUNG + 3, OLD)
        older = random.random() < 0.4
        first = random.randrange(max(1, len(scenes) - NEAR))
        last = min(len(scenes), first + 1 + NEAR if older else len(scenes))
        then = age + random.randrange(4, 12) if older else max(YOUNG, age - random.randrange(2, 9))
        one = next(_said(scenes, person, age, range(first, first + 1), random), None)
        other = next(_said(scenes, person, then, range(first + 1, last), random), None)
        if (
            one
            and other
            and not (older and _PASS.search("\n".join(text for each in scenes[first:last] for text in each)))
        ):
            edits, shown = (one[0], other[0]), (Shown(other[0].scene, other[1]), Shown(one[0].scene, one[1]))
            if holds(scenes, fault := Fault("age", edits, shown)):
                yield fault


def _has_an_age(scenes: Scenes, person: Person) -> bool:
    """Whether the author tells how old somebody is where the person is named, or right behind: that disagrees too."""
    return any(
        _AGED.search(text) and person.name in f"{before} {text}"
        for scene in scenes
        for before, text in zip(("", *scene), scene, strict=False)
    )


def _goes_back(scenes: Scenes, person: Person, place: Place) -> bool:
    told = scenes[place.scene][place.paragraph]
    return bool(re.match(r"\s(?:\w+ly )?(?:had|would)\b", told[place.start + len(person.name) :]))


def words(age: int) -> str:
    """
    >>> words(41), words(19), words(30)
    ('forty-one', 'nineteen', 'thirty')
    """
    ones = _ONES.split()
    if age < 20:
        return ones[age - 1]
    tens, rest = _TENS[age // 10 - 2], age % 10
    return f"{tens}-{ones[rest - 1]}" if rest else tens


def _said(scenes: Scenes, person: Person, age: int, within: range, random: Random) -> Iterator[tuple[Edit, str]]:
    """Edits of sentences in these scenes, and the words that tell it."""
    places = {"tag": list(tags(scenes, person)), "name": list(acts(scenes, person))}
    places["behind"] = places["name"]
    for how, pattern in random.sample(SAYS, len(SAYS)):
        free = fitting(scenes, person, [one for one in places[how] if one.scene in within], how, pattern)
        free = [one for one in free if pattern != AT or not _goes_back(scenes, person, one)]
        if free:
            place = random.choice(free)
            said = in_its_marks(scenes, place, pattern.format(a=words(age), **person.pronouns))
            if how == "name":
                yield after_name(scenes, place, person.name, said), said.strip(" ,.")
            else:
                yield behind(scenes, place, said if how == "tag" else f" {said}"), said.strip(" ,.")
