"""From characters to lines: line ends of every kind, form feeds, indents."""

import itertools
import re
from dataclasses import dataclass, replace
from typing import Final

TAB: Final = 5  # columns; half an inch at ten characters an inch, the usual first-line tab

_HARD: Final = re.compile(r"\r\n|[\n\r\x85\u2029]")
_SOFT: Final = re.compile(r"[\v\u2028]")


@dataclass(frozen=True, slots=True)
class Line:
    text: str  # without indent and trailing space; may hold a newline where the file has a soft line end
    number: int  # in the file, from 0
    indent: int = 0  # columns
    blanks: int = 0  # blank lines before it
    turn: bool = False  # a form feed stands before it
    depth: int = 0  # signs of Markdown that set it in
    hard: bool = False  # ends in Markdown's sign for a line end: two spaces or a backslash

    @property
    def width(self) -> int:
        """Columns, indent included."""
        return self.indent + len(self.text)


def lines(text: str) -> list[Line]:
    """The lines of `text` that are not blank. Soft line ends stay inside a line, unless there are no others."""
    if not _HARD.search(text):
        text = _SOFT.sub("\n", text)
    found: list[Line] = []
    blanks, turn = 0, False
    for number, raw in enumerate(_HARD.split(text)):
        for i, piece in enumerate(raw.split("\f")):
            turn = turn or i > 0
            if piece.strip():
                found.append(replace(_line(piece, number), blanks=blanks, turn=turn))
                blanks, turn = 0, False
            elif "\f" not in raw:
                blanks += 1
    return _undoubled(found)


def _line(piece: str, number: int) -> Line:
    soft = _SOFT.sub("\n", piece)
    body = soft.strip()
    lead = soft[: len(soft) - len(soft.lstrip())].expandtabs(TAB)
    hard = soft.endswith("  ") or body.endswith("\\")
    return Line(body, number, indent=len(lead.replace("\n", "")), hard=hard)


def _undoubled(found: list[Line]) -> list[Line]:
    """Of a double-spaced file (a blank line after every line, wrapped ones too): the lines with one blank less."""
    inner = found[1:]
    narrow = bool(inner) and max(line.width for line in inner) <= 132  # columns of the widest printer paper
    if not narrow or any(line.blanks == 0 for line in inner) or not _runs_on(found):
        return found
    return [replace(line, blanks=max(0, line.blanks - 1)) for line in found]


def _runs_on(found: list[Line]) -> bool:
    """Most lines go on in the middle of a sentence on the next, after one blank line."""
    pairs = [(a, b) for a, b in itertools.pairwise(found) if b.blanks == 1]
    on = sum(b.text[:1].islower() for _, b in pairs)
    return len(pairs) > 20 and on > len(pairs) / 2
