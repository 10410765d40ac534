"""The walk over a text, paragraph by paragraph.

Tables are read in order: a row of two or more short cells is one block, its cells parted by tabs; any other row
gives each of its paragraphs as a block.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from afterdraft.formats.line import Line, Mark
from afterdraft.formats.looks import DEFAULT_SIZE, Face, Shape
from afterdraft.formats.making import Making, Placed, Setting
from afterdraft.formats.markup import Node, written
from afterdraft.formats.odt.inline import Inline
from afterdraft.formats.odt.names import DRAW, TABLE, TEXT, XML, H, P, level, whole
from afterdraft.formats.odt.numbering import Levels, Numbering
from afterdraft.formats.odt.styles import Styles
from afterdraft.manuscript.blocks import Break

_SHORT_ROW = 160  # characters, two lines of print; a longer row is text set in columns (chosen)
_LIST, _TABLE, _ROW = f"{TEXT}list", f"{TABLE}table", f"{TABLE}table-row"
_CELLS = (f"{TABLE}table-cell", f"{TABLE}covered-table-cell")
_SECTION = f"{TEXT}section"
_WRAPPERS = (
    *(TEXT + name for name in ("index-body", "index-title", "table-of-content", "illustration-index", "table-index")),
    *(TEXT + name for name in ("object-index", "user-index", "alphabetical-index", "bibliography")),
)
_ROWS = (f"{TABLE}table-header-rows", f"{TABLE}table-rows", f"{TABLE}table-row-group")
_PLAIN = Face(size=DEFAULT_SIZE)


@dataclass(slots=True)
class Item:
    """The list item that paragraphs stand in; its first paragraph takes the number."""

    key: str  # of the list
    levels: Levels
    at: int  # level, 0…9
    start: int | None = None  # counted anew from here
    numbered: bool = True  # not yet used up


@dataclass(slots=True)
class Body:
    """Walks the text under `root`; what it found comes to stand in `making`."""

    root: Node
    styles: Styles
    numbering: Numbering
    inline: Inline
    making: Making
    _ordinals: dict[Node, int] = field(init=False)
    _lists: dict[str, str] = field(default_factory=dict)  # id in the file → key of the count
    _latest: dict[str, str] = field(default_factory=dict)  # list style → key of the latest list

    def __post_init__(self) -> None:
        self._ordinals = {node: ordinal for ordinal, node in enumerate(self.root.iter(P, H))}

    def read(self, container: Node) -> None:
        """Walk all of `container`."""
        self._children(container, None)

    def _children(self, container: Node, item: Item | None) -> None:
        for child in container:
            if child.tag in (P, H):
                self._paragraph(child, item)
            elif child.tag == _LIST:
                self._list(child, item)
            elif child.tag == _TABLE:
                self._table(child)
            elif child.tag == _SECTION:
                self._section(child, item)
            elif child.tag in _WRAPPERS:
                self._children(child, item)
            elif child.tag == f"{TEXT}numbered-paragraph":
                self._numbered(child)
            elif child.tag.startswith(DRAW):
                for mark in self.inline.drawn(child):
                    self.making.set_apart(mark)
            else:
                self.inline.range(child)

    def _section(self, node: Node, item: Item | None) -> None:
        if node.get(f"{TEXT}display") == "none":
            self.inline.apart.hidden += bool(written(node).strip())
        else:
            self._children(node, item)

    def _paragraph(self, node: Node, item: Item | None) -> None:
        line = Line(self._ordinals[node])
        style = node.get(f"{TEXT}style-name", "")
        self.inline.read(node, line, style)
        self.inline.close(line)
        self._complete(line, node, style, item)

    def _complete(self, line: Line, node: Node, style: str, item: Item | None) -> None:
        said = self.styles.paragraph(style)
        looks = self._shape(node, style, said.shape, item)
        label = self._label(node, said.numbered, item)
        if said.page and self.making.begun:  # its pages are of another kind
            self.making.section()
        after: Break | None = "page" if said.turn_after else None
        self.making.take(line, Setting(style, looks, label, after))

    def _shape(self, node: Node, style: str, said: Shape, item: Item | None) -> Shape:
        if item and item.at in item.levels:
            given = item.levels[item.at].shape
            given = given if item.numbered else replace(given, indent=None)  # it hangs for the number's sake
            said = self.styles.by_hand(style).over(given.over(said))
        if node.tag == H:
            said = Shape(level=min(level(node.get(f"{TEXT}outline-level")), 8)).over(said)
        return said

    def _label(self, node: Node, by_style: str | None, item: Item | None) -> str:
        if item:
            if not item.numbered:
                return ""
            item.numbered = False
            return self.numbering.next(item.key, item.levels, item.at, start=item.start)
        if node.tag != H or by_style == "" or node.get(f"{TEXT}is-list-header") == "true":
            return ""
        anew = node.get(f"{TEXT}restart-numbering") == "true"
        start = whole(node.get(f"{TEXT}start-value"), 1) if anew else None
        return self.numbering.heading(level(node.get(f"{TEXT}outline-level")), start=start)

    def _list(self, node: Node, outer: Item | None) -> None:
        style = node.get(f"{TEXT}style-name", "")
        levels = self.numbering.of(style) if style or not outer else outer.levels
        key, at = (outer.key, outer.at + 1) if outer else (self._key(node, style), 0)
        for child in node:
            if child.tag in (f"{TEXT}list-item", f"{TEXT}list-header"):
                start = child.get(f"{TEXT}start-value")
                item = Item(key, levels, min(at, 9), None if start is None else whole(start, 1))
                item.numbered = child.tag == f"{TEXT}list-item"
                self._children(child, item)

    def _key(self, node: Node, style: str) -> str:
        """Which list a list goes on with: one it names, the latest of its style, or none."""
        own = node.get(f"{XML}id") or f"#{len(self._lists)}"
        named = self._lists.get(node.get(f"{TEXT}continue-list", ""))
        going_on = node.get(f"{TEXT}continue-numbering") == "true"
        key = named or (self._latest.get(style) if going_on else None) or own
        self._lists[own] = self._latest[style] = key
        return key

    def _numbered(self, node: Node) -> None:
        """A paragraph numbered without a list around it."""
        style = node.get(f"{TEXT}style-name", "")
        key = node.get(f"{TEXT}list-id", style)
        self._children(node, Item(key, self.numbering.of(style), level(node.get(f"{TEXT}level"))))

    def _table(self, table: Node) -> None:
        said = self.styles.table(table.get(f"{TABLE}style-name", ""))
        if self.making.begun and said.page:
            self.making.section()
        elif said.shape.turn:
            self.making.page()
        first, columns = len(self.making.blocks), 0
        rows = list(_rows(table))
        for row in rows:
            cells = [cell for cell in row if cell.tag in _CELLS]
            columns = max(columns, len(cells))
            if short := _short_cells(cells):
                self._short_row(short)
            else:
                for cell in cells:
                    self._children(cell, None)
        if len(self.making.blocks) > first:
            size = f"{_count(len(rows), 'row')}, {_count(columns, 'column')}"
            end = len(self.making.blocks[first].text)
            self.making.placed.append(Placed(Mark("table", 0, end, size), first, 0, end))

    def _short_row(self, cells: list[Node | None]) -> None:
        first = next(node for node in cells if node is not None and _letters(node))
        line = Line(self._ordinals[first])
        for index, node in enumerate(cells):
            if index:
                line.add("\t", _PLAIN)
            if node is not None:
                self.inline.read(node, line, node.get(f"{TEXT}style-name", ""))
        self.inline.close(line)
        self._complete(line, first, first.get(f"{TEXT}style-name", ""), None)


def _rows(table: Node) -> Iterator[Node]:
    for child in table:
        if child.tag == _ROW:
            yield child
        elif child.tag in _ROWS:
            yield from _rows(child)


def _short_cells(cells: list[Node]) -> list[Node | None]:
    """The one paragraph of each cell (None: empty), if two or more have text and all is a line or two; else nothing."""
    found = [[node for node in cell.iter(P, H) if _letters(node)] for cell in cells]
    nested = any(next(cell.iter(_TABLE, _LIST), None) is not None for cell in cells)
    if nested or any(len(nodes) > 1 for nodes in found):
        return []
    lengths = [_letters(nodes[0]) if nodes else 0 for nodes in found]
    short = sum(length > 0 for length in lengths) > 1 and sum(lengths) <= _SHORT_ROW
    return [nodes[0] if nodes else None for nodes in found] if short else []


def _letters(node: Node) -> int:
    return len(written(node).strip())


def _count(number: int, name: str) -> str:
    return f"{number} {name}" if number == 1 else f"{number} {name}s"
