"""First of all: what stands unchanged in both drafts, and can be taken for nothing else."""

from collections.abc import Iterable, Sequence

from afterdraft.comparison.chain import heaviest
from afterdraft.comparison.matching import NONE, Matching

ANCHOR = 6  # words of a paragraph that is known again anywhere; shorter ones ("“I don't know,” he said.") are not


def anchor(matching: Matching) -> None:
    """Join identical units that stand once in each draft, and from them on what is identical beside them."""
    ones = _once(matching.new.words)
    for words, old in _once(matching.old.words).items():
        if old != NONE and len(words) >= ANCHOR and ones.get(words, NONE) != NONE:
            matching.join(old, ones[words])
    spread(matching)


def anchor_within(matching: Matching, old: Sequence[int], new: Sequence[int]) -> None:
    """Join what is identical and stands once on each side of a gap, however short, and keeps its order there.

    Method: patience sorting of unique lines (Bram Cohen's, from memory), where a gap is too large to compare all.
    """
    ones = _once([matching.new.words[unit] for unit in new])
    pairs = [
        (old[place], new[ones[words]])
        for words, place in _once([matching.old.words[unit] for unit in old]).items()
        if place != NONE and ones.get(words, NONE) != NONE
    ]
    for place in heaviest(pairs, [matching.weight(*pair) for pair in pairs]):
        matching.join(*pairs[place])


def spread(matching: Matching) -> None:
    """Join what is identical and stands beside a pair, or at an end of both drafts, downwards and then upwards."""
    _spread(matching, [(-1, -1), *matching.pairs()], 1)
    _spread(matching, [(len(matching.old), len(matching.new)), *matching.pairs()[::-1]], -1)


def _spread(matching: Matching, pairs: Iterable[tuple[int, int]], step: int) -> None:
    old_words, new_words = matching.old.words, matching.new.words
    for start, beside in pairs:
        old, new = start + step, beside + step
        while (
            0 <= old < len(old_words)
            and 0 <= new < len(new_words)
            and matching.to_new[old] == NONE
            and matching.to_old[new] == NONE
            and old_words[old] == new_words[new]
        ):
            matching.join(old, new)
            old, new = old + step, new + step


def _once(words: Sequence[str]) -> dict[str, int]:
    """Where each string stands; `NONE` where it stands more than once."""
    places: dict[str, int] = {}
    for place, one in enumerate(words):
        places[one] = NONE if one in places else place
    return places
