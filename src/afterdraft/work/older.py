"""What belongs to the outline of an older draft: it is read, and no longer written on."""

from collections.abc import Callable, Mapping

from afterdraft.desk.arranging import everything
from afterdraft.errors import NotPossible
from afterdraft.work.ports import Book, Written

Has = Callable[[Book, str, str], bool]


def refuse_older(book: Book, kind: Written, id: str) -> None:
    """Raises `NotPossible` for a row of a draft before the newest, as a window that was left open there would save."""
    has, drafts = _HAS.get(kind), book.drafts()
    if has is None or len(drafts) < 2 or has(book, drafts[-1].id, id):
        return
    for draft in reversed(drafts[:-1]):
        if has(book, draft.id, id):
            raise NotPossible(
                f"This is of draft {draft.number}, which is only read since draft {drafts[-1].number} came in. Nothing "
                "is lost: your words are still here. Copy them, open the scene anew, and put them on its new card."
            )


def _has_card(book: Book, draft: str, id: str) -> bool:
    return book.draft_of(book.card(id).scene) == draft


def _has_unit_card(book: Book, draft: str, id: str) -> bool:
    return any(card.id == id for card in book.unit_cards(draft))


def _has_arrangement(book: Book, draft: str, id: str) -> bool:
    return any(one.id == id for one in book.arrangements(draft))


def _has_laid(book: Book, draft: str, id: str) -> bool:
    return any(card.id == id for one in book.arrangements(draft) for card in everything(one))


_HAS: Mapping[Written, Has] = {
    "card": _has_card,
    "unit": _has_unit_card,
    "arrangement": _has_arrangement,
    "next": _has_laid,
}
