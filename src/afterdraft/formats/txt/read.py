"""Read a plain text or Markdown-like manuscript."""

import hashlib
from collections.abc import Iterator, Sequence
from typing import Final

from afterdraft.errors import EmptyManuscript, TooLarge, UnknownFormat
from afterdraft.formats.kinds import READS
from afterdraft.formats.long import shortened
from afterdraft.formats.txt.emphasis import Marks, emphasised, marks
from afterdraft.formats.txt.encoding import decoded
from afterdraft.formats.txt.headings import Stretch, stretches
from afterdraft.formats.txt.lines import Line, lines
from afterdraft.formats.txt.paragraphs import Paragraph, paragraphs
from afterdraft.formats.txt.quoted import unquoted
from afterdraft.formats.txt.shape import Shape, shape
from afterdraft.manuscript.blocks import Block, Blocks, Gap, Look, Run, Source

LARGEST: Final = 64 * 1024 * 1024  # bytes; a million-word series is 6 MB, 24 MB in UTF-32
NOT_TEXT: Final = 0.02  # share of control characters from which a file is no text at all
PITCH: Final = 7.2  # points a column: ten characters an inch
SET_IN: Final = 5  # columns for each sign that sets in


def read(data: bytes, name: str) -> Blocks:
    """The paragraphs of a text file.

    Raises TooLarge, EmptyManuscript, and UnknownFormat where the bytes are no text.
    """
    if len(data) > LARGEST:
        raise TooLarge(name, f"{len(data) // 1_000_000} million bytes of text")
    content = decoded(data)
    if content.controls > NOT_TEXT * len(content.text):
        raise UnknownFormat(name, READS)
    found = lines(content.text)
    if not found:
        raise EmptyManuscript(name)
    markdown = name.lower().endswith((".md", ".markdown"))
    found = list(unquoted(found)) if markdown else found
    blocks, _, cut = shortened(_blocks(found, markdown=markdown))
    return Blocks(
        name=name,
        format="md" if markdown else "txt",
        sha256=hashlib.sha256(data).hexdigest(),
        size=len(data),
        blocks=blocks,
        notices=content.notices + cut,
    )


def _blocks(found: Sequence[Line], *, markdown: bool) -> list[Block]:
    pieces = list(stretches(found, markdown=markdown))
    form = shape([line for piece in pieces if piece.level is None for line in piece.lines], markdown=markdown)
    read_as = [item for piece in pieces for item in _paragraphs(piece, form, markdown=markdown)]
    used = marks(paragraph.text for paragraph, _ in read_as)
    return [_block(paragraph, level, form, used, markdown=markdown) for paragraph, level in read_as]


def _paragraphs(piece: Stretch, form: Shape, *, markdown: bool) -> Iterator[tuple[Paragraph, int | None]]:
    if piece.level is not None:
        yield Paragraph(piece.title, piece.lines), piece.level
    else:
        yield from ((paragraph, None) for paragraph in paragraphs(piece.lines, form, markdown=markdown))


def _block(paragraph: Paragraph, level: int | None, form: Shape, used: Marks, *, markdown: bool) -> Block:
    text, runs = emphasised(paragraph.text, used, markdown=markdown)
    first = paragraph.lines[0]
    return Block(
        text=text,
        runs=runs,
        look=_look(paragraph, level, form, runs, len(text)),
        gap=Gap(blanks=max(0, first.blanks - form.usual), turn="page" if first.turn else "none"),
        source=Source(ordinal=first.number),
    )


def _look(paragraph: Paragraph, level: int | None, form: Shape, runs: Sequence[Run], length: int) -> Look:
    whole = {run.kind for run in runs if run.end - run.start == length}
    bold, italic = "bold" in whole, "italic" in whole
    even = len({line.indent for line in paragraph.lines}) == 1 < len(paragraph.lines)
    if not even and all(form.centred(line) for line in paragraph.lines):
        return Look(level=level, align="center", bold=bold, italic=italic)
    first, *rest = (line.indent - form.base for line in paragraph.lines)
    left = min(rest, default=0)
    set_in = left + SET_IN * paragraph.first.depth
    return Look(level=level, bold=bold, italic=italic, indent=PITCH * (first - left), left=PITCH * set_in)
