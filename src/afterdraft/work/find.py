"""Find words in the draft, and in all that is written about it."""

from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Hit

LIMIT = 50  # places shown; who needs more adds a word


def find(book: Book, words: str) -> tuple[Hit, ...]:
    """Cards first, then the rest that she wrote, then the text in telling order; nothing for no words."""
    return book.search(plain(words), limit=LIMIT) if words.strip() else ()
