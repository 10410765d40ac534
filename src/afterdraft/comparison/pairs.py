"""Matches of units told as pairs of paragraphs."""

from collections.abc import Sequence
from dataclasses import dataclass

from rapidfuzz.distance import Indel

from afterdraft.comparison.comparison import Pair
from afterdraft.comparison.matches import Match
from afterdraft.comparison.told import Told
from afterdraft.comparison.units import Units

NEARLY = 0.999  # at most, of paragraphs whose words are the same and whose letters or punctuation are not
SPELLED = 5_000  # characters: beyond them a paragraph's punctuation is not gone through letter by letter


@dataclass(slots=True)
class _Sum:
    kept: int = 0
    in_order: int = 0  # of them, words that did not move
    units: int = 0  # pairs, of which …
    still: int = 0  # … did not move


def paragraph_pairs(
    old: Told, new: Told, matches: Sequence[Match], backbone: frozenset[tuple[int, int]], sides: tuple[Units, Units]
) -> tuple[Pair, ...]:
    """By old paragraph, then new; `backbone` has the pairs of units that kept their order."""
    sums: dict[tuple[int, int], _Sum] = {}
    for match in matches:
        one = sums.setdefault((sides[0].paragraphs[match.old], sides[1].paragraphs[match.new]), _Sum())
        still = (match.old, match.new) in backbone
        one.kept += match.kept
        one.in_order += match.kept * still
        one.units += 1
        one.still += still
    words = _words(sides[0]), _words(sides[1])
    return tuple(
        Pair(
            *place,
            _similarity(
                old.paragraphs[place[0]], new.paragraphs[place[1]], one.kept, words[0][place[0]] + words[1][place[1]]
            ),
            one.kept,
            one.in_order * 2 < one.kept if one.kept else one.still * 2 < one.units,
        )
        for place, one in sorted(sums.items())
    )


def _words(side: Units) -> dict[int, int]:
    words: dict[int, int] = {}
    for paragraph, count in zip(side.paragraphs, side.counts, strict=True):
        words[paragraph] = words.get(paragraph, 0) + count
    return words


def _similarity(old: str, new: str, kept: int, words: int) -> float:
    """By words; where these are the same, by characters, white space aside."""
    if old == new:
        return 1.0
    if 2 * kept < words:
        return round(2 * kept / words, 4)
    if old.split() == new.split():
        return 1.0
    if max(len(old), len(new)) > SPELLED:
        return NEARLY
    return min(NEARLY, round(Indel.normalized_similarity(old, new), 4))
