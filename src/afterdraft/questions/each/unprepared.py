"""A thing on which a late scene turns, and which stood nowhere before."""

import re
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.things import shown, things, told_before

LATE = 0.8  # share of the book's words from which it is late; as of people
LEAST = 15.13  # of Dunning's G², by which one in ten thousand is chance
OFTEN = 3  # times in its scene at least; chosen on the tuning half
MOST = 1  # asked of one book: that of most weight
_TURNS = re.compile(
    r"\b(?:proved|saved|settled|decided|betrayed|showed (?:that|who|him|her)|signalled|the signal"
    r"|flashed|the answer|the proof|it was the|with it|by it|that was how|gave (?:him|her|it) away|all along|at last)\b"
)


def find(seen: Seen) -> Iterator[Finding]:
    before, whole = told_before(seen.texts)
    found = []
    for one in things(seen.texts):
        first = one.spans[0].scene
        turning = [span for span in one.spans if span.scene == first and _turns(seen, span)]
        if before[first] >= LATE * whole and one.counts[first] >= OFTEN and one.g2[first] >= LEAST and turning:
            found.append(shown(seen, one, (one.spans[0], turning[0])))
    yield from sorted(found, key=lambda one: -one.numbers["weight"])[:MOST]


def _turns(seen: Seen, span: Span) -> bool:
    text = seen.texts[span.scene][span.paragraph]
    return bool(_TURNS.search(text[slice(*sentence(text, span.start, span.end))]))


CHECK = Check(
    id="thing late",
    name="A thing that comes late",
    family="setups and reveals",
    looks_at="A thing that is named for the first time in the last fifth of the book, and on which the scene turns.",
    method="Names of things that stories keep, hide and find (a list by hand), three times and more in that scene, "
    "nowhere "
    "before (log-likelihood ratio, Dunning 1993), with words of a turn beside them. One at most, that of most weight.",
    blind="Things that are not on the list, or that stood before under another word. Things that are there by the way.",
    reads=("words",),
    find=find,
)
