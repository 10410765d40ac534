"""Paragraphs that Markdown sets in with `>`, as writers type letters and reports within the story.

CommonMark specification 0.31, section 5.1 (block quotes), but that a line without the sign ends them.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from afterdraft.formats.txt.lines import Line

_SIGN: Final = re.compile(r"(?:>[ \t]?)+")


def unquoted(lines: Sequence[Line]) -> Iterator[Line]:
    """The lines without the sign, and how deep each is set in. A sign alone among others is a blank line between
    paragraphs; by itself it is an ornament and stays."""
    blanks = 0
    for at, line in enumerate(lines):
        sign = _SIGN.match(line.text)
        if sign and not line.text[sign.end() :] and _is_among_others(lines, at):
            blanks += line.blanks + 1
            continue
        if sign and line.text[sign.end() :]:
            depth = sign.group().count(">")
            line = replace(line, text=line.text[sign.end() :], indent=0, depth=depth)
        yield replace(line, blanks=line.blanks + blanks) if blanks else line
        blanks = 0


def _is_among_others(lines: Sequence[Line], at: int) -> bool:
    """Whether a line with the sign and text stands right before or behind, or behind more such signs."""
    before, behind = at - 1, at + 1
    while before >= 0 and not lines[before + 1].blanks and _is_sign(lines[before]):
        before -= 1
    while behind < len(lines) and not lines[behind].blanks and _is_sign(lines[behind]):
        behind += 1
    above = before >= 0 and not lines[before + 1].blanks and lines[before].text.startswith(">")
    below = behind < len(lines) and not lines[behind].blanks and lines[behind].text.startswith(">")
    return above or below


def _is_sign(line: Line) -> bool:
    return bool(_SIGN.fullmatch(line.text))
