"""Text with separators: RFC 4180, and what spreadsheet programs make of it elsewhere (semicolons, tabs).

A cell that begins with = + - or @ would be run as a formula by spreadsheet programs ("CSV injection", OWASP). It is
written with an apostrophe before it, and read without: nothing is run, and nothing is lost on the way there and back.
"""

import codecs
import csv
import io
import re
from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import islice
from typing import Final

from afterdraft.desk.table import Row, Sheet
from afterdraft.errors import UnreadableTable
from afterdraft.formats.tables.limits import kept
from afterdraft.formats.txt.encoding import decoded

SEPARATORS: Final = (",", ";", "\t", "|")
_LOOKED_AT = 200  # rows by which the separator is told
_TOLD = re.compile(r"sep=(.)\r?\n")  # a first line by which spreadsheet programs tell each other
_RUN = re.compile(r"'*[=+\-@\t]")
_GUARDED = re.compile(r"'+[=+\-@\t]")


def read(data: bytes, name: str) -> tuple[Sheet, ...]:
    """One table. Raises `UnreadableTable`."""
    text = decoded(data).text
    told = _TOLD.match(text)
    if told:
        text = text[told.end() :]
    separator = told[1] if told else _separator(text)
    try:
        rows = kept(([_unguarded(cell) for cell in row] for row in _rows(text, separator)), name)
    except csv.Error as trouble:
        raise UnreadableTable(name, "its rows cannot be told apart") from trouble
    return (Sheet(name.rpartition(".")[0] or name, rows),)


def write(rows: Sequence[Row]) -> bytes:
    """UTF-8 with a byte order mark, by which spreadsheet programs know it; commas; CR LF (RFC 4180)."""
    out = io.StringIO(newline="")
    csv.writer(out, lineterminator="\r\n").writerows([_guarded(cell) for cell in row] for row in rows)
    return codecs.BOM_UTF8 + out.getvalue().encode()


def _rows(text: str, separator: str) -> Iterator[list[str]]:
    for row in csv.reader(io.StringIO(text, newline=""), delimiter=separator):
        yield [cell.replace("\r\n", "\n").replace("\r", "\n") for cell in row]


def _separator(text: str) -> str:
    """The one that gives most rows the same number of cells, more than one; a comma where none does."""
    return max(SEPARATORS, key=lambda one: _evenness(text, one))


def _evenness(text: str, separator: str) -> int:
    """Cells in rows of the most frequent width."""
    try:
        widths = Counter(len(row) for row in islice(_rows(text, separator), _LOOKED_AT) if len(row) > 1)
    except csv.Error:
        return 0
    return max((width * count for width, count in widths.items()), default=0)


def _guarded(cell: str | int) -> str | int:
    return f"'{cell}" if isinstance(cell, str) and _RUN.match(cell) else cell


def _unguarded(cell: str) -> str:
    return cell[1:] if _GUARDED.match(cell) else cell
