"""An arrangement: an order of cards in chapters, with what shall happen in each (the Next side)."""

from dataclasses import dataclass
from typing import Literal, get_args

from afterdraft.desk.intent import Intent

NextField = Literal["what", "viewpoint", "people", "place", "time", "length"]
NEXT_FIELDS: tuple[NextField, ...] = get_args(NextField)


@dataclass(frozen=True, slots=True)
class Next:
    """A card's Next side, in the writer's own words."""

    what: str = ""  # what shall happen
    viewpoint: str = ""
    people: str = ""
    place: str = ""
    time: str = ""
    length: str = ""  # words, as she writes it: "900", "about 1,200"


@dataclass(frozen=True, slots=True)
class Laid:
    """A card as it lies in an arrangement.

    It usually stands for one scene of the draft. Two or more: they are to be joined. None: it is new. A scene that
    several cards stand for is to be split.
    """

    id: str
    code: str  # the scene's own; a new card, and each later piece of a split one, has one that no other has
    scenes: tuple[str, ...]  # ids
    row: str | None  # id of its row; None when set aside
    place: str  # text key of its place in the row, or among those set aside
    intent: Intent | None = None
    title: str = ""  # of a new card; a scene's own title is used otherwise
    next: Next = Next()
    revision: int = 0


@dataclass(frozen=True, slots=True)
class Row:
    """A chapter of an arrangement."""

    id: str
    place: str  # text key of its place in the order
    title: str  # the writer's; "" shows the draft's chapter
    chapter: str | None  # id of the draft's chapter it came from
    part: str | None  # id of the draft's part it belongs to
    cards: tuple[Laid, ...] = ()


@dataclass(frozen=True, slots=True)
class Arrangement:
    id: str
    draft: str
    name: str
    why: str = ""  # why it is tried, or was given up
    given_up: bool = False
    place: str = ""
    revision: int = 0
    rows: tuple[Row, ...] = ()
    aside: tuple[Laid, ...] = ()  # set aside, in order

    def cards(self) -> tuple[Laid, ...]:
        """All cards that lie in chapters, in order."""
        return tuple(card for row in self.rows for card in row.cards)
