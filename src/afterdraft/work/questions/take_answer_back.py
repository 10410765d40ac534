"""An answer is taken back: the question is asked again."""

from afterdraft.errors import Missing
from afterdraft.work.called import quoted
from afterdraft.work.ports import Book


def take_answer_back(book: Book, fingerprint: str) -> None:
    """What was made of it, a note or a change, stays. Raises `Missing`."""
    known = next((one for one in book.answers() if one.fingerprint == fingerprint), None)
    if known is None:
        raise Missing("This answer")
    book.edit(f"Ask again: {quoted(known.asks)}", lambda desk: desk.take_answer_back(fingerprint))
