"""Front and back matter: what stands before the story and after it, and of which kind each piece is."""

import re
from collections.abc import Iterator, Sequence, Set
from dataclasses import dataclass

from afterdraft.manuscript.division import MatterKind
from afterdraft.manuscript.structure.breaks import is_mark
from afterdraft.manuscript.structure.lines import Line, ends_sentence, speaks, title_case
from afterdraft.manuscript.structure.rank import stops
from afterdraft.manuscript.structure.vocabulary import back_kind, ends_book, front_kind

TITLE_PAGE_WORDS = 150  # title, author, address, word count, agent (common practice)
NAME_WORDS = 6  # of an author
QUIET_WORDS = 120  # a dedication or an epigraph is shorter (common practice)
PROSE_WORDS = 250  # an unheaded piece longer than this, right before the first chapter, is told
BY = re.compile(r"(a (novel|novella|story) )?by\b", re.IGNORECASE)
DEDICATION = re.compile(r"(to|for|dedicated to|in (loving )?memory of)\b.*", re.IGNORECASE | re.DOTALL)


@dataclass(frozen=True, slots=True)
class Piece:
    at: int
    end: int
    kind: MatterKind
    headed: bool  # a heading says what it is


def front_pieces(lines: Sequence[Line], end: int, contents: Set[int], *, headed: bool) -> tuple[Piece, ...]:
    """The pieces of front matter before line `end`.

    `headed`: a heading stands at `end`. Otherwise, and also where a long piece of prose stands right before
    it, the story begins with the first piece that is none.
    """
    pieces = list(_pieces(lines, end, contents)) if end else []
    told = next((number for number, piece in enumerate(pieces) if _is_told(lines, piece, headed=headed)), None)
    if not headed and told is None:
        told = len(pieces) - 1  # a file that is all front matter is none
    return tuple(pieces if told is None else pieces[: max(0, told)])


def back_pieces(lines: Sequence[Line], start: int) -> tuple[Piece, ...]:
    """The pieces of back matter among the lines from `start`, the first told line of the last chapter."""
    first = next((line.index for line in lines[start + 1 :] if _opens_back(lines, line)), None)
    if first is None:
        return ()
    starts = [first] + [line.index for line in lines[first + 1 :] if line.turn or _opens_back(lines, line)]
    ends = stops(starts, len(lines))
    return tuple(
        Piece(at, end, back_kind(lines[at].text) or "other", headed=back_kind(lines[at].text) is not None)
        for at, end in zip(starts, ends, strict=True)
    )


def _opens_back(lines: Sequence[Line], line: Line) -> bool:
    if line.short and back_kind(line.text) and (line.turn or line.weight >= 1 or line.wide > 0):
        return True
    before = lines[line.index - 1]
    return line.turn and before.short and ends_book(before.text) and not is_mark(line)


def _pieces(lines: Sequence[Line], end: int, contents: Set[int]) -> Iterator[Piece]:
    title_page = _title_lines(lines, end)
    starts = [
        line.index
        for line in lines[:end]
        if line.index == 0 or line.index == title_page or _opens_piece(lines, line, contents)
    ]
    for at, stop in zip(starts, stops(starts, end), strict=True):
        named = front_kind(lines[at].text) if lines[at].short else None
        yield Piece(at, stop, named or _kind(lines, at, stop, contents), headed=named is not None)


def _title_lines(lines: Sequence[Line], end: int) -> int:
    """How many lines at the very top are set like a title, with the text directly under them."""
    count = 0
    while count < end and lines[count].short and _on_title_page(lines, count):
        count += 1
        if count < end and (lines[count].turn or lines[count].wide > 1 or _heads_matter(lines, count)):
            return 0
    return count if count < end and (not lines[count].short or _is_talk(lines[count])) else 0


def _on_title_page(lines: Sequence[Line], place: int) -> bool:
    """A line set apart, a line with "by", a title above it, a name under a title; "Contents" over no list."""
    line = lines[place]
    if line.weight > 0 or BY.match(line.text) or front_kind(line.text) == "contents":
        return True
    if place == 0:
        return line.text.startswith("#") or (len(lines) > 1 and bool(BY.match(lines[1].text)))
    entitled = lines[0].weight > 0 or lines[0].text.startswith("#")
    return place == 1 and entitled and 1 < line.words <= NAME_WORDS and title_case(line.text) and not _is_talk(line)


def _heads_matter(lines: Sequence[Line], place: int) -> bool:
    kind = front_kind(lines[place].text)
    return kind is not None and (kind != "contents" or not _is_told_next(lines, place))


def _is_told_next(lines: Sequence[Line], place: int) -> bool:
    return place + 1 < len(lines) and (not lines[place + 1].short or _is_talk(lines[place + 1]))


def _is_talk(line: Line) -> bool:
    return speaks(line.text) or ends_sentence(line.text)


def _opens_piece(lines: Sequence[Line], line: Line, contents: Set[int]) -> bool:
    if line.index in contents:
        return line.index - 1 not in contents
    if line.index - 1 in contents or line.turn or line.wide > 1:
        return True
    return line.short and front_kind(line.text) is not None and (line.wide > 0 or line.weight > 0)


def _kind(lines: Sequence[Line], at: int, end: int, contents: Set[int]) -> MatterKind:
    """By what it holds, where no heading says it."""
    if at in contents:
        return "contents"
    words = sum(line.words for line in lines[at:end])
    if at == 0 and words <= TITLE_PAGE_WORDS:
        return "title page"
    if words > QUIET_WORDS:
        return "other"
    return "dedication" if DEDICATION.fullmatch(lines[at].text.strip("*_ ")) else "epigraph"


def _is_told(lines: Sequence[Line], piece: Piece, *, headed: bool) -> bool:
    """Story rather than front matter."""
    if piece.headed or piece.kind == "contents":
        return False
    long = any(not line.short for line in lines[piece.at : piece.end])
    if not headed:
        return piece.kind == "other" or (piece.kind == "title page" and long)
    if piece.kind != "other":
        return False
    prose = (line for line in lines[piece.at : piece.end] if not line.weight and "\n" not in line.text)
    return sum(line.words for line in prose) > PROSE_WORDS and not lines[piece.at].weight
