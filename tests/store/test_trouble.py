"""When the disk is full, the folder for reading only or the file gone: plain words, and the last good state kept."""

import os
import sqlite3
from pathlib import Path

import pytest

from afterdraft.errors import BookOpenElsewhere, BookTrouble, CannotWrite, DamagedBook, NotABook
from afterdraft.store.book import BookFile
from afterdraft.store.opening import open_book
from afterdraft.store.trouble import told
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.notes.write_note import write_note
from tests.store import sample
from tests.store.sample import desk_dump
from tests.support import need


def _fill_disk(book: BookFile) -> None:
    """Let the engine believe that there is no more room: it then says SQLITE_FULL, as on a full disk."""
    book._write(lambda db, _: db.execute("PRAGMA max_page_count = 1"))


def _make_room(book: BookFile) -> None:
    book._write(lambda db, _: db.execute("PRAGMA max_page_count = 1000000"))


def test_a_full_disk_is_told_and_the_last_good_state_kept(book: BookFile, draft: str) -> None:
    write_note(book, "Before.")
    _fill_disk(book)
    before = desk_dump(book), book.edits()
    with pytest.raises(CannotWrite, match=r"the disk is full\. What was saved before is safe"):
        bring_draft(book, sample.draft(), [("much.txt", os.urandom(300_000))])
    assert (desk_dump(book), book.edits(), len(book.drafts())) == (*before, 1)
    _make_room(book)
    write_note(book, "After.")
    assert [note.text for note in book.notes()] == ["Before.", "After."]
    assert book.check() == ()


def test_reading_goes_on_while_nothing_can_be_written(book: BookFile, draft: str) -> None:
    book.set_last_place("F47")
    path = Path(book.path)
    away = path.rename(path.with_name("moved.afterdraft"))
    book.set_last_place("K22")  # not worth an error
    away.rename(path)
    assert (book.last_place(), len(book.cards(draft))) == ("F47", 3)
    book.set_last_place("K22")
    assert book.last_place() == "K22"


def test_a_file_size_limit_of_the_system_is_told_too(tmp_path: Path) -> None:
    """A real refusal by the kernel (EFBIG), as a full disk gives: in a child, since the limit stays for its life."""
    resource = pytest.importorskip("resource")
    signal = pytest.importorskip("signal")
    need(hasattr(os, "fork"), "a system with fork")
    book, _ = sample.begun(tmp_path)
    book.close()
    child = os.fork()
    if child == 0:  # pragma: no cover
        outcome = 1
        try:
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
            with open_book(Path(book.path), backups=tmp_path / "backups") as inside:
                resource.setrlimit(resource.RLIMIT_FSIZE, (200_000, 200_000))
                try:
                    bring_draft(inside, sample.draft(), [("much.txt", os.urandom(3_000_000))])
                except CannotWrite:
                    outcome = 0 if len(inside.drafts()) == 1 else 2
        finally:
            os._exit(outcome)
    assert os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]) == 0
    with open_book(Path(book.path), backups=tmp_path / "backups") as again:
        assert (len(again.drafts()), again.check()) == (1, ())


def test_a_file_for_reading_only_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """As root every file can be written, so the engine's own answer is given in its stead."""
    book, _ = sample.begun(tmp_path)
    book.close()
    path = Path(book.path)
    path.chmod(0o444)
    if os.access(path, os.W_OK):
        refused = sqlite3.OperationalError("attempt to write a readonly database")
        refused.sqlite_errorcode = sqlite3.SQLITE_READONLY

        def refuse(path: Path) -> sqlite3.Connection:
            raise refused

        monkeypatch.setattr("afterdraft.store.writer.writing", refuse)
    with pytest.raises(CannotWrite, match="for reading only"):
        open_book(path, backups=tmp_path / "backups")


def test_a_file_that_was_deleted_or_moved_is_noticed_at_the_next_edit(book: BookFile, tmp_path: Path) -> None:
    write_note(book, "Before.")
    path = Path(book.path)
    away = path.rename(tmp_path / "moved.afterdraft")
    with pytest.raises(CannotWrite, match="no longer where it was"):
        write_note(book, "Lost?")
    away.rename(path)
    write_note(book, "Back.")
    assert [note.text for note in book.notes()] == ["Before.", "Back."]


def test_another_file_in_its_place_is_noticed(book: BookFile) -> None:
    path = Path(book.path)
    content = path.read_bytes()
    path.unlink()
    path.write_bytes(content)
    with pytest.raises(CannotWrite, match="no longer where it was"):
        write_note(book, "Lost?")


def test_a_program_that_holds_the_file_too_long_is_told(book: BookFile) -> None:
    write_note(book, "Before.")
    book._write(lambda db, _: db.execute("PRAGMA busy_timeout = 50"), transaction=False)
    other = sqlite3.connect(book.path, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    with pytest.raises(BookOpenElsewhere):
        write_note(book, "Not now.")
    other.execute("ROLLBACK")
    other.close()
    write_note(book, "Now.")
    assert [note.text for note in book.notes()] == ["Before.", "Now."]


@pytest.mark.parametrize(
    ("code", "trouble"),
    [
        (sqlite3.SQLITE_FULL, CannotWrite),
        (sqlite3.SQLITE_READONLY_DIRECTORY, CannotWrite),  # extended codes are told as their primary ones
        (sqlite3.SQLITE_IOERR_WRITE, CannotWrite),
        (sqlite3.SQLITE_IOERR_FSYNC, CannotWrite),
        (sqlite3.SQLITE_CANTOPEN, CannotWrite),
        (sqlite3.SQLITE_BUSY_SNAPSHOT, BookOpenElsewhere),
        (sqlite3.SQLITE_CORRUPT_INDEX, DamagedBook),
        (sqlite3.SQLITE_NOTADB, NotABook),
    ],
)
def test_each_answer_of_the_engine_in_plain_words(code: int, trouble: type[BookTrouble]) -> None:
    error = sqlite3.OperationalError("as the engine says it")
    error.sqlite_errorcode = code
    with pytest.raises(trouble) as said, told("/books/Sluice.afterdraft"):
        raise error
    assert "/books/Sluice.afterdraft" in str(said.value)


def test_faults_of_ours_are_not_dressed_up() -> None:
    with pytest.raises(sqlite3.IntegrityError), told("x"):
        error = sqlite3.IntegrityError("UNIQUE constraint failed")
        error.sqlite_errorcode = sqlite3.SQLITE_CONSTRAINT_UNIQUE
        raise error
    with pytest.raises(sqlite3.ProgrammingError), told("x"):
        raise sqlite3.ProgrammingError("Cannot operate on a closed database.")
