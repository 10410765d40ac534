"""A table as plain values: what a spreadsheet, a text with separators or a table in a document holds."""

from dataclasses import dataclass

Cell = str | int  # numbers stay numbers on the way out; on the way in everything is text
Row = tuple[Cell, ...]


@dataclass(frozen=True, slots=True)
class Sheet:
    """A table that was read: rows of texts, blank rows left out; each row ends with its last filled cell."""

    name: str
    rows: tuple[tuple[str, ...], ...]

    @property
    def width(self) -> int:
        return max((len(row) for row in self.rows), default=0)


def trimmed(row: list[str]) -> tuple[str, ...]:
    """Without the empty cells at its end; nothing at all where it is blank."""
    end = len(row) if any(cell.strip() for cell in row) else 0
    while end and not row[end - 1]:
        end -= 1
    return tuple(row[:end])
