"""What the text says that somebody is like: a value of `SceneFacts`."""

from dataclasses import dataclass
from typing import Literal

TraitKind = Literal[
    "eyes", "hair", "beard", "age", "height", "hand", "scar", "limp", "kin", "trade", "origin"
]  # a name's title is told by `whole.traits`, from the mentions


@dataclass(frozen=True, slots=True)
class Trait:
    """`owner` is the mention of whom it is said, in the scene's mentions."""

    paragraph: int
    start: int  # of the words that say it
    end: int
    kind: TraitKind
    value: str  # normalised: "grey", "45", "tall", "left cheek", "sister: Ada Lamb"
    owner: int
    spoken: bool = False
