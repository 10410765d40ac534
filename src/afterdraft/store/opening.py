"""Opening a book that is there, and beginning one that is not."""

import os
from collections.abc import Callable
from contextlib import closing
from pathlib import Path
from typing import TypeVar

from afterdraft.errors import AlreadyThere, NotABook
from afterdraft.store.backups import check_copy, sync_file, sync_folder
from afterdraft.store.book import BookFile, Now, utc_now
from afterdraft.store.connect import is_book, made_new, whole, writing
from afterdraft.store.journal import emptied
from afterdraft.store.migrate import migrate
from afterdraft.store.migrations import MIGRATIONS
from afterdraft.store.names import new_id
from afterdraft.store.trouble import told

T = TypeVar("T")


def open_book(path: Path, *, backups: Path, read_only: bool = False, now: Now = utc_now) -> BookFile:
    """Open the book at `path`; its backups are in `backups`, in a folder by its id.

    Brings it to the present form unless `read_only`. Raises `BookTrouble`; the file is then as it was.
    """
    path = path.absolute()
    with told(str(path)):
        if not path.is_file() or not is_book(path):
            raise NotABook(str(path))
    return BookFile(path, backups_root=backups, read_only=read_only, now=now)


def begin_book(
    path: Path, *, title: str, backups: Path, first: Callable[[BookFile], T], now: Now = utc_now
) -> tuple[BookFile, T]:
    """Make a new book at `path`, do `first` with it, and open it; what `first` returned comes too.

    What `first` did is how the book begins, not an edit: it is not there to be taken back.

    The file appears under its name only when all of it is done. Raises `AlreadyThere` where the name is taken, else
    `BookTrouble` and what `first` raises; then nothing is left at `path`.
    """
    path = path.absolute()
    _refuse_taken(path)
    making = _hidden(path)
    with told(str(path)):
        try:
            path.parent.mkdir(parents=True, exist_ok=True)
            _make(making, title, now().isoformat(timespec="seconds"))
            with closing(BookFile(making, backups_root=backups, now=now)) as book:
                result = first(book)
            _forget_edits(making)
            _publish(making, path)
        finally:
            _remove(making)
    return open_book(path, backups=backups, now=now), result


def take_in(path: Path, content: bytes) -> None:
    """Put the book file `content` at `path`. Raises `AlreadyThere`, `BookTrouble`; then nothing is left there.

    It is not brought to another form here: that waits until it is opened.
    """
    _refuse_taken(path)
    making = _hidden(path)
    with told(str(path)):
        try:
            making.write_bytes(content)
            if not is_book(making):
                raise NotABook(path.name)
            check_copy(making, called=path.name)
            _publish(making, path)
        finally:
            _remove(making)


def _make(path: Path, title: str, now: str) -> None:
    made_new(path)
    with closing(writing(path)) as db:
        migrate(db, path, back_up=_nothing, migrations=MIGRATIONS)
        db.execute("BEGIN IMMEDIATE")
        db.execute("INSERT INTO book (one, id, changed) VALUES (1, ?, ?)", (new_id("book"), now))
        db.execute("INSERT INTO desk_book VALUES (1, ?)", (title,))
        db.execute("COMMIT")
        whole(db)


def _refuse_taken(path: Path) -> None:
    if os.path.lexists(path):
        raise AlreadyThere(str(path))


def _forget_edits(path: Path) -> None:
    with closing(writing(path)) as db:
        emptied(db)
        whole(db)


def _hidden(path: Path) -> Path:
    """A name in the same folder for what is not finished."""
    return path.with_name(f".{new_id('book')}.making")


def _publish(made: Path, path: Path) -> None:
    """Give the finished file its name, unless someone else took it meanwhile."""
    try:
        path.open("xb").close()
    except FileExistsError as error:
        raise AlreadyThere(str(path)) from error
    sync_file(made)
    made.replace(path)
    sync_folder(path.parent)


def _remove(path: Path) -> None:
    for end in ("", "-wal", "-shm", "-journal"):
        path.with_name(path.name + end).unlink(missing_ok=True)


def _nothing() -> None:
    """A new book needs no backup."""
