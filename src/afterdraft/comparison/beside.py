"""Short and much changed units: known by the neighbours they still stand between."""

from rapidfuzz.distance import Indel

from afterdraft.comparison.matching import NONE, Matching

WEAK = 0.2  # likeness enough between two neighbours that stand together
FEW = 3  # words that a lone line may have to be taken for its successor with no word the same


def join_beside(matching: Matching) -> None:
    """Join a lone free unit with the lone free unit between the same two neighbours."""
    for old, partner in enumerate(matching.to_new):
        if partner == NONE and (new := _between(matching, old)) is not None and _may_be(matching, old, new):
            matching.join(old, new)


def _between(matching: Matching, old: int) -> int | None:
    """The free new unit that stands between the partners of both neighbours; an end of the book is a neighbour."""
    before = matching.to_new[old - 1] if old else NONE
    after = matching.to_new[old + 1] if old + 1 < len(matching.to_new) else len(matching.to_old)
    if (old and before == NONE) or after != before + 2 or matching.to_old[before + 1] != NONE:
        return None
    return before + 1


def _may_be(matching: Matching, old: int, new: int) -> bool:
    if max(matching.old.counts[old], matching.new.counts[new]) <= FEW:
        return True
    return Indel.normalized_similarity(matching.old.words[old], matching.new.words[new]) >= WEAK
