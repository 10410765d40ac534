"""Split a card of an arrangement: the next draft shall make two scenes of one."""

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import by_code, split
from afterdraft.work.cards.arranging import arrange, card_called, seen
from afterdraft.work.ports import Book, Desk


def split_card(book: Book, arrangement: str, code: str) -> Arrangement:
    """A second card for the same scene comes to lie after it, with a code of its own.

    Raises `Missing`, `NotPossible` for a card of no scene or of several.
    """

    def act(desk: Desk, stands: Arrangement) -> Arrangement:
        return split(stands, by_code(stands, code).id, id=desk.new_id("laid"), code=desk.new_code())

    called = card_called(book, by_code(seen(book, arrangement), code))
    return arrange(book, arrangement, f"Split {called} in two", act)
