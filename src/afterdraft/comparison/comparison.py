"""What a comparison tells, as values. Indices count from 0 in telling order; paragraphs are story paragraphs."""

from dataclasses import dataclass
from typing import Literal

from afterdraft.comparison.told import Told

Became = Literal["same", "revised", "rewritten", "split", "joined", "cut", "new", "not reached"]
Reason = Literal["words", "bookmark", "cast", "place", "position", "said"]  # "said": by the writer


@dataclass(frozen=True, slots=True)
class Pair:
    """Two paragraphs that belong together. One that was split or joined stands in several."""

    old: int
    new: int
    similarity: float  # 0…1 over words; 1 only where they are the same to the letter
    kept: int  # words of the old one that the new one has, each counted in one pair only
    moved: bool  # out of the order that the rest of the book kept


@dataclass(frozen=True, slots=True)
class Block:
    """Neighbouring paragraphs that have moved together; half-open ranges, with what little lies between them."""

    old: tuple[int, int]
    new: tuple[int, int]
    kept: int  # words


@dataclass(frozen=True, slots=True)
class Link:
    """A scene, or a chapter, of the old draft that lives on in one of the new."""

    old: int
    new: int
    kept: int  # words
    moved: bool
    sure: float  # 0…1
    why: tuple[Reason, ...]


@dataclass(frozen=True, slots=True)
class Fate:
    """What became of scenes, or chapters: all that hang together by links, and a lone one that was cut or is new."""

    old: tuple[int, ...]
    new: tuple[int, ...]
    became: Became
    moved: bool  # any of them
    kept: float  # share of both sides' words that were kept, 0…1 (Dice)
    sure: float  # 0…1, of its least sure link
    why: tuple[Reason, ...]


@dataclass(frozen=True, slots=True)
class Totals:
    """Words. Old ones are kept or cut, new ones kept or added; those moved are among the kept."""

    old: int
    new: int
    kept: int
    moved: int
    cut: int
    added: int


@dataclass(frozen=True, slots=True)
class Comparison:
    old: Told
    new: Told
    pairs: tuple[Pair, ...]  # by old paragraph, then new
    blocks: tuple[Block, ...]  # what moved, in old order
    links: tuple[Link, ...]  # of scenes, by old, then new
    scenes: tuple[Fate, ...]  # by first old scene; new ones where they stand in the new draft
    chapters: tuple[Fate, ...]
    totals: Totals
    old_words: tuple[int, ...]  # of each scene of the old draft
    new_words: tuple[int, ...]
    part_way: bool = False  # the new draft goes only as far as the revision has come
