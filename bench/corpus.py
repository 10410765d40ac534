"""The novels of the corpus folder beside the checkout, with their true divisions. Imports nothing of the program."""

import gzip
import json
import os
from dataclasses import dataclass
from pathlib import Path
from typing import Any

CORPUS = Path(os.environ.get("AFTERDRAFT_CORPUS", Path(__file__).parents[2] / "shared" / "corpus"))


@dataclass(frozen=True, slots=True)
class Front:
    kind: str
    title: str
    fiction: bool  # told by someone within the story: a matter of taste whether it is front matter
    text: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Part:
    title: str
    subtitle: str
    head: tuple[str, ...]
    parent: int | None


@dataclass(frozen=True, slots=True)
class Break:
    kind: str  # start, hr, hr-inset, section
    heading: str


@dataclass(frozen=True, slots=True)
class Chapter:
    number: int | None
    title: str
    subtitle: str
    label: str
    kind: str
    head: tuple[str, ...]
    part: int | None
    scenes: tuple[tuple[str, ...], ...]  # paragraphs; italics as *…*, lines parted by newlines
    breaks: tuple[Break, ...]  # how each scene begins


@dataclass(frozen=True, slots=True)
class Novel:
    slug: str
    title: str
    author: str
    front: tuple[Front, ...]
    parts: tuple[Part, ...]
    chapters: tuple[Chapter, ...]


def paths() -> list[Path]:
    """The novels' files, by name; empty where the corpus folder is missing."""
    folder = CORPUS / "structure"
    return sorted(path for path in folder.glob("*.json*") if path.name != "index.json")


def slug(path: Path) -> str:
    return path.name.removesuffix(".gz").removesuffix(".json")


def novel(path: Path) -> Novel:
    data = path.read_bytes()
    found: dict[str, Any] = json.loads(gzip.decompress(data) if path.suffix == ".gz" else data)
    return Novel(
        slug=slug(path),
        title=found["title"],
        author=found["author"],
        front=tuple(
            Front(f["kind"], f["title"] or "", bool(f.get("fiction")), tuple(f["text"])) for f in found["front"]
        ),
        parts=tuple(
            Part(p["title"], p.get("subtitle") or "", tuple(p.get("head") or ()), p["parent"]) for p in found["parts"]
        ),
        chapters=tuple(map(_chapter, found["chapters"])),
    )


def _chapter(found: dict[str, Any]) -> Chapter:
    return Chapter(
        number=found["number"],
        title=found["title"] or "",
        subtitle=found.get("subtitle") or "",
        label=found.get("label") or "",
        kind=found["kind"],
        head=tuple(found.get("head") or ()),
        part=found["part"],
        scenes=tuple(tuple(scene) for scene in found["scenes"]),
        breaks=tuple(Break(b["kind"], b.get("heading") or "") for b in found["breaks"]),
    )
