"""From whole paragraphs to blocks: the looks they have, the gaps between them, the places of what was set apart."""

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass, field

from afterdraft.formats.line import Cut, Line, Mark, Span, cut, runs, within
from afterdraft.formats.looks import BODY_LEVEL, Face, Shape, Sheet
from afterdraft.manuscript.blocks import Block, Break, Gap, Look, Source


@dataclass(frozen=True, slots=True)
class Setting:
    """How a paragraph is set."""

    style: str  # id of its style
    shape: Shape  # all inheritance resolved
    label: str = ""  # its automatic number
    break_after: Break | None = None  # how the next section begins, where it is the last of one; or a page ends here


@dataclass(frozen=True, slots=True)
class Placed:
    """A mark and the range of the block where it came to lie."""

    mark: Mark
    block: int
    start: int
    end: int


@dataclass(slots=True)
class Making:
    """Takes paragraphs in order; `blocks` and `placed` grow."""

    part: str
    styles: Sheet
    blocks: list[Block] = field(default_factory=list)
    placed: list[Placed] = field(default_factory=list)
    _blanks: int = 0
    _turn: Break = "none"
    _rule: bool = False
    _last: Shape = field(default_factory=Shape)
    _looks: dict[tuple[object, ...], Look] = field(default_factory=dict)

    def take(self, line: Line, setting: Setting) -> None:
        """A whole paragraph."""
        text = line.text
        *pieces, rest = cut(text, line.turns)
        if setting.label and not pieces:  # a number alone is printed all the same
            pieces, rest = [Cut(0, 0, 0, rest.turn)], Cut(0, 0, 0, turn=False)
        self._before(setting.shape)
        first = len(self.blocks)
        for index, piece in enumerate(pieces):
            self._block(line, text, piece, setting, index)
        self._place(line.marks, first, pieces)
        self._after(line, setting, rest, empty=not pieces)

    def set_apart(self, mark: Mark) -> None:
        """Something between paragraphs that is not text."""
        self._place([mark], len(self.blocks), [])

    @property
    def begun(self) -> bool:
        """Whether anything came before."""
        return bool(self.blocks) or self._blanks > 0 or self._rule or self._turn != "none"

    def section(self) -> None:
        """A section begins here."""
        self._turn = "section"

    def page(self) -> None:
        """A page begins here."""
        if self._turn == "none":
            self._turn = "page"

    def _before(self, shape: Shape) -> None:
        """What a paragraph puts into the gap before it. Neighbours ruled alike are ruled as one (§17.3.1.24)."""
        if shape.turn:
            self.page()
        below = self._last.line_below and not shape.line_below
        above = shape.line_above and not self._last.line_above
        self._rule = self._rule or bool(below or above)
        self._last = shape if _level(shape) is None else Shape()  # a line under a heading belongs to its look

    def _after(self, line: Line, setting: Setting, rest: Cut, *, empty: bool) -> None:
        """What it leaves to the gap after it. An empty paragraph that carries a break or a rule is no blank line."""
        shape = setting.shape
        carries = rest.turn or shape.turn or setting.break_after is not None or line.rule or line.picture
        if rest.turn:
            self.page()
        if setting.break_after == "section":
            self.section()
        elif setting.break_after == "page":
            self.page()
        if empty and line.rule:
            self._rule = True
        if not (empty and (carries or shape.line_above or shape.line_below)):
            self._blanks += rest.blanks

    def _block(self, line: Line, text: str, piece: Cut, setting: Setting, index: int) -> None:
        if piece.turn:
            self.page()
        gap = Gap(self._blanks + piece.blanks, self._turn, self._rule)
        self._blanks, self._turn, self._rule = 0, "none", False
        look = self._look(_faces(text, line.spans, piece), setting, setting.label if index == 0 else "")
        source = Source(part=self.part, ordinal=line.ordinal, piece=index)
        self.blocks.append(Block(text[piece.start : piece.end], runs(line.spans, piece), look, gap, source))

    def _look(self, faces: Sequence[tuple[Face, int]], setting: Setting, label: str) -> Look:
        shape = setting.shape
        shared = _shared(faces) if faces else _shared([(self.styles.bare(setting.style), 1)])
        key = (setting.style, shape, label, *shared)
        if key not in self._looks:
            bold, italic, caps, size = shared
            self._looks[key] = Look(
                style=self.styles.name(setting.style),
                level=_level(shape),
                align=shape.align or "left",
                bold=bold,
                italic=italic,
                caps=caps,
                size=size,
                indent=shape.indent or 0.0,
                left=shape.left or 0.0,
                space_before=shape.space_before or 0.0,
                space_after=shape.space_after or 0.0,
                label=label,
            )
        return self._looks[key]

    def _place(self, marks: Sequence[Mark], first: int, pieces: Sequence[Cut]) -> None:
        """Marks go to the piece they lie in or the next; those of a paragraph that is gone to the block before."""
        for mark in marks:
            if pieces:
                find = bisect_left if mark.start == mark.end else bisect_right  # a range has text in its piece
                at = min(find(pieces, mark.start, key=lambda piece: piece.end), len(pieces) - 1)
                piece = pieces[at]
                start, end = (min(max(place, piece.start), piece.end) - piece.start for place in (mark.start, mark.end))
                self.placed.append(Placed(mark, first + at, start, end))
            elif self.blocks:
                length = len(self.blocks[-1].text)
                self.placed.append(Placed(mark, len(self.blocks) - 1, length, length))
            else:
                self.placed.append(Placed(mark, 0, 0, 0))


def _level(shape: Shape) -> int | None:
    return None if shape.level is None or shape.level >= BODY_LEVEL else shape.level + 1


def _faces(text: str, spans: Sequence[Span], piece: Cut) -> list[tuple[Face, int]]:
    """The faces of a piece with the number of letters in each; where there are no letters, of other signs."""
    inside = [(span.face, text[start : min(span.end, piece.end)]) for start, span in within(spans, piece)]
    if len(inside) == 1:
        return [(inside[0][0], 1)]
    letters = [(face, count) for face, part in inside if (count := sum(map(str.isalnum, part)))]
    return letters or [(face, len(part)) for face, part in inside if part.strip()]


def _shared(faces: Sequence[tuple[Face, int]]) -> tuple[bool, bool, bool, float]:
    """Whether all are bold, italic, in capitals; and the size that most letters have."""
    sizes: dict[float, int] = {}
    for face, count in faces:
        sizes[face.size] = sizes.get(face.size, 0) + count
    return (
        all("bold" in face.kinds for face, _ in faces),
        all("italic" in face.kinds for face, _ in faces),
        all(face.caps for face, _ in faces),
        max(sizes, key=lambda size: sizes[size]),
    )
