"""The novels of the dialogue corpus (PDNC), for evaluation only: their paragraphs, people and quotations.

Paragraphs are unwrapped and freed of the marks of italics; each keeps where its characters stand in the file.
Imports nothing of the program.
"""

import json
import re
from dataclasses import dataclass
from typing import Any

from bench.corpus import CORPUS

FOLDER = CORPUS / "pdnc"
HEADING = re.compile(r"^(chapter|book|part|volume|vol\.)\b.{0,60}$|^[ivxlc]+\.?$|^\d+\.?$", re.IGNORECASE)
NOBODY = ("_group", "_unknowable", "_narr")  # speakers that are no one person


@dataclass(frozen=True, slots=True)
class Paragraph:
    text: str
    raw: tuple[int, ...]  # offset in the file of each character


@dataclass(frozen=True, slots=True)
class Character:
    id: int
    name: str
    aliases: tuple[str, ...]
    gender: str  # M, F, U, X
    category: str  # major, intermediate, minor


@dataclass(frozen=True, slots=True)
class Quotation:
    spans: tuple[tuple[int, int], ...]  # in the file
    speaker: int
    kind: str  # Explicit, Anaphoric, Implicit, ""


@dataclass(frozen=True, slots=True)
class Novel:
    slug: str
    title: str
    chapters: tuple[tuple[Paragraph, ...], ...]
    characters: tuple[Character, ...]
    quotations: tuple[Quotation, ...]


def titles() -> dict[str, str]:
    """Title by slug; empty where the corpus folder is missing."""
    index = FOLDER / "index.json"
    return {one["novel"]: one["title"] for one in json.loads(index.read_text("utf-8"))} if index.exists() else {}


def novel(slug: str) -> Novel:
    found: dict[str, Any] = json.loads((FOLDER / f"{slug}.json").read_text("utf-8"))
    return Novel(
        slug=slug,
        title=found["title"],
        chapters=chapters((FOLDER / f"{slug}.txt").read_text("utf-8")),
        characters=tuple(
            Character(c["id"], c["name"], tuple(dict.fromkeys([c["name"], *c["aliases"]])), c["gender"], c["category"])
            for c in found["characters"]
        ),
        quotations=tuple(
            Quotation(tuple((a, b) for a, b in q["spans"]), q["speaker_id"], q["type"] or "")
            for q in found["quotations"]
        ),
    )


def chapters(text: str) -> tuple[tuple[Paragraph, ...], ...]:
    """Of a plain manuscript with blank lines between paragraphs, divided by its headings."""
    found: list[list[Paragraph]] = [[]]
    for match in re.finditer(r"\S(?:.*\n?(?!\s*\n))*.*", text):
        paragraph = _paragraph(match.group(), match.start())
        if HEADING.match(paragraph.text):
            found.append([])
        elif paragraph.text:
            found[-1].append(paragraph)
    return tuple(tuple(chapter) for chapter in found if chapter)


def _paragraph(text: str, start: int) -> Paragraph:
    kept: list[tuple[str, int]] = []
    for place, sign in enumerate(text, start):
        if sign == "_" or (sign.isspace() and (not kept or kept[-1][0] == " ")):
            continue
        kept.append((" " if sign.isspace() else sign, place))
    return Paragraph("".join(sign for sign, _ in kept).rstrip(), tuple(place for _, place in kept))
