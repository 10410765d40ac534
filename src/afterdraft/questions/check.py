"""A check: what it asks, how it finds it, and what it cannot see."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Literal

from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Part, Seen

Family = Literal["continuity", "cast", "viewpoint", "setups and reveals", "cause and thread", "opening", "accidents"]
Find = Callable[[Seen], Iterable[Finding]]  # pure; nothing where what it reads is missing


@dataclass(frozen=True, slots=True)
class Check:
    """One entry of the catalogue, with its page for the writer."""

    id: str  # never changes: answers are kept under it
    name: str  # in plain words
    family: Family
    looks_at: str  # what it looks at and when it asks
    method: str  # how, with the source, or 'common practice'
    blind: str  # what it cannot see, and where it may ask in vain
    reads: tuple[Part, ...]  # what its findings depend on, and nothing else
    find: Find
    recipe: int = 1  # counts up when the same book would give other findings
