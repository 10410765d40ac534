"""Guard a passage: it works, and must not be lost."""

from collections.abc import Sequence

from afterdraft.desk.anchor import Passage
from afterdraft.desk.guarded import Guarded
from afterdraft.errors import Missing, NotPossible
from afterdraft.work.called import quoted
from afterdraft.work.notes.fastening import fastened
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Desk


def guard_passage(book: Book, draft: str, passages: Sequence[Passage], *, why: str = "") -> str:
    """Returns its id: that of the same passage where it is guarded already.

    Raises `NotPossible` for no passage, or one that is not in the text.
    """
    if not passages:
        raise NotPossible("Choose the words that are to be guarded, or type them.")
    texts = book.blocks(draft, passages[0].paragraph, passages[0].paragraph + 1)
    words = texts[0].text[passages[0].start : passages[0].end] if texts else ""
    for known in book.guarded(draft):
        if [(one.paragraph, one.start, one.end) for one in known.anchors] == [
            (one.paragraph, one.start, one.end) for one in passages
        ]:
            return known.id

    def change(desk: Desk) -> str:
        return desk.guard(fastened(desk, draft, passages), plain(why).strip())

    return book.edit(f"Guard {quoted(words)}", change)


def let_go(book: Book, draft: str, guarded: str) -> None:
    """It is not guarded any more. Raises `Missing`."""
    found = _found(book.guarded(draft), guarded)
    book.edit(f"Guard {quoted(found.quote)} no more", lambda desk: desk.let_go(guarded))


def _found(known: Sequence[Guarded], guarded: str) -> Guarded:
    for one in known:
        if one.id == guarded:
            return one
    raise Missing("This passage")
