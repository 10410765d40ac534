"""A paragraph under way: its text with faces and marks, and how it is cut into pieces. Pure."""

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from afterdraft.formats.looks import Face
from afterdraft.manuscript.blocks import AsideKind, Emphasis, Run
from afterdraft.manuscript.ornament import is_ornament

# A paragraph this long (characters) with a line this long is prose whose paragraphs are parted by soft returns, as
# text pasted from elsewhere has them; lines of verse and addresses are shorter (chosen).
_PASTED = 1_000
_PASTED_LINE = 200


@dataclass(slots=True)
class Mark:
    """Something set apart at a place of a paragraph; becomes an Aside."""

    kind: AsideKind
    start: int
    end: int
    text: str = ""
    author: str = ""
    when: str = ""
    key: str = ""  # id of the comment or note, whose text stands in another part

    def goes_on_from(self, earlier: "Mark") -> bool:
        """The two are one change, which the file states in pieces."""
        same = (self.kind, self.author, self.when, self.key) == (earlier.kind, earlier.author, earlier.when, "")
        return same and self.kind in ("inserted", "deleted") and self.start == earlier.end


@dataclass(frozen=True, slots=True)
class Span:
    start: int
    end: int
    face: Face


@dataclass(slots=True)
class Line:
    """The content of one paragraph (or of several that were joined)."""

    ordinal: int = 0  # of its first w:p
    spans: list[Span] = field(default_factory=list)
    marks: list[Mark] = field(default_factory=list)
    turns: list[int] = field(default_factory=list)  # where pages are broken
    rule: bool = False  # holds a drawn line, or a picture small enough to be an ornament
    picture: bool = False
    length: int = 0
    _texts: list[str] = field(default_factory=list)

    @property
    def text(self) -> str:
        return "".join(self._texts)

    @property
    def parts(self) -> int:
        """How many texts were added."""
        return len(self._texts)

    def text_since(self, parts: int) -> str:
        return "".join(self._texts[parts:])

    def add(self, text: str, face: Face) -> None:
        end = self.length + len(text)
        if self.spans and self.spans[-1].face is face:
            self.spans[-1] = Span(self.spans[-1].start, end, face)
        else:
            self.spans.append(Span(self.length, end, face))
        self._texts.append(text)
        self.length = end

    def mark(self, mark: Mark) -> None:
        last = self.marks[-1] if self.marks else None
        if last and mark.goes_on_from(last):
            last.end, last.text = mark.end, last.text + mark.text
        else:
            self.marks.append(mark)


@dataclass(frozen=True, slots=True)
class Cut:
    """A piece of a paragraph and what stands before it. The last of a paragraph is what is left over: start == end."""

    start: int
    end: int
    blanks: int  # blank lines before it
    turn: bool  # a page break before it


def cut(text: str, turns: Sequence[int]) -> list[Cut]:
    """Cut at page breaks and around lines that are ornaments; what follows the last piece comes as an empty one.

    Prose that is parted by soft returns alone is cut at each of them. A paragraph without text counts as one blank
    line for each of its lines, unless it only carries a page break.
    """
    pieces: list[Cut] = []
    blanks = 0
    turn = False
    for index, (start, end) in enumerate(pairwise((0, *turns, len(text)))):
        turn = turn or index > 0
        lines = list(_lines(text, start, end))
        if not any(text[a:b].strip() for a, b in lines):
            blanks += len(lines) - 1 if turns else len(lines)
        else:
            for a, b in _groups(text, lines):
                if not text[a:b].strip():
                    blanks += 1
                    continue
                pieces.append(Cut(a, b, blanks, turn))
                blanks, turn = 0, False
    return [*pieces, Cut(len(text), len(text), blanks, turn)]


def _lines(text: str, start: int, end: int) -> Iterator[tuple[int, int]]:
    while (at := text.find("\n", start, end)) >= 0:
        yield start, at
        start = at + 1
    yield start, end


def _groups(text: str, lines: Sequence[tuple[int, int]]) -> Iterator[tuple[int, int]]:
    """Lines that stay together as one piece; ornaments, and blank lines around pieces, come singly."""
    if sum(b - a for a, b in lines) >= _PASTED and any(b - a >= _PASTED_LINE for a, b in lines):
        yield from lines
        return
    group: list[tuple[int, int]] = []
    for a, b in lines:
        if len(lines) > 1 and is_ornament(text[a:b]):
            yield from _closed(text, group)
            group = []
            yield a, b
        else:
            group.append((a, b))
    yield from _closed(text, group)


def _closed(text: str, group: list[tuple[int, int]]) -> Iterator[tuple[int, int]]:
    """The lines of a group from its first that has text to its last as one; blank ones around them singly."""
    full = [index for index, (a, b) in enumerate(group) if text[a:b].strip()]
    if not full:
        yield from group
        return
    yield from group[: full[0]]
    yield group[full[0]][0], group[full[-1]][1]
    yield from group[full[-1] + 1 :]


def within(spans: Sequence[Span], piece: Cut) -> Iterator[tuple[int, Span]]:
    """The spans that reach into a piece, each with its first place there."""
    for index in range(bisect_right(spans, piece.start, key=lambda span: span.end), len(spans)):
        span = spans[index]
        if span.start >= piece.end:
            return
        yield max(span.start, piece.start), span


def runs(spans: Sequence[Span], piece: Cut) -> tuple[Run, ...]:
    """The emphasis within a piece, counted from its start; stretches of one kind that touch are one."""
    found: list[Run] = []
    open_: dict[Emphasis, int] = {}
    for start, span in within(spans, piece):
        for kind in [kind for kind in open_ if kind not in span.face.kinds]:
            found.append(Run(open_.pop(kind) - piece.start, start - piece.start, kind))
        for kind in span.face.kinds:
            open_.setdefault(kind, start)
    found += [Run(start - piece.start, piece.end - piece.start, kind) for kind, start in open_.items()]
    return tuple(sorted(found, key=lambda run: (run.start, run.end, run.kind)))
