"""Tables in documents (ECMA-376, WordprocessingML): read by our own safe way into packages, written by python-docx."""

import io
import re
from collections.abc import Iterator, Sequence
from typing import Final

from docx import Document
from docx.enum.section import WD_ORIENT
from docx.shared import Mm, Pt

from afterdraft.desk.table import Row, Sheet
from afterdraft.formats.docx.names import Node, P, T, W, value, whole
from afterdraft.formats.docx.package import Package
from afterdraft.formats.tables.limits import MOST_COLUMNS, kept

# What XML 1.0 cannot hold (section 2.2, Char).
_NOT_XML: Final = re.compile(r"[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
_TEXTS: Final = {f"{W}tab": "\t", f"{W}br": "\n", f"{W}cr": "\n", f"{W}noBreakHyphen": "\u2011"}
_GONE: Final = (f"{W}del", f"{W}moveFrom")  # tracked: taken out
_PAGE: Final = (Mm(297), Mm(210))  # A4 across
_MARGIN: Final = Mm(12)
_SIZE: Final = Pt(8)


def read(data: bytes, name: str) -> tuple[Sheet, ...]:
    """Every table that lies in no other, in order. Raises `UnreadableManuscript`."""
    tables = [table for table in Package(data, name).document().iter(f"{W}tbl") if _owner(table, f"{W}tbl") is None]
    return tuple(Sheet(f"Table {n}", kept(_rows(table), name)) for n, table in enumerate(tables, 1))


def write(rows: Sequence[Row], title: str) -> bytes:
    """One table on pages across, its first row repeated on each."""
    document = Document()
    section = document.sections[0]
    section.orientation = WD_ORIENT.LANDSCAPE
    section.page_width, section.page_height = _PAGE
    section.left_margin = section.right_margin = section.top_margin = section.bottom_margin = _MARGIN
    document.core_properties.title = _clean(title)
    document.core_properties.author = ""
    document.styles["Normal"].font.size = _SIZE
    document.add_heading(_clean(title), level=1)
    table = document.add_table(len(rows), len(rows[0]) if rows else 0, style="Table Grid")
    for n, (row, values) in enumerate(zip(table.rows, rows, strict=True)):
        for cell, text in zip(row.cells, values, strict=True):
            cell.paragraphs[0].add_run(_clean(str(text))).bold = n == 0 or None
    if rows:
        _repeat(table.rows[0]._tr)
    out = io.BytesIO()
    document.save(out)
    return out.getvalue()


def _repeat(row: Node) -> None:
    """The row stands at the top of every page (17.4.78, w:tblHeader)."""
    about = row.find(f"{W}trPr")
    if about is None:
        about = row.makeelement(f"{W}trPr", {})
        row.insert(0, about)
    about.append(row.makeelement(f"{W}tblHeader", {}))


def _clean(text: str) -> str:
    return _NOT_XML.sub("", text)


def _rows(table: Node) -> Iterator[list[str]]:
    for row in table.iter(f"{W}tr"):
        if _owner(row, f"{W}tbl") is table:
            yield list(_cells(row))


def _cells(row: Node) -> Iterator[str]:
    """A cell over several columns is one with blank ones after it; one that goes on from above is blank."""
    for cell in row.iter(f"{W}tc"):
        if _owner(cell, f"{W}tr") is not row:
            continue
        about = cell.find(f"{W}tcPr")
        merged = about.find(f"{W}vMerge") if about is not None else None
        goes_on = merged is not None and merged.get(f"{W}val", "continue") == "continue"
        yield "" if goes_on else "\n".join(_text(paragraph) for paragraph in cell.iter(P))
        yield from [""] * (min(whole(value(about, "gridSpan"), 1), MOST_COLUMNS) - 1)


def _text(paragraph: Node) -> str:
    pieces = []
    for node in paragraph.iter():
        if any(above.tag in _GONE for above in node.iterancestors()):
            continue
        if node.tag == T:
            pieces.append(node.text or "")
        elif node.tag in _TEXTS and _owner(node, f"{W}r") is not None:  # not the stops of a paragraph's tabs
            pieces.append(_TEXTS[str(node.tag)])
    return "".join(pieces)


def _owner(node: Node, tag: str) -> Node | None:
    """The nearest element of that name around it."""
    return next(node.iterancestors(tag), None)
