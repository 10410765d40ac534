"""Beginning, opening and taking in books: all of it or nothing, and every refusal in plain words."""

import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest

from afterdraft.errors import (
    AlreadyThere,
    BookOpenElsewhere,
    CannotWrite,
    DamagedBook,
    NewerBook,
    NotABook,
    NotPossible,
)
from afterdraft.store.book import BookFile
from afterdraft.store.connect import APPLICATION_ID, is_book
from afterdraft.store.migrations import MIGRATIONS
from afterdraft.store.opening import begin_book, open_book, take_in
from afterdraft.store.shelf import Shelf
from afterdraft.work.drafts.begin_book import begin_book as begin
from tests.store import sample


def _files(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir() if path.is_file())


def test_a_book_is_begun_with_its_first_draft(tmp_path: Path) -> None:
    shelf = Shelf(lambda title: tmp_path / f"{title}.afterdraft", backups=tmp_path / "backups")
    book = begin(shelf, sample.draft(), [sample.ORIGINAL])
    facts = book.facts()
    book.close()
    assert facts.title == "The Sluice-Keeper"
    assert facts.draft and facts.draft.scenes == 3
    assert _files(tmp_path) == ["The Sluice-Keeper.afterdraft"]


def test_a_book_that_cannot_be_finished_leaves_nothing(tmp_path: Path) -> None:
    def first(book: BookFile) -> None:
        raise NotPossible("No.")

    with pytest.raises(NotPossible):
        begin_book(tmp_path / "Sluice.afterdraft", title="S", backups=tmp_path / "backups", first=first)
    assert _files(tmp_path) == []


def test_a_taken_name_is_left_alone(tmp_path: Path) -> None:
    there = tmp_path / "Sluice.afterdraft"
    there.write_text("hers", encoding="utf-8")
    with pytest.raises(AlreadyThere):
        sample.begun_anew(tmp_path)
    with pytest.raises(AlreadyThere):
        take_in(there, b"SQLite format 3\x00")
    assert there.read_text(encoding="utf-8") == "hers"


def test_a_name_taken_meanwhile_is_left_alone(tmp_path: Path) -> None:
    there = tmp_path / "Sluice.afterdraft"
    with pytest.raises(AlreadyThere):
        begin_book(there, title="S", backups=tmp_path / "b", first=lambda _: there.write_text("hers", encoding="utf-8"))
    assert there.read_text(encoding="utf-8") == "hers"
    assert _files(tmp_path) == ["Sluice.afterdraft"]


def test_the_header_says_what_it_is(tmp_path: Path) -> None:
    book, _ = sample.begun_anew(tmp_path)
    book.close()
    with closing(sqlite3.connect(book.path)) as db:
        assert db.execute("PRAGMA application_id").fetchone() == (APPLICATION_ID,)
        assert db.execute("PRAGMA user_version").fetchone() == (len(MIGRATIONS),)


@pytest.mark.parametrize("content", [b"", b"PK\x03\x04 a docx", b"SQLite format 3\x00" + bytes(200)])
def test_what_is_no_book_is_refused(tmp_path: Path, content: bytes) -> None:
    file = tmp_path / "Sluice.afterdraft"
    file.write_bytes(content)
    with pytest.raises(NotABook):
        open_book(file, backups=tmp_path / "b")
    with pytest.raises(NotABook):
        take_in(tmp_path / "Other.afterdraft", content)
    assert file.read_bytes() == content
    assert _files(tmp_path) == ["Sluice.afterdraft"]


def test_a_path_without_a_file_is_refused_and_makes_none(tmp_path: Path) -> None:
    for path in (tmp_path / "none.afterdraft", tmp_path):
        with pytest.raises(NotABook):
            open_book(path, backups=tmp_path / "b")
    assert _files(tmp_path) == []


def test_another_database_is_no_book(tmp_path: Path) -> None:
    file = tmp_path / "Sluice.afterdraft"
    with closing(sqlite3.connect(file)) as db:
        db.execute("CREATE TABLE book (id)")
    with pytest.raises(NotABook):
        open_book(file, backups=tmp_path / "b")


@pytest.mark.parametrize("read_only", [False, True])
def test_a_newer_book_is_refused_and_left_as_it_is(tmp_path: Path, read_only: bool) -> None:
    book, _ = sample.begun_anew(tmp_path)
    book.close()
    file = Path(book.path)
    with closing(sqlite3.connect(file)) as db:
        db.execute("PRAGMA user_version = 99")
    before = file.read_bytes()
    with pytest.raises(NewerBook, match=f"its form is 99, this program knows {len(MIGRATIONS)}"):
        open_book(file, backups=tmp_path / "backups", read_only=read_only)
    assert file.read_bytes() == before
    assert _files(tmp_path) == ["Sluice.afterdraft"]


@pytest.mark.parametrize(
    "meddling",
    [
        "UPDATE text_paragraph SET text = 'other' WHERE n = 3",
        "UPDATE text_paragraph SET form = '{}' WHERE n = 3",
        "DELETE FROM text_paragraph WHERE n = 11",
    ],
)
def test_a_draft_that_was_meddled_with_is_noticed_at_opening(tmp_path: Path, meddling: str) -> None:
    book, _ = sample.begun_anew(tmp_path)
    book.close()
    with closing(sqlite3.connect(book.path)) as db:
        for trigger in ("text_paragraph_no_update", "text_paragraph_no_delete"):
            db.execute(f"DROP TRIGGER {trigger}")
        db.execute(meddling)
        db.commit()
    with pytest.raises(DamagedBook, match="draft 1 is not as it was brought in"):
        open_book(Path(book.path), backups=tmp_path / "backups")


def test_a_torn_file_is_told_as_damage(tmp_path: Path) -> None:
    book, _ = sample.begun_anew(tmp_path)
    book.close()
    file = Path(book.path)
    content = bytearray(file.read_bytes())
    content[200:40_000] = b"\x5a" * (40_000 - 200)
    file.write_bytes(content)
    with pytest.raises(DamagedBook, match="Restore the latest backup"):
        open_book(file, backups=tmp_path / "backups")
    with pytest.raises(DamagedBook):
        take_in(tmp_path / "Other.afterdraft", bytes(content))
    assert not (tmp_path / "Other.afterdraft").exists()


def test_a_book_that_another_program_holds_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    book, _ = sample.begun_anew(tmp_path)
    book.close()
    monkeypatch.setattr("afterdraft.store.connect.BUSY_SECONDS", 0.05)
    with closing(sqlite3.connect(book.path)) as other:
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(BookOpenElsewhere):
            open_book(Path(book.path), backups=tmp_path / "backups")
    open_book(Path(book.path), backups=tmp_path / "backups").close()


def test_looking_whether_it_is_a_book_leaves_the_locks_of_an_open_one(book: BookFile) -> None:
    """Any other program that wants the file for itself must still be refused: sqlite.org/howtocorrupt.html, 2.2."""
    assert is_book(Path(book.path))
    open_book(Path(book.path), backups=book.backup_folder.parent, read_only=True).close()
    ask = "import sqlite3, sys; print(*sqlite3.connect(sys.argv[1], timeout=0).execute('PRAGMA journal_mode = DELETE'))"
    done = subprocess.run([sys.executable, "-c", ask, book.path], capture_output=True, text=True, check=False)
    assert "database is locked" in done.stderr, done.stdout


def test_a_dropped_book_is_taken_in_whole(tmp_path: Path) -> None:
    book, draft = sample.begun_anew(tmp_path)
    book.close()
    target = tmp_path / "folder" / "Sluice.afterdraft"
    target.parent.mkdir()
    take_in(target, Path(book.path).read_bytes())
    assert _files(target.parent) == ["Sluice.afterdraft"]
    with open_book(target, backups=tmp_path / "backups") as taken:
        assert taken.words(draft)


def test_a_folder_that_is_a_file_is_told(tmp_path: Path) -> None:
    (tmp_path / "folder").write_text("", encoding="utf-8")
    with pytest.raises(CannotWrite):
        sample.begun_anew(tmp_path / "folder")


def test_names_no_system_likes_are_no_trouble_to_the_file(tmp_path: Path) -> None:
    book, draft = sample.begun_anew(tmp_path, name="Côte & Küste #1 100% ? ’x’")
    book.close()
    with open_book(Path(book.path), backups=tmp_path / "backups") as again:
        assert again.words(draft)
