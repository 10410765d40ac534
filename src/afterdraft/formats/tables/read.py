"""Which kinds of table are read, and how one is told from another: by content first, then by the name's ending."""

import io
import zipfile
from typing import Final

from afterdraft.desk.table import Sheet
from afterdraft.errors import DamagedFile, LockedFile, TooLarge, UnreadableTable
from afterdraft.formats.archive import Archive
from afterdraft.formats.kinds import TABLES
from afterdraft.formats.table import LOCKED, OLE, ZIP

_OTHERS: Final = (b"%PDF", b"\x89PNG", b"\xff\xd8\xff", b"GIF8", b"{\\rtf")  # what else might be chosen


def read(data: bytes, name: str) -> tuple[Sheet, ...]:
    """The tables of a file, at least one with something in it. `name` is the file's, without folders.

    Raises `UnreadableTable`, `LockedFile`.
    """
    try:
        sheets = _read(data, name)
    except (DamagedFile, TooLarge) as trouble:
        raise UnreadableTable(name, trouble.what) from trouble
    filled = tuple(sheet for sheet in sheets if sheet.rows)
    if not filled:
        raise UnreadableTable(name, "there is no table in it" if data else "it is empty")
    return filled


def _read(data: bytes, name: str) -> tuple[Sheet, ...]:
    if data.startswith(OLE):
        if LOCKED in data:
            raise LockedFile(name)
        raise UnreadableTable(name, "it is of an older kind (.xls, .doc)")
    if data.startswith(ZIP):
        return _zipped(data, name)
    if data.startswith(_OTHERS):
        raise UnreadableTable(name, f"only {TABLES} are read as tables")
    from afterdraft.formats.tables.separated import read as read_separated

    return read_separated(data, name)


def _zipped(data: bytes, name: str) -> tuple[Sheet, ...]:
    Archive(data, name)  # looked over before anything else opens it
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        parts = archive.namelist()
    if any(part.startswith("xl/") for part in parts):
        from afterdraft.formats.tables.xlsx import read as read_xlsx  # heavy, so only when needed

        return read_xlsx(data, name)
    if any(part.startswith("word/") for part in parts):
        from afterdraft.formats.tables.docx import read as read_docx

        return read_docx(data, name)
    raise UnreadableTable(name, f"only {TABLES} are read as tables")
