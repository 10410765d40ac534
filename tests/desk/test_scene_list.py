"""Scene lists as writers keep them: what their columns are, what their rows hold. The lists are invented."""

import pytest

from afterdraft.desk.scene_list import KINDS, Kind, guessed, head, listed, names, table
from afterdraft.desk.table import Sheet


def sheet(*rows: tuple[str, ...]) -> Sheet:
    return Sheet("Scenes", rows)


ODD = sheet(
    ("The Weir Keeper — scenes",),
    ("last touched in spring",),
    ("Scene", "", "POV", "Summary", "Remarks"),
    ("No.", "Title"),
    ("CHAPTER ONE",),
    ("1", "The eel man", "Bastian", "A man comes about eels.", "funny?"),
    ("2", "", "Bastian", "It rains."),
    ("Chapter 2: High Water",),
    ("3", "Gone", "", "The gauge is gone."),
)


def test_the_row_of_names_is_found_below_title_rows_and_merged_ones_are_put_together() -> None:
    assert head(ODD) == 3
    assert head(sheet(*ODD.rows[:3], *ODD.rows[4:])) == 2
    assert head(sheet(("1", "It rains."), ("2", "It pours."))) is None
    assert head(sheet(("Summary",), ("It rains.",))) == 0
    assert names(ODD, 2) == ("Scene", "Column B", "POV", "Summary", "Remarks")
    assert names(ODD, 3) == ("No.", "Title", "POV", "Summary", "Remarks")
    assert names(sheet(("x",) * 28), None)[-1] == "Column AB"


@pytest.mark.parametrize(
    ("named", "kinds"),
    [
        (("Code", "Part", "Chapter", "Number", "Title"), ("code", "", "chapter", "number", "title")),
        (("First words", "Summary", "Comes in with"), ("first words", "summary", "comes_in")),
        (("Leaves with", "Needed for", "Words"), ("leaves", "needed_for", "")),
        (("Viewpoint", "People", "Place", "Intent", "Next: people"), ("viewpoint", "people", "place", "", "")),
        (("SCENE #", "P.O.V.", "POV", "Setting:", "What happens?"), ("number", "", "viewpoint", "place", "summary")),
        (("Notes", "To do", "Synopsis", "Plot"), ("note", "note", "summary", "")),
    ],
)
def test_what_columns_are_by_their_names(named: tuple[str, ...], kinds: tuple[Kind, ...]) -> None:
    assert guessed(named) == kinds


def test_rows_with_their_chapters() -> None:
    kinds: tuple[Kind, ...] = ("number", "title", "viewpoint", "summary", "note")
    rows = listed(ODD, 3, kinds)
    assert [(row.text("chapter"), row.text("number"), row.text("summary"), row.heading) for row in rows] == [
        ("CHAPTER ONE", "", "", True),
        ("CHAPTER ONE", "1", "A man comes about eels.", False),
        ("CHAPTER ONE", "2", "It rains.", False),
        ("Chapter 2: High Water", "", "", True),
        ("Chapter 2: High Water", "3", "The gauge is gone.", False),
    ]
    assert rows[1].all == (
        *(("No.", "1"), ("Title", "The eel man"), ("POV", "Bastian")),
        *(("Summary", "A man comes about eels."), ("Remarks", "funny?")),
    )


def test_a_chapter_said_once_goes_down_and_titles_of_the_book_are_headings() -> None:
    kinds: tuple[Kind, ...] = ("chapter", "summary", "summary")
    rows = listed(sheet(("1", "It rains.", "Hard."), ("", "It pours."), ("High Water",), ("", "Gone.")), None, kinds)
    assert [row.texts for row in rows] == [
        {"chapter": "1", "summary": "It rains.\nHard."},
        {"chapter": "1", "summary": "It pours."},
        {"chapter": "High Water"},
        {"chapter": "High Water", "summary": "Gone."},
    ]
    titled = listed(sheet(("", "High water"), ("", "Gone.")), None, kinds, chapters=["High Water"])
    assert [row.heading for row in titled] == [True, False]


def test_a_table_leaves_out_columns_without_anything_in_them() -> None:
    assert table([{"code": "K2", "intent": ""}, {"code": "K3", "place": "pier"}])[0][-2:] == ("Words", "Place")
    assert len(table([])[0]) == 11


def test_kinds_begin_with_none() -> None:
    assert KINDS[0] == ""
