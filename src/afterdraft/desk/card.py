"""A scene's card. Its front says what is on the page; its fields are the writer's own words."""

from dataclasses import dataclass
from typing import Literal, get_args

CardField = Literal["summary", "comes_in", "leaves", "needed_for"]
CARD_FIELDS: tuple[CardField, ...] = get_args(CardField)


@dataclass(frozen=True, slots=True)
class Card:
    id: str
    scene: str  # id of its scene
    summary: str = ""  # what happens and what changes, a line or two
    comes_in: str = ""  # comes in with: feeling, knowledge, injury, thing
    leaves: str = ""  # leaves with
    needed_for: str = ""  # needed for
    revision: int = 0  # grows by one at each change of the row

    @property
    def written(self) -> bool:
        """Whether the scene has been outlined: its summary says something."""
        return bool(self.summary.strip())
