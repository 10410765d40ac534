"""Where books are begun: each at the path that `place` gives for its title."""

from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

from afterdraft.store.opening import begin_book
from afterdraft.work.ports import Book

T = TypeVar("T")


class Shelf:
    """Fills `work.ports.Shelf`. `place`: a title to the file's path; `backups`: the folder of all books' backups."""

    def __init__(self, place: Callable[[str], Path], *, backups: Path) -> None:
        self._place = place
        self._backups = backups

    def begin(self, *, title: str, first: Callable[[Book], T]) -> tuple[Book, T]:
        return begin_book(self._place(title), title=title, backups=self._backups, first=first)
