"""Say what the next draft is to do with scenes."""

from collections.abc import Sequence

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import with_intent
from afterdraft.desk.intent import Intent
from afterdraft.work.cards.arranging import arrange, cards_called, ids, seen
from afterdraft.work.ports import Book, Desk


def set_intent(book: Book, arrangement: str, codes: Sequence[str], intent: Intent | None) -> Arrangement:
    """None takes the intent off. Raises `Missing`, `NotPossible`."""

    def act(_: Desk, stands: Arrangement) -> Arrangement:
        return with_intent(stands, ids(stands, codes), intent)

    called = cards_called(book, seen(book, arrangement), codes)
    name = f"Intent for {called}: {intent}" if intent else f"Take the intent off {called}"
    return arrange(book, arrangement, name, act)
