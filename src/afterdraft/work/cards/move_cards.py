"""Move cards to a place in a chapter of an arrangement."""

from collections.abc import Sequence

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import put, row_called
from afterdraft.work.cards.arranging import Spot, arrange, cards_called, ids, place_of, row_name, seen
from afterdraft.work.ports import Book, Desk


def move_cards(book: Book, arrangement: str, codes: Sequence[str], to: Spot) -> Arrangement:
    """Lay the cards with these codes at `to`, in the order in which they lie now. Raises `Missing`, `NotPossible`."""

    def act(_: Desk, stands: Arrangement) -> Arrangement:
        row, before = place_of(stands, to)
        return put(stands, ids(stands, codes), row=row, before=before)

    shown = seen(book, arrangement)
    where = row_name(book, row_called(shown, to.row))
    return arrange(book, arrangement, f"Move {cards_called(book, shown, codes)} to {where}", act)
