"""How a draft is divided: parts, chapters, scenes, front and back matter.

The text itself never changes; the division is the writer's to correct. Every unit begins at a
paragraph (`at`, counted over the whole file, front matter included) and runs to the next unit's
beginning. A scene's first paragraphs may be its chapter's heading or its own break mark: what each
paragraph *is* stands in `roles`.
"""

from dataclasses import dataclass, field
from typing import Literal

Role = Literal["story", "heading", "head", "mark", "matter"]
# story: told text · heading: line that names a part, chapter or section · head: further lines under a
# heading (argument, epigraph, "Jonathan's Journal") · mark: a typed scene break · matter: front or back matter

ChapterKind = Literal["chapter", "prologue", "epilogue", "interlude", "letter", "other"]
Began = Literal["heading", "mark", "space", "page", "none"]
MatterKind = Literal["title page", "dedication", "epigraph", "contents", "preface", "other"]
Where = Literal["front", "back"]


@dataclass(frozen=True, slots=True)
class Part:
    id: str
    at: int  # its heading paragraph
    title: str  # as printed, e.g. "PART TWO: The Crossing"


@dataclass(frozen=True, slots=True)
class Chapter:
    id: str
    at: int  # its heading paragraph, or its first story paragraph where it has none
    part: str | None  # id of its part
    kind: ChapterKind
    number: int | None  # as printed (words and roman numerals read), None where none is printed
    title: str  # without the number: "The Ferry"; "" where it has none
    head: tuple[str, ...] = ()  # further lines of the heading


@dataclass(frozen=True, slots=True)
class Scene:
    id: str
    at: int  # first paragraph, its break mark or the chapter heading included
    code: str = ""  # short, unchanging, printed everywhere; "" until the book gives one
    began: Began = "none"  # how its beginning was recognised
    sure: float = 1.0  # 0…1
    title: str = ""  # the file's own section heading, or the writer's; "" → its first words are shown


@dataclass(frozen=True, slots=True)
class Matter:
    id: str
    at: int
    where: Where
    kind: MatterKind


Reading = Literal["part", "chapter", "scene", "mark", "text", "front matter", "back matter"]
# what a paragraph can be taken for: the heading of a part, of a chapter, the beginning of a scene, a typed break, …


@dataclass(frozen=True, slots=True)
class Doubt:
    """A decision the program was unsure of, with the other reading, for one-key correction."""

    what: str  # a plain sentence without the line's own words: doubts that say the same are one question
    paragraph: int
    chosen: Reading
    other: Reading


@dataclass(frozen=True, slots=True)
class Division:
    """All units, each tuple in order of `at`. `roles` has one entry per paragraph of the draft."""

    parts: tuple[Part, ...] = ()
    chapters: tuple[Chapter, ...] = ()
    scenes: tuple[Scene, ...] = ()
    matter: tuple[Matter, ...] = ()
    roles: tuple[Role, ...] = field(default=())
