"""Put a reader's remarks and changes (`readers.json`) into the chapters she was given.

The author's own margin comments are taken out first, as an author does before she gives a copy away.
"""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Any

from demo.source import Line, SourceChapter


def copy_of(chapters: Sequence[SourceChapter], remarks: Iterable[dict[str, Any]]) -> tuple[SourceChapter, ...]:
    """The chapters as one reader gave them back. Raises ValueError for words that do not stand once in their scene."""
    scene, lines = 1, [[_bare(line) for line in chapter.lines] for chapter in chapters]
    places: dict[int, list[tuple[int, int]]] = {}
    for chapter, held in enumerate(lines):
        for at, line in enumerate(held):
            scene += line.kind == "mark"
            places.setdefault(scene, []).append((chapter, at))
        scene += 1
    for remark in remarks:
        chapter, at = _place(lines, places[remark["scene"]], remark)
        lines[chapter][at] = _marked(lines[chapter][at], remark)
    return tuple(replace(chapter, lines=tuple(held)) for chapter, held in zip(chapters, lines, strict=True))


def _bare(line: Line) -> Line:
    return replace(line, pieces=tuple(replace(piece, remark="") for piece in line.pieces))


def _place(lines: list[list[Line]], places: list[tuple[int, int]], remark: dict[str, Any]) -> tuple[int, int]:
    found = [(chapter, at) for chapter, at in places if _holds(lines[chapter][at], remark["words"])]
    if len(found) != 1:
        raise ValueError(f"The words of {remark['id']} stand in {len(found)} places: {remark['words']!r}")
    return found[0]


def _holds(line: Line, words: str) -> bool:
    return any(words in piece.text for piece in line.pieces)


def _marked(line: Line, remark: dict[str, Any]) -> Line:
    words = remark["words"]
    at = next(at for at, piece in enumerate(line.pieces) if words in piece.text)
    piece = line.pieces[at]
    before, after = piece.text.split(words, 1)
    held = replace(
        piece, text=words, by=remark["reader"], remark=remark.get("remark", ""), instead=remark.get("instead")
    )
    rest = [replace(piece, text=text) for text in (before, after)]
    pieces = [each for each in (rest[0], held, rest[1]) if each.text]
    return replace(line, pieces=(*line.pieces[:at], *pieces, *line.pieces[at + 1 :]))
