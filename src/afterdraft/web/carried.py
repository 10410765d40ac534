"""A table that was read, carried from step to step in the page itself: nothing of it waits in the program's memory."""

import json
from collections.abc import Sequence

from afterdraft.desk.table import Sheet
from afterdraft.errors import NotPossible

LOST = "The table could not be understood any more. Choose its file again."


def packed(sheets: Sequence[Sheet]) -> str:
    return json.dumps([[sheet.name, sheet.rows] for sheet in sheets], ensure_ascii=False)


def unpacked(text: str) -> tuple[Sheet, ...]:
    """Raises `NotPossible` for anything but what `packed` gives."""
    try:
        sheets = tuple(Sheet(str(name), _rows(rows)) for name, rows in json.loads(text))
    except (ValueError, TypeError) as trouble:
        raise NotPossible(LOST) from trouble
    if not sheets:
        raise NotPossible(LOST)
    return sheets


def _rows(rows: object) -> tuple[tuple[str, ...], ...]:
    if not isinstance(rows, list) or not all(isinstance(row, list) for row in rows):
        raise TypeError
    return tuple(tuple(str(cell).replace("\r\n", "\n") for cell in row) for row in rows)
