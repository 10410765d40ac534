"""Somebody who decides things late and was not met before."""

import re
from collections import Counter
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Mention
from afterdraft.whole.turns import meant

LATE = 0.8  # share of the book's words from which it is late; chosen by hand
WEIGHT = 12  # times that somebody who comes so late is named at least; chosen on the tuning half
SPEAKS = 150  # words spoken at least, likewise
SCENES = 2  # in which they are on the page at least, likewise
_SETTLES = re.compile(
    r"^(?:[^.;!?]{0,20}\b(?:who|that)\b)?[^.;!?]{0,12}\b(?:settled|decided|saved|solved|confessed|proved|revealed"
    r"|explained everything|betrayed|killed|rescued|owned|ordered|mended|made the)\b"
)
_CLEFT = re.compile(r"\b[Ii]t was (?:old |young |the |poor |little )?$")


def find(seen: Seen) -> Iterator[Finding]:
    whole = sum(len(text) for scene in seen.texts for text in scene)
    said = seen.book.words_spoken()
    first = _first_named(seen)
    met = Counter(one.person for one in seen.book.appearances if one.presence != "mentioned")
    before = 0
    for number, scene in enumerate(seen.texts):
        for person, (at, mention) in first.items():
            if at == number and before >= LATE * whole:
                counted = next(one.mentions for one in seen.book.cast.people if one.id == person)
                enough = counted >= WEIGHT and said[person] >= SPEAKS and met[person] >= SCENES
                if enough and not _named_before(seen, number, seen.name(person)):
                    yield _finding(seen, number, mention, seen.name(person), (person,), counted)
        if before >= LATE * whole:
            yield from _settling(seen, number, first)
        before += sum(map(len, scene))


def _first_named(seen: Seen) -> dict[str, tuple[int, Mention]]:
    found: dict[str, tuple[int, Mention]] = {}
    for number, scene in enumerate(seen.facts):
        for one, person in zip(scene.mentions, meant(scene, seen.book.cast), strict=True):
            if person and one.kind in ("name", "role"):
                found.setdefault(person, (number, one))
    return found


def _settling(seen: Seen, number: int, first: dict[str, tuple[int, Mention]]) -> Iterator[Finding]:
    """'It was old Mrs Averay who settled it', of somebody who is named here for the first time."""
    people = meant(seen.facts[number], seen.book.cast)
    for one, person in zip(seen.facts[number].mentions, people, strict=True):
        if one.kind != "name" or one.spoken or (person and first[person][0] < number):
            continue
        text = seen.texts[number][one.paragraph]
        name = text[one.start : one.end]
        cleft = _CLEFT.search(text, 0, one.start) and re.match(r"\s(?:who|that)\b", text[one.end :])
        if cleft and _SETTLES.match(text[one.end : one.end + 80]) and not _named_before(seen, number, name):
            yield _finding(seen, number, one, name, (person,) if person else (), 1)


def _named_before(seen: Seen, number: int, name: str) -> bool:
    """Whether the last part of it stood before: a family that is known, or a title of somebody who is."""
    last = re.compile(rf"\b{re.escape(name.split()[-1])}\b")
    return any(last.search(text) for scene in seen.texts[:number] for text in scene)


def _finding(seen: Seen, number: int, one: Mention, name: str, people: tuple[str, ...], times: int) -> Finding:
    return Finding(
        evidence=(_sentence(seen, number, one),),
        strength=0.6 if times > 1 else 0.7,
        subject=f"late: {name.lower()}",
        words={"name": name},
        numbers={"times": times},
        people=people,
    )


def _sentence(seen: Seen, number: int, one: Mention) -> Span:
    return seen.span(number, one.paragraph, *sentence(seen.texts[number][one.paragraph], one.start, one.end))


CHECK = Check(
    id="late",
    name="Somebody decisive who comes late",
    family="cast",
    looks_at="Somebody who is named for the first time in the last fifth of the book and then counts for much, or is "
    "said to settle things.",
    method="Counts names and words spoken of people first named so late, whose family or title stood nowhere before; "
    "and looks for ‘it was … who settled it’ of a name that stood nowhere before. The rule is our own.",
    blind="Somebody who was on the page before without a name. People who are decisive without being named or heard "
    "much.",
    reads=("words", "cast"),
    find=find,
    recipe=2,
)
