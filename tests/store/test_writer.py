"""One thread writes, many read; the log is folded in when the writer rests."""

import sqlite3
import threading
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from afterdraft.errors import BookClosed
from afterdraft.store.book import BookFile
from afterdraft.store.opening import open_book
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.ports import Desk
from tests.store import sample


def test_edits_from_many_threads_are_done_one_after_the_other(book: BookFile) -> None:
    with ThreadPoolExecutor(8) as pool:
        list(pool.map(lambda n: write_note(book, f"{n}"), range(60)))
    assert sorted(int(note.text) for note in book.notes()) == list(range(60))
    with book._reading() as db:
        assert db.execute("SELECT count(DISTINCT number) FROM undo_step").fetchone() == (60,)


def test_every_edit_runs_on_the_same_thread(book: BookFile) -> None:
    names = {book.edit("Look", lambda _: threading.get_ident()) for _ in range(5)}
    assert len(names) == 1 and threading.get_ident() not in names


def test_readers_see_whole_edits_and_do_not_wait(book: BookFile) -> None:
    started, go_on = threading.Event(), threading.Event()

    def slow(desk: Desk) -> None:
        desk.add_note(text="One.", scene=None)
        started.set()
        go_on.wait(5)
        desk.add_note(text="Two.", scene=None)

    writing = threading.Thread(target=book.edit, args=("Two notes", slow))
    writing.start()
    assert started.wait(5)
    assert book.notes() == ()
    go_on.set()
    writing.join()
    assert len(book.notes()) == 2


def test_what_is_read_together_belongs_to_one_moment(book: BookFile) -> None:
    with book._reading() as db:
        before = db.execute("SELECT count(*) FROM desk_note").fetchone()
        write_note(book, "Meanwhile.")
        assert db.execute("SELECT count(*) FROM desk_note").fetchone() == before == (0,)
    assert len(book.notes()) == 1


def test_readers_cannot_write(book: BookFile) -> None:
    with pytest.raises(Exception, match="reading only"), book._reading() as db:
        db.execute("DELETE FROM desk_note")


def test_an_edit_within_an_edit_is_a_fault(book: BookFile) -> None:
    with pytest.raises(RuntimeError, match="within an edit"):
        book.edit("Outer", lambda _: write_note(book, "Inner"))
    write_note(book, "Still alive.")


def test_the_log_is_folded_in_when_the_writer_rests(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("afterdraft.store.writer.REST_SECONDS", 0.05)
    book, _ = sample.begun(tmp_path)
    with book:
        log = Path(f"{book.path}-wal")
        write_note(book, "In the log.")
        for _ in range(100):
            if log.stat().st_size == 0:
                break
            threading.Event().wait(0.05)
        assert log.stat().st_size == 0
        with sqlite3.connect(f"file:{book.path}?immutable=1", uri=True) as alone:  # reads the file, never the log
            assert alone.execute("SELECT text FROM desk_note").fetchall() == [("In the log.",)]
        alone.close()


def test_a_reader_in_the_way_only_delays_the_folding(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("afterdraft.store.writer.REST_SECONDS", 0.02)
    book, _ = sample.begun(tmp_path)
    with book:
        log = Path(f"{book.path}-wal")
        write_note(book, "One.")
        with book._reading() as db:
            db.execute("SELECT count(*) FROM desk_note").fetchone()
            write_note(book, "Two.")
            threading.Event().wait(0.2)
            assert log.stat().st_size > 0
        for _ in range(100):
            if log.stat().st_size == 0:
                break
            threading.Event().wait(0.05)
        assert log.stat().st_size == 0


def test_closing_waits_for_what_is_queued_and_being_read(tmp_path: Path) -> None:
    book, _ = sample.begun(tmp_path)
    with ThreadPoolExecutor(4) as pool:
        edits = [pool.submit(write_note, book, f"{n}") for n in range(20)]
        for edit in edits:
            edit.result()
        reading = [pool.submit(book.notes) for _ in range(8)]
        for read in reading:
            assert len(read.result()) == 20
    book.close()
    book.close()
    for act in (lambda: book.notes(), lambda: write_note(book, "Late.")):
        with pytest.raises(BookClosed, match="Open it again"):
            act()
    with open_book(Path(book.path), backups=tmp_path / "backups") as again:
        assert len(again.notes()) == 20


def test_no_thread_is_left_behind(tmp_path: Path) -> None:
    before = threading.active_count()
    book, _ = sample.begun(tmp_path)
    book.close()
    assert threading.active_count() == before
