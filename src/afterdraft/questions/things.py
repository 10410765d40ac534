"""Things that a scene makes much of: where they stand in the book, and how far that is from chance."""

import re
from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import log

from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen

_NAMES = """
parcel packet envelope letter telegram note document paper will deed diary notebook ledger manuscript map chart plan
key box chest trunk casket case portmanteau bag satchel purse wallet pocket-book tin jar bottle phial flask vial
basket bundle drawer cupboard safe cabinet ring locket brooch necklace bracelet pendant watch coin medal jewel
diamond pearl pistol gun revolver rifle knife dagger sword axe hammer trowel spade rope lamp lantern candle
photograph portrait picture miniature telescope compass violin piano doll whistle bell handkerchief glove scarf
cloak umbrella stick cane badge seal stamp poison powder pill medicine syringe matchbox cigarette-case snuffbox
spectacles boot button thimble scissors needle
"""  # things that are kept, hidden, found and used in stories; by hand
THINGS = frozenset(_NAMES.split())
_WORD = re.compile(r"[a-z]+(?:-[a-z]+)*")


@dataclass(frozen=True, slots=True)
class Thing:
    name: str
    spans: tuple[Span, ...]  # all places, in telling order
    counts: Mapping[int, int]  # by scene
    g2: Mapping[
        int, float
    ]  # by scene: Dunning's log-likelihood ratio against the rest of the book, 0 where rarer there


def things(texts: Sequence[Sequence[str]]) -> list[Thing]:
    """Of scenes of paragraphs; singular and plural are one."""
    found: defaultdict[str, list[Span]] = defaultdict(list)
    words = [0] * len(texts)
    for number, scene in enumerate(texts):
        for place, text in enumerate(scene):
            for match in _WORD.finditer(text):
                words[number] += 1
                name = match.group() if match.group() in THINGS else match.group().removesuffix("s")
                if name in THINGS:
                    found[name].append(Span(number, place, *match.span(), match.group()))
    return [_thing(name, spans, words) for name, spans in found.items()]


def _thing(name: str, spans: Sequence[Span], words: Sequence[int]) -> Thing:
    counts: defaultdict[int, int] = defaultdict(int)
    for span in spans:
        counts[span.scene] += 1
    whole, times = sum(words), len(spans)
    g2 = {
        number: log_likelihood(here, words[number], times - here, whole - words[number])
        for number, here in counts.items()
    }
    return Thing(name, tuple(spans), dict(counts), g2)


def log_likelihood(here: int, words_here: int, elsewhere: int, words_elsewhere: int) -> float:
    """Dunning's G² (1993) of a word's counts in two texts; 0 where it is not commoner in the first.

    >>> round(log_likelihood(10, 1000, 10, 99000), 2), log_likelihood(1, 1000, 500, 1000)
    (64.58, 0.0)
    """
    share = (here + elsewhere) / (words_here + words_elsewhere)
    expected = words_here * share, words_elsewhere * share
    if here <= expected[0]:
        return 0.0
    parts = ((here, expected[0]), (elsewhere, expected[1]))
    return 2 * sum(seen * log(seen / mean) for seen, mean in parts if seen)


def told_before(texts: Sequence[Sequence[str]]) -> tuple[list[int], int]:
    """Characters told before each scene, and in all."""
    before, at = [], 0
    for scene in texts:
        before.append(at)
        at += sum(map(len, scene))
    return before, at


def shown(seen: Seen, one: Thing, places: Sequence[Span]) -> Finding:
    """A question's ground: the sentences of these places, and how much the book makes of the thing."""
    return Finding(
        evidence=tuple(dict.fromkeys(map(seen.sentence, places))),
        strength=0.55,
        subject=f"thing: {one.name}",
        words={"thing": one.name},
        numbers={"weight": round(max(one.g2.values()), 1), "times": len(one.spans)},
    )
