"""First of all: what stands unchanged in both drafts, and can be taken for nothing else."""

from collections.abc import Iterable, Sequence

from afterdraft.comparison.matching import NONE, Matching

ANCHOR = 6  # words of a paragraph that is known again anywhere; shorter ones ("“I don't know,” he said.") are not


def anchor(matching: Matching) -> None:
    """Join identical units that stand once in each draft, and from them on what is identical beside them."""
    ones = _once(matching.new.words)
    for words, old in _once(matching.old.words).items():
        if old != NONE and len(words) >= ANCHOR and ones.get(words, NONE) != NONE:
            matching.join(old, ones[words])
    spread(matching)


def spread(matching: Matching) -> None:
    """Join what is identical and stands beside a pair, on and on, downwards and then upwards."""
    for step, pairs in ((1, matching.pairs()), (-1, matching.pairs()[::-1])):
        _spread(matching, pairs, step)


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
