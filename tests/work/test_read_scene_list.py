"""A scene list read into the cards: nothing that stands is lost, nothing of the table is lost, one edit."""

from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from afterdraft.desk.scene_list import guessed, head, listed, names
from afterdraft.desk.table import Sheet
from afterdraft.formats.tables.read import read
from afterdraft.formats.tables.write import write
from afterdraft.store.book import BookFile
from afterdraft.work.cards.outline_table import outline_table
from afterdraft.work.cards.read_scene_list import Stands, TakenIn, Wanted, propose, take_in
from afterdraft.work.cards.set_intent import set_intent
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.cast.mark_setting import mark_setting
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.split.retitle import retitle_scene
from afterdraft.work.write_field import write_once
from tests.store.sample import begun, desk_dump, redo, undo


def sheet(*rows: tuple[str, ...]) -> Sheet:
    return Sheet("Scenes", rows)


def take(book: BookFile, table: Sheet, *, stands: Stands = "keep", note: bool = True) -> TakenIn:
    """Everything as the program proposes it."""
    row = head(table)
    rows = listed(table, row, guessed(names(table, row)))
    wanted = [Wanted(one.row, one.scene, stands, note) for one in propose(book, rows)]
    return take_in(book, wanted, name="list.xlsx")


def summaries(book: BookFile, draft: str) -> list[str]:
    cards = book.cards(draft)
    return [cards[scene.id].summary for scene in book.division(draft).scenes]


LIST = sheet(
    ("Scene", "Title", "POV", "What happens", "Where", "Remarks", "Leaves with"),
    ("1", "Too early", "Ottla Brenn", "The ferry is late, or she is early.", "The pier", "", "a grudge"),
    ("2", "", "", "It rains on the pier.", "The pier", "why Côte-Vieille?", ""),
    ("7", "", "", "Zeppelins come.", "", "", ""),
)


def test_a_list_is_taken_in_and_out_again_by_one_undo(book: BookFile, draft: str) -> None:
    before = desk_dump(book)
    one, two, _ = book.division(draft).scenes
    assert take(book, sheet(*LIST.rows[:3])) == TakenIn(scenes=2, notes=0)
    assert summaries(book, draft) == ["The ferry is late, or she is early.", "It rains on the pier.", ""]
    assert book.cards(draft)[one.id].leaves == "a grudge"
    assert book.division(draft).scenes[0].title == "Too early"
    assert [(person.name) for person in book.known("person")] == ["Ottla Brenn"]
    assert [(one.scene, one.how) for one in book.present(draft)] == [(one.id, "viewpoint")]
    assert [setting.scene for setting in book.settings(draft)] == [one.id, two.id]
    assert [(note.scene, note.text) for note in book.notes()] == [(two.id, "why Côte-Vieille?")]
    after = desk_dump(book)
    assert undo(book) == "Read in “list.xlsx”"
    assert desk_dump(book) == before
    redo(book)
    assert desk_dump(book) == after
    assert take(book, sheet(*LIST.rows[:3])) == TakenIn(0, 0)  # the same again adds nothing
    assert desk_dump(book) == after


def test_a_row_that_meets_nothing_becomes_a_loose_note_or_is_left_out(book: BookFile, draft: str) -> None:
    row = head(LIST)
    rows = listed(LIST, row, guessed(names(LIST, row)))
    chosen = {one.row: None for one in rows}
    wanted = [Wanted(one.row, one.scene) for one in propose(book, rows, chosen=chosen)]
    assert take_in(book, wanted, name="list.xlsx") == TakenIn(scenes=0, notes=3)
    assert book.notes(loose=True)[0].text == (
        "Scene: 1\nTitle: Too early\nPOV: Ottla Brenn\nWhat happens: The ferry is late, or she is early.\n"
        "Where: The pier\nLeaves with: a grudge"
    )
    assert take_in(book, [Wanted(one.row, None, note=False) for one in wanted], name="x") == TakenIn(0, 0)


@pytest.mark.parametrize(
    ("stands", "summary", "title"),
    [
        ("keep", "She waits.", "The ferry"),
        ("both", "She waits.\nThe ferry is late, or she is early.", "The ferry / Too early"),
        ("replace", "The ferry is late, or she is early.", "Too early"),
    ],
)
def test_what_stands_is_kept_unless_she_chooses(
    book: BookFile, draft: str, stands: Stands, summary: str, title: str
) -> None:
    scene = book.division(draft).scenes[0].id
    write_once(book, "card", book.cards(draft)[scene].id, "summary", "She waits.")
    retitle_scene(book, scene, "The ferry")
    rows = listed(LIST, 0, guessed(LIST.rows[0]))
    first = propose(book, rows)[0]
    assert [(one.field, one.stands, one.comes) for one in first.differs] == [
        ("title", "The ferry", "Too early"),
        ("summary", "She waits.", "The ferry is late, or she is early."),
    ]
    take_in(book, [Wanted(first.row, first.scene, stands)], name="x")
    assert (book.cards(draft)[scene].summary, book.division(draft).scenes[0].title) == (summary, title)
    assert book.cards(draft)[scene].leaves == "a grudge"  # nothing stood there


@pytest.mark.parametrize("stands", ["keep", "both", "replace"])
def test_several_rows_of_one_scene_lose_nothing(book: BookFile, draft: str, stands: Stands) -> None:
    code = book.division(draft).scenes[1].code
    take(
        book,
        sheet(("Code", "Summary"), (code, "It rains."), (code, "Nobody minds."), (code, "It rains.")),
        stands=stands,
    )
    assert summaries(book, draft)[1] == "It rains.\nNobody minds."


def test_people_are_found_by_any_name_and_not_taken_out(book: BookFile, draft: str) -> None:
    one = book.division(draft).scenes[0]
    mark_presence(book, [one.id], "Ottla Brenn", "viewpoint")
    person = book.known("person")[0].id
    write_once(book, "person", person, "aliases", "Ottla")
    take(book, sheet(("Code", "Characters"), (one.code, "ottla, The Keeper / Old Amsel")))
    assert [person.name for person in book.known("person")] == ["Ottla Brenn", "The Keeper", "Old Amsel"]
    assert [one.how for one in book.present(draft)] == ["viewpoint", "on page", "on page"]


TEXTS = st.text(st.characters(exclude_categories=("Cs", "Cc", "Cn"), include_characters="\n"), max_size=40)
NAMES = st.sampled_from(["Ottla, Brenn", "A; B", "=HYPERLINK", "'- x", "Zoë & Co / Sons", "שלום"])


@pytest.mark.parametrize("form", ["csv", "docx", "xlsx"])
@settings(max_examples=8, deadline=None)
@given(texts=st.lists(TEXTS, min_size=5, max_size=5), name=NAMES, stands=st.sampled_from(["keep", "both", "replace"]))
def test_a_table_written_and_read_in_changes_nothing(form: str, texts: list[str], name: str, stands: Stands) -> None:
    with TemporaryDirectory() as folder:
        book, draft = begun(Path(folder))
        with book:
            one, two, three = book.division(draft).scenes
            for scene, field, text in zip(
                (one, one, one, two, three),
                ("summary", "comes_in", "leaves", "needed_for", "summary"),
                texts,
                strict=True,
            ):
                write_once(book, "card", book.cards(draft)[scene.id].id, field, text)
            retitle_scene(book, two.id, texts[0])
            mark_presence(book, [one.id, two.id], name, "viewpoint")
            mark_presence(book, [one.id], "The keeper", "on page")
            mark_setting(book, [two.id], name)
            set_intent(book, "", [two.code], "cut")
            write_note(book, "Rain?", scene=one.id)
            before, edits = desk_dump(book), book.edits()
            (table,) = read(write(outline_table(book), form), f"outline.{form}")
            assert take(book, table, stands=stands) == TakenIn(0, 0)
            assert desk_dump(book) == before
            assert book.edits() == edits
