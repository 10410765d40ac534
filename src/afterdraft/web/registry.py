"""The books that are open in this process, by id. Every method may be called from any thread."""

from collections.abc import Callable
from datetime import date
from pathlib import Path
from threading import RLock

from afterdraft.errors import AfterdraftError, Missing, NotPossible
from afterdraft.home import BooksFolder, Recent, Recents, seen
from afterdraft.work.ports import Book

Opener = Callable[[Path], Book]  # raises BookTrouble
Adopter = Callable[[str, bytes], Path]  # a book file's name and bytes → where its copy now lies; raises BookTrouble
Restorer = Callable[[Path, str, str], object]  # a book's path and id, a backup's name; raises BookTrouble, Missing


class Registry:
    def __init__(
        self, *, opener: Opener, adopter: Adopter, restorer: Restorer, recents: Recents, folder: BooksFolder
    ) -> None:
        self.folder = folder
        self.on_close: Callable[[str], None] = lambda _: None  # told the id of a book before it is closed
        self._opener = opener
        self._adopter = adopter
        self._restorer = restorer
        self._recents = recents
        self._open: dict[str, Book] = {}
        self._lock = RLock()
        self._closing = False
        self._backed: dict[str, date] = {}  # the last day of which it is known, by book id

    def open(self, path: Path) -> Book:
        """Open a book file, or find it open already; it becomes the latest recent book. Raises `BookTrouble`."""
        path = path.expanduser().absolute()
        with self._lock:
            book = self._at(path) or self._take_in(path)
            self._recents.put(seen(book))
            return book

    def adopt(self, name: str, content: bytes) -> Book:
        """Copy a book file that was dropped on the page into the books folder, and open the copy."""
        return self.open(self._adopter(name, content))

    def book(self, id: str) -> Book:
        """The book of this id, opened again where it was last after a restart. Raises `Missing`, `BookTrouble`."""
        with self._lock:
            if id in self._open:
                return self._open[id]
            recent = self._recents.find(id)
            if recent is None:
                raise Missing("This book")
            book = self.open(Path(recent.path))
            if book.id != id:
                raise Missing(f"“{recent.title}”")
            return book

    def restore(self, id: str, backup: str) -> Book:
        """Put the backup of this name in the book's place, after keeping what is there; the book is then open again.

        Raises `Missing`, `BookTrouble`; the book is then as it was.
        """
        with self._lock:
            book = self.book(id)
            path = Path(book.path)
            self.on_close(id)
            self._open.pop(id).close()
            try:
                self._restorer(path, id, backup)
            finally:
                book = self.open(path)
            return book

    def recents(self) -> tuple[Recent, ...]:
        """Latest first; books that are open as they stand now, the others as last seen."""
        with self._lock:
            return tuple(self._fresh(recent) for recent in self._recents.all())

    def forget(self, id: str) -> None:
        """Off the list of recent books; the file stays where it is."""
        self._recents.forget(id)

    def is_open(self, id: str) -> bool:
        return id in self._open

    def back_up_daily(self, today: date) -> tuple[str, ...]:
        """Back up the open books that were not opened or backed up today: a program may run for weeks.

        A book that has not changed is left alone. Returns what went wrong, one sentence each.
        """
        with self._lock:
            due = [book for book in self._open.values() if self._backed.setdefault(book.id, today) < today]
        return tuple(trouble for book in due if (trouble := self._backed_up(book, today)))

    def _backed_up(self, book: Book, today: date) -> str:
        try:
            book.back_up(why="daily")
        except AfterdraftError as trouble:
            return str(trouble)
        self._backed[book.id] = today
        return ""

    def close(self, id: str) -> None:
        """Back the book up and close it. Raises `BookTrouble` when the backup cannot be made; closed all the same."""
        with self._lock:
            book = self._open.pop(id, None)
            if book is None:
                return
            self.on_close(id)
            try:
                self._recents.update(seen(book))
                book.back_up(why="close")
            finally:
                book.close()

    def close_all(self) -> tuple[str, ...]:
        """Close every book for good; none can be opened after. Returns what went wrong, one sentence each."""
        with self._lock:
            self._closing = True
            return tuple(trouble for book in tuple(self._open) if (trouble := self._closed(book)))

    def _closed(self, id: str) -> str:
        try:
            self.close(id)
        except AfterdraftError as trouble:
            return str(trouble)
        return ""

    def _at(self, path: Path) -> Book | None:
        return next((book for book in self._open.values() if _same(Path(book.path), path)), None)

    def _take_in(self, path: Path) -> Book:
        if self._closing:
            raise NotPossible("Afterdraft is closing.")
        book = self._opener(path)
        already = self._open.get(book.id)
        if already is not None:
            book.close()
            raise NotPossible(
                f"{path} is a copy of “{already.facts().title}”, which is open from {already.path}. "
                "To open this one, close Afterdraft first and start it with this file."
            )
        self._open[book.id] = book
        return book

    def _fresh(self, recent: Recent) -> Recent:
        book = self._open.get(recent.id)
        return recent if book is None else seen(book, opened=recent.opened)


def _same(one: Path, other: Path) -> bool:
    try:
        return one.samefile(other)
    except OSError:
        return one == other
