"""From lines to paragraphs: wraps undone, verse and addresses kept line by line.

Not a letter is added or lost. A line end inside a paragraph becomes a space where the line was wrapped, a
newline where the author meant it, and nothing after a hyphen or an unspaced dash.
"""

import itertools
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from afterdraft.formats.txt.lines import Line
from afterdraft.formats.txt.shape import Shape

VERSE: Final = 0.5  # share of lines with room left, from which a run of lines is verse and not prose
RAGGED: Final = 0.1  # of the width: how far before it a line of prose may end though the next word had room
LOWER: Final = 0.6  # of the width: a line that long is prose if the next begins in lower case
SHORT: Final = 0.75  # of a paragraph's longest line: a shorter one within prose was meant to end there
VERSE_LINE: Final = 75  # letters; in unwrapped text, longer lines without a blank line between are paragraphs

_DASHES: Final = re.compile(r"(?:[\u2012-\u2015]|--)(\s?)")
_HYPHENED: Final = re.compile(r"\w-$")
_DASHED: Final = re.compile(r"(?:[\u2012-\u2015]|--)$")  # two- and three-em dashes stand for words: not these
# Quotes and points are no ornaments: a wrap can leave them alone on a line.
_RULE: Final = re.compile(r"(?:[*#~=_+\-‐-―•·◦∙■□◆◇○●★☆§¶⁂⁑❦❧✻✽†‡<>|/\\]\s*){3,}|[#⁂❦❧*]")


@dataclass(frozen=True, slots=True)
class Paragraph:
    text: str
    lines: tuple[Line, ...]  # that it was made of

    @property
    def first(self) -> Line:
        return self.lines[0]


def paragraphs(lines: Sequence[Line], form: Shape, *, markdown: bool = False) -> Iterator[Paragraph]:
    """The paragraphs of a file whose layout is `form`, in order."""
    spaced = _dashes_are_spaced(lines)
    for run in _runs(lines, form, markdown=markdown):
        yield Paragraph(_joined(run, form, spaced=spaced, markdown=markdown), tuple(run))


def _runs(lines: Sequence[Line], form: Shape, *, markdown: bool) -> Iterator[list[Line]]:
    run: list[Line] = []
    for line in lines:
        if run and (line.blanks or line.turn or _parted(run[-1], line, form, markdown=markdown)):
            yield from _whole(run, form)
            run = []
        run.append(line)
    if run:
        yield from _whole(run, form)


def _parted(a: Line, b: Line, form: Shape, *, markdown: bool) -> bool:
    """Whether a paragraph ends between two lines with no blank line between them."""
    if a.depth != b.depth:
        return True
    if form.parting == "line":
        return not (markdown and a.hard)
    if alone(a.text) or alone(b.text):
        return True
    if a.indent != b.indent and not form.full(a, b) and (form.centred(a) or form.centred(b)):
        return form.parting != "blank" or not (form.centred(a) and form.centred(b))
    if form.parting == "blank" or markdown:
        return False
    if form.parting == "indent":
        return b.indent > form.base and not _verse_goes_on(a, b, form)
    return not form.full(a, b)


def alone(text: str) -> bool:
    """A line of ornaments (a typed scene break, an underline) never joins another."""
    return bool(_RULE.fullmatch(text))


def _verse_goes_on(a: Line, b: Line, form: Shape) -> bool:
    """Lines set in deeper than a paragraph's first line, one under another, belong together."""
    deep = form.base + 8  # columns
    return a.indent >= deep and b.indent >= deep and not (a.indent == b.indent and form.full(a, b))


def _whole(run: list[Line], form: Shape) -> Iterator[list[Line]]:
    """Unwrapped lines under one another are verse or an address if all are short; paragraphs otherwise."""
    verse = form.width > 0 or form.parting == "line" or all(len(line.text) <= VERSE_LINE for line in run)
    if verse:
        yield run
    else:
        yield from ([line] for line in run)


def _joined(run: Sequence[Line], form: Shape, *, spaced: bool, markdown: bool) -> str:
    meant = _meant(run, form, markdown=markdown)
    text = _text(run[0], markdown=markdown)
    for (a, b), kept in zip(itertools.pairwise(run), meant, strict=True):
        text += ("\n" if kept else _wrap(a.text, spaced=spaced)) + _text(b, markdown=markdown)
    return text


def _text(line: Line, *, markdown: bool) -> str:
    """Without the backslash that ends a line in Markdown."""
    return line.text[:-1].rstrip() if markdown and line.text.endswith("\\") else line.text


def _meant(run: Sequence[Line], form: Shape, *, markdown: bool) -> list[bool]:
    """For each line end within a paragraph: whether the author meant it."""
    pairs = list(itertools.pairwise(run))
    if markdown:
        return [a.hard for a, _ in pairs]
    if not form.width:
        return [True for _ in pairs]
    wrapped = [_wrapped(a, b, form) for a, b in pairs]
    if wrapped.count(False) >= VERSE * len(pairs):
        return [not (form.full(a, b) and b.indent > a.indent) for a, b in pairs]
    edge = SHORT * max(line.width for line in run)  # an edit after wrapping leaves lines a little short
    return [not one and a.width < edge and not b.text[:1].islower() for one, (a, b) in zip(wrapped, pairs, strict=True)]


def _wrapped(a: Line, b: Line, form: Shape) -> bool:
    """Whether the line end between two lines of one paragraph is only a wrap. Some editors wrap well before the edge,
    and prose goes on in lower case."""
    return form.full(a, b, by=RAGGED) or (b.text[:1].islower() and a.width >= LOWER * form.width)


def _wrap(text: str, *, spaced: bool) -> str:
    """What stands for the wrap after a line of this text."""
    return "" if _HYPHENED.search(text) or (_DASHED.search(text) and not spaced) else " "


def _dashes_are_spaced(lines: Sequence[Line]) -> bool:
    """Whether dashes within lines mostly have a space after them in this file."""
    spaces = [match[1] for line in lines for match in _DASHES.finditer(line.text) if match.end() < len(line.text)]
    return sum(bool(space) for space in spaces) > len(spaces) / 2
