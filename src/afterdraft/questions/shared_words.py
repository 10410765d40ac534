"""Whether what is told beside two names is more alike than chance would have it: by the seldom words that both share.

A person is mostly told of in the same few words: orange shoes, a collar, a taxi. How many seldom words two names share
by chance alone follows nearly a Poisson distribution, of which the mean is the product of how many each has, over all
there are; from any textbook of statistics. What is seldom was chosen on the novellas.
"""

from collections import defaultdict
from collections.abc import Mapping, Sequence, Set
from dataclasses import dataclass
from functools import cached_property
from math import exp

from afterdraft.questions.names_written import LONG, WORD, Names
from afterdraft.questions.question import Span
from afterdraft.reading.tense_forms import stem

SELDOM = 12  # paragraphs in which a word stands at most
LEAST = 3  # words that both share
CHANCE = 0.03  # how likely it is at most that as many are shared by chance


@dataclass(frozen=True)
class SharedWords:
    names: Names

    def tell_of_one(self, one: Sequence[Span], other: Sequence[Span]) -> bool:
        """Whether the paragraphs of the two have so many seldom words in common that it is hardly chance."""
        first, second = (self._beside(spans) for spans in (one, other))
        shared = len(first & second)
        return shared >= LEAST and at_least(shared, len(first) * len(second) / len(self._seldom)) < CHANCE

    def closest(self, one: Sequence[Span], other: Sequence[Span]) -> Span:
        """Of the one the place whose paragraph has most of these words; the first of several."""
        second = self._beside(other)
        return max(one, key=lambda span: len(self._beside([span]) & second))

    def twice(self, text: str) -> Set[str]:
        """Of a text, the words that stand in two paragraphs of the book."""
        stems = {self._stems.get(word, "") for word in WORD.findall(text)}
        return {one for one in stems if len(self._seldom.get(one, ())) == 2}

    def _beside(self, spans: Sequence[Span]) -> Set[str]:
        places = {(span.scene, span.paragraph) for span in spans}
        return {word for word, found in self._seldom.items() if not found.isdisjoint(places)}

    @cached_property
    def _stems(self) -> Mapping[str, str]:
        return {word: stem(word) for word in self.names.counted if word.islower() and len(word) > LONG}

    @cached_property
    def _seldom(self) -> Mapping[str, Set[tuple[int, int]]]:
        """Stems of small words that stand in several paragraphs, and in few of them."""
        found: defaultdict[str, set[tuple[int, int]]] = defaultdict(set)
        for number, scene in enumerate(self.names.seen.texts):
            for place, text in enumerate(scene):
                for word in WORD.findall(text):
                    if word in self._stems:
                        found[self._stems[word]].add((number, place))
        return {word: places for word, places in found.items() if 1 < len(places) <= SELDOM}


def at_least(times: int, mean: float) -> float:
    """How likely a thing that mostly happens so many times happens so often or more: the tail of Poisson's numbers."""
    term, below = exp(-mean), 0.0
    for number in range(times):
        below += term
        term *= mean / (number + 1)
    return 1 - below
