"""From two drafts' units to every pair of them that belongs together, with the words each keeps.

Identical and unique first; then the best rising run of likenesses in every gap; only what is left is looked for
elsewhere; short lines by their neighbours; split and joined paragraphs last.
"""

from dataclasses import dataclass

from rapidfuzz.distance import LCSseq

from afterdraft.comparison.anchors import anchor, spread
from afterdraft.comparison.beside import join_beside
from afterdraft.comparison.gaps import close_gaps
from afterdraft.comparison.leftovers import find_leftovers
from afterdraft.comparison.matching import Matching
from afterdraft.comparison.pieces import beyond, pieces
from afterdraft.comparison.units import Units

SMALL, LARGE = 10_000, 250_000  # comparisons in a gap: before and after leftovers have parted the large ones


@dataclass(frozen=True, slots=True)
class Match:
    """Two units that belong together, and how many words the new one kept of the old one; each word counts once."""

    old: int
    new: int
    kept: int


def matched(old: Units, new: Units) -> list[Match]:
    """All pairs, by old unit, then new. A unit may stand in several, if it was split or joined."""
    matching = Matching(old, new)
    anchor(matching)
    close_gaps(matching, cells=SMALL)
    spread(matching)
    find_leftovers(matching)
    close_gaps(matching, cells=LARGE)
    spread(matching)
    join_beside(matching)
    return sorted(_counted(matching), key=lambda match: (match.old, match.new))


def _counted(matching: Matching) -> list[Match]:
    old, new = matching.old, matching.new
    found = [Match(first, second, kept(old, new, first, second)) for first, second in matching.pairs()]
    rest_old: dict[int, str] = {}  # words that no pair has counted yet, of units in several pairs
    rest_new: dict[int, str] = {}
    for piece in pieces(matching):
        first = rest_old.get(piece.old) or _rest(old, new, piece.old, matching.to_new[piece.old])
        second = rest_new.get(piece.new) or _rest(new, old, piece.new, matching.to_old[piece.new])
        found.append(Match(piece.old, piece.new, LCSseq.similarity(first, second)))
        rest_old[piece.old], rest_new[piece.new] = beyond(first, second), beyond(second, first)
    return found


def kept(old: Units, new: Units, first: int, second: int) -> int:
    """Words that two units share in order."""
    if old.words[first] == new.words[second]:
        return old.counts[first]
    return min(LCSseq.similarity(old.words[first], new.words[second]), old.counts[first], new.counts[second])


def _rest(ours: Units, theirs: Units, unit: int, partner: int) -> str:
    return beyond(ours.words[unit], theirs.words[partner]) if partner >= 0 else ours.words[unit]
