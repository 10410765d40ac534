"""Backups of one book in the user's data folder, and bringing one back.

A backup's name is `000012 2026-11-25 before draft 2.afterdraft`: a counter, by which they are ordered (clocks are set
back), the day, and why it was made.
"""

import os
import re
import shutil
import sqlite3
from collections.abc import Iterable
from contextlib import closing, suppress
from dataclasses import dataclass
from pathlib import Path

from afterdraft.errors import BookOpenElsewhere, DamagedBook, NotABook
from afterdraft.store.connect import is_book, reading, whole, writing
from afterdraft.store.journal import desk_tables
from afterdraft.store.migrate import version
from afterdraft.store.trouble import told

KEPT_LAST = 10
KEPT_DAYS = 30
SUFFIX = ".afterdraft"
_NAME = re.compile(r"(\d{6,}) (\d{4}-\d\d-\d\d) (.+)\.afterdraft")
_LASTING = "before "  # backups made before a draft, a migration or a restoring are kept for good


@dataclass(frozen=True, slots=True)
class Backup:
    path: Path
    number: int
    day: str  # as the clock said, YYYY-MM-DD
    why: str
    size: int  # bytes


def back_up(db: sqlite3.Connection, folder: Path, *, why: str, day: str) -> Path:
    """Copy the open book `db` as it stands at this moment into `folder`, check the copy, thin out the old ones.

    Where nothing changed since the last one, that is returned instead, unless this is to be kept for good. Raises
    `CannotWrite` when it cannot be made, `DamagedBook` when the copy does not pass its check; no half-made backup is
    left.
    """
    with told(str(folder)):
        folder.mkdir(parents=True, exist_ok=True)
        last = next(iter(in_folder(folder)), None)
        if last and not why.startswith(_LASTING) and _same(db, last.path):
            return last.path
        number = last.number + 1 if last else 1
        target = folder / f"{number:06} {day} {_plain(why)}{SUFFIX}"
        making = target.with_suffix(".part")
        try:
            _copy(db, making)
            making.replace(target)
        finally:
            making.unlink(missing_ok=True)
        sync_folder(folder)
        for old in _surplus(in_folder(folder)):
            old.path.unlink()
    return target


def in_folder(folder: Path) -> tuple[Backup, ...]:
    """Backups in a book's backup folder, newest first."""
    found = [_backup(path, match) for path in _listed(folder) if (match := _NAME.fullmatch(path.name))]
    return tuple(sorted(found, key=lambda backup: backup.number, reverse=True))


def restore(path: Path, backup: Path, *, folder: Path, day: str) -> Path | None:
    """Put `backup` in the place of the book at `path`, in one step, after keeping what is there.

    Returns where the present file was kept: among the backups if it is sound, beside the book if it is not; None if
    there was no file. Raises `BookTrouble`; then the book is as it was.
    """
    if not backup.is_file() or not is_book(backup):
        raise NotABook(str(backup))
    making = path.with_name(f"{path.name}.restoring")
    with told(str(path)):
        try:
            shutil.copyfile(backup, making)
            check_copy(making, called=str(backup))
            sync_file(making)
            kept = _keep(path, folder, day)
            making.replace(path)
        finally:
            making.unlink(missing_ok=True)
        sync_folder(path.parent)
    return kept


def check_copy(path: Path, *, called: str) -> None:
    """The engine's own quick check of a file that nobody has open. Raises `DamagedBook` under the name `called`."""
    try:
        with closing(sqlite3.connect(path)) as db:
            said = [row[0] for row in db.execute("PRAGMA quick_check")]
    except sqlite3.DatabaseError as error:
        raise DamagedBook(called, str(error)) from error
    if said != ["ok"]:
        raise DamagedBook(called, said[0])


def sync_file(path: Path) -> None:
    """Make the file's content durable."""
    with path.open("rb+") as file:
        os.fsync(file.fileno())


def sync_folder(folder: Path) -> None:
    """Make a rename in the folder durable, where the system lets folders be synced at all."""
    with suppress(OSError):  # Windows and some network drives: there is no more that could be done
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def _same(db: sqlite3.Connection, backup: Path) -> bool:
    """Whether a backup holds the same drafts, the same work on them and the same edits to take back."""
    try:
        with closing(reading(backup)) as old:
            return version(old) == version(db) and _state(old) == _state(db)
    except sqlite3.DatabaseError:  # no longer readable: another is needed all the more
        return False


def _state(db: sqlite3.Connection) -> list[list[tuple[object, ...]]]:
    work = [db.execute(f"SELECT * FROM {table} ORDER BY 1, 2").fetchall() for table in desk_tables(db)]  # noqa: S608
    return [*work, db.execute("SELECT id FROM text_draft").fetchall(), db.execute("SELECT * FROM undo_step").fetchall()]


def _copy(db: sqlite3.Connection, target: Path) -> None:
    target.unlink(missing_ok=True)
    with closing(sqlite3.connect(target, isolation_level=None)) as copy:
        db.backup(copy)
        copy.execute("PRAGMA journal_mode = DELETE")  # the copy must be whole in one file
    check_copy(target, called=target.name)
    sync_file(target)


def _keep(path: Path, folder: Path, day: str) -> Path | None:
    """Keep the file that a backup is to replace, its log included."""
    if not path.exists():
        return None
    try:
        with told(str(path)), closing(reading(path)) as db:
            kept = back_up(db, folder, why="before restoring", day=day)
        with told(str(path)), closing(writing(path)) as db:
            whole(db)  # nothing of the old log may be left to meet the new file
    except (DamagedBook, NotABook):
        return _keep_beside(path)
    if _logs(path):
        raise BookOpenElsewhere(str(path))
    return kept


def _keep_beside(path: Path) -> Path:
    number = 1
    while (kept := path.with_name(f"{path.stem} (damaged {number}){path.suffix}")).exists():
        number += 1
    shutil.copyfile(path, kept)
    for log in _logs(path):
        log.replace(kept.with_name(kept.name + log.name.removeprefix(path.name)))
    return kept


def _logs(path: Path) -> list[Path]:
    return [log for end in ("-wal", "-shm", "-journal") if (log := path.with_name(path.name + end)).exists()]


def _surplus(backups: tuple[Backup, ...]) -> Iterable[Backup]:
    """Those that are neither among the last, nor the last of one of the last days, nor made before something great."""
    days: list[str] = []
    for place, backup in enumerate(backups):
        last_of_day = backup.day not in days
        if last_of_day:
            days.append(backup.day)
        daily = last_of_day and len(days) <= KEPT_DAYS
        if place >= KEPT_LAST and not daily and not backup.why.startswith(_LASTING):
            yield backup


def _backup(path: Path, match: re.Match[str]) -> Backup:
    return Backup(path, int(match[1]), match[2], match[3], path.stat().st_size)


def _listed(folder: Path) -> list[Path]:
    return list(folder.iterdir()) if folder.is_dir() else []


def _plain(why: str) -> str:
    """Letters, digits and spaces only: it becomes part of a file name."""
    kept = re.sub(r"[^\w ]+", " ", why)
    return " ".join(kept.split())[:60] or "asked for"
