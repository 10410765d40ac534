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
    pairs = list(itertools.pairwise(run))
    short = sum(not _wrapped(a, b, form, markdown=markdown) for a, b in pairs)
    verse = short >= VERSE * len(pairs)
    text = _text(run[0], markdown=markdown)
    for a, b in pairs:
        text += _between(a, b, form, verse=verse, spaced=spaced, markdown=markdown) + _text(b, markdown=markdown)
    return text


def _text(line: Line, *, markdown: bool) -> str:
    """Without the backslash that ends a line in Markdown."""
    return line.text[:-1].rstrip() if markdown and line.text.endswith("\\") else line.text


def _wrapped(a: Line, b: Line, form: Shape, *, markdown: bool) -> bool:
    if markdown:
        return not a.hard
    return form.width > 0 and form.full(a, b)


def _between(a: Line, b: Line, form: Shape, *, verse: bool, spaced: bool, markdown: bool) -> str:
    """What stands for the line end between two lines of one paragraph."""
    if markdown and a.hard:
        return "\n"
    if not markdown:
        if form.width == 0:
            return "\n"
        if verse and not (form.full(a, b) and b.indent > a.indent):
            return "\n"
        if not verse and not form.full(a, b) and _line_is_meant(a, b, form):
            return "\n"
    if _HYPHENED.search(a.text) or (_DASHED.search(a.text) and not spaced):
        return ""
    return " "


def _line_is_meant(a: Line, b: Line, form: Shape) -> bool:
    """A short line within prose: meant if it is much too short, and the next does not go on in lower case
    (an edit after wrapping leaves such lines too)."""
    return a.width < 0.75 * form.width and not b.text[:1].islower()


def _dashes_are_spaced(lines: Sequence[Line]) -> bool:
    """Whether dashes within lines mostly have a space after them in this file."""
    spaces = [match[1] for line in lines for match in _DASHES.finditer(line.text) if match.end() < len(line.text)]
    return sum(bool(space) for space in spaces) > len(spaces) / 2
