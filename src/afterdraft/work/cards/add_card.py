"""Lay a new card in an arrangement."""

from afterdraft.desk.arrangement import Arrangement, Laid, Next
from afterdraft.desk.arranging import add, row_called
from afterdraft.work.called import quoted
from afterdraft.work.cards.arranging import Spot, arrange, place_of, row_name, seen
from afterdraft.work.plain import line, plain
from afterdraft.work.ports import Book, Desk


def add_card(book: Book, arrangement: str, to: Spot, *, title: str = "", what: str = "") -> Laid:
    """A card without a scene, with a code of its own. Raises `Missing`, `NotPossible`."""
    called = line(title)
    made: list[str] = []

    def act(desk: Desk, stands: Arrangement) -> Arrangement:
        row, before = place_of(stands, to)
        code = desk.new_code()
        card = Laid(desk.new_id("laid"), code, (), row, "", "new", called, Next(what=plain(what)))
        made.append(card.id)
        return add(stands, card, before=before)

    where = row_name(book, row_called(seen(book, arrangement), to.row))
    now = arrange(book, arrangement, f"New card {quoted(called)} in {where}" if called else f"New card in {where}", act)
    return next(card for card in now.cards() if card.id == made[-1])
