"""Somebody who speaks of a thing in a scene before the one in which they learn it."""

import re
from collections import Counter
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.lines import lines
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.reading.lexicon import words_of

SURE = 0.7  # of who speaks
SHARED = 2  # telling words of the fact in one speech at least; chosen by hand
RARE = 30  # times that a word stands in the book at most, to be telling, likewise
_WORD = re.compile(r"[^\W\d_]{4,}")
_PLAIN = words_of("that this with from have been were they them their what when where which would could there about")


def find(seen: Seen) -> Iterator[Finding]:
    counted = Counter(word.lower() for scene in seen.texts for text in scene for word in _WORD.findall(text))
    names = {word for one in seen.given.people for form in one.forms for word in form.split()}
    for line in lines(seen, "reveal"):
        telling = {
            word
            for word in map(str.lower, _WORD.findall(line.name))
            if word not in _PLAIN and word not in names and 0 < counted[word] <= RARE
        }
        if len(telling) < SHARED:
            continue
        for one in line.points:
            if one.person and (early := _speaks_of(seen, one.person, telling, before=one.scene)):
                yield Finding(
                    evidence=(early, *([one.passage] if one.passage else [])),
                    strength=0.65,
                    subject=f"{line.name}: {seen.name(one.person).lower()}",
                    words={"name": line.name, "who": seen.name(one.person)},
                    numbers={"early": early.scene, "learns": one.scene},
                    people=(one.person,),
                    scenes=(one.scene,),
                )


def _speaks_of(seen: Seen, person: str, telling: set[str], *, before: int) -> Span | None:
    for number in range(before):
        if number < len(seen.story.scenes) and seen.story.scenes[number].flashback:
            continue
        for said in seen.book.spoken[number]:
            if said.speaker != person or said.sure < SURE:
                continue
            quote = seen.facts[number].quotes[said.quote]
            text = seen.texts[number][quote.paragraph][quote.start : quote.end]
            if len(telling & {word.lower() for word in _WORD.findall(text)}) >= SHARED:
                return seen.span(number, quote.paragraph, quote.start, quote.end)
    return None


CHECK = Check(
    id="known early",
    name="Spoken of before it is learned",
    family="setups and reveals",
    looks_at="Somebody who speaks of a thing before the scene in which you marked that they learn it.",
    method="Looks for two rare words of the reveal's name in one speech of that person, in an earlier scene. The "
    "rule is our own.",
    blind="What is spoken of in other words; somebody who acts on what they cannot know yet.",
    reads=("words", "cast", "time", "marks"),
    find=find,
)
