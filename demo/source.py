"""Read the demonstration's chapter files (`first/NN-*.txt`); the markup is told in README.md."""

import re
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

Heading = Literal["styled", "centred"]
Mark = Literal["#", "***", "missing"]
Kind = Literal["text", "letter", "mark"]

BREAKS = ("#", "***", "@missing")
_HEADING = re.compile(r"@(styled|centred) (Chapter (\S+): (.+))")
_PIECE = re.compile(r"\*(?P<italic>[^*]+)\*|\[\[(?P<held>.+?)\|\|(?P<remark>.+?)\]\]|(?P<plain>(?:(?!\[\[)[^*])+)")


@dataclass(frozen=True, slots=True)
class Piece:
    """A stretch of a paragraph: plain, italic, or held by a margin comment."""

    text: str
    italic: bool = False
    remark: str = ""
    by: str = ""  # the reader whose remark or change it is; "" for the author's own
    instead: str | None = None  # what the reader would have in its place, as a tracked change


@dataclass(frozen=True, slots=True)
class Line:
    """A paragraph of the source, or a scene break."""

    kind: Kind
    pieces: tuple[Piece, ...] = ()
    mark: Mark = "#"

    @property
    def text(self) -> str:
        """The words as a reader sees them, markup gone."""
        return "".join(piece.text for piece in self.pieces)


@dataclass(frozen=True, slots=True)
class SourceChapter:
    heading: Heading
    line: str  # the whole heading: "Chapter One: Dirt"
    title: str
    tabs: bool  # paragraphs are indented with a typed tab
    lines: tuple[Line, ...]


def read_chapters(folder: Path) -> tuple[SourceChapter, ...]:
    """All chapter files of `folder`, in the order of their names."""
    return tuple(parse(path.read_text(encoding="utf-8")) for path in sorted(folder.glob("*.txt")))


def scene_texts(folder: Path) -> tuple[str, ...]:
    """The source of each scene of the book, in order, breaks and chapter headings left out."""
    return tuple(scene for path in sorted(folder.glob("*.txt")) for scene in _split(path.read_text(encoding="utf-8")))


def _split(text: str) -> list[str]:
    scenes: list[list[str]] = [[]]
    for part in parts(text)[1:]:
        if part in BREAKS:
            scenes.append([])
        else:
            scenes[-1].append(part)
    return ["\n\n".join(scene) for scene in scenes]


def parts(text: str) -> list[str]:
    """A source text's paragraphs, markup and all."""
    return [part.strip() for part in text.strip().split("\n\n")]


def plain(part: str) -> str:
    """A paragraph of the source as a reader sees it."""
    return _line(part).text


def parse(text: str) -> SourceChapter:
    """One chapter file. Raises ValueError where the first line is no heading."""
    head, *rest = parts(text)
    first, *options = head.splitlines()
    match = _HEADING.fullmatch(first)
    if match is None:
        raise ValueError(f"A chapter file begins with @styled or @centred and a heading; this one begins {first!r}.")
    return SourceChapter(
        heading="styled" if match[1] == "styled" else "centred",
        line=match[2],
        title=match[4],
        tabs="@tabs" in options,
        lines=tuple(_line(part) for part in rest),
    )


def _line(part: str) -> Line:
    if part in ("#", "***"):
        return Line("mark", mark="#" if part == "#" else "***")
    if part == "@missing":
        return Line("mark", mark="missing")
    if part.startswith("> "):
        return Line("letter", _pieces(part.removeprefix("> ").replace("\n", " ")))
    return Line("text", _pieces(part.replace("\n", " ")))


def _pieces(text: str) -> tuple[Piece, ...]:
    return tuple(_piece(match) for match in _PIECE.finditer(text))


def _piece(match: re.Match[str]) -> Piece:
    if match["italic"]:
        return Piece(match["italic"], italic=True)
    if match["held"]:
        return Piece(match["held"], remark=match["remark"])
    return Piece(match["plain"])
