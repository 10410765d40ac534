"""The ports that use cases need. `store/` and `formats/` fill them; `wiring.py` joins the two.

An open book is read from any thread; it is changed only through `edit`, which runs on the book's one
writing thread, in one transaction, journaled for undo, and returns once the change is durable.
"""

from afterdraft.work.ports.book import Book
from afterdraft.work.ports.desk import Desk
from afterdraft.work.ports.shelf import Shelf
from afterdraft.work.ports.values import (
    BookFacts,
    DraftFacts,
    Edit,
    Edits,
    Fields,
    Hit,
    LastSave,
    Saved,
    UnitKind,
    Written,
)

__all__ = [
    "Book",
    "BookFacts",
    "Desk",
    "DraftFacts",
    "Edit",
    "Edits",
    "Fields",
    "Hit",
    "LastSave",
    "Saved",
    "Shelf",
    "UnitKind",
    "Written",
]
