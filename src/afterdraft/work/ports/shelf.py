"""Where books are begun."""

from collections.abc import Callable
from typing import Protocol, TypeVar

from afterdraft.work.ports.book import Book

T = TypeVar("T")


class Shelf(Protocol):
    """Where books are begun."""

    def begin(self, *, title: str, first: Callable[[Book], T]) -> tuple[Book, T]:
        """Make a book, do `first` with it, and open it. The file has its name only when all is done."""
        ...
