"""The walk over a page, element by element, to lines of text.

Whatever begins or ends a block ends the line under way. An empty paragraph is a blank line; of other empty blocks,
only those that hold a line break or a fixed space are. Two line breaks in a row end a paragraph. A row of two or more
short cells is one line, its cells parted by tabs.
"""

import re
from collections.abc import Iterable, Set
from dataclasses import dataclass, field, replace
from functools import lru_cache

from afterdraft.formats.asides import Parts
from afterdraft.formats.html import looks
from afterdraft.formats.html.css import Said, Sheet
from afterdraft.formats.html.document import tag
from afterdraft.formats.html.notes import BACK, Notes, kind, said
from afterdraft.formats.letters import Letters, face
from afterdraft.formats.line import Line, Mark
from afterdraft.formats.looks import Face, Shape
from afterdraft.formats.making import Making, Placed, Setting
from afterdraft.formats.markup import Node, written
from afterdraft.formats.numerals import numeral

BLOCKS = frozenset({
    *("address", "article", "aside", "blockquote", "body", "caption", "center", "dd", "details", "dialog", "dir"),
    *("div", "dl", "dt", "fieldset", "figcaption", "figure", "footer", "form", "h1", "h2", "h3", "h4", "h5", "h6"),
    *("header", "hgroup", "hr", "html", "legend", "li", "main", "menu", "nav", "ol", "p", "pre", "section", "summary"),
    *("table", "tbody", "td", "tfoot", "th", "thead", "tr", "ul"),
})  # fmt: skip
UNREAD = frozenset({
    *("applet", "area", "audio", "base", "button", "canvas", "datalist", "embed", "head", "iframe", "input", "link"),
    *("map", "math", "meta", "noscript", "object", "option", "param", "rp", "rt", "script", "select", "source"),
    *("style", "svg", "template", "textarea", "title", "track", "video", "wbr"),
})  # fmt: skip
_SHORT_ROW = 160  # characters, two lines of print; a longer row is text set in columns (chosen)
_ORNAMENT_HEIGHT = 54.0  # points: ¾ inch; a picture lower than this that stands alone is an ornament (common practice)
_WHITE = re.compile(r"[ \t\r\n\f]+")
_UNSEEN = str.maketrans({"\u00ad": None, "\u200b": None})  # soft hyphens and places to break a line print nothing
_CONTENTS = {"toc", "doc-toc", "landmarks"}
_LEFT_OUT = BACK | {"pagebreak", "doc-pagebreak", "pagenum", "pageno", "page-number"}  # of a printed edition
_NUMBERED = {"1": "decimal", "a": "lowerLetter", "A": "upperLetter", "i": "lowerRoman", "I": "upperRoman"}
_WHOLE = re.compile(r"-?[0-9]{1,6}")


@dataclass(frozen=True, slots=True)
class Around:
    """What an element hands on to all within."""

    style: str = ""  # of its block
    shape: Shape = field(default_factory=Shape)  # of its block
    letters: Letters = field(default_factory=lambda: Letters(size=looks.EM))
    as_typed: bool = False  # white space counts
    contents: bool = False  # within a list of contents


class Classes:
    """Styles go by the class names that the author's program gave them."""

    def name(self, id: str, /) -> str:
        return id

    def bare(self, _: str, /) -> Face:
        return face(Letters(size=looks.EM))


@dataclass(slots=True)
class Walk:
    """Walks pages; what it found comes to stand in `making` and `parts`."""

    making: Making
    parts: Parts
    footnotes: dict[str, str]  # those of `parts`, to be filled
    endnotes: dict[str, str]
    hidden: int = 0  # places of text that is not shown
    _sheet: Sheet = field(default_factory=Sheet)
    _notes: Notes = field(default_factory=Notes)
    _number: int = 0  # elements so far, in document order
    _block: Around = field(default_factory=Around)  # of the line under way
    _line: Line = field(default_factory=Line)
    _space: Face | None = None  # a space that is one only if text follows
    _newlines: int = 0  # line breaks likewise
    _broken: Face = field(default_factory=Face)  # how they look
    _lists: list[int] = field(default_factory=list)  # the latest number of each list around
    _label: str = ""
    _turn: bool = False  # a page begins with the next line

    def read(self, root: Node, sheet: Sheet, notes: Notes) -> None:
        """Read one page. May raise RecursionError."""
        self._sheet, self._notes, self._number = sheet, notes, 0
        self._element(root, Around())
        self._end_line()

    def _inside(self, node: Node, around: Around) -> None:
        self._text(node.text, around)
        for child in node:
            self._element(child, around)
            self._text(child.tail, around)

    def _element(self, node: Node, around: Around) -> None:
        self._number += 1
        name, said_of, says = tag(node), self._sheet.of(node), said(node)
        if self._is_unread(node, name, says, looks.is_hidden(said_of)):
            self._number += sum(1 for _ in node.iterdescendants())
            return
        inside = _inside_of(around, name, said_of, says)
        if name in BLOCKS:
            shape = looks.shape(name, said_of)
            self._enter(node, name, replace(inside, shape=_within(around.shape, shape), style=_style(node)))
            if looks.ends_page(said_of):
                self.making.page()
        elif name == "br":
            self._newlines += 1
            self._space, self._broken = None, face(around.letters)
        elif name == "img":
            self._picture(node, said_of.get("height") or node.get("height"))
        elif name == "ins":
            self._inserted(node, inside)
        else:
            self._inside(node, inside)

    def _is_unread(self, node: Node, name: str, says: Set[str], hidden: bool) -> bool:
        """Whether an element is not walked; what it says is set apart where it has a place."""
        if name in UNREAD or node in self._notes.apart or (says and not says.isdisjoint(_LEFT_OUT)):
            return True
        if hidden or node.get("hidden") is not None:
            self.hidden += bool(written(node).strip())
            return True
        if node in self._notes.references:
            self._note(node, self._notes.references[node])
            return True
        if name == "del":
            self._point(Mark("deleted", 0, 0, self._plain([node]), when=node.get("datetime", "")))
            return True
        return False

    def _enter(self, node: Node, name: str, block: Around) -> None:
        """Walk a block: a line of its own, or several."""
        self._end_line()
        outer, before, number = self._block, len(self.making.blocks), self._number
        self._block = block
        self._turn = self._turn or bool(block.shape.turn)
        self._line.ordinal = number - 1
        if name == "li":
            self._label = self._next_label(node)
        if name in ("ol", "ul"):
            self._lists.append(_whole(node.get("start"), 1) - 1)
        if name == "hr":
            self._line.rule = True
        if name == "pre" and node.text:
            node.text = node.text.removeprefix("\n")  # it belongs to the tag (WHATWG HTML, "pre")
        if name == "tr" and (cells := _short_cells(node)):
            self._text("\t".join(cells), replace(block, as_typed=True))
            self._number += sum(1 for _ in node.iterdescendants())
        else:
            self._inside(node, block)
        self._end_line(held=name in ("p", "hr"))
        if name in ("ol", "ul"):
            self._lists.pop()
        if name == "table":
            self._table(node, before)
        self._block = outer
        self._line.ordinal = number - 1

    def _next_label(self, item: Node) -> str:
        parent = item.getparent()
        if not self._lists or parent is None or tag(parent) != "ol":
            return ""
        self._lists[-1] = _whole(item.get("value"), self._lists[-1] + 1)
        if self._sheet.of(parent).get("list-style-type", self._sheet.of(parent).get("list-style", "")) == "none":
            return ""
        return f"{numeral(max(0, self._lists[-1]), _NUMBERED.get(parent.get('type', '1'), 'decimal'))}."

    def _text(self, text: str | None, around: Around) -> None:
        if not text:
            return
        text = text.translate(_UNSEEN)
        if around.as_typed:
            first, *rest = text.replace("\r\n", "\n").split("\n")
            self._say(first, around)
            for line in rest:
                self._newlines, self._broken = self._newlines + 1, face(around.letters)
                self._say(line, around)
            return
        text = _WHITE.sub(" ", text)
        if text.startswith(" ") and self._line.length and not self._newlines:
            self._space = self._space or face(around.letters)
        self._say(text.strip(" "), around)
        if len(text) > 1 and text.endswith(" "):
            self._space = face(around.letters)

    def _say(self, text: str, around: Around) -> None:
        """Add words to the line, with the breaks and the space that wait before them."""
        if not text:
            return
        if self._newlines and self._line.length:
            if self._newlines > 1 and text.strip():
                self._end_line()
            else:
                self._line.add("\n" * self._newlines, self._broken)
        elif self._newlines:
            self._blank(self._newlines)
        elif self._space and self._line.length:
            self._line.add(" ", self._space)
        self._newlines, self._space = 0, None
        self._line.add(text, face(around.letters))

    def _end_line(self, *, held: bool = False) -> None:
        """The line under way is whole; `held`: it is one even if it is empty."""
        line, blanks, ordinal = self._line, self._newlines, self._line.ordinal
        self._line, self._newlines, self._space = Line(ordinal), 0, None
        if line.length or line.rule or line.picture or (held and not blanks):
            self._take(line)
            blanks = max(0, blanks - 1)
            blanks = max(0, blanks - 1) if not held and line.length else blanks
        else:
            for mark in line.marks:
                self.making.set_apart(mark)
            blanks -= held and blanks > 1  # LibreOffice writes an empty paragraph with two line breaks
        if blanks:
            self._blank(blanks)

    def _take(self, line: Line) -> None:
        shape = self._block.shape
        shape = shape if bool(shape.turn) == self._turn else replace(shape, turn=self._turn)
        style, label = ("Contents" if self._block.contents else self._block.style), self._label
        self._turn, self._label = False, ""
        self.making.take(line, Setting(style, shape, label))

    def _blank(self, count: int) -> None:
        line = Line()
        line.add("\n" * (count - 1), face(Letters()))
        self.making.take(line, Setting("", Shape()))

    def _picture(self, node: Node, height: str | None) -> None:
        stated = looks.points(height if not (height or "").isdigit() else f"{height}px")
        self._line.picture = True
        self._line.rule = self._line.rule or 0 < (stated or 0) <= _ORNAMENT_HEIGHT
        self._point(Mark("picture", 0, 0, node.get("alt", "")))

    def _inserted(self, node: Node, around: Around) -> None:
        line, start = self._line, self._line.length
        self._inside(node, around)
        text = line.text[start:].lstrip() if line is self._line else ""
        if text:
            line.mark(Mark("inserted", line.length - len(text), line.length, text, when=node.get("datetime", "")))

    def _note(self, link: Node, note: Node) -> None:
        of = kind(link, note)
        texts = self.footnotes if of == "footnote" else self.endnotes
        key = str(len(texts))
        texts[key] = self._plain([note])
        self._point(Mark(of, 0, 0, key=key))

    def _point(self, mark: Mark) -> None:
        mark.start = mark.end = self._line.length
        self._line.mark(mark)

    def _plain(self, nodes: Iterable[Node]) -> str:
        """The text within, its paragraphs parted by newlines."""
        making = Making("", Classes())
        for node in nodes:
            apart = Walk(making, Parts({}, {}, {}), {}, {})
            apart._inside(node, Around())
            apart._end_line()
        return "\n".join(block.text for block in making.blocks)

    def _table(self, table: Node, before: int) -> None:
        rows = [row for row in table.iter() if tag(row) == "tr"]
        columns = max((sum(tag(cell) in ("td", "th") for cell in row) for row in rows), default=0)
        if len(self.making.blocks) > before and columns > 1:
            end = len(self.making.blocks[before].text)
            size = f"{len(rows)} row{'s' * (len(rows) != 1)}, {columns} columns"
            self.making.placed.append(Placed(Mark("table", 0, end, size), before, 0, end))


def _inside_of(around: Around, name: str, said_of: Said, says: Set[str]) -> Around:
    """What an element hands on."""
    typed = around.as_typed or name == "pre" or said_of.get("white-space", "").startswith("pre")
    contents = around.contents or bool(says and not says.isdisjoint(_CONTENTS))
    letters = looks.inner(name, around.letters) if not said_of else looks.letters(name, said_of).over(around.letters)
    if letters is around.letters and (typed, contents) == (around.as_typed, around.contents):
        return around
    return Around(around.style, around.shape, letters, typed, contents)


@lru_cache(maxsize=1000)  # the same few blocks stand in each other all over a page
def _within(outer: Shape, own: Shape) -> Shape:
    """What a block's lines look like: some of it is handed on, and indents add up."""
    left = (outer.left or 0.0) + (own.left or 0.0)
    return replace(own.over(Shape(align=outer.align, indent=outer.indent, level=outer.level)), left=left)


def _style(node: Node) -> str:
    return " ".join(node.get("class", "").split())


def _short_cells(row: Node) -> list[str]:
    """The texts of the cells, if two or more have text and all is a line or two; else nothing."""
    if any(tag(node) in ("table", "br", "li") for node in row.iterdescendants()):
        return []
    texts = [" ".join(written(cell).split()) for cell in row if tag(cell) in ("td", "th")]
    short = sum(bool(text) for text in texts) > 1 and sum(map(len, texts)) <= _SHORT_ROW
    return texts if short else []


def _whole(text: str | None, default: int) -> int:
    return int(text) if text and _WHOLE.fullmatch(text) else default
