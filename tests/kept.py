"""Books that many tests begin with: begun once in a process, then copied for each."""

from collections.abc import Callable
from pathlib import Path
from tempfile import TemporaryDirectory

from afterdraft.store.book import BookFile
from afterdraft.store.opening import open_book


def content(begin: Callable[[Path], BookFile]) -> bytes:
    """Of the file of the book that `begin` makes in an empty folder; who asks keeps it (`functools.cache`)."""
    with TemporaryDirectory() as folder:
        book = begin(Path(folder))
        book.close()
        return Path(book.path).read_bytes()


def copy(content: bytes, file: Path, *, backups: Path) -> BookFile:
    """A book of its own at `file`, open. Copies of one content have the same ids."""
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_bytes(content)
    return open_book(file, backups=backups)
