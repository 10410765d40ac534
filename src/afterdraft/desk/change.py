"""A planned change: what is wrong, what I decide, and the places where it is to be done, each ticked off."""

from dataclasses import dataclass
from typing import Literal, get_args

When = Literal["must", "if time", "later"]
WHENS: tuple[When, ...] = get_args(When)


@dataclass(frozen=True, slots=True)
class ChangePlace:
    id: str
    scene: str | None  # id; None for a planned card without a scene, or where only words say the place
    laid: str | None = None  # id of that card
    words: str = ""  # what is to be done there
    done: bool = False  # she ticks it; the program never does
    revision: int = 0


@dataclass(frozen=True, slots=True)
class Change:
    id: str
    wrong: str  # what is wrong
    decide: str  # what I decide
    when: When = "must"
    work: str = ""  # her guess of the work, in her words ("a morning")
    note: str | None = None  # id of the note it was made from
    place: str = ""  # text key of its place in the order
    revision: int = 0
    places: tuple[ChangePlace, ...] = ()

    @property
    def done(self) -> bool:
        """Whether every place is ticked, and there is one."""
        return bool(self.places) and all(place.done for place in self.places)
