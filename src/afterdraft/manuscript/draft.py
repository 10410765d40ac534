"""A draft as recovered from its files: text, division, doubts."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from afterdraft.manuscript.blocks import Blocks
from afterdraft.manuscript.division import Division, Doubt


@dataclass(frozen=True, slots=True)
class Suggestion:
    """A place where an unmarked scene break may be; never cut silently."""

    paragraph: int
    strength: float  # 0…1: the share of such places that are right, roughly
    why: tuple[str, ...]  # of "place", "time", "cast", "words"; the weightiest first
    evidence: tuple[str, ...] = ()  # for each of `why`, the words of the text it rests on; "" where on none


# From a book's scenes, each as its paragraphs, to the places in them, each with the index of its scene.
Search = Callable[[Sequence[Sequence[str]]], Sequence[tuple[int, Suggestion]]]


@dataclass(frozen=True, slots=True)
class Draft:
    """What `structure(blocks)` gives. Ids are provisional ("scene-0", …) until a book takes it in."""

    source: Blocks
    division: Division
    doubts: tuple[Doubt, ...] = ()
    suggestions: tuple[Suggestion, ...] = ()
    title: str = ""
    author: str = ""
    language: str = ""
