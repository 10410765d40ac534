"""Somebody who speaks of a thing, or acts on it, in a scene before the one in which they learn it."""

import re
from collections import Counter
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.lines import lines
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.lexicon import words_of
from afterdraft.whole.turns import meant

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
            known = _known(seen, one.person, telling, before=one.scene) if one.person else None
            if one.person and known:
                does, early = known
                yield Finding(
                    evidence=(early, *([one.passage] if one.passage else [])),
                    strength=0.65 if does == "speaks of" else 0.55,
                    subject=f"{line.name}: {seen.name(one.person).lower()}",
                    words={"name": line.name, "who": seen.name(one.person), "does": does},
                    numbers={"early": early.scene, "learns": one.scene},
                    people=(one.person,),
                    scenes=(one.scene,),
                )


def _known(seen: Seen, person: str, telling: set[str], *, before: int) -> tuple[str, Span] | None:
    """How, and where."""
    for number in range(before):
        if not (number < len(seen.story.scenes) and seen.story.scenes[number].flashback):
            if said := _speaks_of(seen, number, person, telling):
                return "speaks of", said
            if acted := _acts_on(seen, number, person, telling):
                return "thinks of, or acts on,", acted
    return None


def _speaks_of(seen: Seen, number: int, person: str, telling: set[str]) -> Span | None:
    for said in seen.book.spoken[number]:
        if said.speaker != person or said.sure < SURE:
            continue
        quote = seen.facts[number].quotes[said.quote]
        text = seen.texts[number][quote.paragraph][quote.start : quote.end]
        if _shares(text, telling):
            return seen.span(number, quote.paragraph, quote.start, quote.end)
    return None


def _acts_on(seen: Seen, number: int, person: str, telling: set[str]) -> Span | None:
    """A sentence outside speech in which that person, by name, does or thinks something."""
    scene = seen.facts[number]
    for one, who in zip(scene.mentions, meant(scene, seen.book.cast), strict=True):
        if who != person or one.spoken or not (one.subject and one.kind == "name"):
            continue
        start, end = sentence(seen.texts[number][one.paragraph], one.start, one.end)
        speech = any(
            quote.paragraph == one.paragraph and quote.start < end and start < quote.end for quote in scene.quotes
        )
        span = seen.span(number, one.paragraph, start, end)
        if not speech and _shares(span.quote, telling):
            return span
    return None


def _shares(text: str, telling: set[str]) -> bool:
    return len(telling & {word.lower() for word in _WORD.findall(text)}) >= SHARED


CHECK = Check(
    id="known early",
    name="Spoken of or acted on before it is learned",
    family="setups and reveals",
    looks_at="Somebody who speaks of a thing, or is told to do or think something about it, before the scene in "
    "which you "
    "marked that they learn it.",
    method="Looks for two rare words of the reveal's name in one speech of that person, or in one sentence that "
    "has them "
    "by name as who acts, in an earlier scene. The rule is our own.",
    blind="What is told in other words, or of ‘he’ and ‘she’. What somebody does about the same thing without "
    "knowing it.",
    reads=("words", "cast", "time", "marks"),
    find=find,
    recipe=2,
)
