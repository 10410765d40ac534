"""What no gap explains: looked up anywhere by rare words, pairs and triples of words."""

from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from heapq import nsmallest
from itertools import chain

from rapidfuzz.distance import Indel

from afterdraft.comparison.gaps import ALIKE_LONG, LONG, alike_enough, in_all_words
from afterdraft.comparison.matching import Matching
from afterdraft.comparison.units import Units

SHORT = 6  # words: fewer are not looked for anywhere else
RARE = 4  # times that a word stands in what is left of one draft, at most, to be a sign
CROWD = 8  # units that share a sign, at most: more say nothing
WHOLE, WHOLE_LONG = (
    0.45,
    0.3,
)  # likeness in all words as well, of what has no neighbour to speak for it: below them most
# were wrong on the tune half of the bench; `LONG` tells the two apart
TRIED = 4  # of the units that share the most signs


def find_leftovers(matching: Matching) -> None:
    """Join free units that are alike wherever they lie: the longest and likest first."""
    old = [unit for unit in matching.free_old(range(len(matching.old))) if matching.old.counts[unit] >= SHORT]
    new = [unit for unit in matching.free_new(range(len(matching.new))) if matching.new.counts[unit] >= SHORT]
    found = sorted(_found(matching, old, new), key=lambda one: (-one[0], one[1:]))
    taken_old: set[int] = set()
    taken_new: set[int] = set()
    for _, first, second in found:
        if first not in taken_old and second not in taken_new:
            matching.join(first, second)
            taken_old.add(first)
            taken_new.add(second)


def _found(matching: Matching, old: Sequence[int], new: Sequence[int]) -> Iterator[tuple[float, int, int]]:
    """Weight, old unit, new unit."""
    first, second = matching.old, matching.new
    counts = Counter(chain.from_iterable(first.words[unit] for unit in old))
    index: defaultdict[str, list[int]] = defaultdict(list)
    for unit in old:
        for sign in _signs(first, unit, counts):
            index[sign].append(unit)
    for unit in new:
        votes: Counter[int] = Counter()
        for sign in _signs(second, unit, counts):
            sharing = index.get(sign, ())
            if len(sharing) <= CROWD:
                votes.update(sharing)
        for other, _ in nsmallest(TRIED, votes.items(), key=lambda vote: (-vote[1], vote[0])):
            likeness = Indel.normalized_similarity(first.key(other), second.key(unit), score_cutoff=ALIKE_LONG)
            words = min(first.counts[other], second.counts[unit])
            if alike_enough(likeness, words) and in_all_words(first, second, other, unit) >= (
                WHOLE_LONG if words >= LONG else WHOLE
            ):
                yield likeness * matching.weight(other, unit), other, unit


def _signs(units: Units, unit: int, counts: Counter[str]) -> set[str]:
    """Rare words, pairs of words that are not common, triples of any: told apart by their lengths."""
    words, key = units.words[unit], units.key(unit)
    signs = {words[at : at + 3] for at in range(len(words) - 2)}
    signs.update(key[at : at + 2] for at in range(len(key) - 1))
    signs.update(word for word in key if 0 < counts[word] <= RARE)
    return signs
