"""What is written is read back, in every form: any text, numbers, many columns."""

import csv
import io

import pytest
from docx import Document
from hypothesis import example, given, settings
from hypothesis import strategies as st
from openpyxl import load_workbook

from afterdraft.desk.table import Row
from afterdraft.errors import NotPossible
from afterdraft.formats.tables.read import read
from afterdraft.formats.tables.write import WRITERS, write

# Without invisible control characters, which the program leaves out of every text it reads.
TEXTS = st.text(st.characters(exclude_categories=("Cs", "Cc", "Cn"), include_characters="\n\t"), max_size=60)
HARD = (
    "=1+1",
    "+4 — she counts",
    "- a dash begins it",
    "@home",
    "'=quoted",
    "'tis",
    'She said "no", twice; then: yes',
    "two\nlines\n",
    "\n",
    "  spaces  ",
    "\ttab",
    "_x0041_ and _x005F_",
    "🌊 naïve Zoë",
    "שלום עולם",
    "مرحبا",
    "012",
    "1e5",
    "2026-03-04",
    "TRUE",
    "#REF!",
    "a" * 32_767,
    "sep=;",
)
FORMS = sorted(WRITERS)


def texts(rows: list[Row], form: str) -> list[tuple[str, ...]]:
    """Written and read again; blank cells at the end of each row given back."""
    (sheet,) = read(write(rows, form), f"list.{form}")
    width = len(rows[0])
    return [row + ("",) * (width - len(row)) for row in sheet.rows]


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("text", HARD, ids=lambda text: repr(text[:12]))
def test_a_hard_text(form: str, text: str) -> None:
    rows: list[Row] = [("Code", "Summary", "Words"), ("K42", text, 1204)]
    assert texts(rows, form) == [("Code", "Summary", "Words"), ("K42", text, "1204")]


@pytest.mark.parametrize("form", FORMS)
@settings(max_examples=40, deadline=None)
@given(rows=st.lists(st.tuples(TEXTS, TEXTS), min_size=1, max_size=5))
@example(rows=[("\ufeff", "x")])
def test_any_text(form: str, rows: list[tuple[str, str]]) -> None:
    table: list[Row] = [("Code", "Summary", "Leaves with"), *((f"K{n}", *row) for n, row in enumerate(rows))]
    wanted = [tuple(map(str, row)) for row in table]
    if form == "csv":  # a mark of the encoding is none of the text
        wanted = [tuple(cell.replace("\ufeff", "") for cell in row) for row in wanted]
    assert texts(table, form) == wanted


def test_numbers_are_numbers_and_texts_are_texts_in_a_spreadsheet() -> None:
    """As openpyxl tells of the file: nothing in it is a formula."""
    data = write([("Code", "Summary", "Words"), ("K42", "=SUM(A1:A9)", 1204)], "xlsx", title="The Sluice-Keeper")
    sheet = load_workbook(io.BytesIO(data)).worksheets[0]
    assert [cell.data_type for cell in sheet[2]] == ["s", "s", "n"]
    assert [cell.value for cell in sheet[2]] == ["K42", "=SUM(A1:A9)", 1204]
    assert sheet["B2"].quotePrefix


def test_a_csv_is_as_rfc_4180_has_it_and_runs_nothing() -> None:
    """RFC 4180 by Python's csv module; no cell begins as a formula does (OWASP, "CSV injection")."""
    data = write([("Code", "Summary"), ("K42", '=cmd "x"'), ("K43", "two\nlines")], "csv")
    assert data.startswith(b"\xef\xbb\xbfCode,Summary\r\n")
    rows = list(csv.reader(io.StringIO(data.decode("utf-8-sig"), newline=""), strict=True))
    assert rows == [["Code", "Summary"], ["K42", '\'=cmd "x"'], ["K43", "two\nlines"]]


def test_a_document_holds_one_table_with_its_first_row_on_every_page() -> None:
    """As python-docx reads it."""
    document = Document(io.BytesIO(write([("Code", "Summary"), ("K42", "Rain.")], "docx", title="The Sluice-Keeper")))
    (table,) = document.tables
    assert [[cell.text for cell in row.cells] for row in table.rows] == [["Code", "Summary"], ["K42", "Rain."]]
    assert "tblHeader" in table.rows[0]._tr.xml
    assert "tblHeader" not in table.rows[1]._tr.xml
    assert document.core_properties.title == "The Sluice-Keeper"


def test_a_text_too_long_for_a_spreadsheets_cell_is_refused_not_cut() -> None:
    rows: list[Row] = [("Summary",), ("a" * 32_768,)]
    with pytest.raises(NotPossible, match=r"32,767 characters.*\.csv or \.docx"):
        write(rows, "xlsx")
    assert texts(rows, "csv") == texts(rows, "docx") == [("Summary",), ("a" * 32_768,)]


def test_another_form_is_refused() -> None:
    with pytest.raises(NotPossible, match="xlsx"):
        write([("Code",)], "ods")
