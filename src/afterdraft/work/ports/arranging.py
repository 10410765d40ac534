"""Arrangements, as an open book and an edit give them."""

from typing import Protocol

from afterdraft.desk.arrangement import Arrangement


class ArrangingBook(Protocol):
    def arrangements(self, draft: str) -> tuple[Arrangement, ...]:
        """Those made for a draft, rows and cards with them, in the order of their making."""
        ...

    def last_arrangement(self) -> str:
        """Id of the arrangement last looked at, "" for none. Not journaled."""
        ...

    def set_last_arrangement(self, arrangement: str) -> None: ...


class ArrangingDesk(Protocol):
    def arrangements(self, draft: str) -> tuple[Arrangement, ...]: ...
    def set_arrangement(self, arrangement: Arrangement) -> None:
        """Write the difference. What is fastened to a card that is gone must have gone to another before, with
        `follow_laid`."""
        ...

    def follow_laid(self, *, into: str, of: str) -> None:
        """What is fastened to card `of` (notes, points of lines, places of changes) goes to card `into`."""
        ...
