"""Cards for chapters, parts and the book; chosen paragraphs: as an open book and an edit give them."""

from collections.abc import Sequence
from typing import Protocol

from afterdraft.desk.unit_card import UnitCard
from afterdraft.manuscript.blocks import Block


class BookUnits(Protocol):
    """For `Book`."""

    def unit_cards(self, draft: str) -> tuple[UnitCard, ...]:
        """Those that were made for a draft; a chapter, part or book nothing was written on has none."""
        ...

    def blocks_at(self, draft: str, paragraphs: Sequence[int]) -> dict[int, Block]:
        """These paragraphs of the draft, and no others, by number."""
        ...


class DeskUnits(Protocol):
    """For `Desk`."""

    def unit_cards(self, draft: str) -> tuple[UnitCard, ...]: ...
    def add_unit_card(self, draft: str, card: UnitCard) -> None:
        """A card that is new, under the id it has. Raises `Missing` where its chapter or part is not in the draft."""
        ...
