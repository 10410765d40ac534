"""Typed emphasis: `_so_` and `*so*` become runs, and the marks leave the text.

Marks are taken only where they stand in pairs at the edges of words, and only if the file as a whole uses them
so: asterisks of footnotes, multiplication and scene breaks stay. The edges are those of the CommonMark
specification 0.31, section 6.2 (left- and right-flanking), with `*` held to the stricter rule for `_`. Where a file has
many such pairs, part of a word may be marked too, as writers do: `_un_likely`.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from afterdraft.manuscript.blocks import Emphasis, Run

LONGEST: Final = 2000  # characters in one emphasis; a pair farther apart is two strays
MANY: Final = 10  # pairs in a file, from which a mark within a word is emphasis too
_ESCAPED: Final = re.compile(r"\\([*_#+.!\[\](){}>`~\\-])")
_KINDS: Final[dict[int, tuple[Emphasis, ...]]] = {1: ("italic",), 2: ("bold",), 3: ("bold", "italic")}


def _pair(mark: str) -> re.Pattern[str]:
    m = re.escape(mark)
    return re.compile(
        rf"(?<![\w\\{m}])({m}{{1,3}})(?![\s{m}])((?:(?!{m}).){{1,{LONGEST}}})(?<![\s\\])\1(?![\w{m}])", re.S
    )


def _part_of_word(mark: str) -> re.Pattern[str]:
    m = re.escape(mark)
    return re.compile(rf"(?<![\\{m}])({m})(?=[^\W_])([^{m}\n]{{1,40}})(?<=[^\W_])\1(?!{m})")


_PAIRS: Final = {"*": _pair("*"), "_": _pair("_")}
_PARTS: Final = {"*": _part_of_word("*"), "_": _part_of_word("_")}
_ANY: Final = {"*": re.compile(r"(?<!\*)\*{1,3}(?!\*)"), "_": re.compile(r"(?<!_)_{1,3}(?!_)")}
_BREAK: Final = re.compile(r"[\W_]*")


@dataclass(frozen=True, slots=True)
class Marks:
    """Which marks mean emphasis in a file, and which of them within words too."""

    marks: tuple[str, ...]
    within: tuple[str, ...] = ()


def marks(texts: Iterable[str]) -> Marks:
    """Those of which at least two in three stand in pairs."""
    paired = dict.fromkeys(_PAIRS, 0)
    found = dict.fromkeys(_PAIRS, 0)
    for text in texts:
        if _BREAK.fullmatch(text):
            continue
        for mark, pattern in _PAIRS.items():
            if mark in text:
                paired[mark] += sum(1 for _ in pattern.finditer(text))
                found[mark] += sum(1 for _ in _ANY[mark].finditer(text))
    used = tuple(m for m in _PAIRS if paired[m] and 3 * paired[m] >= found[m])
    return Marks(used, tuple(m for m in used if paired[m] >= MANY))


def emphasised(text: str, used: Marks, *, markdown: bool = False) -> tuple[str, tuple[Run, ...]]:
    """`text` without its marks of emphasis, and the runs they stood for.

    >>> emphasised("She *had* known.", Marks(("*",)))
    ('She had known.', (Run(start=4, end=7, kind='italic'),))
    """
    gone: set[int] = set()
    spans: list[tuple[int, int, Emphasis]] = []
    for match in _matches(text, used):
        gone.update(range(match.start(1), match.end(1)), range(match.end(2), match.end()))
        spans.extend((match.start(2), match.end(2), kind) for kind in _KINDS[len(match[1])])
    if markdown:
        gone.update(match.start() for match in _ESCAPED.finditer(text))
    if not gone:
        return text, ()
    return _without(text, gone, spans)


def _matches(text: str, used: Marks) -> Iterator[re.Match[str]]:
    """Pairs at the edges of words first; then, between those, pairs within words."""
    if _BREAK.fullmatch(text):
        return
    for mark in used.marks:
        if mark not in text:
            continue
        edges = list(_PAIRS[mark].finditer(text))
        yield from edges
        if mark in used.within:
            for a, b in pairwise([0, *(i for m in edges for i in m.span()), len(text)]):
                yield from _PARTS[mark].finditer(text, a, b) if (a, b) not in {m.span() for m in edges} else ()


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
