"""The walk over the signs of a rich text file, to paragraphs and what is set apart."""

import re
from collections.abc import Mapping
from copy import copy
from dataclasses import dataclass, field

from afterdraft.errors import DamagedFile
from afterdraft.formats.asides import Comment
from afterdraft.formats.letters import face
from afterdraft.formats.line import Line, Mark
from afterdraft.formats.looks import Shape
from afterdraft.formats.making import Making, Setting
from afterdraft.formats.rtf import codes
from afterdraft.formats.rtf.rows import Rows
from afterdraft.formats.rtf.sheet import Sheet
from afterdraft.formats.rtf.state import State
from afterdraft.formats.rtf.tokens import Token, tokens
from afterdraft.manuscript.blocks import AsideKind

_BUTTON = re.compile(r"MACROBUTTON\s+\S+\s+(.*)", re.S)  # a field that shows words of its own
DEEPEST = 500  # groups within groups; word processors write some 20
_SIGNS: Mapping[str, str] = {
    "tab": "\t", "line": "\n", "lquote": "‘", "rquote": "’", "ldblquote": "“", "rdblquote": "”", "emdash": "—",
    "endash": "–", "bullet": "•", "emspace": "\u2003", "enspace": "\u2002", "qmspace": "\u2005", "zwj": "\u200d",
    "zwnj": "\u200c", "ltrmark": "\u200e", "rtlmark": "\u200f",
}  # fmt: skip
_SYMBOLS: Mapping[str, str] = {"~": "\u00a0", "_": "\u2011", "{": "{", "}": "}", "\\": "\\"}
# Groups whose text is not story text, by the word they begin with → where it goes; "" for nowhere.
_GOALS: Mapping[str, str] = {
    "footnote": "footnote", "annotation": "comment", "shptxt": "text box", "listtext": "label", "pntext": "label",
    "fonttbl": "fonts", "stylesheet": "styles", "revtbl": "authors", "title": "title", "author": "author",
    "atnauthor": "commenter", "atrfstart": "range start", "atrfend": "range end", "atnref": "comment number",
    "fldinst": "instruction", "ud": "text", "pict": "picture", "fldrslt": "same", "shpinst": "shape",
    "shp": "shape", "shprslt": "",
    **dict.fromkeys(
        ("colortbl", "info", "header", "headerl", "headerr", "headerf", "footer", "footerl", "footerr", "footerf",
         "ftnsep", "ftnsepc", "ftncn", "aftnsep", "aftnsepc", "aftncn", "listtable", "listoverridetable",
         "nonshppict", "sp", "pn", "bkmkstart", "bkmkend", "atnid", "atndate", "atnicn", "atntime", "xe", "tc", "rxe",
         "object", "upr", "do", "filetbl", "rsidtbl", "generator", "private", "template", "themedata", "datastore"),
        "",
    ),
}  # fmt: skip
_APART = ("footnote", "comment", "text box", "endnote")  # goals whose text is paragraphs of their own
_HEADS = ("title", "author")


@dataclass(slots=True)
class Reader:
    """Reads one file; what it found comes to stand in `making` and the dictionaries."""

    name: str
    sheet: Sheet
    making: Making
    comments: dict[str, Comment] = field(default_factory=dict)
    footnotes: dict[str, str] = field(default_factory=dict)
    endnotes: dict[str, str] = field(default_factory=dict)
    heads: dict[str, str] = field(default_factory=dict)  # title, author
    language: int = 0
    hidden: int = 0  # places of hidden text
    whole: bool = False  # the file came to its end
    _codec: str = codes.DEFAULT
    _state: State = field(default_factory=State)
    _stack: list[State] = field(default_factory=list)
    _line: Line = field(default_factory=Line)
    _outer: list[tuple[int, Line]] = field(default_factory=list)  # texts set apart: depth of the group, line around
    _bytes: bytearray = field(default_factory=bytearray)  # of one code page, not yet characters
    _wide: str = ""  # stated by number, not yet joined
    _skipping: int = 0  # characters that stand for one already read
    _star: bool = False  # `\\*`: the next word's group may be unknown
    _first: bool = False  # at the beginning of a group
    _collected: list[str] = field(default_factory=list)  # of the group whose text is no paragraph
    _label: str = ""
    _ordinal: int = 0
    _section: bool = True  # whether the section turns the page
    _next_section: bool = False  # one begins with the next paragraph
    _rows: Rows = field(init=False)
    _ranges: dict[str, tuple[Line, int]] = field(default_factory=dict)  # comments: where their ranges began
    _ranged: str = ""  # the comment whose range has just ended, and whose text comes next
    _commenter: str = ""
    _shown: str = ""  # by a field that has no result
    _gone: list[str] = field(default_factory=list)  # deleted text at this place
    _by: tuple[int, int] = (0, 0)  # who changed it and when, by their numbers
    _new: int = -1  # where an insertion began

    def __post_init__(self) -> None:
        self._rows = Rows(self.making)

    def read(self, data: bytes) -> None:
        """Read the whole file. Raises DamagedFile."""
        for token in tokens(data):
            if token.kind == "bytes":
                self._raw(token.data)
            elif token.kind == "open":
                self._open()
            elif token.kind == "close":
                if self._close():
                    break
            else:
                self._command(token)
        self._flush()
        while self._outer:
            self._come_back()
        if self._line.length or self._line.marks:
            self._paragraph()
        self._rows.end()

    def _open(self) -> None:
        self._flush()
        if len(self._stack) >= DEEPEST:
            raise DamagedFile(self.name, "its parts are nested deeper than any word processor nests them")
        self._stack.append(copy(self._state))
        self._first, self._star, self._skipping = True, False, 0

    def _close(self) -> bool:
        """End a group; whether it was the file."""
        self._flush()
        self._first, self._skipping = False, 0
        if not self._stack:
            self.whole = True
            return True
        goal = self._state.goal
        before = self._stack.pop()
        if self._outer and self._outer[-1][0] == len(self._stack):
            self._come_back()
        elif goal != before.goal:
            self._collect(goal)
        elif goal in ("fonts", "styles", "authors"):
            self.sheet.close(goal)
        self._state = before
        if self._shown:
            shown, self._shown = self._shown, ""
            self._add(shown)
        self.whole = not self._stack
        return self.whole

    def _command(self, token: Token) -> None:
        if token.kind == "symbol" and token.name == "*":
            self._star = True
            return
        first, self._first = self._first, False
        if token.kind == "symbol":
            self._symbol(token.name)
            return
        word, number = token.name, token.number
        if word == "u":
            self._unicode(number or 0)
            return
        self._skipping = 0
        if first and (word in _GOALS or self._star):
            self._flush()
            self._begin(word, number)
        elif self._state.goal == "":
            return
        elif self._state.goal in ("fonts", "styles"):
            self._in_table(word, number)
        elif word in _SIGNS:
            self._say(_SIGNS[word])
        else:
            self._flush()
            self._word(word, number)
        self._star = False

    def _begin(self, word: str, number: int | None) -> None:
        """A group begins that is none of the text, or may be none."""
        goal = _GOALS.get(word, "")
        outer = self._state.goal
        if outer == "" and word not in ("ud", *_HEADS):
            return
        if goal == "same":
            return
        if goal == "shape" or (goal == "text" and word == "ud"):
            self._state.goal = "text" if goal == "text" else goal
            return
        self._state.goal = goal
        if goal in _APART:
            self._outer.append((len(self._stack) - 1, self._line))
            self._line = Line()
            self._collected = []
            self._state.letters, self._state.shape = State().letters, Shape()
        elif goal == "picture":
            self._line.picture = True
            self._point(Mark("picture", 0, 0))
            self._state.goal = ""
        elif goal in ("range start", "range end", "label", "commenter", "instruction", *_HEADS):
            self._collected = [] if number is None else [str(number)]

    def _word(self, word: str, number: int | None) -> None:
        state = self._state
        if word == "par":
            self._par()
        elif word in ("cell", "nestcell"):
            self._cell()
        elif word in ("row", "nestrow"):
            self._rows.row()
        elif word == "page":
            if self._is_text():
                self._line.turns.append(self._line.length)
        elif word == "sect":
            self._sect()
        elif word in ("sbknone", "sbkcol"):
            self._section = False
        elif word in ("sbkpage", "sbkodd", "sbkeven", "sectd"):
            self._section = True
        elif word == "ftnalt" and state.goal == "footnote":
            state.goal = "endnote"
        elif word == "ansicpg":
            self._codec = codes.by_page(number or 0) or self._codec
        elif word in codes.BY_WORD:
            self._codec = codes.BY_WORD[word]
        elif word in ("deflang", "lang") and not self.language:
            self.language = number or 0
        else:
            state.apply(word, number)

    def _symbol(self, symbol: str) -> None:
        if self._skipping:
            self._skipping -= 1
        elif symbol in _SYMBOLS:
            self._say(_SYMBOLS[symbol])
        elif symbol in "\r\n":
            self._flush()
            if self._state.goal:
                self._par()

    def _raw(self, data: bytes) -> None:
        self._first = False
        if self._skipping:
            skipped = min(self._skipping, len(data))
            self._skipping -= skipped
            data = data[skipped:]
        if data and self._state.goal:
            if self._wide:
                self._flush()
            self._bytes += data

    def _unicode(self, number: int) -> None:
        if self._bytes:
            self._flush()
        if self._state.goal and 0 < abs(number) < 0x10000:
            self._wide += chr(number % 0x10000)
        self._skipping = self._state.skip

    def _say(self, text: str) -> None:
        self._flush()
        self._add(text)

    def _flush(self) -> None:
        """Bytes and numbers so far become characters."""
        if self._bytes:
            codec = self.sheet.codec(self._state.font) or self._codec
            text = codes.decoded(bytes(self._bytes), codec)
            self._bytes.clear()
            self._add(text)
        elif self._wide:
            text, self._wide = codes.joined(self._wide), ""
            self._add("".join(c for c in text if c >= " " and c != "\u00ad"))

    def _add(self, text: str) -> None:
        goal, state = self._state.goal, self._state
        if goal in ("fonts", "styles", "authors"):
            self.sheet.say(goal, text)
        elif goal in ("", "shape"):
            return
        elif not self._is_text():
            self._collected.append(text)
        elif state.letters.hidden:
            self.hidden += 1
        elif state.deleted:
            self._gone.append(text)
            self._by = state.author, state.when
        else:
            self._settle_changes(state.inserted)
            self._line.add(text, face(state.letters))

    def _is_text(self) -> bool:
        return self._state.goal == "text" or self._state.goal in _APART

    def _settle_changes(self, inserted: bool) -> None:
        """What was deleted or inserted up to here is complete."""
        if self._gone:
            text, self._gone = "".join(self._gone), []
            self._changed("deleted", self._line.length, text)
        if self._new >= 0 and not inserted:
            text = self._line.text[self._new :]
            if text:
                self._changed("inserted", self._new, text)
            self._new = -1
        elif inserted and self._new < 0:
            self._new = self._line.length
            self._by = self._state.author, self._state.when

    def _changed(self, kind: AsideKind, start: int, text: str) -> None:
        author, when = self._by
        self._line.mark(Mark(kind, start, self._line.length, text, self.sheet.author(author), codes.moment(when)))

    def _par(self) -> None:
        if self._state.deleted and self._is_text():
            self._gone.append("\n")
        elif self._outer:
            self._collected.append(self._line.text)
            self._line = Line()
        elif self._is_text():
            self._paragraph()

    def _paragraph(self) -> None:
        if self._next_section and self._section:
            self.making.section()
        self._next_section = False
        line, setting = self._complete()
        if self._state.in_table:
            self._rows.paragraph(line, setting)
        else:
            self._rows.end()
            self.making.take(line, setting)

    def _complete(self) -> tuple[Line, Setting]:
        self._settle_changes(inserted=False)
        line, style = self._line, self._state.style
        line.ordinal, self._ordinal = self._ordinal, self._ordinal + 1
        self._line, label, self._label = Line(), self._label, ""
        shape = self._state.shape.over(self.sheet.shape(style))
        for key, (began, start) in self._ranges.items():
            start = start if began is line else 0
            if start < line.length:
                line.mark(Mark("comment", start, line.length, key=key))
        return line, Setting(style, shape, label)

    def _cell(self) -> None:
        if not self._outer:
            self._rows.cell(*self._complete())

    def _sect(self) -> None:
        """A section ends; what the next one begins with is said at its own beginning."""
        if not self._outer and self._is_text():
            if self._line.length:
                self._paragraph()
            self._rows.end()
            self._next_section = True

    def _point(self, mark: Mark) -> None:
        mark.start = mark.end = self._line.length
        self._line.mark(mark)

    def _collect(self, goal: str) -> None:
        """The group whose text is no paragraph is complete."""
        text, self._collected = "".join(self._collected).strip(), []
        if goal == "label":
            self._label = "" if text in _BULLETS else text
        elif goal in _HEADS:
            self.heads.setdefault(goal, text)
        elif goal == "commenter":
            self._commenter = text
        elif goal == "instruction" and (button := _BUTTON.match(text)):
            self._shown = button[1]
        elif goal == "range start":
            self._ranges[text] = (self._line, self._line.length)
        elif goal == "range end" and text in self._ranges:
            line, start = self._ranges.pop(text)
            self._ranged = text
            self._line.mark(Mark("comment", start if line is self._line else 0, self._line.length, key=text))

    def _come_back(self) -> None:
        """A text set apart is complete."""
        _, outer = self._outer.pop()
        text = "\n".join([*self._collected, self._line.text]).strip()
        self._line, self._collected = outer, []
        goal = self._state.goal
        if goal in ("footnote", "endnote"):
            texts = self.footnotes if goal == "footnote" else self.endnotes
            key = str(len(texts))
            texts[key] = text
            self._point(Mark("footnote" if goal == "footnote" else "endnote", 0, 0, key=key))
        elif goal == "comment":
            self._comment(text)
        elif text:
            self._point(Mark("text box", 0, 0, text))

    def _comment(self, text: str) -> None:
        key = self._ranged or f"#{len(self.comments)}"
        self.comments[key] = Comment(text, self._commenter, "", answers=None, done=False)
        self._ranged, self._commenter = "", ""
        self._point(Mark("comment", 0, 0, key=key))

    def _in_table(self, word: str, number: int | None) -> None:
        self._flush()
        self.sheet.word(self._state.goal, word, number)


_BULLETS = ("•", "·", "o", "-", "–", "§", "\uf0b7", "\uf0a7")  # signs of lists that are not counted
