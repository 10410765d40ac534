"""Comparisons of drafts, kept at hand for the pages as long as neither draft's division nor what she said changes."""

from collections import OrderedDict
from collections.abc import Hashable
from threading import Lock

from afterdraft.work.drafts.compared import Compared, compared
from afterdraft.work.ports import Book, DraftFacts

AT_HAND = 24  # comparisons; ten drafts of two books


class Comparing:
    """One for the server; from any thread."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._kept: OrderedDict[tuple[str, str, str], tuple[Hashable, Compared]] = OrderedDict()

    def compared(self, book: Book, old: str, new: DraftFacts) -> Compared:
        """Draft `old` (id) and draft `new`. Raises `Missing`, `BookTrouble`."""
        said = book.said_of(old, new.id)
        stands = (
            book.division(old),
            book.division(new.id),
            frozenset(said.became.items()),
            frozenset(said.lives_on.items()),
            new.part_way,
        )
        place = (book.id, old, new.id)
        with self._lock:
            kept = self._kept.get(place)
            if kept is not None and kept[0] == stands:
                self._kept.move_to_end(place)
                return kept[1]
        found = compared(book, old, new.id, part_way=new.part_way)
        with self._lock:
            self._kept[place] = (stands, found)
            while len(self._kept) > AT_HAND:
                self._kept.popitem(last=False)
        return found

    def beside_the_last(self, book: Book) -> Compared | None:
        """The newest draft beside the one before it; None for a book of one draft."""
        known = book.drafts()
        return self.compared(book, known[-2].id, known[-1]) if len(known) > 1 else None
