"""A small word that stands twice in a row, as an edit leaves it."""

import re
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.speech import speech

SHOWN = 4  # places that are shown
_TWICE = re.compile(
    r"(?<![\w’'-])(the|an?|of|and|to|with|at|for|from|by|into|his|its|their|my|our|your|was|were|as|or|but|than|if|we"
    r"|they|would|could|has|have|is|are|who|which|these|those)\s+\1(?![\w’'-])",
    re.IGNORECASE,
)  # no 'had had', 'that that', 'her her', 'it it', 'in in', which sentences may have


def find(seen: Seen) -> Iterator[Finding]:
    places = list(_places(seen))
    if places:
        yield Finding(
            evidence=tuple(dict.fromkeys(span for span, _ in places))[:SHOWN],
            strength=0.7,
            subject="doubled word",
            words={"words": ", ".join(dict.fromkeys(words for _, words in places[:SHOWN]))},
            numbers={"times": len(places)},
        )


def _places(seen: Seen) -> Iterator[tuple[Span, str]]:
    """Outside speech, where people falter: the sentence, and the two words."""
    for number, scene in enumerate(seen.texts):
        spoken = speech(scene)
        for place, text in enumerate(scene):
            for match in _TWICE.finditer(text):
                if "\n" not in text and not spoken(place, match.start()):
                    span = seen.span(number, place, *sentence(text, *match.span()))
                    yield span, " ".join(match.group().split())


CHECK = Check(
    id="doubled word",
    name="A word twice in a row",
    family="accidents",
    looks_at="‘The the’, ‘to to’: a small word that stands twice in a row outside speech. One question for the book.",
    method="Words of which no sentence has two in a row (the list is our own, from memory). Common practice of copy "
    "editors.",
    blind="Words that a sentence may have twice: ‘had had’, ‘that that’. Speech, where people falter.",
    reads=("words",),
    find=find,
)
