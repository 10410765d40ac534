"""How a whole text file is laid out: decided once for all its lines, because no single line can tell.

Either every line is a paragraph, or lines are wrapped at a width and paragraphs are parted by blank lines,
by first-line indents, or only by their short last lines. All thresholds: common practice of typewriters and
terminals, tried on `../shared/corpus/structure`.
"""

import itertools
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final, Literal

from afterdraft.formats.txt.lines import Line

WIDEST: Final = 132  # columns; a longer line was not wrapped by hand or machine
NARROWEST: Final = 30  # columns; text with shorter lines is verse, not wrapped prose
WRAPPED: Final = 0.45  # share of lines that are full: half in wrapped dialogue, one in five in verse
RUNNING: Final = 4  # blank lines to a line without one, from which the latter are verse and addresses
CENTRED_FROM: Final = 8  # columns; below that a centred line is hardly told from an indented one
SLACK: Final = 2  # columns a centred line may be off

Parting = Literal["line", "blank", "indent", "short"]


@dataclass(frozen=True, slots=True)
class Shape:
    parting: Parting
    width: int  # columns lines are wrapped at; 0 where they are not
    base: int  # indent of the text's left edge, columns
    usual: int  # blank lines that part any two paragraphs
    centre: float | None  # column centred lines are centred on

    def full(self, a: Line, b: Line, *, by: float = 0.0) -> bool:
        """Whether `a` had no room for the first word of `b`: the sign that the line end is only a wrap. `by` is the
        share of the width that may be left over nonetheless."""
        return a.width + 1 + len(b.text.split(None, 1)[0]) > self.width * (1 - by)

    def centred(self, line: Line) -> bool:
        if self.centre is None or line.indent < CENTRED_FROM:
            return False
        return abs(line.indent + len(line.text) / 2 - self.centre) <= SLACK


def shape(lines: Sequence[Line], *, markdown: bool = False) -> Shape:
    """How `lines` are laid out. In Markdown a line end parts paragraphs only where blank lines do not."""
    width = _width(lines)
    base = _base(lines)
    parting = _parting(lines, width, base) if width else _unwrapped(lines, times=1 if markdown else RUNNING)
    return Shape(parting, width, base, _usual(lines, parting), _centre(lines, width))


def _width(lines: Sequence[Line]) -> int:
    """The wrap width, 0 where lines are not wrapped: the width that (nearly) no line exceeds, if most lines that
    another follows are full."""
    if not lines:
        return 0
    widths = sorted(line.width for line in lines)
    width = widths[min(len(widths) - 1, int(len(widths) * 0.98))]
    if not NARROWEST <= width <= WIDEST:
        return 0
    guess = Shape("blank", width, 0, 1, None)
    pairs = [(a, b) for a, b in itertools.pairwise(lines) if not b.blanks and b.indent <= a.indent]
    full = sum(guess.full(a, b) for a, b in pairs)
    return width if pairs and full >= WRAPPED * len(pairs) else 0


def _base(lines: Sequence[Line]) -> int:
    """The left edge: the least indent that a fair share of lines has."""
    counts = Counter(line.indent for line in lines)
    return min((i for i, n in counts.items() if n >= 0.1 * len(lines)), default=0)


def _parting(lines: Sequence[Line], width: int, base: int) -> Parting:
    guess = Shape("blank", width, base, 1, None)
    blank = indent = short = 0
    for a, b in itertools.pairwise(lines):
        if b.blanks:
            blank += 1
        elif b.indent > base >= a.indent or (b.indent > base and not guess.full(a, b)):
            indent += 1
        elif not guess.full(a, b):
            short += 1
    if indent > blank:
        return "indent"
    return "short" if short > blank else "blank"


def _unwrapped(lines: Sequence[Line], *, times: int) -> Parting:
    """Lines that are paragraphs each; or blank lines between them, and only verse and addresses run without."""
    gaps = Counter(line.blanks > 0 for line in lines[1:])
    return "blank" if gaps[True] > times * gaps[False] else "line"


def _usual(lines: Sequence[Line], parting: Parting) -> int:
    if parting in ("indent", "short"):
        return 0
    counts = Counter(line.blanks for line in lines[1:] if line.blanks or parting == "line")
    return counts.most_common(1)[0][0] if counts else 0


def _centre(lines: Sequence[Line], width: int) -> float | None:
    """The middle of the wrap width, where indented lines are centred on it; or else the column that most deeply
    indented lines of differing length share as their middle."""
    deep = [line for line in lines if line.indent >= CENTRED_FROM and len(line.text) <= 80]
    if any(abs(line.indent + len(line.text) / 2 - width / 2) <= SLACK for line in deep):
        return width / 2
    middles = Counter(round(line.indent + len(line.text) / 2) for line in deep)
    if not middles:
        return None
    middle, _ = max(middles.items(), key=lambda item: (item[1], item[0]))
    near = [line for line in deep if abs(line.indent + len(line.text) / 2 - middle) <= SLACK]
    differing = len({len(line.text) for line in near}) > 1 and len(near) >= len(deep) / 2
    return float(middle) if differing else None
