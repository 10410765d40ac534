"""A book of an earlier form is backed up, brought up to date, and says so; a specimen of each form opens."""

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from afterdraft.errors import CannotWrite, NewerBook
from afterdraft.store.backups import in_folder
from afterdraft.store.book import BookFile
from afterdraft.store.migrations import MIGRATIONS
from afterdraft.store.opening import open_book
from afterdraft.work.notes.write_note import write_note
from tests.store import sample
from tests.store.sample import undo

SPECIMENS = Path(__file__).parent.parent / "specimens" / "books"


def colour(db: sqlite3.Connection) -> None:
    """A migration for these tests."""
    db.execute("ALTER TABLE desk_note ADD COLUMN colour TEXT NOT NULL DEFAULT ''")


def fails(db: sqlite3.Connection) -> None:
    db.execute("ALTER TABLE desk_card ADD COLUMN colour TEXT NOT NULL DEFAULT ''")
    raise sqlite3.OperationalError("as it happens")


def orphans(db: sqlite3.Connection) -> None:
    """A migration with a fault: it leaves cards without their scenes."""
    db.execute("DELETE FROM desk_scene")


@pytest.fixture
def older(tmp_path: Path) -> Path:
    """A closed book of the first form with a note in it."""
    book, _ = sample.begun(tmp_path)
    with book:
        write_note(book, "Kept.")
    return Path(book.path)


def _opened(path: Path, *more: object, read_only: bool = False) -> BookFile:
    migrations = (*MIGRATIONS, *more)
    return BookFile(path, backups_root=path.parent / "backups", migrations=migrations, read_only=read_only)  # type: ignore[arg-type]


def test_migrating_backs_up_empties_the_journal_and_says_so(older: Path) -> None:
    with _opened(older, colour) as book:
        assert book.notices() == (
            "This book was made by an earlier Afterdraft and has been brought up to date. A backup was made first. "
            "Edits from before cannot be taken back any more.",
        )
        assert book.edits().undo is None
        (backup,) = in_folder(book.backup_folder)
        write_note(book, "New.")
        assert undo(book) == "Loose note"
        assert [note.text for note in book.notes()] == ["Kept."]
        assert book.check() == ()
    assert backup.why == "before migration"
    with open_book(backup.path, backups=older.parent / "other") as before:
        assert [note.text for note in before.notes()] == ["Kept."]
        assert before.edits().undo
    with _opened(older, colour) as again:
        assert again.notices() == ()
        assert len(in_folder(again.backup_folder)) == 1


@pytest.mark.parametrize("faulty", [fails, orphans])
def test_a_migration_that_fails_leaves_the_book_as_it_was(older: Path, faulty: object) -> None:
    with pytest.raises(Exception, match=r"as it happens|not there"):
        _opened(older, faulty)
    with _opened(older) as book:
        assert [note.text for note in book.notes()] == ["Kept."]
        assert book.edits().undo
        assert book.check() == ()


def test_a_book_opened_for_reading_only_is_not_migrated(older: Path) -> None:
    before = older.read_bytes()
    with pytest.raises(CannotWrite, match="earlier Afterdraft"):
        _opened(older, colour, read_only=True)
    assert older.read_bytes() == before


def test_a_migrated_book_is_newer_to_the_program_before(older: Path) -> None:
    _opened(older, colour).close()
    with pytest.raises(NewerBook):
        _opened(older)


def test_there_is_a_specimen_of_every_form() -> None:
    assert sorted(path.name for path in SPECIMENS.glob("*.afterdraft")) == [
        f"form-{n}.afterdraft" for n in range(1, len(MIGRATIONS) + 1)
    ]


@pytest.mark.parametrize("form", range(1, len(MIGRATIONS) + 1))
def test_the_specimen_opens_and_is_whole(tmp_path: Path, form: int) -> None:
    file = Path(shutil.copy(SPECIMENS / f"form-{form}.afterdraft", tmp_path))
    with closing(sqlite3.connect(file)) as db:
        assert db.execute("PRAGMA user_version").fetchone() == (form,)
    with open_book(file, backups=tmp_path / "backups") as book:
        assert book.check() == ()
        (draft,) = book.drafts()
        assert book.source(draft.id) == sample.draft().source
        assert book.originals(draft.id) == (sample.ORIGINAL,)
        assert {card.summary for card in book.cards(draft.id).values()} == {"Ottla comes early.", "Rain.", ""}
        assert [note.text for note in book.notes()] == ["Which step?", "Late for what?"]
        assert [note.anchor.quote for note in book.notes() if note.anchor] == ["Door"]
        assert len(book.search("ferry")) == 2
        if form == len(MIGRATIONS):
            assert [undo(book) for _ in range(5)] == [
                "Split a scene at “‘Door,’ said the keeper, and the door stayed as…”",
                "Note on a passage of “The ferry wasn’t late; Ottla Brenn was early…”",
                "Loose note",
                "Summary of “It rained on the well-known pier at…”",
                "Summary of “The ferry wasn’t late; Ottla Brenn was early…”",
            ]
