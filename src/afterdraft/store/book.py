"""An open book file: reading from any thread, changes through one."""

import sqlite3
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager, suppress
from datetime import UTC, datetime
from pathlib import Path
from typing import Self, TypeVar

from afterdraft.desk.card import Card
from afterdraft.desk.note import Note
from afterdraft.errors import BookOpenElsewhere, CannotWrite, DamagedBook
from afterdraft.manuscript.blocks import Aside, Block, Blocks
from afterdraft.manuscript.division import Division, Doubt
from afterdraft.store import backups, cards, corrections, divisions, drafts, fields, inspect, journal, notes, search
from afterdraft.store.arranging import BookArrangements
from afterdraft.store.cast import BookCast
from afterdraft.store.changes import BookChanges
from afterdraft.store.desk import OpenDesk
from afterdraft.store.drafts_order import BookDrafts
from afterdraft.store.inks import BookInks
from afterdraft.store.journal import Journal
from afterdraft.store.lines import BookLines
from afterdraft.store.migrate import migrate, refuse_newer, refuse_older
from afterdraft.store.migrations import MIGRATIONS, Migration
from afterdraft.store.questions import BookQuestions
from afterdraft.store.readers import Readers
from afterdraft.store.reading import BookReading
from afterdraft.store.trouble import told
from afterdraft.store.units import BookUnits
from afterdraft.store.writer import Writer
from afterdraft.work.ports import BookFacts, Desk, DraftFacts, Edit, Edits, Fields, Hit, Written

T = TypeVar("T")
Now = Callable[[], datetime]


def utc_now() -> datetime:
    return datetime.now(UTC)


class BookFile(
    BookArrangements,
    BookLines,
    BookCast,
    BookChanges,
    BookDrafts,
    BookInks,
    BookQuestions,
    BookReading,
    BookUnits,
):
    """Fills `work.ports.Book`. Made by `store.opening`; `path` holds a book of ours."""

    def __init__(
        self,
        path: Path,
        *,
        backups_root: Path,
        read_only: bool = False,
        now: Now = utc_now,
        migrations: Sequence[Migration] = MIGRATIONS,
    ) -> None:
        self._path = path
        self._backups_root = backups_root
        self._now = now
        self._migrations = migrations
        self._notice = ""
        self._journal: Journal | None = None
        self._writer: Writer | None = None
        self._readers = Readers(path)
        try:
            with told(str(path)):
                self._refuse_newer()
                if not read_only:
                    self._writer = Writer(path, self._prepare)
                self._id = self._check_at_opening()
        except BaseException:
            self.close()
            raise

    @property
    def id(self) -> str:
        return self._id

    @property
    def path(self) -> str:
        return str(self._path)

    @property
    def backup_folder(self) -> Path:
        return self._backups_root / self._id

    def notices(self) -> tuple[str, ...]:
        return (self._notice,) if self._notice else ()

    def facts(self) -> BookFacts:
        with self._reading() as db:
            changed, title = db.execute("SELECT changed, title FROM book, desk_book").fetchone()
            known = drafts.facts(db)
        draft = known[-1] if known else None
        return BookFacts(self._id, title, draft.author if draft else "", self.path, draft, changed)

    def drafts(self) -> tuple[DraftFacts, ...]:
        with self._reading() as db:
            return drafts.facts(db)

    def division(self, draft: str) -> Division:
        with self._reading() as db:
            return divisions.read(db, draft)

    def blocks(self, draft: str, start: int = 0, end: int | None = None) -> tuple[Block, ...]:
        with self._reading() as db:
            return drafts.blocks(db, draft, start, end)

    def first_words(self, draft: str, paragraphs: Sequence[int]) -> dict[int, str]:
        with self._reading() as db:
            return drafts.first_words(db, draft, paragraphs)

    def words(self, draft: str) -> tuple[int, ...]:
        with self._reading() as db:
            return drafts.words(db, draft)

    def source(self, draft: str) -> Blocks:
        with self._reading() as db:
            return drafts.source(db, draft)

    def unread(self, draft: str) -> tuple[str, ...]:
        with self._reading() as db:
            return drafts.unread(db, draft)

    def originals(self, draft: str) -> tuple[tuple[str, bytes], ...]:
        with self._reading() as db:
            return drafts.files(db, draft)

    def doubts(self, draft: str) -> tuple[Doubt, ...]:
        with self._reading() as db:
            return drafts.doubts(db, draft)

    def said(self, kind: str, draft: str, paragraphs: Sequence[int]) -> frozenset[int]:
        with self._reading() as db:
            return corrections.said(db, kind, draft, paragraphs)

    def asides(self, draft: str, start: int, end: int) -> tuple[Aside, ...]:
        with self._reading() as db:
            return drafts.asides(db, draft, start, end)

    def cards(self, draft: str) -> dict[str, Card]:
        with self._reading() as db:
            return cards.cards(db, draft)

    def card(self, id: str) -> Card:
        with self._reading() as db:
            return cards.card(db, id)

    def fields(self, kind: Written, id: str) -> Fields:
        with self._reading() as db:
            return fields.fields(db, kind, id)

    def draft_of(self, scene: str) -> str:
        with self._reading() as db:
            return divisions.draft_of(db, scene)

    def note(self, id: str) -> Note:
        with self._reading() as db:
            return notes.note(db, id)

    def notes(self, *, scene: str | None = None, loose: bool = False) -> tuple[Note, ...]:
        with self._reading() as db:
            return notes.notes(db, scene=scene, loose=loose)

    def search(self, words: str, *, limit: int = 50) -> tuple[Hit, ...]:
        with self._reading() as db:
            return search.search(db, words, limit=limit)

    def edits(self) -> Edits:
        with self._reading() as db:
            return journal.edits(db)

    def edit(self, name: str, change: Callable[[Desk], T], *, merge: str = "") -> T:
        def work(db: sqlite3.Connection, log: Journal) -> T:
            now = self._timestamp()
            desk = OpenDesk(db, log, now)
            return log.edit(name, lambda: change(desk), merge=merge, changed=lambda: _touch(db, now))

        return self._write(work)

    def end_merge(self, merge: str) -> None:
        self._write(lambda _, log: log.end_merge(merge), transaction=False)

    def undo(self, number: int) -> Edit:
        return self._write(lambda db, log: self._touched(db, log.undo(number)))

    def redo(self, number: int) -> Edit:
        return self._write(lambda db, log: self._touched(db, log.redo(number)))

    def last_place(self) -> str:
        with self._reading() as db:
            return str(db.execute("SELECT place FROM book").fetchone()[0])

    def set_last_place(self, code: str) -> None:
        def work(db: sqlite3.Connection, _: Journal) -> None:
            db.execute("UPDATE book SET place = ?", (code,))

        if code != self.last_place():
            with suppress(CannotWrite, BookOpenElsewhere):  # not worth an error where she only reads
                self._write(work)

    def back_up(self, *, why: str) -> str:
        with self._reading() as db:
            return str(self._back_up(db, why))

    def check(self) -> tuple[str, ...]:
        with self._reading() as db:
            return inspect.problems(db)

    def close(self) -> None:
        self._readers.close()
        if self._writer:
            self._writer.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    @contextmanager
    def _reading(self) -> Iterator[sqlite3.Connection]:
        with told(self.path), self._readers.snapshot() as db:
            yield db

    def _write(self, work: Callable[[sqlite3.Connection, Journal], T], *, transaction: bool = True) -> T:
        writer, log = self._writer, self._journal
        if writer is None or log is None:
            raise CannotWrite(self.path, "it was opened for reading only")
        run = writer.run if transaction else writer.run_bare
        with told(self.path):
            return run(lambda db: work(db, log))

    def _prepare(self, db: sqlite3.Connection) -> None:
        """On the writing thread, before anything else."""
        self._notice = migrate(
            db,
            self._path,
            back_up=lambda: _done(self._back_up(db, "before migration")),
            migrations=self._migrations,
        )
        self._journal = Journal(db)

    def _refuse_newer(self) -> None:
        """Before anything is written to it."""
        with self._readers.snapshot() as db:
            refuse_newer(db, self._path, self._migrations)

    def _check_at_opening(self) -> str:
        """The book's id. Raises `DamagedBook`; `CannotWrite` for an older book opened for reading only."""
        with self._readers.snapshot() as db:
            refuse_older(db, self._path, self._migrations)
            for number in drafts.changed(db):
                raise DamagedBook(self.path, f"draft {number} is not as it was brought in")
            return _book_id(db)

    def _back_up(self, db: sqlite3.Connection, why: str) -> Path:
        folder = self._backups_root / _book_id(db)
        return backups.back_up(db, folder, why=why, day=self._now().date().isoformat())

    def _timestamp(self) -> str:
        return self._now().isoformat(timespec="seconds")

    def _touched(self, db: sqlite3.Connection, edit: Edit) -> Edit:
        _touch(db, self._timestamp())
        return edit


def _touch(db: sqlite3.Connection, now: str) -> None:
    db.execute("UPDATE book SET changed = ?", (now,))


def _book_id(db: sqlite3.Connection) -> str:
    return str(db.execute("SELECT id FROM book").fetchone()[0])


def _done(_: object) -> None:
    """The result is of no interest."""
