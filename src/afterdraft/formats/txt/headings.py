"""Headings typed with Markdown's signs: `# Title`, and lines underlined with `===` or `---`.

CommonMark specification 0.31, sections 4.2 (ATX headings) and 4.3 (setext headings). In a plain text file the signs
count only where several lines carry them: a lone `#` is a scene break.
"""

import itertools
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from afterdraft.formats.txt.lines import Line

SEVERAL: Final = 2

_ATX: Final = re.compile(r"(#{1,6})[ \t]+(\S.*?)(?:[ \t]+#+)?")
_UNDERLINE: Final = re.compile(r"(=+|-+)")


@dataclass(frozen=True, slots=True)
class Stretch:
    """Lines that belong together: a heading, or all the lines up to the next."""

    lines: tuple[Line, ...]
    title: str = ""
    level: int | None = None  # 1…6 for a heading


def stretches(lines: Sequence[Line], *, markdown: bool) -> Iterator[Stretch]:
    """The headings that carry a sign, and what stands between them, in order."""
    found = _found(lines, markdown=markdown)
    start = 0
    for at, (title, level, length) in sorted(found.items()):
        if at > start:
            yield Stretch(tuple(lines[start:at]))
        yield Stretch(tuple(lines[at : at + length]), title, level)
        start = at + length
    if start < len(lines):
        yield Stretch(tuple(lines[start:]))


def _found(lines: Sequence[Line], *, markdown: bool) -> dict[int, tuple[str, int, int]]:
    """By index of the first line: title, level, how many lines."""
    hashed = {i: (*sign, 1) for i, line in enumerate(lines) if (sign := _hashed(line))}
    ruled = {
        i: (title.text, level, 2)
        for i, (title, under) in enumerate(itertools.pairwise(lines))
        if (i == 0 or title.blanks or title.turn) and (level := _underlined(title, under))
    }
    return {at: sign for kind in (hashed, ruled) if markdown or len(kind) >= SEVERAL for at, sign in kind.items()}


def _hashed(line: Line) -> tuple[str, int] | None:
    match = _ATX.fullmatch(line.text)
    return (match[2], len(match[1])) if match and line.indent <= 3 else None


def _underlined(title: Line, under: Line) -> int | None:
    """The level of a line underlined by the next. The underline must be about as long as the title: Markdown allows
    any length, writers do not."""
    match = _UNDERLINE.fullmatch(under.text)
    if not match or under.blanks or under.turn or len(under.text) < 3:
        return None
    if abs(len(under.text) - len(title.text)) > max(3, len(title.text) // 4) or not any(map(str.isalnum, title.text)):
        return None
    return 1 if under.text[0] == "=" else 2
