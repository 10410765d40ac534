"""Rows of tables: one of two or more short cells is one block, its cells parted by tabs; any other gives each of its
paragraphs as a block."""

from dataclasses import dataclass, field, replace

from afterdraft.formats.line import Line, Mark
from afterdraft.formats.looks import Face
from afterdraft.formats.making import Making, Placed, Setting

_SHORT_ROW = 160  # characters, two lines of print; a longer row is text set in columns (chosen)

Paragraph = tuple[Line, Setting]


@dataclass(slots=True)
class Rows:
    """The table under way, if there is one."""

    making: Making
    _cells: list[list[Paragraph]] = field(default_factory=list)  # of the row, complete ones
    _open: list[Paragraph] = field(default_factory=list)  # of the cell
    _rows: int = 0
    _columns: int = 0
    _first: int = 0  # block

    def paragraph(self, line: Line, setting: Setting) -> None:
        self._open.append((line, setting))

    def cell(self, line: Line, setting: Setting) -> None:
        """The last paragraph of a cell."""
        self._cells.append([*self._open, (line, setting)])
        self._open = []

    def row(self) -> None:
        """The row is complete."""
        cells, self._cells = self._cells, []
        if not cells:
            return
        if not self._rows:
            self._first = len(self.making.blocks)
        self._rows += 1
        self._columns = max(self._columns, len(cells))
        full = [[each for each in cell if each[0].length] for cell in cells]
        if _is_short(full):
            self.making.take(*_as_one(full))
        else:
            for line, setting in (each for cell in full for each in cell):
                self.making.take(line, setting)

    def end(self) -> None:
        """The table is complete."""
        for each in [*(one for cell in self._cells for one in cell), *self._open]:
            self.making.take(*each)
        blocks = self.making.blocks
        if self._rows and len(blocks) > self._first:
            end = len(blocks[self._first].text)
            size = f"{_count(self._rows, 'row')}, {_count(self._columns, 'column')}"
            self.making.placed.append(Placed(Mark("table", 0, end, size), self._first, 0, end))
        self._cells, self._open, self._rows, self._columns = [], [], 0, 0


def _is_short(cells: list[list[Paragraph]]) -> bool:
    lengths = [sum(line.length for line, _ in cell) for cell in cells]
    alone = all(len(cell) <= 1 for cell in cells)
    return alone and sum(length > 0 for length in lengths) > 1 and sum(lengths) <= _SHORT_ROW


def _as_one(cells: list[list[Paragraph]]) -> Paragraph:
    first, setting = next(cell[0] for cell in cells if cell)
    whole = Line(first.ordinal)
    for index, cell in enumerate(cells):
        if index:
            whole.add("\t", Face())
        for line, _ in cell:
            at, text = whole.length, line.text
            for span in line.spans:
                whole.add(text[span.start : span.end], span.face)
            for mark in line.marks:
                whole.mark(replace(mark, start=mark.start + at, end=mark.end + at))
    return whole, setting


def _count(number: int, name: str) -> str:
    return f"{number} {name}" if number == 1 else f"{number} {name}s"
