"""Doubts that are one question: they say the same in the same words, of several places."""

from collections.abc import Iterable

from afterdraft.manuscript.division import Doubt, Reading


def questions(doubts: Iterable[Doubt]) -> tuple[tuple[Doubt, ...], ...]:
    """The doubts by what they say and what they would make of a line, in the order in which each is met first."""
    asked: dict[tuple[str, Reading], list[Doubt]] = {}
    for doubt in doubts:
        asked.setdefault((doubt.what, doubt.other), []).append(doubt)
    return tuple(map(tuple, asked.values()))
