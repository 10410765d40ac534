"""What the cards of chapters, parts and the book are called on the undo button."""

from afterdraft.desk.unit_card import UnitCardKind
from afterdraft.errors import Missing
from afterdraft.manuscript.naming import chapter_name
from afterdraft.work.called import quoted
from afterdraft.work.ports import Book

THE_BOOK = "the book"


def unit_called(book: Book, draft: str, kind: UnitCardKind, unit: str | None) -> str:
    """ "“Chapter 3: The Mill”", "“PART ONE”", "the book". Raises `Missing` where the draft has no such unit."""
    if kind == "book":
        return THE_BOOK
    division = book.division(draft)
    names = {part.id: part.title or "Unnamed part" for part in division.parts}
    if kind == "chapter":
        names = {chapter.id: chapter_name(chapter) for chapter in division.chapters}
    if unit not in names:
        raise Missing(f"This {kind}")
    return quoted(names[unit])
