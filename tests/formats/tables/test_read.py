"""Tables as other programs write them, and hostile ones."""

import datetime as dates
import io
import zipfile
from pathlib import Path

import pypandoc
import pytest
from docx import Document
from openpyxl import Workbook
from openpyxl.worksheet.worksheet import Worksheet

from afterdraft.desk.table import Row
from afterdraft.errors import LockedFile, UnreadableManuscript, UnreadableTable
from afterdraft.formats.tables import limits
from afterdraft.formats.tables.read import read
from afterdraft.formats.tables.write import write

NOON = dates.datetime(2026, 3, 4, 12, 30)  # noqa: DTZ001 — spreadsheets know no zones
MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
HEAD = ("Nr", "Titel", "Was geschieht")
LIST = (HEAD, ("1", "Die Fähre", "Sie kommt zu früh; niemand wartet."), ("2", "", "„Regen“"))


def book(*rows: tuple[object, ...]) -> tuple[Workbook, Worksheet]:
    made = Workbook()
    sheet = made.active
    assert isinstance(sheet, Worksheet)
    for row in rows:
        sheet.append(list(row))
    return made, sheet


def saved(made: Workbook) -> bytes:
    out = io.BytesIO()
    made.save(out)
    return out.getvalue()


def with_part(data: bytes, part: str, content: bytes) -> bytes:
    """A package with one part of it put in the place of another."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in dict.fromkeys([*old.namelist(), part]):
            new.writestr(name, content if name == part else old.read(name))
    return out.getvalue()


@pytest.mark.parametrize("separator", [",", ";", "\t", "|"], ids=["comma", "semicolon", "tab", "bar"])
@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_separators_and_encodings_are_told_by_content(separator: str, encoding: str) -> None:
    quoted = "\r\n".join(separator.join(f'"{cell}"' for cell in row) for row in LIST)
    (sheet,) = read(quoted.encode(encoding), "Szenen.csv")
    assert (sheet.name, sheet.rows) == ("Szenen", LIST)


@pytest.mark.parametrize(
    ("text", "rows"),
    [
        ("a;b\n1,5;2\n2,5;3\n", (("a", "b"), ("1,5", "2"), ("2,5", "3"))),  # commas are decimal here
        ("sep=|\na|b,c\n", (("a", "b,c"),)),
        ("only\none\ncolumn, with a comma\n", (("only",), ("one",), ("column", " with a comma"))),
        ("a,b\n\n,\n\nc,d\n", (("a", "b"), ("c", "d"))),
        ('a,"two\r\nlines, ""quoted"""\n', (("a", 'two\nlines, "quoted"'),)),
        ('a,b\rc,d"e\r', (("a", "b"), ("c", 'd"e'))),
        ("'=1,''@x\n", (("=1", "'@x"),)),
    ],
)
def test_texts_with_separators(text: str, rows: tuple[tuple[str, ...], ...]) -> None:
    assert read(text.encode(), "list.csv")[0].rows == rows


def test_values_of_a_spreadsheet_as_they_are_seen() -> None:
    made, sheet = book(
        ("text", 12, 12.0, 0.1, True, dates.date(2026, 3, 4), NOON, dates.time(9, 5)),
        (None, "  ", None),
        ("=1+1", "#N/A"),
    )
    sheet.merge_cells("A5:C5")
    sheet["A5"] = "CHAPTER ONE"
    sheet.column_dimensions["B"].hidden = True
    sheet.row_dimensions[1].hidden = True
    (read_back,) = read(saved(made), "list.xlsx")
    assert read_back.rows == (
        ("text", "12", "12", "0.1", "TRUE", "2026-03-04", "2026-03-04 12:30", "09:05"),
        ("", "#N/A"),  # nobody has computed the formula yet
        ("CHAPTER ONE",),
    )


def test_the_value_of_a_formula_is_the_one_last_computed() -> None:
    made, _ = book(("x",))
    cell = '<c r="A1"><f>1+1</f><v>2</v></c>'
    row = f'<worksheet xmlns="{MAIN}"><sheetData><row r="1">{cell}</row></sheetData></worksheet>'
    data = with_part(saved(made), "xl/worksheets/sheet1.xml", row.encode())
    assert read(data, "list.xlsx")[0].rows == (("2",),)


def test_several_sheets_and_empty_ones() -> None:
    made, _ = book()
    made.create_sheet("Scenes").append(["a", "b"])
    made.create_sheet("People").append(["c"])
    assert [(sheet.name, sheet.rows) for sheet in read(saved(made), "x.xlsx")] == [
        ("Scenes", (("a", "b"),)),
        ("People", (("c",),)),
    ]


def test_tables_of_a_document_with_merged_cells_and_one_in_another() -> None:
    document = Document()
    document.add_paragraph("Scenes")
    table = document.add_table(3, 3)
    table.cell(0, 0).merge(table.cell(0, 2)).text = "Part One"
    table.cell(1, 0).merge(table.cell(2, 0)).text = "1"
    table.cell(1, 1).text = "two\nlines"
    table.cell(2, 2).add_table(1, 1).cell(0, 0).text = "inner"
    out = io.BytesIO()
    document.save(out)
    assert read(out.getvalue(), "list.docx")[0].rows == (("Part One",), ("1", "two\nlines"), ("", "", "\ninner\n"))


@pytest.mark.slow
def test_a_table_that_pandoc_made_of_our_csv(tmp_path: Path) -> None:
    """Pandoc reads RFC 4180, and writes documents of another make than ours."""
    rows: list[Row] = [("Code", "Summary", "Words"), ("K42", "Rain, and “naïve”", 1204), ("K43", 'She "sings"', 3)]
    target = tmp_path / "list.docx"
    pypandoc.convert_text(write(rows, "csv").decode("utf-8-sig"), "docx", format="csv", outputfile=str(target))
    assert read(target.read_bytes(), "list.docx")[0].rows == tuple(tuple(map(str, row)) for row in rows)


@pytest.mark.parametrize(
    ("name", "data", "told"),
    [
        ("list.csv", b"", "it is empty"),
        ("list.csv", b" \n ,, \n", "there is no table in it"),
        ("list.xls", bytes.fromhex("d0cf11e0a1b11ae1") + bytes(600), "older kind"),
        ("list.pdf", b"%PDF-1.7", "only .xlsx, .csv, .docx"),
        ("list.xlsx", b"PK\x03\x04 and no more", "cut short or damaged"),
        ("list.csv", b'a,"' + b"x" * 200_000, "cannot be told apart"),
        ("list.csv", b"a,b\n" * 5_001, "more than 5,000 rows"),
        ("list.csv", b",".join([b"x"] * 101), "more than 100 columns"),
        ("list.csv", (b"x" * 100_000 + b"\n") * 16, "more text than a scene list"),
    ],
)
def test_what_cannot_be_read_is_told(name: str, data: bytes, told: str) -> None:
    with pytest.raises(UnreadableTable, match=told) as refusal:
        read(data, name)
    assert "Nothing was changed." in str(refusal.value)


def test_a_locked_one_and_one_without_tables() -> None:
    locked = bytes.fromhex("d0cf11e0a1b11ae1") + "EncryptedPackage".encode("utf-16-le")
    with pytest.raises(LockedFile):
        read(locked, "list.xlsx")
    out = io.BytesIO()
    Document().save(out)
    with pytest.raises(UnreadableTable, match="no table"):
        read(out.getvalue(), "list.docx")
    with zipfile.ZipFile(out := io.BytesIO(), "w") as archive:
        archive.writestr("content.xml", "<x/>")
    with pytest.raises(UnreadableTable, match=r"only \.xlsx"):
        read(out.getvalue(), "list.ods")


def test_a_million_blank_rows_and_a_cell_far_away_are_read_at_once() -> None:
    made, sheet = book(("a", "b"))
    sheet["A1048576"] = "last"
    assert read(saved(made), "x.xlsx")[0].rows == (("a", "b"), ("last",))
    sheet["XFD3"] = "far"
    assert read(saved(made), "x.xlsx")[0].rows == (("a", "b"), ("last",))  # columns beyond the limit


def test_sizes_that_a_file_states_are_not_believed() -> None:
    made, _ = book(("a", "b"))
    data = saved(made)
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        sheet = archive.read("xl/worksheets/sheet1.xml")
    data = with_part(data, "xl/worksheets/sheet1.xml", sheet.replace(b'ref="A1:B1"', b'ref="A1:XFD1048576"'))
    assert read(data, "x.xlsx")[0].rows == (("a", "b"),)


BOMB = (
    b'<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">'
    b'<!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;">]>'
)


@pytest.mark.parametrize("encoding", ["utf-8", "utf-16"])
@pytest.mark.parametrize(
    "part", ["xl/worksheets/sheet1.xml", "xl/sharedStrings.xml", "xl/styles.xml", "[Content_Types].xml"]
)
def test_declarations_are_refused_in_whatever_part(part: str, encoding: str) -> None:
    made, _ = book(("a", "b"))
    text = (
        BOMB.decode().replace('"1.0"', f'"1.0" encoding="{encoding}"')
        + f'<sst xmlns="{MAIN}"><si><t>&c;</t></si></sst>'
    )
    with pytest.raises(UnreadableTable, match="declarations"):
        read(with_part(saved(made), part, text.encode(encoding)), "x.xlsx")


def test_an_archive_made_to_fill_memory_is_refused() -> None:
    made, _ = book(("a", "b"))
    with pytest.raises(UnreadableTable, match="unpack to"):
        read(with_part(saved(made), "xl/worksheets/sheet1.xml", b" " * (600 << 20)), "x.xlsx")


@pytest.mark.parametrize("part", ["xl/workbook.xml", "xl/worksheets/sheet1.xml", "xl/_rels/workbook.xml.rels"])
@pytest.mark.parametrize("content", [b"", b"<x", b"<x/>", b'<x xmlns="y"><z r="A0"/></x>', b"\xff" * 50])
def test_damaged_parts_are_told_or_read_round(part: str, content: bytes) -> None:
    made, _ = book(("a", "b"))
    with pytest.raises(UnreadableManuscript):
        read(with_part(saved(made), part, content), "x.xlsx")


@pytest.mark.parametrize(
    "cell",
    ['r="A0"', 'r="ZZZZ9"', 'r=""', 'r="1A"', 't="s"><v>99</v></c><c', 't="zz"><v>x</v></c><c', 't="d"><v>x</v></c><c'],
)
def test_a_damaged_cell_is_told_or_read_round(cell: str) -> None:
    made, _ = book(("a", "b"))
    row = f'<worksheet xmlns="{MAIN}"><sheetData><row r="1"><c {cell}><v>1</v></c></row></sheetData></worksheet>'
    try:
        assert read(with_part(saved(made), "xl/worksheets/sheet1.xml", row.encode()), "x.xlsx")
    except UnreadableTable as told:
        assert "Nothing was changed." in str(told)


def test_the_limit_of_rows_counts_those_that_hold_something() -> None:
    text = "a,b\n" + "\n" * 20_000 + "c,d\n" * (limits.MOST_ROWS - 1)
    assert len(read(text.encode(), "x.csv")[0].rows) == limits.MOST_ROWS
