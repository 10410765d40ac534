"""The corpus of slips: whole books as plain manuscripts, slips and controls with their passages.

Imports nothing of the program.
"""

import gzip
import json
from dataclasses import dataclass
from typing import Any

from bench.corpus import CORPUS

FOLDER = CORPUS / "slips"


@dataclass(frozen=True, slots=True)
class Listed:
    """A slip, or a control; only those within one book."""

    id: str
    title: str
    file: str
    kind: str
    quotes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Book:
    title: str
    file: str
    slips: tuple[Listed, ...]
    controls: tuple[Listed, ...]

    def text(self) -> bytes:
        return gzip.decompress((FOLDER / self.file).read_bytes())

    def size(self) -> int:
        """Bytes, packed."""
        return (FOLDER / self.file).stat().st_size


def books() -> tuple[Book, ...]:
    """By title; empty where the corpus folder is missing."""
    if not (FOLDER / "slips.json").exists():
        return ()
    found = json.loads((FOLDER / "slips.json").read_text(encoding="utf-8"))
    slips, controls = (list(map(_listed, filter(_is_whole, found[name]))) for name in ("slips", "controls"))
    titles = sorted({(one.title, one.file) for one in (*slips, *controls)})
    return tuple(
        Book(
            title,
            file,
            tuple(one for one in slips if one.file == file),
            tuple(one for one in controls if one.file == file),
        )
        for title, file in titles
    )


def between_books() -> int:
    """Slips that stand between two books, which no reading of one can show."""
    found = json.loads((FOLDER / "slips.json").read_text(encoding="utf-8"))
    return sum(not _is_whole(one) for one in found["slips"])


def _is_whole(one: dict[str, Any]) -> bool:
    return len(one["files"]) == 1


def _listed(one: dict[str, Any]) -> Listed:
    quotes = tuple(passage["quote"] for passage in one["passages"])
    return Listed(one["id"], one["book"], one["file"], one["kind"], quotes)
