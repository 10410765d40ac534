"""Backups are whole, thinned out by counter and day, and put back without losing what is there."""

import sqlite3
from contextlib import closing
from datetime import UTC, date, datetime, timedelta
from functools import partial
from pathlib import Path

import pytest

from afterdraft.errors import BookOpenElsewhere, CannotWrite, DamagedBook, NotABook
from afterdraft.store.backups import KEPT_LAST, in_folder, restore
from afterdraft.store.book import BookFile
from afterdraft.store.opening import open_book
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.notes.write_note import write_note
from tests.store import sample
from tests.store.sample import undo

DAY = "2026-11-25"


def _notes(path: Path, tmp_path: Path) -> list[str]:
    with open_book(path, backups=tmp_path / "other", read_only=True) as book:
        return [note.text for note in book.notes()]


def test_a_backup_is_the_book_at_that_moment(book: BookFile, tmp_path: Path) -> None:
    write_note(book, "Before.")
    made = Path(book.back_up(why="asked for"))
    write_note(book, "After.")
    assert made.parent == tmp_path / "backups" / book.id == book.backup_folder
    assert _notes(made, tmp_path) == ["Before."]
    assert [path.name for path in made.parent.iterdir()] == [made.name]


def test_names_carry_counter_day_and_reason(book: BookFile) -> None:
    book.back_up(why="closed")
    first = in_folder(book.backup_folder)[0].day
    book._now = lambda: datetime(2001, 1, 1, tzinfo=UTC)  # the clock was set back
    write_note(book, "A change.")
    book.back_up(why="asked / for: <it>")
    found = in_folder(book.backup_folder)
    assert [(backup.number, backup.day, backup.why) for backup in found] == [
        (2, "2001-01-01", "asked for it"),
        (1, first, "closed"),
    ]
    assert [backup.path.name for backup in found] == [
        "000002 2001-01-01 asked for it.afterdraft",
        f"000001 {first} closed.afterdraft",
    ]
    assert all(backup.size == backup.path.stat().st_size for backup in found)


def test_old_backups_are_thinned_out(book: BookFile) -> None:
    day = datetime(2026, 1, 1, 8, tzinfo=UTC)
    for n in range(80):
        book._now = partial(day.__add__, timedelta(days=n // 2))  # two a day, for 40 days
        write_note(book, f"{n}")
        book.back_up(why="before draft 2" if n == 3 else "closed")
    kept = [backup.number for backup in in_folder(book.backup_folder)]
    last = list(range(80, 80 - KEPT_LAST, -1))
    daily = [number for number in range(70, 20, -1) if number % 2 == 0]  # the second of each day; 30 days in all
    assert kept == [*last, *daily, 4]
    assert len({backup.day for backup in in_folder(book.backup_folder)} - {date(2026, 1, 2).isoformat()}) == 30


def test_a_book_that_did_not_change_is_not_backed_up_again(book: BookFile) -> None:
    first = book.back_up(why="closed")
    book.set_last_place("F47")
    assert book.back_up(why="closed") == first
    write_note(book, "A change.")
    undo(book)
    second = book.back_up(why="closed")  # there is something to redo now
    assert second != first
    assert book.back_up(why="before draft 2") not in (first, second)  # this one stays for good
    Path(in_folder(book.backup_folder)[0].path).write_bytes(b"ruined")
    assert len({first, second, book.back_up(why="closed")}) == 3
    assert len(in_folder(book.backup_folder)) == 4


def test_a_backup_is_made_before_a_draft_but_not_before_the_first(book: BookFile) -> None:
    assert in_folder(book.backup_folder) == ()
    bring_draft(book, sample.draft(), [sample.ORIGINAL])
    (made,) = in_folder(book.backup_folder)
    assert made.why == "before draft 2"


def test_restoring_keeps_the_present_book_among_the_backups(tmp_path: Path) -> None:
    book, _ = sample.begun(tmp_path)
    write_note(book, "Old.")
    made = Path(book.back_up(why="asked for"))
    write_note(book, "New.")
    book.close()
    path = Path(book.path)
    kept = restore(path, made, folder=book.backup_folder, day=DAY)
    assert _notes(path, tmp_path) == ["Old."]
    assert kept and kept.parent == book.backup_folder
    assert _notes(kept, tmp_path) == ["Old.", "New."]
    assert in_folder(book.backup_folder)[0].why == "before restoring"
    assert [file.name for file in tmp_path.iterdir() if file.is_file()] == ["Sluice.afterdraft"]


def test_restoring_after_a_crash_takes_in_the_log_first(tmp_path: Path) -> None:
    book, _ = sample.begun(tmp_path)
    made = Path(book.back_up(why="asked for"))
    write_note(book, "Only in the log.")
    path = Path(book.path)
    left = {end: Path(f"{path}{end}").read_bytes() for end in ("", "-wal")}
    book.close()
    for end, content in left.items():
        Path(f"{path}{end}").write_bytes(content)
    kept = restore(path, made, folder=book.backup_folder, day=DAY)
    assert kept and _notes(kept, tmp_path) == ["Only in the log."]
    assert _notes(path, tmp_path) == []
    assert not Path(f"{path}-wal").exists()


def test_a_damaged_book_is_kept_beside_the_restored_one(tmp_path: Path) -> None:
    book, _ = sample.begun(tmp_path)
    made = Path(book.back_up(why="asked for"))
    book.close()
    path = Path(book.path)
    ruined = path.read_bytes()[:100] + b"\xff" * 5000
    path.write_bytes(ruined)
    kept = restore(path, made, folder=book.backup_folder, day=DAY)
    assert kept == tmp_path / "Sluice (damaged 1).afterdraft"
    assert kept.read_bytes() == ruined
    assert _notes(path, tmp_path) == []


def test_restoring_where_the_book_is_gone(tmp_path: Path) -> None:
    book, _ = sample.begun(tmp_path)
    made = Path(book.back_up(why="asked for"))
    book.close()
    Path(book.path).unlink()
    assert restore(Path(book.path), made, folder=book.backup_folder, day=DAY) is None
    assert _notes(Path(book.path), tmp_path) == []


def test_a_book_that_is_open_is_not_restored(book: BookFile, tmp_path: Path) -> None:
    made = Path(book.back_up(why="asked for"))
    write_note(book, "Stays.")
    with pytest.raises(BookOpenElsewhere):
        restore(Path(book.path), made, folder=book.backup_folder, day=DAY)
    assert [note.text for note in book.notes()] == ["Stays."]
    write_note(book, "And goes on.")


@pytest.mark.parametrize(("ruin", "error"), [("page", DamagedBook), ("kind", NotABook), ("gone", NotABook)])
def test_a_bad_backup_is_not_put_back(tmp_path: Path, ruin: str, error: type[Exception]) -> None:
    book, _ = sample.begun(tmp_path)
    made = Path(book.back_up(why="asked for"))
    book.close()
    content = bytearray(made.read_bytes())
    if ruin == "page":
        content[4096 * 3 : 4096 * 6] = b"\xee" * 4096 * 3
    made.unlink()
    if ruin != "gone":
        made.write_bytes(b"no book" if ruin == "kind" else bytes(content))
    before = Path(book.path).read_bytes()
    with pytest.raises(error):
        restore(Path(book.path), made, folder=book.backup_folder, day=DAY)
    assert Path(book.path).read_bytes() == before
    assert [file.name for file in tmp_path.iterdir() if file.is_file()] == ["Sluice.afterdraft"]


def test_a_folder_that_cannot_be_written_is_told(book: BookFile, tmp_path: Path) -> None:
    (tmp_path / "backups").write_text("a file where a folder should be", encoding="utf-8")
    with pytest.raises(CannotWrite, match="cannot be written"):
        book.back_up(why="asked for")
    write_note(book, "The book itself goes on.")


def test_a_backup_while_edits_go_on_is_of_one_moment(book: BookFile, tmp_path: Path) -> None:
    for n in range(5):
        write_note(book, f"{n}")
        made = Path(book.back_up(why="asked for"))
        with closing(sqlite3.connect(made)) as copy:
            assert copy.execute("SELECT count(*) FROM desk_note").fetchone() == (n + 1,)
            assert copy.execute("PRAGMA journal_mode").fetchone() == ("delete",)
