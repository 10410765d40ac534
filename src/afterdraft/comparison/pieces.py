"""Paragraphs that were split or joined: what is left over is found again inside a neighbour's partner."""

from collections.abc import Iterator
from dataclasses import dataclass

from rapidfuzz.distance import Indel, LCSseq

from afterdraft.comparison.matching import NONE, Matching

CONTAINED = 0.6  # share of a piece's words that stand in what its neighbour's partner has beyond its own
SHORT = 6  # words: a shorter piece must stand there in one run, at an end


@dataclass(frozen=True, slots=True)
class Piece:
    """A pair beyond one to one: a unit, and the unit of the other draft that holds it as well."""

    old: int
    new: int


def pieces(matching: Matching) -> list[Piece]:
    """Of all free units, those that a neighbour's partner holds."""
    ours = [Piece(unit, home) for unit, home in _held(matching, turned=False)]
    return ours + [Piece(home, unit) for unit, home in _held(matching, turned=True)]


def _held(matching: Matching, *, turned: bool) -> Iterator[tuple[int, int]]:
    """Free unit, and the unit of the other side that holds it; `turned` looks from the new side."""
    ours, theirs = (matching.new, matching.old) if turned else (matching.old, matching.new)
    there, back = (matching.to_old, matching.to_new) if turned else (matching.to_new, matching.to_old)
    left: dict[int, str] = {}  # what each partner has beyond its own partner and the pieces already found in it
    for unit, partner in enumerate(there):
        if partner != NONE or not ours.counts[unit]:
            continue
        for home in _homes(there, unit):
            rest = left.setdefault(home, beyond(theirs.words[home], ours.words[back[home]]))
            if _holds(rest, ours.words[unit], first=home == there[unit - 1]):
                left[home] = beyond(rest, ours.words[unit])
                yield unit, home
                break


def _homes(there: list[int], unit: int) -> list[int]:
    """Partners of the nearest units above and below that have one, if no more than a few lie between."""
    homes = []
    for step in (-1, 1):
        at = unit + step
        while 0 <= at < len(there) and there[at] == NONE and abs(at - unit) < SHORT:
            at += step
        if 0 <= at < len(there) and there[at] != NONE and there[at] not in homes:
            homes.append(there[at])
    return homes


def beyond(words: str, other: str) -> str:
    """The words that `other` does not have in this order."""
    return "".join(words[op.src_start : op.src_end] for op in Indel.opcodes(words, other) if op.tag == "delete")


def _holds(rest: str, words: str, *, first: bool) -> bool:
    if len(words) < SHORT:
        return rest.startswith(words) or rest.endswith(words) if first else rest.startswith(words)
    return bool(LCSseq.similarity(rest, words) >= CONTAINED * len(words))
