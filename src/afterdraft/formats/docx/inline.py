"""What stands within a paragraph, as final text: insertions in, deletions out, fields by their result."""

from collections.abc import Callable
from dataclasses import dataclass, field

from afterdraft.formats.docx.drawing import alternative, is_low, is_picture, is_rule
from afterdraft.formats.docx.names import MC, R_, RPR, M, Node, T, W
from afterdraft.formats.docx.styles import Styles, letters
from afterdraft.formats.docx.symbols import symbol
from afterdraft.formats.docx.tree import chosen, controlled, elements, paragraphs
from afterdraft.formats.line import Line, Mark
from afterdraft.formats.looks import Face
from afterdraft.manuscript.blocks import AsideKind

_UNSHOWN = Face(hidden=True)
# Line ends in the XML are spaces; soft hyphens print nothing.
_UNSEEN = str.maketrans({"\n": " ", "\r": " ", "\u00ad": None})


@dataclass(slots=True)
class Met:
    """What was met in the file and is not read, counted for the notices."""

    hidden: int = 0
    parts: int = 0


@dataclass(slots=True)
class Inline:
    """Reads paragraph after paragraph of one part; fields and comment ranges may go from one to the next."""

    styles: Styles
    unclosed: frozenset[Node] = frozenset()  # beginnings of fields that never end: taken as not there
    met: Met = field(default_factory=Met)
    _fields: list[bool] = field(default_factory=list)  # open fields; True while in the instruction
    _instructions: int = 0  # how many of them are in the instruction, which is not shown
    _comments: dict[str, tuple[Line | None, int]] = field(default_factory=dict)  # open ranges: where they began
    _line: Line = field(default_factory=Line)  # where text goes
    _real: Line = field(default_factory=Line)  # the paragraph itself, also while deleted text goes elsewhere
    _style: str = ""
    _face: Face = field(default_factory=Face)
    _deleting: bool = False

    def read(self, paragraph: Node, line: Line, style: str) -> None:
        """Add the content of a w:p to `line`; `style` is the id of its style."""
        self._line = self._real = line
        self._style = style
        self._content(paragraph)

    def close(self, line: Line) -> None:
        """The paragraph is complete. Comment ranges that have text in it end with it, the others wait for the next."""
        for key, (began, start) in list(self._comments.items()):
            start = start if began is line else 0
            if start < line.length:
                line.mark(Mark("comment", start, line.length, key=key))
                del self._comments[key]
            else:
                self._comments[key] = (None, 0)

    def range(self, node: Node) -> bool:
        """Take in a comment's boundary that stands between paragraphs; False if `node` is none."""
        handler = _RANGES.get(node.tag)
        if handler:
            handler(self, node)
        return handler is not None

    def plain(self, container: Node) -> str:
        """The text of all paragraphs within, parted by newlines; text boxes in it included."""
        texts: list[str] = []
        for paragraph in paragraphs(container):
            line = Line()
            Inline(self.styles, self.unclosed, self.met).read(paragraph, line, "")
            texts += [line.text, *(mark.text for mark in line.marks if mark.kind == "text box")]
        return "\n".join(texts).strip("\n")

    def deleted(self, line: Line, node: Node, read: Callable[[], None]) -> None:
        """Whatever `read` adds is not text of `line` but a deletion in it; `node` says by whom."""
        scratch, outer = Line(), (self._line, self._deleting)
        self._line, self._deleting = scratch, True
        read()
        self._line, self._deleting = outer
        if scratch.length and not self._deleting:
            line.mark(change("deleted", node, line.length, line.length, scratch.text))

    def _content(self, node: Node) -> None:
        for child in node:
            handler = _CONTENT.get(child.tag)
            if handler:
                handler(self, child)

    def _run(self, run: Node) -> None:
        rpr = run[0] if len(run) and run[0].tag == RPR else run.find(RPR)
        self._face = self.styles.face(self._style, letters(rpr))
        if self._face.hidden and run.find(T) is not None:
            self.met.hidden += 1
        for child in run:
            handler = _IN_RUN.get(child.tag)
            if handler:
                handler(self, child)

    def _say(self, text: str) -> None:
        if text and not self._face.hidden and not self._instructions:
            self._line.add(text, self._face)

    def _text(self, node: Node) -> None:
        text = node.text or ""
        if "\n" in text or "\r" in text or "\u00ad" in text:
            text = text.translate(_UNSEEN)
        self._say(text)

    def _deleted_text(self, node: Node) -> None:
        if self._deleting:
            self._text(node)

    def _tab(self, _: Node) -> None:
        self._say("\t")

    def _newline(self, _: Node) -> None:
        self._say("\n")

    def _break(self, node: Node) -> None:
        if node.get(f"{W}type") != "page":
            self._say("\n")
        elif self._line is self._real and not self._face.hidden:
            self._line.turns.append(self._line.length)

    def _hyphen(self, _: Node) -> None:
        self._say("\u2011")

    def _symbol(self, node: Node) -> None:
        self._say(symbol(node.get(f"{W}font", ""), node.get(f"{W}char", "")))

    def _field(self, node: Node) -> None:
        kind = node.get(f"{W}fldCharType")
        if kind == "begin" and node not in self.unclosed:
            self._fields.append(True)
            self._instructions += 1
        elif kind == "separate" and self._fields:
            self._instructions -= self._fields[-1]
            self._fields[-1] = False
        elif kind == "end" and self._fields:
            self._instructions -= self._fields.pop()

    def _inserted(self, node: Node) -> None:
        line, start = self._line, self._line.length
        before = line.parts
        self._content(node)
        if line.length > start:
            line.mark(change("inserted", node, start, line.length, line.text_since(before)))

    def _deletion(self, node: Node) -> None:
        self.deleted(self._real, node, lambda: self._content(node))

    def _control(self, node: Node) -> None:
        content = controlled(node)
        if content is not None:
            self._content(content)

    def _choice(self, node: Node) -> None:
        branch = chosen(node)
        if branch is not None:
            self._content(branch)

    def _choice_in_run(self, node: Node) -> None:
        branch = chosen(node)
        for child in branch if branch is not None else ():
            handler = _IN_RUN.get(child.tag)
            if handler:
                handler(self, child)

    def _comment_start(self, node: Node) -> None:
        self._comments[node.get(f"{W}id", "")] = (self._real, self._real.length)

    def _comment_end(self, node: Node) -> None:
        key = node.get(f"{W}id", "")
        if key in self._comments:
            began, start = self._comments.pop(key)
            self._real.mark(Mark("comment", start if began is self._real else 0, self._real.length, key=key))

    def _comment_point(self, node: Node) -> None:
        self._point("comment", node)

    def _footnote(self, node: Node) -> None:
        self._point("footnote", node)

    def _endnote(self, node: Node) -> None:
        self._point("endnote", node)

    def _point(self, kind: AsideKind, node: Node) -> None:
        self._line.mark(Mark(kind, self._line.length, self._line.length, key=node.get(f"{W}id", "")))
        if node.get(f"{W}customMarkFollows", "0") in ("1", "true", "on"):
            self._face = _UNSHOWN  # the rest of the run is the note's mark

    def _ruby(self, node: Node) -> None:
        base = node.find(f"{W}rubyBase")
        if base is not None:
            self._content(base)

    def _math(self, node: Node) -> None:
        self._face = Face()
        self._say("".join(text.text or "" for text in node.iter(f"{M}t")))

    def _drawn(self, node: Node) -> None:
        """Pictures, lines and text boxes."""
        parts = list(elements(node))
        boxes = [part for part in parts if part.tag == f"{W}txbxContent"]
        for box in boxes:
            if text := self.plain(box):
                self._line.mark(Mark("text box", self._line.length, self._line.length, text))
        if is_picture(parts):
            self._line.picture = True
            self._line.rule = self._line.rule or is_low(parts)
            self._line.mark(Mark("picture", self._line.length, self._line.length, alternative(parts)))
        elif not boxes:
            self._line.rule = self._line.rule or is_rule(parts)

    def _master_part(self, _: Node) -> None:
        self.met.parts += 1


def change(kind: AsideKind, node: Node, start: int, end: int, text: str) -> Mark:
    """A tracked change; author and date as `node` (w:ins, w:del, …) states them."""
    return Mark(kind, start, end, text, node.get(f"{W}author", ""), node.get(f"{W}date", ""))


_Handler = Callable[[Inline, Node], None]
_RANGES: dict[str, _Handler] = {
    f"{W}commentRangeStart": Inline._comment_start,
    f"{W}commentRangeEnd": Inline._comment_end,
}
_CONTENT: dict[str, _Handler] = {
    R_: Inline._run,
    **{f"{W}{name}": Inline._content for name in ("hyperlink", "smartTag", "customXml", "fldSimple", "dir", "bdo")},
    f"{W}ins": Inline._inserted,
    f"{W}moveTo": Inline._inserted,
    f"{W}del": Inline._deletion,
    f"{W}moveFrom": Inline._deletion,
    f"{W}sdt": Inline._control,
    f"{W}subDoc": Inline._master_part,
    f"{MC}AlternateContent": Inline._choice,
    f"{M}oMath": Inline._math,
    f"{M}oMathPara": Inline._math,
    **_RANGES,
}
_IN_RUN: dict[str, _Handler] = {
    T: Inline._text,
    f"{W}delText": Inline._deleted_text,
    f"{W}tab": Inline._tab,
    f"{W}ptab": Inline._tab,
    f"{W}br": Inline._break,
    f"{W}cr": Inline._newline,
    f"{W}noBreakHyphen": Inline._hyphen,
    f"{W}sym": Inline._symbol,
    f"{W}fldChar": Inline._field,
    f"{W}footnoteReference": Inline._footnote,
    f"{W}endnoteReference": Inline._endnote,
    f"{W}commentReference": Inline._comment_point,
    f"{W}drawing": Inline._drawn,
    f"{W}pict": Inline._drawn,
    f"{W}object": Inline._drawn,
    f"{W}ruby": Inline._ruby,
    f"{MC}AlternateContent": Inline._choice_in_run,
}
