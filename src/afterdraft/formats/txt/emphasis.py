"""Typed emphasis: `_so_` and `*so*` become runs, and the marks leave the text.

Marks are taken only where they stand in pairs at the edges of words, and only if the file as a whole uses them
so: asterisks of footnotes, multiplication and scene breaks stay. The edges are those of the CommonMark
specification 0.31, section 6.2 (left- and right-flanking), with `*` held to the stricter rule for `_`.
"""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from afterdraft.manuscript.blocks import Emphasis, Run

LONGEST: Final = 2000  # characters in one emphasis; a pair farther apart is two strays
_ESCAPED: Final = re.compile(r"\\([*_#+.!\[\](){}>`~\\-])")
_KINDS: Final[dict[int, tuple[Emphasis, ...]]] = {1: ("italic",), 2: ("bold",), 3: ("bold", "italic")}


def _pair(mark: str) -> re.Pattern[str]:
    m = re.escape(mark)
    return re.compile(
        rf"(?<![\w\\{m}])({m}{{1,3}})(?![\s{m}])((?:(?!{m}).){{1,{LONGEST}}})(?<![\s\\])\1(?![\w{m}])", re.S
    )


_PAIRS: Final = {"*": _pair("*"), "_": _pair("_")}
_ANY: Final = {"*": re.compile(r"(?<!\*)\*{1,3}(?!\*)"), "_": re.compile(r"(?<!_)_{1,3}(?!_)")}
_BREAK: Final = re.compile(r"[\W_]*")


@dataclass(frozen=True, slots=True)
class Marks:
    """Which marks mean emphasis in a file."""

    marks: tuple[str, ...]


def marks(texts: Iterable[str]) -> Marks:
    """Those whose pairs outnumber the marks that have no partner."""
    paired = dict.fromkeys(_PAIRS, 0)
    found = dict.fromkeys(_PAIRS, 0)
    for text in texts:
        if _BREAK.fullmatch(text):
            continue
        for mark, pattern in _PAIRS.items():
            if mark in text:
                paired[mark] += sum(1 for _ in pattern.finditer(text))
                found[mark] += sum(1 for _ in _ANY[mark].finditer(text))
    return Marks(tuple(m for m in _PAIRS if paired[m] and 3 * paired[m] > found[m]))


def emphasised(text: str, used: Marks, *, markdown: bool = False) -> tuple[str, tuple[Run, ...]]:
    """`text` without its marks of emphasis, and the runs they stood for.

    >>> emphasised("She *had* known.", Marks(("*",)))
    ('She had known.', (Run(start=4, end=7, kind='italic'),))
    """
    gone: set[int] = set()
    spans: list[tuple[int, int, Emphasis]] = []
    if not _BREAK.fullmatch(text):
        for mark in used.marks:
            for match in _PAIRS[mark].finditer(text) if mark in text else ():
                gone.update(range(match.start(1), match.end(1)), range(match.end(2), match.end()))
                spans.extend((match.start(2), match.end(2), kind) for kind in _KINDS[len(match[1])])
    if markdown:
        gone.update(match.start() for match in _ESCAPED.finditer(text))
    if not gone:
        return text, ()
    return _without(text, gone, spans)


def _without(text: str, gone: set[int], spans: list[tuple[int, int, Emphasis]]) -> tuple[str, tuple[Run, ...]]:
    cuts = sorted(gone)
    kept = "".join(text[a + 1 : b] for a, b in zip([-1, *cuts], [*cuts, len(text)], strict=True))
    places = [0] * (len(text) + 1)
    dropped = 0
    for i in range(len(text) + 1):
        places[i] = i - dropped
        dropped += i in gone
    runs = (Run(places[a], places[b], kind) for a, b, kind in sorted(spans))
    return kept, tuple(run for run in runs if run.start < run.end)
