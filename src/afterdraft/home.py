"""The program's own two small files: which books were open lately, and where new ones go."""

import json
import os
from collections.abc import Callable
from contextlib import suppress
from dataclasses import asdict, dataclass, replace
from datetime import UTC, datetime
from pathlib import Path
from threading import RLock

from afterdraft.errors import CannotWrite
from afterdraft.platform import Folders, why, write_private
from afterdraft.work.ports import Book

REMEMBERED = 50  # recent books; more would be a list nobody reads
SUFFIX = ".afterdraft"


@dataclass(frozen=True, slots=True)
class Recent:
    """A book that was open, as it was when last seen; the file may have moved since."""

    id: str
    path: str
    title: str
    opened: str  # UTC, ISO 8601
    words: int = 0
    scenes: int = 0
    written: int = 0

    @property
    def missing(self) -> bool:
        return not Path(self.path).is_file()


def seen(book: Book, *, opened: str = "") -> Recent:
    """A book as it stands now; `opened` now too, unless given."""
    facts = book.facts()
    draft = facts.draft
    return Recent(
        id=facts.id,
        path=facts.path,
        title=facts.title,
        opened=opened or datetime.now(UTC).isoformat(timespec="seconds"),
        words=draft.words if draft else 0,
        scenes=draft.scenes if draft else 0,
        written=draft.written if draft else 0,
    )


class Recents:
    """Recent books, latest first, in a JSON file that is read afresh each time: a command may add to it meanwhile."""

    def __init__(self, folders: Folders) -> None:
        self._file = folders.config / "recents.json"
        self._lock = RLock()

    def all(self) -> tuple[Recent, ...]:
        return tuple(_recents(_load(self._file)))

    def find(self, id: str) -> Recent | None:
        return next((recent for recent in self.all() if recent.id == id), None)

    def at(self, path: Path) -> Recent | None:
        return next((recent for recent in self.all() if recent.path == str(path)), None)

    def put(self, recent: Recent) -> None:
        """To the front; what was known of the same book or the same place goes.

        Where it cannot be written the list stays as it was: no book is refused for that. Likewise `update`.
        """
        with self._lock, suppress(CannotWrite):
            others = [r for r in self.all() if r.id != recent.id and r.path != recent.path]
            self._write([recent, *others])

    def update(self, recent: Recent) -> None:
        """New facts, same place in the order."""
        with self._lock, suppress(CannotWrite):
            self._write([replace(recent, opened=r.opened) if r.id == recent.id else r for r in self.all()])

    def forget(self, id: str) -> None:
        """The book's file stays where it is. Raises `CannotWrite`."""
        with self._lock:
            self._write([r for r in self.all() if r.id != id])

    def _write(self, recents: list[Recent]) -> None:
        _store(self._file, {"books": [asdict(r) for r in recents[:REMEMBERED]]})


class BooksFolder:
    """Where new books go: `AFTERDRAFT_HOME`, else what the writer chose, else Documents/Afterdraft."""

    def __init__(self, folders: Folders) -> None:
        self._default = folders.documents / "Afterdraft"
        self._file = folders.config / "settings.json"

    @property
    def fixed(self) -> bool:
        """Set from outside, so that choosing another here would do nothing."""
        return bool(os.environ.get("AFTERDRAFT_HOME"))

    def path(self) -> Path:
        if self.fixed:
            return Path(os.environ["AFTERDRAFT_HOME"]).expanduser().absolute()
        chosen = _load(self._file).get("books_folder")
        return Path(chosen) if isinstance(chosen, str) and chosen else self._default

    def choose(self, folder: Path) -> None:
        """Raises `CannotWrite` when nothing can be written there. Books that are elsewhere stay there."""
        folder = folder.expanduser().absolute()
        try:
            folder.mkdir(parents=True, exist_ok=True)
            probe = folder / ".afterdraft-probe"
            probe.write_bytes(b"")
            probe.unlink()
        except OSError as trouble:
            raise CannotWrite(str(folder), why(trouble)) from trouble
        _store(self._file, _load(self._file) | {"books_folder": str(folder)})

    def free(self, name: str) -> Path:
        """A path in the folder for a new book called `name`; never one that is taken."""
        return free_name(self.path(), name)


def free_name(folder: Path, name: str, *, taken: Callable[[Path], bool] = os.path.lexists) -> Path:
    """`name.afterdraft`, or `name 2.afterdraft` … where that is taken; letters no system refuses."""
    stem = safe_name(name)
    wanted = folder / f"{stem}{SUFFIX}"
    number = 2
    while taken(wanted):
        wanted = folder / f"{stem} {number}{SUFFIX}"
        number += 1
    return wanted


def safe_name(title: str) -> str:
    """A title as a file name that Windows, macOS and Linux all take.

    Left out: the characters and device names that Windows reserves (its file-naming rules), control characters,
    leading and trailing dots and spaces. At most 80 characters: with a long folder still under 255 bytes in UTF-8.
    """
    kept = "".join(" " if c in '<>:"/\\|?*' or ord(c) < 32 else c for c in title)
    stem = " ".join(kept.split())[:80].strip(". ")
    device = stem.split(".")[0].upper() in _DEVICES
    return f"{stem} book" if device else stem or "Untitled"


_DEVICES = {"CON", "PRN", "AUX", "NUL", *(f"{port}{n}" for port in ("COM", "LPT") for n in range(1, 10))}


def _recents(stored: dict[str, object]) -> list[Recent]:
    books = stored.get("books")
    return [recent for entry in books if (recent := _recent(entry))] if isinstance(books, list) else []


def _recent(entry: object) -> Recent | None:
    """None for what an older, newer or damaged file holds: a list of recent books is not worth a refusal."""
    if not isinstance(entry, dict):
        return None
    kinds = {"id": str, "path": str, "title": str, "opened": str, "words": int, "scenes": int, "written": int}
    sound = all(isinstance(entry.get(name), kind) for name, kind in kinds.items())
    return Recent(**{name: entry[name] for name in kinds}) if sound else None


def _load(file: Path) -> dict[str, object]:
    try:
        value = json.loads(file.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return value if isinstance(value, dict) else {}


def _store(file: Path, value: dict[str, object]) -> None:
    try:
        write_private(file, json.dumps(value, ensure_ascii=False, indent=1))
    except OSError as trouble:
        raise CannotWrite(str(file), why(trouble)) from trouble
