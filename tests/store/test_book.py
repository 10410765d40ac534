"""What went into a book comes out of it, also after it was closed and opened again."""

import hashlib
import sqlite3
from dataclasses import replace
from pathlib import Path

import pytest

from afterdraft.errors import CannotWrite, Missing
from afterdraft.store.book import BookFile
from afterdraft.store.opening import open_book
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.ports import Desk
from tests.store import sample


def test_the_draft_comes_out_as_it_went_in(book: BookFile, draft: str) -> None:
    given = sample.draft()
    assert book.source(draft) == given.source
    assert book.blocks(draft, 3, 5) == given.source.blocks[3:5]
    assert book.asides(draft, 3, 4) == given.source.asides
    assert book.asides(draft, 4, 12) == ()
    assert book.doubts(draft) == given.doubts
    assert book.originals(draft) == (sample.ORIGINAL,)


def test_words_are_counted_a_paragraph_and_over_the_story(book: BookFile, draft: str) -> None:
    # counted by hand in sample.LINES: white-space tokens with a letter or digit
    assert book.words(draft) == (2, 2, 3, 14, 11, 0, 11, 3, 1, 9, 9, 7)
    assert book.drafts()[0].words == 14 + 11 + 11 + 3 + 9 + 9


def test_the_facts_say_what_is_there(book: BookFile, draft: str) -> None:
    facts = book.facts()
    assert (facts.title, facts.author, facts.path) == ("The Sluice-Keeper", "V. Amsel", book.path)
    assert facts.draft == book.drafts()[0]
    assert facts.draft is not None
    assert (facts.draft.number, facts.draft.files, facts.draft.scenes, facts.draft.written) == (
        1,
        ("sluice.txt",),
        3,
        0,
    )
    first = next(iter(book.cards(draft).values()))
    book.edit(
        "Summary", lambda desk: desk.set_field("card", first.id, "summary", "She is early.", client="a", sequence=1)
    )
    assert book.drafts()[0].written == 1


def test_the_division_gets_ids_and_codes_of_its_own(book: BookFile, draft: str) -> None:
    given, kept = sample.draft().division, book.division(draft)
    assert kept.roles == given.roles
    assert [replace(scene, id="", code="") for scene in kept.scenes] == [replace(s, id="") for s in given.scenes]
    assert [replace(one, id="", part=None) for one in kept.chapters] == [
        replace(one, id="", part=None) for one in given.chapters
    ]
    assert {chapter.part for chapter in kept.chapters} == {kept.parts[0].id}
    ids = [unit.id for units in (kept.parts, kept.chapters, kept.scenes, kept.matter) for unit in units]
    assert len(set(ids)) == len(ids)
    assert not set(ids) & {"part-0", "chapter-0", "scene-0", "matter-0"}
    assert len({scene.code for scene in kept.scenes}) == 3
    assert set(book.cards(draft)) == {scene.id for scene in kept.scenes}


def test_first_words_are_cut_at_a_word(tmp_path: Path) -> None:
    book, _ = sample.begun(tmp_path)
    long = " ".join(["lock"] * 60)
    with book:
        other = bring_draft(book, sample.draft((*sample.TEXTS[:3], long, *sample.TEXTS[4:])), [sample.ORIGINAL])
        words = book.first_words(other, [3, 4, 99])
    assert words == {3: " ".join(["lock"] * 24), 4: sample.TEXTS[4]}


def test_all_is_there_again_after_closing(tmp_path: Path) -> None:
    book, draft = sample.begun(tmp_path)
    with book:
        book.set_last_place("F47")
        before = (book.facts(), book.division(draft), book.cards(draft), book.source(draft), book.edits())
    with open_book(tmp_path / "Sluice.afterdraft", backups=tmp_path / "backups") as again:
        assert (again.facts(), again.division(draft), again.cards(draft), again.source(draft), again.edits()) == before
        assert again.last_place() == "F47"
        assert again.check() == ()


def test_a_closed_book_is_one_file_that_can_be_copied(tmp_path: Path) -> None:
    book, draft = sample.begun(tmp_path)
    book.edit("Note", lambda desk: desk.add_note(text="Check the steps.", scene=None))
    assert Path(f"{book.path}-wal").exists()
    book.close()
    assert [path.name for path in tmp_path.iterdir() if path.is_file()] == ["Sluice.afterdraft"]
    copy = tmp_path / "copy.afterdraft"
    copy.write_bytes(Path(book.path).read_bytes())
    with open_book(copy, backups=tmp_path / "backups") as copied:
        assert [note.text for note in copied.notes()] == ["Check the steps."]
        assert copied.words(draft)


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE text_paragraph SET text = 'x' WHERE n = 3",
        "DELETE FROM text_paragraph WHERE n = 3",
        "UPDATE text_file SET bytes = x'00'",
        "DELETE FROM text_draft",
    ],
)
def test_a_draft_never_changes(book: BookFile, draft: str, statement: str) -> None:
    with pytest.raises(sqlite3.IntegrityError, match="never changes"):
        book._write(lambda db, _: db.execute(statement))
    assert book.source(draft) == sample.draft().source


def test_an_edit_that_fails_leaves_nothing(book: BookFile, draft: str) -> None:
    before = sample.desk_dump(book), book.edits()

    def half(desk: Desk) -> None:
        desk.add_note(text="Half done.", scene=None)
        raise Missing("The rest")

    with pytest.raises(Missing, match="The rest"):
        book.edit("Half", half)
    assert (sample.desk_dump(book), book.edits()) == before


def test_a_book_opened_for_reading_only_is_left_as_it_is(tmp_path: Path) -> None:
    book, draft = sample.begun(tmp_path)
    book.close()
    file = Path(book.path)
    before = hashlib.sha256(file.read_bytes()).hexdigest()
    with open_book(file, backups=tmp_path / "backups", read_only=True) as reading:
        assert reading.words(draft)
        with pytest.raises(CannotWrite, match="reading only"):
            reading.edit("Note", lambda desk: desk.add_note(text="No.", scene=None))
    assert hashlib.sha256(file.read_bytes()).hexdigest() == before


def test_notes_by_scene_and_loose_in_the_order_they_were_made(book: BookFile, draft: str) -> None:
    scene = book.division(draft).scenes[0].id
    write_note(book, "first")
    write_note(book, "second", scene=scene)
    write_note(book, "third")
    assert [note.text for note in book.notes()] == ["first", "second", "third"]
    assert [note.text for note in book.notes(scene=scene)] == ["second"]
    assert [note.text for note in book.notes(loose=True)] == ["first", "third"]


def test_the_writing_connection_is_as_safe_as_it_can_be(book: BookFile) -> None:
    """sqlite.org/pragma.html: synchronous 2 is FULL, which in WAL mode syncs the log at every commit."""

    def settings(db: sqlite3.Connection) -> dict[str, object]:
        names = ("synchronous", "journal_mode", "foreign_keys", "recursive_triggers", "wal_autocheckpoint")
        return {name: db.execute(f"PRAGMA {name}").fetchone()[0] for name in names}

    assert book._write(lambda db, _: settings(db)) == {
        "synchronous": 2,
        "journal_mode": "wal",
        "foreign_keys": 1,
        "recursive_triggers": 1,
        "wal_autocheckpoint": 0,
    }
