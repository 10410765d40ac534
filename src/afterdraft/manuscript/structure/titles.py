"""The further lines of a heading: a title under its number, then an argument, an epigraph, a subtitle."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from afterdraft.manuscript.structure.lines import Line, Shape, ends_sentence, is_speech, speaks, title_case
from afterdraft.manuscript.structure.rank import MOST, Heading, Rank, heads, stops, titular
from afterdraft.manuscript.structure.wording import ALONE

TITLE_WORDS = 40  # of a title that its look shows to be one
TITLE_LINES = 4
FULL_LINE = 50  # characters of a line in the middle that has no room for more (common practice: 60 columns, or fewer)
SMALL = 4  # letters of a word that no title ends with, "the", "with"
HEAD_WORDS = 60  # an epigraph of some lines; longer set-off text under a heading is told (common practice)
SHORT_HEAD_WORDS = 30  # between a chapter's heading and its first section's: a line or two
HEAD_LINES = 6  # a longer run of set-off lines is a document that the story opens with
TITLE_STYLES = ("subtitle",)  # under a number without a title
HEAD_STYLES = ("epigraph", "argument", "subtitle", "quote", "motto", "attribution")
ARGUMENT = re.compile(r"(in which|wherein|containing|showing how|being) .+|\(.+\)[.*_]*", re.IGNORECASE | re.DOTALL)


@dataclass(frozen=True, slots=True)
class Titled:
    """A heading whole: lines `at` to `end` name it, `end` to `told` stand under it, the text begins at `told`."""

    at: int
    rank: Rank
    sure: float
    title: str
    end: int
    told: int


def titled(lines: Sequence[Line], headings: Sequence[Heading]) -> tuple[Titled, ...]:
    """Each heading with its title and further lines; `headings` in order."""
    limits = stops([heading.at for heading in headings], len(lines))
    plain = {rank: _titles_are_plain(lines, headings, limits, rank) for rank in ("part", "chapter", "section")}
    below = [*(heading.rank for heading in headings[1:]), None] if headings else []
    return tuple(
        _titled(lines, heading, limit, rank, plain=plain[heading.rank])
        for heading, limit, rank in zip(headings, limits, below, strict=True)
    )


def _titled(lines: Sequence[Line], heading: Heading, limit: int, below: Rank | None, *, plain: bool) -> Titled:
    first = lines[heading.at]
    title, end = first.name.title, heading.at + 1
    under = lines[end] if end < limit else None
    if under and wants_title(first) and _is_title(first, under, plain=plain):
        title, end = _whole(lines, end, limit)
    elif title and under and goes_on(first, under):
        more, end = _whole(lines, end, limit)
        title = _joined((title, more))
    told = _told(lines, end, limit)
    if limit < len(lines) and _only_head(lines, heading, end, limit, below):
        told = limit
    if heading.rank == "section":
        title = f"{first.label} {first.text}".strip() if end == heading.at + 1 else f"{first.text}: {title}"
    return Titled(heading.at, heading.rank, heading.sure, _clean(title), end, told)


def _whole(lines: Sequence[Line], start: int, limit: int) -> tuple[str, int]:
    """The title that begins at line `start`, and where it ends: one set in the middle may run on over several lines."""
    end = start + 1
    while end < min(limit, start + TITLE_LINES) and goes_on(lines[end - 1], lines[end]):
        end += 1
    return _joined(line.text for line in lines[start:end]), end


def _joined(texts: Iterable[str]) -> str:
    """Lines of a title as one: a hyphen at a line's end stays, and no space comes after it."""
    title = ""
    for text in texts:
        title += " " * bool(title and not title.endswith("-")) + " ".join(text.split())
    return title


def goes_on(line: Line, after: Line) -> bool:
    """A title in the middle runs on in the next line."""
    if line.shape != after.shape or not line.shape.centred or line.plain or after.wide or after.turn or after.mark:
        return False
    last = line.text.split()[-1]
    unfinished = last.endswith((",", ";", "—", "-")) or (last.islower() and len(last) <= SMALL)
    full = len(line.text) + 1 + len(after.text.split()[0]) > FULL_LINE
    return after.words <= TITLE_WORDS and (unfinished or full)


def _is_title(first: Line, under: Line, *, plain: bool) -> bool:
    """`plain`: most headings of this rank have a title under them that looks like text."""
    if _looks_like_title(first, under):
        return True
    if under.mark or under.turn or not under.plain:
        return False
    return (plain and _plain_title(under)) or ((plain or first.name.kind in ALONE) and _is_long_title(under))


def _is_long_title(line: Line) -> bool:
    """Capitalised throughout, and no sentence: "Mr. Harm, Miss Tovik, and the Ferryman Drive Out to See the Weir"."""
    return 1 < line.words <= TITLE_WORDS and title_case(line.text) and not ends_sentence(line.text)


def wants_title(line: Line) -> bool:
    """The line holds a number, or such a word as "Prologue", and no title."""
    return not line.name.title and (line.name.number is not None or line.name.kind in ALONE)


def _looks_like_title(first: Line, under: Line) -> bool:
    if under.words > TITLE_WORDS or under.mark or under.turn or under.shape.style.startswith(HEAD_STYLES[:2]):
        return False
    if _face(first.shape) == _face(under.shape) and first.weight > 0 and under.weight > 0:
        return True
    shape = under.shape
    if shape.style.startswith(TITLE_STYLES):
        return heads(under)
    set_apart = bool(shape.level) or shape.bold or shape.caps or not shape.italic
    return under.weight > 0 and (set_apart or shape.big) and not _only_bigger(under)


def _only_bigger(line: Line) -> bool:
    """Told text in another size, from another file perhaps: nothing else sets it apart."""
    shape = line.shape
    apart = shape.level or shape.centred or shape.right or shape.bold or shape.italic or shape.caps
    return shape.big and not apart and not heads(line)


def _face(shape: Shape) -> Shape:
    return shape._replace(caps=False, level=0, style="")


def _plain_title(line: Line) -> bool:
    """Also one that is a saying, “It’s Mother!”, if it has a title's capitals."""
    return line.plain and titular(line) and not line.turn and (title_case(line.text) or not is_speech(line.text))


def _titles_are_plain(lines: Sequence[Line], headings: Sequence[Heading], limits: Sequence[int], rank: Rank) -> bool:
    """Most headings of the rank are followed by a short line that could be a title and looks like any other."""
    under = [
        lines[heading.at + 1]
        for heading, limit in zip(headings, limits, strict=True)
        if heading.rank == rank and wants_title(lines[heading.at]) and heading.at + 1 < limit
    ]
    return len(under) > 1 and sum(_plain_title(line) for line in under) >= MOST * len(under)


def _only_head(lines: Sequence[Line], heading: Heading, end: int, limit: int, below: Rank | None) -> bool:
    """Nothing but a few lines stands between a heading and the first of those below it."""
    if below is None or (heading.rank != "part" and (heading.rank, below) != ("chapter", "section")):
        return False
    few = HEAD_WORDS if heading.rank == "part" else SHORT_HEAD_WORDS
    return sum(line.words for line in lines[end:limit]) <= few


def _told(lines: Sequence[Line], start: int, limit: int) -> int:
    """Where the text begins: after the lines under the heading that are set off from it."""
    place = start
    while place < limit and place - start <= HEAD_LINES and _is_head(lines, place, below_head=place > start):
        place += 1
    return place if place - start <= HEAD_LINES else start


def _is_head(lines: Sequence[Line], place: int, *, below_head: bool) -> bool:
    line = lines[place]
    if line.mark or line.turn or line.words > HEAD_WORDS:
        return False
    if line.shape.style.startswith(HEAD_STYLES) or ARGUMENT.fullmatch(line.text):
        return True
    if line.shape.right:
        return below_head and speaks(line.text)
    return (line.weight > 0 and not _only_bigger(line)) or (line.short and _stands_apart(lines, place))


def _stands_apart(lines: Sequence[Line], place: int) -> bool:
    """Extra space above and below a line that is not speech, in a file that has none between paragraphs."""
    line = lines[place]
    below = lines[place + 1] if place + 1 < len(lines) else None
    return line.wide > 0 and below is not None and below.wide > 0 and not speaks(line.text)


def _clean(title: str) -> str:
    return title.strip(" *_").strip()
