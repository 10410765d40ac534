"""What each paragraph shows of itself: its words, its look against the body text, the gap before it.

Everything is judged against the file's own habits (`Norms`): a blank line means nothing in a file
that parts all its paragraphs by one, centring nothing where all is centred.
"""

import re
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple, TypeVar

from afterdraft.manuscript.blocks import Block, Look
from afterdraft.manuscript.ornament import is_ornament
from afterdraft.manuscript.structure.wording import Name, name

SHORT_WORDS = 20  # a heading, title included, is hardly longer (common practice)
SHORT_LETTERS = 160
LONG_HEADING = 60  # words that a line may have whose style or label says that it is a heading
LONG_TITLE = 45  # words of a title that has capitals throughout: "In Which Mr. Harm, Miss Tovik and …"
LONG_LETTERS = 480
LABEL = re.compile(r"(?i:chapter|part|book|volume|letter)\s+\w+[.:—–-]|([IVXLC]+|\d{1,3})[.:]\s")
QUOTED_TITLE = re.compile(r"[“\"‘'][^.,!?…“”\"]*[”\"’']")
BODY_WORDS = 15  # paragraphs that show what the body text looks like
BIGGER = 1.12  # times the body size: 12 pt body, 14 pt heading (common practice)
PASTED = 0.02  # share of the body's paragraphs from which their size is met in text (common practice)
WIDER = 6.0  # points of space before above the norm that the eye reads as a gap: half a line (common practice)
HEADING_STYLES = ("head", "chapter", "title", "kapitel", "überschrift", "titre", "part")
SMALL_WORDS = frozenset(
    ("about", "after", "before", "between", "from", "into", "over", "than", "that", "through", "under", "upon", "with")
)
OPENERS = "“‘\"'«„—–-"
QUOTED = 40  # characters of a line that are quoted
T = TypeVar("T")


class Shape(NamedTuple):
    """The look of a line, reduced to what headings are told apart by."""

    level: int
    style: str
    centred: bool
    right: bool
    bold: bool
    italic: bool
    caps: bool
    big: bool


@dataclass(frozen=True, slots=True)
class Norms:
    """The file's own habits."""

    body: Shape  # what most words look like
    big: float  # points above which a line's size sets it apart; 0 where sizes are unknown
    blanks: int  # blanks between body paragraphs
    space: float  # points between body paragraphs


@dataclass(frozen=True, slots=True)
class Line:
    index: int
    text: str
    words: int
    short: bool  # short enough for a heading
    mark: bool  # an ornament
    shape: Shape
    plain: bool  # looks like body text
    weight: float  # how much its look sets it apart from body text, as a heading's does; 0 = not at all
    turn: bool  # it begins a page: after a page or section break, or first in its file
    file: bool  # first in a further file
    wide: int  # blanks before it, beyond the norm
    rule: bool
    name: Name  # taken apart, where short; else all title
    label: str  # its automatic number


def read_lines(blocks: Sequence[Block]) -> tuple[Line, ...]:
    """One `Line` for each block."""
    counts = [len(block.text.split()) for block in blocks]
    norms = _norms(blocks, counts)
    after = [0.0, *(block.look.space_after for block in blocks)]
    return tuple(
        _line(index, block, count, norms, above)
        for index, (block, count, above) in enumerate(zip(blocks, counts, after, strict=False))
    )


def uncapped(line: Line) -> Shape:
    """The look, capitals left out: a number has none."""
    return line.shape._replace(caps=False)


def ends_sentence(text: str) -> bool:
    """The text ends as a told sentence does, quotation marks and brackets aside."""
    return text.rstrip("\"'”’»)*_ ").endswith((".", "!", "?", "…"))


def runs_over(text: str) -> bool:
    """The text breaks off amid a sentence, as a full page does."""
    return text[-1:].isalnum() or text.endswith((",", ";", "-"))


def speaks(text: str) -> bool:
    """The text begins as speech does."""
    return text.startswith(tuple(OPENERS))


def is_speech(text: str) -> bool:
    """The text is told speech, and not a title in quotation marks: “Pieces of Eight”."""
    return speaks(text) and not QUOTED_TITLE.fullmatch(text)


def title_case(text: str) -> bool:
    """Every word that is not a small one has a capital."""
    words = [word for word in re.findall(r"[^\W\d_’']+", text) if len(word) > 3 or word[0].isupper()]
    return bool(words) and all(word[0].isupper() or word in SMALL_WORDS for word in words)


def quoted(line: Line) -> str:
    """The line's first words in quotation marks, as a doubt names it."""
    text = " ".join(line.text.split())
    return f"“{text}”" if len(text) <= QUOTED else f"“{text[:QUOTED].rsplit(' ', 1)[0]} …”"


def _line(index: int, block: Block, count: int, norms: Norms, above: float) -> Line:
    text = block.text.strip()
    short = _is_short(block.look, text, count)
    shape = _shape(block.look, text if short else "", norms.big)
    wide = max(0, block.gap.blanks - norms.blanks)
    if not wide and block.look.space_before + above > norms.space + WIDER:
        wide = 1
    return Line(
        index=index,
        text=text,
        words=count,
        short=short,
        mark=short and is_ornament(text),
        shape=shape,
        plain=_is_plain(shape, norms.body),
        weight=_weight(shape, norms.body),
        turn=block.gap.turn != "none" or block.gap.file or index == 0,
        file=block.gap.file,
        wide=wide,
        rule=block.gap.rule,
        name=_name(block, text) if short else Name("none", "", None, None, text),
        label=block.look.label,
    )


def _is_short(look: Look, text: str, count: int) -> bool:
    if count <= SHORT_WORDS and len(text) <= SHORT_LETTERS:
        return True
    if count <= LONG_TITLE and title_case(text) and not ends_sentence(text):
        return True
    return count <= LONG_HEADING and len(text) <= LONG_LETTERS and bool(look.level or look.label or LABEL.match(text))


def _name(block: Block, text: str) -> Name:
    if not block.look.label:
        return name(text)
    label = name(block.look.label)
    if label.number is None:
        return name(text)
    return Name(label.kind, label.word, label.number, label.form, " ".join([*label.title.split(), *text.split()]), ":")


def _shape(look: Look, text: str, big: float) -> Shape:
    return Shape(
        level=look.level or 0,
        style=look.style.casefold(),
        centred=look.align == "center",
        right=look.align == "right",
        bold=look.bold,
        italic=look.italic,
        caps=look.caps or _typed_caps(text),
        big=bool(look.size and big and look.size > big),
    )


def _typed_caps(text: str) -> bool:
    """Capitals that were meant: a numeral, an initial or 'I' is no sign of any."""
    words = re.findall(r"[^\W\d_]+", text) if text.isupper() else []
    return any(len(word) > 2 and not set(word) <= set("IVXLC") for word in words)


def _is_plain(shape: Shape, body: Shape) -> bool:
    return shape._replace(style="") == body._replace(style="")


def _weight(shape: Shape, body: Shape) -> float:
    """Chosen by hand: a heading style says most; centring, weight, size and capitals one each; slope a half."""
    total = 3.0 * bool(shape.level and not body.level)
    if not shape.level and shape.style != body.style and shape.style.startswith(HEADING_STYLES):
        total += 2.0
    for mine, theirs in ((shape.centred, body.centred), (shape.bold, body.bold), (shape.caps, body.caps)):
        total += mine and not theirs
    return total + (shape.big and not body.big) + 0.5 * (shape.italic and not body.italic)


def _norms(blocks: Sequence[Block], counts: Sequence[int]) -> Norms:
    big = _big(blocks, counts)
    body = _commonest((_shape(block.look, "", big), count) for block, count in zip(blocks, counts, strict=True))
    pairs = [
        (before, block)
        for before, block, first, second in zip(blocks, blocks[1:], counts, counts[1:], strict=False)
        if first >= BODY_WORDS and second >= BODY_WORDS
    ] or list(pairwise(blocks))
    return Norms(
        body=body or _shape(Look(), "", big),
        big=big,
        blanks=_commonest((block.gap.blanks, 1) for _, block in pairs) or 0,
        space=_commonest((before.look.space_after + block.look.space_before, 1) for before, block in pairs) or 0.0,
    )


def _big(blocks: Sequence[Block], counts: Sequence[int]) -> float:
    """Above the commonest size, and above any that told paragraphs have as well: those were pasted in so."""
    sizes: Counter[float] = Counter()
    told: Counter[float] = Counter()
    for block, count in zip(blocks, counts, strict=True):
        sizes[block.look.size or 0.0] += count
        told[block.look.size or 0.0] += count >= BODY_WORDS
    usual = max(sizes, key=sizes.__getitem__, default=0.0)
    pasted = [size for size, number in told.items() if number > PASTED * told.total()]
    return max([usual * BIGGER, *pasted]) if usual else 0.0


def _commonest(weighed: Iterable[tuple[T, int]]) -> T | None:
    totals: Counter[T] = Counter()
    for value, weight in weighed:
        totals[value] += weight
    return max(totals, key=totals.__getitem__) if totals else None
