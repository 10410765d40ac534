"""Undo and redo restore the writer's half exactly, in every order, across restarts."""

import re
from collections.abc import Callable
from pathlib import Path

import pytest

import afterdraft
from afterdraft.errors import NothingToUndo
from afterdraft.store.book import BookFile
from afterdraft.store.desk import OpenDesk
from afterdraft.store.journal import MERGE_SECONDS, Journal
from afterdraft.store.opening import open_book
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.notes.change_note import rewrite_note, set_note_state
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.ports import Desk
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.make_chapter import make_chapter, unmake_chapter, unmake_part
from afterdraft.work.split.mark_break import mark_break, unmark_break
from afterdraft.work.split.mark_matter import mark_matter, unmark_matter
from afterdraft.work.split.retitle import retitle_book, retitle_chapter, retitle_part, retitle_scene
from afterdraft.work.split.settle_doubt import settle_doubt
from afterdraft.work.split.split_scene import split_scene
from afterdraft.work.write_field import write_field
from tests.store import sample
from tests.store.sample import desk_dump, redo, undo

Step = Callable[[BookFile, str], object]


def _summary(book: BookFile, draft: str, place: int, text: str) -> None:
    card = book.cards(draft)[book.division(draft).scenes[place].id]
    write_field(book, "card", card.id, "summary", text, revision=card.revision, client="w", sequence=1, done=True)


TWENTY: tuple[Step, ...] = (
    lambda book, draft: _summary(book, draft, 0, "Ottla is early; it’s 'held' against the ferry."),
    lambda book, draft: _summary(book, draft, 1, "Rain."),
    lambda book, draft: write_note(book, "Whose ferry?", scene=book.division(draft).scenes[1].id),
    lambda book, draft: write_note(book, "Three steps or four?"),
    lambda book, draft: split_scene(book, draft, 4),
    lambda book, draft: _summary(book, draft, 1, "The door."),
    lambda book, draft: join_scenes(book, book.division(draft).scenes[2].id),
    lambda book, draft: retitle_scene(book, book.division(draft).scenes[0].id, "The ferry"),
    lambda book, draft: settle_doubt(book, draft, 8),
    lambda book, draft: retitle_chapter(book, draft, book.division(draft).chapters[1].id, "Noon"),
    lambda book, draft: make_chapter(book, draft, 10),
    lambda book, draft: retitle_book(book, "The Third Step"),
    lambda book, draft: retitle_part(book, draft, book.division(draft).parts[0].id, "Part the first"),
    lambda book, draft: rewrite_note(book, book.notes()[1].id, "Four steps.", revision=book.notes()[1].revision),
    lambda book, draft: set_note_state(book, book.notes()[0].id, "done"),
    lambda book, draft: unmake_chapter(book, draft, book.division(draft).chapters[2].id),
    lambda book, draft: mark_matter(book, draft, 10, 11, where="back"),
    lambda book, draft: unmark_matter(book, draft, book.division(draft).matter[-1].id),
    lambda book, draft: unmake_part(book, draft, book.division(draft).parts[0].id),
    lambda book, draft: unmark_break(book, draft, 5),
    lambda book, draft: mark_break(book, draft, 7),
)


def test_twenty_mixed_edits_back_and_forth(book: BookFile, draft: str) -> None:
    states = [desk_dump(book)]
    for step in TWENTY:
        step(book, draft)
        states.append(desk_dump(book))
        assert states[-1] != states[-2]
    assert book.check() == ()
    names = [undo(book) for _ in TWENTY]
    assert desk_dump(book) == states[0]
    assert book.check() == ()
    assert [redo(book) for _ in TWENTY] == names[::-1]
    assert desk_dump(book) == states[-1]
    for state in states[-2::-1]:
        undo(book)
        assert desk_dump(book) == state
    assert book.check() == ()


def test_undo_goes_on_after_a_restart(tmp_path: Path) -> None:
    book, draft = sample.begun(tmp_path)
    states = [desk_dump(book)]
    for step in TWENTY[:8]:
        step(book, draft)
        states.append(desk_dump(book))
        book.close()
        book = open_book(Path(book.path), backups=tmp_path / "backups")
    with book:
        for state in states[-2::-1]:
            undo(book)
            assert desk_dump(book) == state
        top = book.edits().redo
    with open_book(Path(book.path), backups=tmp_path / "backups") as again:
        assert again.edits().redo == top
        redo(again)
        assert desk_dump(again) == states[1]


def test_undoing_an_import_hides_the_draft_and_keeps_its_text(book: BookFile, draft: str) -> None:
    second = bring_draft(book, sample.draft(), [sample.ORIGINAL])
    assert [facts.number for facts in book.drafts()] == [1, 2]
    assert undo(book) == "Bring in draft 2"
    assert [facts.id for facts in book.drafts()] == [draft]
    current = book.facts().draft
    assert current and current.id == draft
    assert book.source(second) == sample.draft().source
    redo(book)
    assert [facts.id for facts in book.drafts()] == [draft, second]
    undo(book)
    assert book.edits().undo is None  # a book begins with its first draft: that is no edit
    assert book.check() == ()


def test_a_number_that_is_not_on_top_is_refused_and_the_top_named(book: BookFile, draft: str) -> None:
    _summary(book, draft, 0, "One.")
    stale = book.edits().undo
    write_note(book, "Two.")
    before = desk_dump(book)
    assert stale
    with pytest.raises(NothingToUndo, match="The latest edit is now “Loose note”"):
        book.undo(stale.number)
    with pytest.raises(NothingToUndo):
        book.redo(stale.number)
    assert desk_dump(book) == before


def test_numbers_are_never_given_twice(book: BookFile) -> None:
    write_note(book, "One.")
    taken_back = book.edits().undo
    undo(book)
    write_note(book, "Two.")
    now = book.edits().undo
    assert taken_back and now and now.number > taken_back.number
    with pytest.raises(NothingToUndo):
        book.undo(taken_back.number)


def test_a_new_edit_clears_redo_and_one_that_changes_nothing_does_not(book: BookFile, draft: str) -> None:
    write_note(book, "One.")
    undo(book)
    before = book.edits()
    assert before.redo
    _summary(book, draft, 0, "")
    assert book.edits() == before
    _summary(book, draft, 0, "Now.")
    assert book.edits().redo is None


def test_what_was_never_there_cannot_be_undone(book: BookFile) -> None:
    assert book.edits().undo is None
    with pytest.raises(NothingToUndo, match="nothing there any more"):
        book.undo(1)


def _typed(book: BookFile, card: str, text: str, sequence: int, *, done: bool = False, client: str = "w") -> None:
    revision = book.card(card).revision
    write_field(book, "card", card, "summary", text, revision=revision, client=client, sequence=sequence, done=done)


def test_typing_in_one_field_is_one_edit_until_it_is_left(book: BookFile, draft: str) -> None:
    card = next(iter(book.cards(draft).values())).id
    for sequence, text in enumerate(("O", "Ot", "Ottla"), start=1):
        _typed(book, card, text, sequence)
    first = book.edits().undo
    _typed(book, card, "Ottla is early", 4, done=True)
    assert book.edits().undo == first
    _typed(book, card, "Ottla is early.", 5)
    undo(book)
    assert book.card(card).summary == "Ottla is early"
    undo(book)
    assert book.card(card).summary == ""
    redo(book)
    assert book.card(card).summary == "Ottla is early"


def test_another_edit_between_ends_the_merging(book: BookFile, draft: str) -> None:
    card = next(iter(book.cards(draft).values())).id
    _typed(book, card, "One", 1)
    write_note(book, "Between.")
    _typed(book, card, "One two", 2)
    assert [undo(book) for _ in range(3)] == [
        "Summary of “The ferry wasn’t late; Ottla Brenn was early…”",
        "Loose note",
        "Summary of “The ferry wasn’t late; Ottla Brenn was early…”",
    ]


def test_undo_ends_the_merging(book: BookFile, draft: str) -> None:
    card = next(iter(book.cards(draft).values())).id
    _typed(book, card, "One", 1)
    undo(book)
    redo(book)
    _typed(book, card, "One two", 2)
    undo(book)
    assert book.card(card).summary == "One"


def test_a_pause_ends_the_merging(book: BookFile, draft: str) -> None:
    card = next(iter(book.cards(draft).values())).id
    moment = [100.0]

    def with_clock(journal: Journal) -> None:
        journal._clock = lambda: moment[0]

    book._write(lambda _, journal: with_clock(journal))
    _typed(book, card, "One", 1)
    moment[0] += MERGE_SECONDS
    _typed(book, card, "One two", 2)
    moment[0] += MERGE_SECONDS + 0.01
    _typed(book, card, "One two three", 3)
    undo(book)
    assert book.card(card).summary == "One two"
    undo(book)
    assert book.card(card).summary == ""


def test_typing_is_logged_once_a_row(book: BookFile, draft: str) -> None:
    card = next(iter(book.cards(draft).values())).id
    for sequence in range(1, 30):
        _typed(book, card, "word " * sequence, sequence)
    top = book.edits().undo
    assert top
    with book._reading() as db:
        logged = db.execute("SELECT count(*) FROM undo_change WHERE step = ?", (top.number,)).fetchone()[0]
    assert logged == 1


def test_revisions_never_run_backwards(book: BookFile, draft: str) -> None:
    card = next(iter(book.cards(draft).values())).id
    seen = [book.card(card).revision]
    for act in (lambda: _typed(book, card, "One", 1), lambda: undo(book), lambda: redo(book), lambda: undo(book)):
        act()
        seen.append(book.card(card).revision)
    assert seen == sorted(set(seen))


def test_no_edit_is_ever_too_old_to_be_taken_back(book: BookFile) -> None:
    write_note(book, "The first of all.")
    fill = """
        WITH RECURSIVE n (i) AS (SELECT 100 UNION ALL SELECT i + 1 FROM n WHERE i < 10000)
        INSERT INTO undo_step (number, name) SELECT i, 'Filled' FROM n
    """
    book._write(lambda db, _: db.execute(fill))
    write_note(book, "Last.")
    assert undo(book) == "Loose note"
    assert {book.undo(number).name for number in range(10_000, 99, -1)} == {"Filled"}
    assert undo(book) == "Loose note"
    assert book.notes() == ()


def test_a_new_edit_forgets_what_was_taken_back(book: BookFile) -> None:
    for n in range(3):
        write_note(book, f"Note {n}")
    undo(book)
    undo(book)
    write_note(book, "Another way.")
    orphans = "SELECT count(*) FROM undo_change WHERE step NOT IN (SELECT number FROM undo_step)"
    with book._reading() as db:
        assert db.execute("SELECT count(*) FROM undo_step").fetchone() == (2,)
        assert db.execute(orphans).fetchone() == (0,)


def test_every_table_of_the_writers_half_is_journaled(book: BookFile) -> None:
    with book._reading() as db:
        tables = {
            name for (name,) in db.execute("SELECT name FROM sqlite_schema WHERE name GLOB 'desk_*' AND type = 'table'")
        }
    triggers = book._write(
        lambda db, _: {name for (name,) in db.execute("SELECT name FROM sqlite_temp_schema WHERE type = 'trigger'")}
    )
    assert triggers == {f"journal_{table}_{act}" for table in tables for act in ("insert", "update", "delete")}


def test_replacing_rows_is_forbidden() -> None:
    """It deletes rows without firing their triggers' proper partners, which corrupts search and undo."""
    sources = Path(afterdraft.__file__).parent.rglob("*.py")
    offending = [
        path.name for path in sources if re.search(r"(?i)\breplace\s+into\b|or\s+replace\b", path.read_text("utf-8"))
    ]
    assert offending == []


def test_a_row_whose_key_changes_is_taken_back(book: BookFile, draft: str) -> None:
    """Who is in a scene is kept by scene and person; scenes are joined, and the row goes along."""
    scenes = [scene.id for scene in book.division(draft).scenes]

    def begin(desk: Desk) -> None:
        run = _run(desk)
        run("INSERT INTO desk_person (id, place, name) VALUES ('pe1', 'h', 'Ottla')")
        run("INSERT INTO desk_presence VALUES (?, 'pe1', 'mentioned')", scenes[0])

    def change(desk: Desk) -> None:
        run = _run(desk)
        for scene, how in (
            (scenes[0], "on page"),
            (scenes[1], "on page"),
            (scenes[1], "viewpoint"),
            (scenes[2], "on page"),
        ):
            run("UPDATE desk_presence SET scene = ?, how = ?", scene, how)

    book.edit("Who is there", begin)
    before = desk_dump(book)
    book.edit("Elsewhere", change)
    after = desk_dump(book)
    assert before["desk_presence"] != after["desk_presence"]
    for _ in range(2):
        undo(book)
        assert desk_dump(book) == before
        redo(book)
        assert desk_dump(book) == after


def _run(desk: Desk) -> Callable[..., object]:
    assert isinstance(desk, OpenDesk)
    db = desk._db
    return lambda statement, *given: db.execute(statement, given)
