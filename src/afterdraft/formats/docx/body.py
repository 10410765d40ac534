"""The walk over a text, w:p by w:p.

A paragraph whose mark is deleted goes on in the next one, which gives the look of both (§17.13.5.15); so does a
drop cap. Tables are read in order: a row of two or more short cells is one block, its cells parted by tabs; any
other row gives each of its paragraphs as a block.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field

from afterdraft.formats.docx.inline import Inline, change
from afterdraft.formats.docx.names import MC, PPR, R_, RPR, Node, P, T, W, value
from afterdraft.formats.docx.numbering import Counter, Numbering
from afterdraft.formats.docx.styles import Styles, shape
from afterdraft.formats.docx.tree import chosen, controlled, paragraphs
from afterdraft.formats.line import Line, Mark
from afterdraft.formats.looks import Face, Shape
from afterdraft.formats.making import Making, Placed, Setting
from afterdraft.manuscript.blocks import Break

_SHORT_ROW = 160  # characters, two lines of print; a longer row is text set in columns (chosen)
_TABLE, _ROW, _CELL = f"{W}tbl", f"{W}tr", f"{W}tc"
_TURNING = ("nextPage", "oddPage", "evenPage")
_WRAPPERS = (f"{W}customXml", f"{W}ins", f"{W}moveTo", f"{W}smartTag")


@dataclass(slots=True)
class Body:
    """Walks the text under `root`; what it found comes to stand in `making`."""

    root: Node
    styles: Styles
    numbering: Numbering
    inline: Inline
    making: Making
    _ordinals: dict[Node, int] = field(init=False)
    _counter: Counter = field(init=False)
    _breaks: dict[Node, Break] = field(init=False)  # w:pPr that ends a section → how the next one begins
    _waiting: tuple[Line, Node] | None = None  # a paragraph that the next one continues
    _shapes: dict[tuple[object, ...], Shape] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self._ordinals = {node: ordinal for ordinal, node in enumerate(self.root.iter(P))}
        self._counter = Counter(self.numbering)
        self._breaks = _section_breaks(self.root)

    def read(self, container: Node) -> None:
        """Walk all of `container`."""
        self._children(container)
        self._flush()

    def _children(self, container: Node) -> None:
        for child in container:
            if child.tag == P:
                self._paragraph(child)
            elif child.tag == _TABLE:
                self._flush()
                self._table(child)
            elif child.tag == f"{W}altChunk":
                self.inline.met.parts += 1
            elif not self.inline.range(child):
                inner = _within(child)
                if inner is not None:
                    self._children(inner)

    def _paragraph(self, node: Node) -> None:
        line = self._begin(node)
        ppr = node.find(PPR)
        self.inline.read(node, line, self._style(ppr))
        mark = ppr.find(RPR) if ppr is not None else None
        added, removed = _change(mark, "ins", "moveTo"), _change(mark, "del", "moveFrom")
        if added is not None and removed is None:
            line.mark(change("inserted", added, line.length, line.length, "\n"))
        if removed is not None:
            line.mark(change("deleted", removed, line.length, line.length, "\n"))
        if removed is not None or _is_drop_cap(ppr):
            self._waiting = line, node
        else:
            self._complete(line, node)

    def _begin(self, node: Node) -> Line:
        line = self._waiting[0] if self._waiting else Line()
        self._waiting = None
        if not line.length:
            line.ordinal = self._ordinals[node]
        return line

    def _flush(self) -> None:
        if self._waiting:
            line, node = self._waiting
            self._waiting = None
            if line.length or line.turns:
                self._complete(line, node)
            else:  # a paragraph deleted whole is no blank line
                for mark in line.marks:
                    self.making.set_apart(mark)

    def _complete(self, line: Line, node: Node) -> None:
        """The paragraph is whole; the mark of `node` ends it and gives its look."""
        self.inline.close(line)
        ppr = node.find(PPR)
        style, given = self._style(ppr), shape(ppr)
        place = self.numbering.place(given, self.styles, style)
        label = self._counter.next(*place) if place else ""
        after = self._breaks.get(ppr) if ppr is not None else None
        self.making.take(line, Setting(style, self._shape(style, given, place), label, after))

    def _style(self, ppr: Node | None) -> str:
        return self.styles.resolve_id(value(ppr, "pStyle"))

    def _shape(self, style: str, given: Shape, place: tuple[str, int] | None) -> Shape:
        key = (style, given, place)
        if key not in self._shapes:
            level = self.numbering.shape(*place) if place else Shape()
            if given.number is not None:
                self._shapes[key] = given.over(level.over(self.styles.shape(style)))
            else:
                self._shapes[key] = given.over(self.styles.shape(style, level))
        return self._shapes[key]

    def _table(self, table: Node) -> None:
        first = len(self.making.blocks)
        rows = list(_find(table, _ROW))
        for row in rows:
            removed = row.find(f"{W}trPr/{W}del")
            if removed is not None:
                self.making.set_apart(change("deleted", removed, 0, 0, self.inline.plain(row)))
            elif cells := _short_cells(row):
                self._short_row(cells)
            else:
                self._cells(row)
        if len(self.making.blocks) > first:
            columns = max(sum(1 for _ in _find(row, _CELL)) for row in rows)
            size = f"{_count(len(rows), 'row')}, {_count(columns, 'column')}"
            end = len(self.making.blocks[first].text)
            self.making.placed.append(Placed(Mark("table", 0, end, size), first, 0, end))

    def _cells(self, row: Node) -> None:
        for cell in _find(row, _CELL):
            self._children(cell)
            self._flush()

    def _short_row(self, cells: list[Node | None]) -> None:
        first = next(node for node in cells if node is not None and _letters(node))
        line = Line(self._ordinals[first])
        for index, node in enumerate(cells):
            if index:
                line.add("\t", Face())
            if node is not None:
                self.inline.read(node, line, self._style(node.find(PPR)))
        self._complete(line, first)


def _within(node: Node) -> Node | None:
    """What a wrapper between paragraphs holds: a content control, a choice, a custom element."""
    if node.tag == f"{W}sdt":
        return controlled(node)
    if node.tag == f"{MC}AlternateContent":
        return chosen(node)
    return node if node.tag in _WRAPPERS else None


def _find(node: Node, tag: str) -> Iterator[Node]:
    """Rows of a table or cells of a row, through wrappers, not into inner tables."""
    for child in node:
        if child.tag == tag:
            yield child
        else:
            inner = _within(child)
            if inner is not None:
                yield from _find(inner, tag)


def _section_breaks(root: Node) -> dict[Node, Break]:
    """For each w:pPr that ends a section, how the next begins: it says so itself (§17.6.22)."""
    ends: list[Node] = []
    breaks: list[Break] = []
    for node in root.iter(f"{W}sectPr"):
        parent = node.getparent()
        if parent is not None and parent.tag != f"{W}sectPrChange" and not _is_deleted(parent):
            ends.append(parent)
            breaks.append("section" if (value(node, "type") or "nextPage") in _TURNING else "none")
    following: list[Break] = [*breaks[1:], "section"]
    return dict(zip(ends, following if ends else [], strict=True))


def _is_deleted(ppr: Node) -> bool:
    return _change(ppr.find(RPR), "del", "moveFrom") is not None


def _change(mark: Node | None, *names: str) -> Node | None:
    """The tracked change of a paragraph mark by one of these names."""
    found = (mark.find(W + name) for name in names) if mark is not None else iter(())
    return next((node for node in found if node is not None), None)


def _is_drop_cap(ppr: Node | None) -> bool:
    frame = ppr.find(f"{W}framePr") if ppr is not None else None
    return frame is not None and frame.get(f"{W}dropCap") in ("drop", "margin")


def _short_cells(row: Node) -> list[Node | None]:
    """The one paragraph of each cell (None: empty), if two or more have text and all is a line or two; else nothing."""
    cells = [_with_runs(cell) for cell in _find(row, _CELL)]
    if row.find(f".//{_TABLE}") is not None or any(len(nodes) > 1 for nodes in cells):
        return []
    lengths = [_letters(nodes[0]) if nodes else 0 for nodes in cells]
    short = sum(length > 0 for length in lengths) > 1 and sum(lengths) <= _SHORT_ROW
    return [nodes[0] if nodes else None for nodes in cells] if short else []


def _with_runs(cell: Node) -> list[Node]:
    return [node for node in paragraphs(cell) if next(node.iter(R_), None) is not None]


def _letters(node: Node) -> int:
    return sum(len((text.text or "").strip()) for text in node.iter(T))


def _count(number: int, name: str) -> str:
    return f"{number} {name}" if number == 1 else f"{number} {name}s"
