"""One thing of which two figures are told: the steps of a tower, the price of a boat."""

import re
from collections import defaultdict
from collections.abc import Iterator
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.counted import Figure, figures
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen

FAR = 2  # times as much: two things, and not two figures of one
_OF = re.compile(r"\b(?:of|to|in|into|up|down|from) (?:the|his|her|their|my|our) (?:\w+ )?([a-z]{3,})\b")


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[tuple[str, bool], list[tuple[Figure, Span]]] = defaultdict(list)
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for one in figures(text):
                by[one.noun, one.priced].append((one, seen.span(number, place, one.start, one.end)))
    for (noun, priced), some in by.items():
        pairs = ((one, other) for one, other in combinations(some, 2) if _disagree(*one, *other))
        if pair := next(pairs, None):
            yield _finding(noun, priced, *pair)


def _disagree(one: Figure, span: Span, other: Figure, at: Span) -> bool:
    """Whether two scenes tell two figures, near enough to be of one thing, and name no two places for it."""
    low, high = sorted((one.value, other.value))
    first, second = (
        set(_OF.findall(said.quote.replace(figure.words, ""))) for figure, said in ((one, span), (other, at))
    )
    two_things = not one.priced and first and second and not first & second
    return span.scene != at.scene and low < high <= FAR * low and not two_things


def _finding(noun: str, priced: bool, one: tuple[Figure, Span], other: tuple[Figure, Span]) -> Finding:
    return Finding(
        evidence=(one[1], other[1]),
        strength=0.65,
        subject=f"{'price' if priced else 'number'} of {noun}",
        words={"first": one[0].words, "other": other[0].words},
    )


CHECK = Check(
    id="figure",
    name="One thing, two figures",
    family="continuity",
    looks_at="Steps, rooms, windows, bells and the like that are counted out in one scene and come to another number "
    "in a later one; and a thing that is said to have cost two sums.",
    method="A count that does not end in nought or five, from thirteen on, before one of a short list of parts of "
    "buildings and places; and ‘paid … for the boat’, ‘the boat cost …’, ‘bought the boat for …’ with the same noun. "
    "Two figures of which one is more than twice the other, those that are rounded, doubted or offered, and counts "
    "beside which two places are named, are let be. The lists of words are by hand, and the rule our own.",
    blind="How many people there are, which changes; what a thing cost where the sentence does not name it; rounded "
    "figures. Two flights of steps that are both counted out are asked about.",
    reads=("words",),
    find=find,
)
