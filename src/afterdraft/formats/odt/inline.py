"""What stands within a paragraph, as final text: insertions in, deletions out, fields as they are shown."""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from afterdraft.formats.asides import Comment
from afterdraft.formats.letters import Letters, face
from afterdraft.formats.line import Line, Mark
from afterdraft.formats.markup import Node, written
from afterdraft.formats.odt.changes import Change
from afterdraft.formats.odt.drawing import alternative, boxes, is_ornament, is_picture, is_rule
from afterdraft.formats.odt.names import DC, DRAW, LOEXT, OFFICE, TEXT, H, P, whole
from afterdraft.formats.odt.styles import Styles

_WHITE = re.compile(r"[ \t\r\n]+")
_UNSEEN = str.maketrans({"\u00ad": None})  # soft hyphens print nothing
_MOST_SPACES = 1_000  # that one element may stand for (chosen)


@dataclass(slots=True)
class Apart:
    """What was met in the file and is not story text."""

    comments: dict[str, Comment] = field(default_factory=dict)
    footnotes: dict[str, str] = field(default_factory=dict)
    endnotes: dict[str, str] = field(default_factory=dict)
    hidden: int = 0  # places of hidden text


@dataclass(slots=True)
class Inline:
    """Reads paragraph after paragraph; comment ranges and insertions may go from one to the next."""

    styles: Styles
    changes: Mapping[str, Change]
    ended: frozenset[str] = frozenset()  # names of the comments that have a range
    apart: Apart = field(default_factory=Apart)
    _line: Line = field(default_factory=Line)
    _letters: Letters = field(default_factory=Letters)
    _space: bool = True  # a space here would be the second, or the first of a paragraph
    _comments: dict[str, tuple[Line | None, int]] = field(default_factory=dict)  # open ranges: where they began
    _inserted: dict[str, tuple[Line | None, int]] = field(default_factory=dict)  # open insertions likewise

    def read(self, paragraph: Node, line: Line, style: str) -> None:
        """Add the content of a text:p or text:h to `line`; `style` is the id of its style."""
        self._line = line
        self._letters = self.styles.paragraph(style).letters
        self._space = True
        self._content(paragraph)

    def close(self, line: Line) -> None:
        """The paragraph is complete. Comments that have text in it end with it, the others wait; insertions go on."""
        for key, (began, start) in list(self._comments.items()):
            start = start if began is line else 0
            if start < line.length:
                line.mark(Mark("comment", start, line.length, key=key))
                del self._comments[key]
            else:
                self._comments[key] = (None, 0)
        for key, (began, start) in self._inserted.items():
            self._insertion(line, key, start if began is line else 0, "\n")
            self._inserted[key] = (None, 0)

    def range(self, node: Node) -> bool:
        """Take in a boundary of a change that stands between paragraphs; False if `node` is none."""
        handler = _RANGES.get(node.tag)
        if handler:
            self._line = Line()
            handler(self, node)
        return handler is not None

    def plain(self, container: Node) -> str:
        """The text of all paragraphs within, parted by newlines."""
        texts: list[str] = []
        for paragraph in container.iter(P, H):
            if next((above for above in paragraph.iterancestors(P, H)), None) in (None, _holder(container)):
                line = Line()
                Inline(self.styles, {}).read(paragraph, line, "")
                texts.append(line.text)
        return "\n".join(texts)

    def _content(self, node: Node) -> None:
        self._text(node.text)
        for child in node:
            handler = _CONTENT.get(child.tag, Inline._content)
            handler(self, child)
            self._text(child.tail)

    def _text(self, text: str | None) -> None:
        """White space is one space, and none at the beginning (ODF 1.3 part 3, §6.1.2)."""
        if not text:
            return
        text = _WHITE.sub(" ", text.translate(_UNSEEN))
        if self._space and text.startswith(" "):
            text = text[1:]
        if text:
            self._say(text)
            self._space = text.endswith(" ")

    def _say(self, text: str) -> None:
        look = face(self._letters)
        if look.hidden:
            self.apart.hidden += 1
        else:
            self._line.add(text, look)
        self._space = False

    def _span(self, node: Node) -> None:
        around = self._letters
        self._letters = self.styles.span(around, node.get(f"{TEXT}style-name", ""))
        self._content(node)
        self._letters = around

    def _spaces(self, node: Node) -> None:
        self._say(" " * min(whole(node.get(f"{TEXT}c"), 1), _MOST_SPACES))

    def _tab(self, _: Node) -> None:
        self._say("\t")

    def _newline(self, _: Node) -> None:
        self._say("\n")

    def _nothing(self, _: Node) -> None:
        """Not shown, or shown elsewhere."""

    def _hidden(self, node: Node) -> None:
        self.apart.hidden += bool(node.get(f"{TEXT}string-value") or written(node).strip())

    def _control(self, node: Node) -> None:
        """A form's place; its prompt is not the writer's text."""
        if node.get(f"{LOEXT}showing-place-holder") != "true":
            self._content(node)

    def _note(self, node: Node) -> None:
        body = node.find(f"{TEXT}note-body")
        texts = self.apart.endnotes if node.get(f"{TEXT}note-class") == "endnote" else self.apart.footnotes
        key = str(len(texts))
        texts[key] = self.plain(body).strip() if body is not None else ""
        self._point(Mark("endnote" if texts is self.apart.endnotes else "footnote", 0, 0, key=key))

    def _annotation(self, node: Node) -> None:
        name = node.get(f"{OFFICE}name", "")
        key = name if name and name not in self.apart.comments else f"#{len(self.apart.comments)}"
        self.apart.comments[key] = Comment(
            self.plain(node),
            node.findtext(f"{DC}creator") or "",
            node.findtext(f"{DC}date") or "",
            answers=node.get(f"{LOEXT}parent-name"),
            done=node.get(f"{LOEXT}resolved") == "true",
        )
        if key in self.ended:
            self._comments[key] = (self._line, self._line.length)
        else:
            self._point(Mark("comment", 0, 0, key=key))

    def _annotation_end(self, node: Node) -> None:
        key = node.get(f"{OFFICE}name", "")
        if key in self._comments:
            began, start = self._comments.pop(key)
            self._line.mark(Mark("comment", start if began is self._line else 0, self._line.length, key=key))

    def _change_start(self, node: Node) -> None:
        key = node.get(f"{TEXT}change-id", "")
        if key in self.changes and self.changes[key].inserted:
            self._inserted[key] = (self._line, self._line.length)

    def _change_end(self, node: Node) -> None:
        key = node.get(f"{TEXT}change-id", "")
        if key in self._inserted:
            began, start = self._inserted.pop(key)
            self._insertion(self._line, key, start if began is self._line else 0, "")

    def _insertion(self, line: Line, key: str, start: int, end: str) -> None:
        text = line.text[start:] + end
        if text:
            change = self.changes[key]
            line.mark(Mark("inserted", start, line.length, text, change.author, change.when))

    def _deleted(self, node: Node) -> None:
        change = self.changes.get(node.get(f"{TEXT}change-id", ""))
        if change and change.deleted is not None:
            text = self.plain(change.deleted)
            self._point(Mark("deleted", 0, 0, text, change.author, change.when))

    def _point(self, mark: Mark) -> None:
        mark.start = mark.end = self._line.length
        self._line.mark(mark)

    def _ruby(self, node: Node) -> None:
        base = node.find(f"{TEXT}ruby-base")
        if base is not None:
            self._content(base)

    def _drawn(self, node: Node) -> None:
        """Pictures, lines and text boxes."""
        for mark in self.drawn(node):
            self._point(mark)
        if is_picture(node):
            self._line.picture = True
            self._line.rule = self._line.rule or is_ornament(node)
        elif not boxes(node):
            self._line.rule = self._line.rule or is_rule(node)

    def drawn(self, node: Node) -> list[Mark]:
        """What a drawing sets apart: the text of its boxes, and a picture."""
        texts = [text for box in boxes(node) if (text := self.plain(box).strip("\n"))]
        marks = [Mark("text box", 0, 0, text) for text in texts]
        return [*marks, Mark("picture", 0, 0, alternative(node))] if is_picture(node) else marks


def _holder(container: Node) -> Node | None:
    """The paragraph around a container, if it stands in one: a note does."""
    return next(container.iterancestors(P, H), None)


_Handler = Callable[[Inline, Node], None]
_RANGES: dict[str, _Handler] = {
    f"{TEXT}change-start": Inline._change_start,
    f"{TEXT}change-end": Inline._change_end,
}
_DRAWN = (
    *("frame", "a", "g", "custom-shape", "line", "connector", "rect", "polyline", "path", "ellipse", "circle"),
    *("caption", "polygon", "control", "measure", "regular-polygon"),
)
_CONTENT: dict[str, _Handler] = {
    f"{TEXT}span": Inline._span,
    f"{TEXT}a": Inline._span,
    f"{TEXT}s": Inline._spaces,
    f"{TEXT}tab": Inline._tab,
    f"{TEXT}line-break": Inline._newline,
    f"{TEXT}hidden-text": Inline._hidden,
    f"{TEXT}hidden-paragraph": Inline._nothing,
    f"{TEXT}script": Inline._nothing,
    f"{OFFICE}event-listeners": Inline._nothing,
    f"{LOEXT}content-control": Inline._control,
    f"{TEXT}note": Inline._note,
    f"{OFFICE}annotation": Inline._annotation,
    f"{OFFICE}annotation-end": Inline._annotation_end,
    f"{TEXT}change": Inline._deleted,
    f"{TEXT}ruby": Inline._ruby,
    **{f"{DRAW}{name}": Inline._drawn for name in _DRAWN},
    **_RANGES,
}
