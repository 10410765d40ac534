"""A thing that enters with weight and is never heard of again."""

import re
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.things import shown, things, told_before
from afterdraft.reading.quotations import quotations

LEAST = 15.13  # of Dunning's G², by which one in ten thousand is chance
OFTEN = 2  # times in its scene at least; chosen on the tuning half
NEAR = 2  # scenes from its first to its last, likewise
LATE = 0.85  # share of the book's words from which nothing needs to come back; chosen by hand
MOST = 2  # asked of one book: those of most weight
_WEIGHT = re.compile(
    r"\b(?:sealed|entrusted|(?:to be|until) called for|keep (?:it|this|them) safe"
    r"|(?:not|never) (?:to )?(?:be )?open\w*|don[’']t open|scratched in|under the (?:bed|floor|boards)"
    r"|(?:put|laid|slipped|thrust|pushed|hid) (?:it|the \w+|his \w+|her \w+)"
    r" (?:away|at the bottom|under|beneath|behind|into (?:his|her) (?:bosom|sleeve))"
    r"|leave (?:something|it|this) (?:here|with you)|take care of (?:it|this)|what(?:ever)? was in (?:it|the)"
    r"|without a word about)\b"
)
_ONCE = re.compile(r"\b(?:like an?|as an?|such an?|any|no|every)\s(?:\w+\s)?$")


def find(seen: Seen) -> Iterator[Finding]:
    before, whole = told_before(seen.texts)
    found = []
    for one in things(seen.texts):
        first, last = one.spans[0].scene, one.spans[-1].scene
        if last - first >= NEAR or before[last] >= LATE * whole or len(one.spans) < OFTEN:
            continue
        weighty = [span for span in one.spans if _is_weighty(seen, span)]
        if all(_is_spoken(seen, span) for span in one.spans):
            continue  # what somebody tells of begins and ends there
        if weighty and max(one.g2.values()) >= LEAST:
            found.append(shown(seen, one, (weighty[0], one.spans[-1])))
    yield from sorted(found, key=lambda one: -one.numbers["weight"])[:MOST]


def _is_weighty(seen: Seen, span: Span) -> bool:
    text = seen.texts[span.scene][span.paragraph]
    start, end = sentence(text, span.start, span.end)
    return bool(_WEIGHT.search(text[start:end])) and not _ONCE.search(text[: span.start])


def _is_spoken(seen: Seen, span: Span) -> bool:
    return any(
        quote.paragraph == span.paragraph and quote.start <= span.start < quote.end
        for quote in quotations(seen.texts[span.scene])
    )


CHECK = Check(
    id="thing open",
    name="A thing that does not come back",
    family="setups and reveals",
    looks_at="A thing that a scene makes much of (a parcel, a key, a letter that is sealed, hidden, left with "
    "somebody) and "
    "that is not spoken of from the next scenes on.",
    method="Names of things that stories keep, hide and find (a list by hand), that stand far oftener in a scene "
    "than in the "
    "rest of the book (log-likelihood ratio, Dunning 1993) and nowhere later, with words of weight beside them. "
    "The two "
    "of most weight; not in the last part of the book.",
    blind="Things that are not on the list, or that come back under another word. What is meant to stay open, and what "
    "is only spoken of.",
    reads=("words",),
    find=find,
    recipe=3,
)
