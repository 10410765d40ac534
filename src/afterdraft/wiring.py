"""The one place where real adapters meet the use cases."""

from pathlib import Path

from afterdraft.errors import NotABook
from afterdraft.home import BooksFolder
from afterdraft.work.ports import Book


def open_book(path: Path) -> Book:
    """Open a book file. Raises `BookTrouble`."""
    raise NotABook(str(path))


def adopt(folder: BooksFolder, name: str, content: bytes) -> Path:
    """Copy a book file into the books folder. Raises `BookTrouble`; then nothing is left there."""
    raise NotABook(name)
