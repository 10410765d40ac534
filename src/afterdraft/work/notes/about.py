"""What a note is about, in words."""

from afterdraft.desk.note import About
from afterdraft.errors import Missing
from afterdraft.manuscript.naming import chapter_name
from afterdraft.work.called import quoted, scene_called
from afterdraft.work.cards.arranging import draft_id
from afterdraft.work.ports import Book


def about_called(book: Book, about: About) -> str:
    """“The ferry”, the book, …; "" for nothing. Raises `Missing`."""
    if about.scene:
        return scene_called(book, about.scene)
    if about.chapter:
        return _chapter_called(book, about.chapter)
    if about.laid:
        return "a planned card"
    return "the book" if about.book else ""


def _chapter_called(book: Book, chapter: str) -> str:
    for one in book.division(draft_id(book)).chapters:
        if one.id == chapter:
            return quoted(chapter_name(one))
    raise Missing("This chapter")
