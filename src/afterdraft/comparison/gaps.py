"""What lies between pairs that are sure: the best rising run of likenesses there, never a crossing one."""

from collections.abc import Iterator, Sequence
from itertools import pairwise

from rapidfuzz import process
from rapidfuzz.distance import Indel

from afterdraft.comparison.anchors import anchor_within
from afterdraft.comparison.blocks import Runs, runs
from afterdraft.comparison.chain import heaviest
from afterdraft.comparison.matching import NONE, Matching
from afterdraft.comparison.units import Units

ALIKE = 0.4  # unrelated paragraphs of 15 to 40 words reach 0.20, those with 60 % replaced keep 0.38
ALIKE_LONG = 0.3  # where chance says less:
LONG = 10  # words
SHORT, WHOLE = 6, 0.3  # words; likeness in all words of what has fewer: below it half were wrong on the tune half
BESIDE = 30  # units that a moved run may be filled up across, or grow at its ends
Gap = tuple[Sequence[int], Sequence[int]]  # free units, old and new


def close_gaps(matching: Matching, *, cells: int) -> None:
    """Join what is alike in gaps of at most `cells` comparisons: in the backbone, then in and beside moved runs."""
    pairs = matching.pairs()
    found = runs(pairs, [matching.weight(*pair) for pair in pairs], reach=BESIDE)
    for gaps in (_in_backbone(matching, found), _in_moved(matching, found)):
        for old, new in gaps:
            if len(old) * len(new) > cells:
                anchor_within(matching, old, new)
            elif old and new:
                _join_alike(matching, old, new)


def alike_enough(likeness: float, words: int) -> bool:
    """Whether a likeness is more than chance; `words` of the shorter side."""
    return likeness >= (ALIKE_LONG if words >= LONG else ALIKE)


def in_all_words(old: Units, new: Units, first: int, second: int) -> float:
    """Likeness with the common words, 0…1."""
    return float(Indel.normalized_similarity(old.words[first], new.words[second]))


def likenesses(old: Units, new: Units, gap: Gap) -> Iterator[tuple[int, int, float]]:
    """Old unit, new unit, likeness: all that are alike enough."""
    there = [new.key(unit) for unit in gap[1]]
    for unit in gap[0]:
        key, count = old.key(unit), old.counts[unit]
        for _, likeness, place in process.extract(
            key, there, scorer=Indel.normalized_similarity, score_cutoff=ALIKE_LONG, limit=None
        ):
            other = gap[1][place]
            words = min(count, new.counts[other])
            if alike_enough(likeness, words) and (words >= SHORT or in_all_words(old, new, unit, other) >= WHOLE):
                yield unit, other, likeness


def _join_alike(matching: Matching, old: Sequence[int], new: Sequence[int]) -> None:
    cells = list(likenesses(matching.old, matching.new, (old, new)))
    weights = [likeness * matching.weight(first, second) for first, second, likeness in cells]
    for place in heaviest([cell[:2] for cell in cells], weights):
        matching.join(*cells[place][:2])


def _in_backbone(matching: Matching, found: Runs) -> Iterator[Gap]:
    ends = (len(matching.old), len(matching.new))
    yield from _between(matching, [(NONE, NONE), *found.backbone, ends])


def _in_moved(matching: Matching, found: Runs) -> Iterator[Gap]:
    for run in found.moved:
        yield from _between(matching, run)
        (old, new), (last_old, last_new) = run[0], run[-1]
        yield _free(matching.to_new, old - 1, -1), _free(matching.to_old, new - 1, -1)
        yield _free(matching.to_new, last_old + 1, 1), _free(matching.to_old, last_new + 1, 1)


def _between(matching: Matching, run: Sequence[tuple[int, int]]) -> Iterator[Gap]:
    for (old, new), (next_old, next_new) in pairwise(run):
        if next_old - old > 1 and next_new - new > 1:
            yield matching.free_old(range(old + 1, next_old)), matching.free_new(range(new + 1, next_new))


def _free(partners: Sequence[int], start: int, step: int) -> list[int]:
    """Free units from `start` on, up to the first that has a partner."""
    found: list[int] = []
    at = start
    while 0 <= at < len(partners) and partners[at] == NONE and len(found) < BESIDE:
        found.append(at)
        at += step
    return found[::step]
