"""What a file gives: its paragraphs in order, each with its look, and what was set apart.

Readers (`formats/`) make these; structure recovery (`structure/`) divides them. All ranges are
half-open and count Unicode code points; all lengths on paper are points.
"""

from dataclasses import dataclass, field
from typing import Literal

Emphasis = Literal["italic", "bold", "underline", "strike", "small caps", "superscript", "subscript"]
Align = Literal["left", "center", "right", "justify"]
Break = Literal["none", "page", "section"]
AsideKind = Literal["comment", "footnote", "endnote", "inserted", "deleted", "text box", "table", "picture"]


@dataclass(frozen=True, slots=True)
class Run:
    """A stretch of one kind of emphasis; runs of different kinds may overlap."""

    start: int
    end: int
    kind: Emphasis


@dataclass(frozen=True, slots=True)
class Look:
    """How a paragraph looks, all inheritance resolved."""

    style: str = ""  # the style's name as the author sees it; "" where the format has none
    level: int | None = None  # outline level 1…9 of a heading; None for body text
    align: Align = "left"
    bold: bool = False  # every letter is bold (likewise italic, caps)
    italic: bool = False
    caps: bool = False  # set in capitals by formatting; typed capitals are in the text itself
    size: float | None = None  # points
    indent: float = 0.0  # first-line indent, points; negative for hanging
    left: float = 0.0  # left indent, points
    space_before: float = 0.0  # points
    space_after: float = 0.0  # points
    label: str = ""  # automatic number as printed: "Chapter 3", "3.", "III"; never part of `text`


@dataclass(frozen=True, slots=True)
class Gap:
    """What stands between the paragraph before and this one."""

    blanks: int = 0  # empty paragraphs, or blank lines beyond the one that parts paragraphs anyway
    turn: Break = "none"  # a page or section break
    rule: bool = False  # a horizontal rule (border, drawn line) with no text of its own
    file: bool = False  # this is the first paragraph of a further file


@dataclass(frozen=True, slots=True)
class Source:
    """Where in the original bytes the paragraph stands, so that an export finds it again."""

    file: int = 0  # which of the draft's files
    part: str = ""  # part of the package, e.g. "word/document.xml"
    ordinal: int = 0  # which w:p in that part, document order, from 0; for plain text the first line
    piece: int = 0  # which piece, where one source paragraph was split at import


@dataclass(frozen=True, slots=True)
class Block:
    """One paragraph. Lines within it (verse, addresses, soft returns) are parted by a newline."""

    text: str
    runs: tuple[Run, ...] = ()
    look: Look = field(default_factory=Look)
    gap: Gap = field(default_factory=Gap)
    source: Source = field(default_factory=Source)


@dataclass(frozen=True, slots=True)
class Aside:
    """Something that is not story text but must not be lost: a margin comment, a footnote, a tracked change."""

    kind: AsideKind
    block: int  # index of the block it belongs to (the nearest one, where its own is gone)
    start: int  # range in that block's text; start == end for a point
    end: int
    text: str
    author: str = ""
    when: str = ""  # as the file states it (ISO 8601), or ""
    reply: bool = False  # a comment that answers the one before it
    done: bool = False  # a comment marked as resolved


@dataclass(frozen=True, slots=True)
class Blocks:
    """A whole file, read. Several files of one draft are joined with `joined`."""

    name: str  # file name, without folders
    format: str  # "docx", "txt", …
    sha256: str  # of the original bytes
    size: int  # bytes
    blocks: tuple[Block, ...]
    asides: tuple[Aside, ...] = ()
    title: str = ""  # from the file's own properties; often wrong, so only a hint
    author: str = ""
    language: str = ""  # BCP 47, or "" where unknown
    notices: tuple[str, ...] = ()  # what was met and not read, one plain sentence each
