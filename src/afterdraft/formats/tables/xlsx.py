"""Spreadsheets (ECMA-376, SpreadsheetML), by openpyxl: values as they were last computed; no formula is run or kept."""

import datetime as dates
import io
import re
import warnings
import zipfile
from collections.abc import Iterator, Sequence
from typing import Any, Final
from xml.etree.ElementTree import ParseError

from lxml import etree
from openpyxl import Workbook, load_workbook
from openpyxl.styles import Alignment, Font
from openpyxl.utils import get_column_letter
from openpyxl.utils.exceptions import InvalidFileException

from afterdraft.desk.table import Row, Sheet
from afterdraft.errors import DamagedFile, NotPossible
from afterdraft.formats.archive import Archive
from afterdraft.formats.tables.limits import MOST_COLUMNS, MOST_GAPS, kept

LONGEST: Final = 32_767  # characters of one cell (from memory, of the limits that spreadsheet programs publish)
_WIDTHS = ((60, 48), (24, 28), (0, 12))  # from so many characters in a column on, so wide it is (in characters)
_TROUBLE = (
    *(zipfile.BadZipFile, InvalidFileException, ParseError, etree.XMLSyntaxError),
    *(KeyError, IndexError, ValueError, TypeError, AttributeError, OverflowError, EOFError, OSError),
)
# ST_Xstring (ECMA-376 part 1, 22.9.2.19): what XML cannot hold is written _xHHHH_, and so is what looks like that.
_ESCAPED = re.compile(r"_x([0-9A-Fa-f]{4})_")
_TO_ESCAPE = re.compile(r"[\x00-\x08\x0b\x0c\x0d\x0e-\x1f\ufffe\uffff]|_(?=x[0-9A-Fa-f]{4}_)")
_RUN = ("=", "+", "-", "@")


def read(data: bytes, name: str) -> tuple[Sheet, ...]:
    """Every sheet with cells, in order. Raises `DamagedFile`, `TooLarge`, `UnreadableTable`."""
    _refuse_declarations(data, name)
    try:
        with warnings.catch_warnings(action="ignore"):  # openpyxl tells its caller of what it passes over
            book = load_workbook(io.BytesIO(data), read_only=True, data_only=True, keep_links=False)
            return tuple(Sheet(sheet.title, kept(_rows(sheet), name)) for sheet in book.worksheets)
    except _TROUBLE as trouble:
        raise DamagedFile(name, "it is damaged") from trouble


def write(rows: Sequence[Row], title: str) -> bytes:
    """Texts are texts whatever they begin with, numbers are numbers. Raises `NotPossible` above `LONGEST`."""
    book = Workbook()
    sheet = book.active
    assert sheet is not None  # noqa: S101 — a new workbook has one
    sheet.title = "Reverse outline"
    book.properties.title = title
    for n, row in enumerate(rows, 1):
        for m, value in enumerate(row, 1):
            _put(sheet.cell(n, m), value, head=n == 1)
    sheet.freeze_panes = "B2"
    for m in range(len(rows[0]) if rows else 0):
        longest = max(len(str(row[m])) for row in rows)
        width = next(width for least, width in _WIDTHS if longest >= least)
        sheet.column_dimensions[get_column_letter(m + 1)].width = width
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _put(cell: Any, value: str | int, *, head: bool) -> None:
    if isinstance(value, int):
        cell.value = value
    elif value:
        written = _TO_ESCAPE.sub(_escape, value)
        if len(written) > LONGEST:
            raise NotPossible(
                f"One text has more than {LONGEST:,} characters, which is more than a spreadsheet’s cell holds. "
                "Take the table as .csv or .docx."
            )
        cell.value = written
        cell.data_type = "s"  # also where it looks like a formula or an error
        cell.quotePrefix = value.startswith(_RUN)  # it stays a text when somebody goes into the cell and out again
    cell.alignment = Alignment(wrap_text=True, vertical="top")
    if head:
        cell.font = Font(bold=True)


def _escape(match: re.Match[str]) -> str:
    return f"_x{ord(match[0]):04X}_"


def _rows(sheet: Any) -> Iterator[list[str]]:
    """Sizes that the file states are not believed; cells beyond the limits are not built."""
    sheet.reset_dimensions()
    for row in sheet.iter_rows(max_col=MOST_COLUMNS + 1, max_row=MOST_GAPS, values_only=True):
        yield [] if row.count(None) == len(row) else [_text(value) for value in row]


def _text(value: object) -> str:
    """As a person reads it in the cell, as far as the value tells."""
    if value is None:
        return ""
    if isinstance(value, str):
        return _ESCAPED.sub(lambda match: chr(int(match[1], 16)), value).replace("\r\n", "\n").replace("\r", "\n")
    if isinstance(value, bool):
        return str(value).upper()
    if isinstance(value, float):
        return str(int(value)) if value.is_integer() and abs(value) < 1e15 else repr(value)
    if isinstance(value, dates.datetime):
        return value.date().isoformat() if value.time() == dates.time() else value.isoformat(" ", "minutes")
    if isinstance(value, dates.time):
        return value.isoformat("minutes")
    return str(value)


def _refuse_declarations(data: bytes, name: str) -> None:
    """No spreadsheet program writes them; they are how entity bombs come. Raises `DamagedFile`, `TooLarge`."""
    archive = Archive(data, name)
    for part in archive.names():
        if not part.endswith((".xml", ".rels")):
            continue
        try:
            events = etree.iterparse(
                io.BytesIO(archive.read(part)),
                events=("start",),
                resolve_entities=False,
                no_network=True,
                load_dtd=False,
            )
            _, first = next(iter(events))
        except (etree.XMLSyntaxError, StopIteration) as trouble:
            raise DamagedFile(name, f"its part “{part}” is damaged") from trouble
        if first.getroottree().docinfo.doctype:
            raise DamagedFile(name, f"its part “{part}” holds declarations that no spreadsheet program writes")
