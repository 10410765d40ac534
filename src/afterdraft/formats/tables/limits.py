"""What a table may hold at most: a scene list of a long series stays far below."""

from collections.abc import Iterable, Iterator
from typing import Final

from afterdraft.desk.table import trimmed
from afterdraft.errors import UnreadableTable

MOST_ROWS: Final = 5_000  # with something in them; a series of ten novels has some 1,500 scenes
MOST_COLUMNS: Final = 100
MOST_TEXT: Final = 1_500_000  # characters in all: the text of several novels; the page that matches rows carries it
MOST_GAPS: Final = 1_100_000  # rows in all, blank ones too: a spreadsheet ends at 1,048,576 (ECMA-376, from memory)


def kept(rows: Iterable[list[str]], name: str) -> tuple[tuple[str, ...], ...]:
    """The rows that hold something, within the limits. Raises `UnreadableTable`."""
    return tuple(_counted(rows, name))


def _counted(rows: Iterable[list[str]], name: str) -> Iterator[tuple[str, ...]]:
    count = size = 0
    for gaps, row in enumerate(rows):
        cells = trimmed(row)
        count += bool(cells)
        size += sum(map(len, cells))
        if count > MOST_ROWS or gaps > MOST_GAPS:
            raise UnreadableTable(name, f"it has more than {MOST_ROWS:,} rows")
        if len(cells) > MOST_COLUMNS:
            raise UnreadableTable(name, f"it has more than {MOST_COLUMNS} columns")
        if size > MOST_TEXT:
            raise UnreadableTable(name, "it holds more text than a scene list can")
        if cells:
            yield cells
