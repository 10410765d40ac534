"""What planters must know of prose, by simple counting: who is named, and where narration can take a day in front.

Imports nothing of the program, as everything that plants.
"""

import re
from collections import Counter
from collections.abc import Iterator, Sequence

from bench.faults.listed import listed
from bench.faults.planted import Scenes

Place = tuple[int, int]  # scene, paragraph
TITLES = "Mr|Mrs|Miss|Sir|Lady|Lord|Dr|Doctor|Captain|Colonel|Major|Inspector|Professor"
SPEECH = "said|asked|answered|replied|cried|exclaimed|returned|observed|remarked|muttered|whispered"
WORD = re.compile(r"[^\W\d_]+(?:[’'](?!s\b)[^\W\d_]+)*")
ENDS = re.compile(r"(?<!\bMr)(?<!\bMrs)(?<!\bDr)(?<!\bSt)(?<!\b[A-Z])[.!?]+[”’]*(?=\s|$)")
_INSIDE = re.compile(
    rf"(?<![.!?:—“‘”’*_(-])(?<!\n)\s(?:(?:{TITLES})\.?\s)?([A-Z][a-z]+(?:[’'](?!s\b)[a-z]+)?)\b(?![’'][^s\W])"
)
_PERSON = re.compile(
    rf"\b(?:{TITLES})\.?\s([A-Z][a-z]+)\b|[,”!?]\s(?:{SPEECH})\s([A-Z][a-z]+)\b|\b([A-Z][a-z]+)\s(?:{SPEECH})\b"
)
_PAST = re.compile(
    r"\b(?:was|were|came|went|took|sat|stood|rose|fell|ran|began|found|saw|felt|made|gave|got|kept|left|told|heard|lay"
    r"|drew|held|met|set|spoke|thought|threw|turned|\w{3,}ed)\b"
)
_ELSEWHEN = re.compile(
    r"\b(?:had|has|have|is|are|am|would|will|shall|should|could|might|may|must|always|never|often|sometimes|every|each"
    r"|used|generally|usually|already|since|still|ever|again|now|then|once|if|until|till|when|while|after|before|as"
    r"|later|ago|next|last|first|time|days?|nights?|mornings?|afternoons?|evenings?|noon|dawn|dusk|midnight|weeks?|months?"
    r"|years?|hours?|minutes?|moments?|o’clock|to-day|to-night|to-morrow|today|yesterday)\b",
    re.IGNORECASE,
)  # a sentence with one of these would not take a day in front, or would mean another
_OPENS = frozenset(
    listed("The A An He She It They We His Her Their My Our There This Both Two Three Some Someone Everybody Nobody")
)


def names(scenes: Scenes, least: int) -> list[str]:
    """Words that stand large and never small, so often at least, and with a title or a word of speech beside them now
    and then; the commonest first."""
    small: Counter[str] = Counter()
    large: Counter[str] = Counter()
    person: Counter[str] = Counter()
    for text in (text for scene in scenes for text in scene):
        small.update(word.capitalize() for word in WORD.findall(text) if word.islower())
        large.update(_INSIDE.findall(text))
        person.update(name for found in _PERSON.findall(text) for name in found if name)
    return [
        name
        for name, times in large.most_common()
        if times >= least and not small[name] and 10 * person[name] >= times and name not in TITLES.split("|")
    ]


def is_told(text: str) -> bool:
    """Whether a paragraph is narration from its first word, and no verse, heading or letter."""
    return text[:1].isupper() and "\n" not in text and len(text.split()) > 12 and text.rstrip()[-1:] in ".!?”’"


def takes_a_day(text: str, known: Sequence[str]) -> bool:
    """Whether its first sentence tells of one act in the past, with no time of its own."""
    end = ENDS.search(text)
    first = text[: end.end() if end else len(text)]
    return (
        is_told(text)
        and 5 <= len(first.split()) <= 45
        and (first.split()[0] in _OPENS or first.split()[0] in known or first.startswith("I "))
        and bool(_PAST.search(first[:80]))
        and not _ELSEWHEN.search(first)
        and not re.search(r"[“”‘?;:]", first)
    )


def opened(phrase: str, text: str) -> str:
    """The paragraph with a phrase before its first sentence, whose first letter becomes small where it is no name's; or
    with a sentence before it."""
    first = text.split()[0]
    if phrase.endswith("."):
        return f"{phrase} {text}"
    return f"{phrase} {text[0].lower() + text[1:] if first in _OPENS else text}"


def head(phrase: str, text: str) -> str:
    """The phrase with the words behind it, so that it stands once in its scene."""
    end = text.find(" ", len(phrase) + 20)
    return text[: end if end > 0 else len(text)]


def leaps(scenes: Scenes, first: Place, last: Place) -> bool:
    """Whether words between two places, or in them, tell of months and years: then they may lie in different ones."""
    return any(_LEAP.search(text) for text in between(scenes, first, last))


def between(scenes: Scenes, first: Place, last: Place) -> Iterator[str]:
    for number in range(first[0], last[0] + 1):
        for at, text in enumerate(scenes[number]):
            if first <= (number, at) <= last:
                yield text


def passes_time(text: str) -> bool:
    """Whether words of a paragraph tell of a time: then what stands before and behind it may be days apart."""
    return bool(_TIME.search(text))


_LEAP = re.compile(
    r"\b(?:months?|years?|winter|summer|spring|autumn|1[5-9]\d\d|January|February|March|April|June|July|August|September"
    r"|October|November|December)\b"
)
_TIME = re.compile(
    r"\b(?:days?|nights?|mornings?|afternoons?|evenings?|noon|dawn|dusk|midnight|weeks?|months?|years?|fortnight|later"
    r"|ago|next|to-day|to-night|to-morrow|today|yesterday|daylight|sunrise|sunset|breakfast|supper|slept|awoke|woke|bed"
    r"|spring|summer|autumn|winter|Christmas|Easter"
    r"|(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)days?|January|February|March|April|May|June|July|August|September|October"
    r"|November|December|1[5-9]\d\d)\b"
)


def runs(scenes: Scenes, known: Sequence[str], far: int) -> Iterator[tuple[int, list[int]]]:
    """Scenes with the paragraphs that take a day in front, in runs between which nothing passes time, of `far`
    paragraphs at most between neighbours."""
    for number, scene in enumerate(scenes):
        run: list[int] = []
        for at, text in enumerate(scene):
            if run and at - run[-1] > far:
                yield number, run
                run = []
            if passes_time(text):
                if run:
                    yield number, run
                run = []
            elif takes_a_day(text, known):
                run.append(at)
        if run:
            yield number, run
