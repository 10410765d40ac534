"""Writing a table, by the ending of the file's name."""

from collections.abc import Callable, Mapping, Sequence
from typing import Final

from afterdraft.desk.table import Row
from afterdraft.errors import NotPossible


def _xlsx(rows: Sequence[Row], title: str) -> bytes:
    from afterdraft.formats.tables.xlsx import write  # heavy, so only when needed

    return write(rows, title)


def _csv(rows: Sequence[Row], title: str) -> bytes:
    from afterdraft.formats.tables.separated import write

    return write(rows)


def _docx(rows: Sequence[Row], title: str) -> bytes:
    from afterdraft.formats.tables.docx import write

    return write(rows, title)


WRITERS: Final[Mapping[str, Callable[[Sequence[Row], str], bytes]]] = {"xlsx": _xlsx, "csv": _csv, "docx": _docx}


def write(rows: Sequence[Row], form: str, *, title: str = "") -> bytes:
    """`rows`: the names of the columns, then the rows. `form`: "xlsx", "csv" or "docx".

    Raises `NotPossible` for another one, and where a text is longer than a spreadsheet's cell holds.
    """
    writer = WRITERS.get(form)
    if writer is None:
        raise NotPossible("A table is written as .xlsx, .csv or .docx.")
    return writer(rows, title)
