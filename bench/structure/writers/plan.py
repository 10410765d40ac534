"""What stands in a test manuscript, line by line, and what each line is.

A habit turns a novel into a plan; a plan is written out as a file, and read as the expectation. So what is
expected is exactly what was written: a title that a habit does not write is not expected.
"""

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal, TypeVar

from bench.corpus import Chapter, Novel, Part

Kind = Literal[
    "title page",
    "matter title",
    "matter",
    "contents",
    "part",
    "chapter",
    "head",
    "section",
    "break",
    "story",
    "furniture",  # a running head or a page number, typed into the text
]
T = TypeVar("T")

ONES = (
    "", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
    "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
)  # fmt: skip
TENS = ("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")


@dataclass(frozen=True, slots=True)
class Line:
    """One paragraph to be written. Italics are `*…*`."""

    kind: Kind
    text: str
    look: str = "plain"  # a name that the habit's page knows
    label: str = ""  # automatic number, printed before the text but no part of it
    number: int | None = None  # of the label
    page: bool = False  # on a new page
    blanks: int = 0  # empty lines before
    neutral: bool = False  # may be read as front matter or as story: both are right
    opens: int | None = None  # a chapter begins here: its index in `Plan.chapters`
    scene: bool = False  # a scene begins here that does not begin a chapter


@dataclass(frozen=True, slots=True)
class Expected:
    """A chapter as it is written in the file."""

    number: int | None
    titles: frozenset[str]  # any of these is right; "" where none is written
    parts: frozenset[str]  # likewise the part it stands in, "" for none
    head: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Plan:
    lines: tuple[Line, ...]
    chapters: tuple[Expected, ...]
    levels: bool = True  # False: nothing in the file tells chapters from scenes


def pick(options: Sequence[T], *key: str) -> T:
    """One of the options, always the same for the same key."""
    digest = hashlib.sha256("\n".join(key).encode()).digest()
    return options[int.from_bytes(digest[:4]) % len(options)]


def bare(text: str) -> str:
    """Without the marks of italics."""
    return text.replace("*", "")


def word(chapter: Chapter) -> str:
    return chapter.label or "Chapter"


def parts_of(novel: Novel, index: int) -> frozenset[str]:
    """The titles that are right for the part of a chapter: the one whose heading came last, or the corpus's own."""
    chapter = novel.chapters[index]
    if chapter.part is None:
        return frozenset([""])
    last = max(p.part for p in novel.chapters[: index + 1] if p.part is not None)
    return frozenset(bare(whole(novel.parts[i])) for i in {chapter.part, last})


def whole(part: Part) -> str:
    return f"{part.title}: {part.subtitle}" if part.subtitle else part.title


def new_parts(novel: Novel, index: int) -> list[Part]:
    """The parts whose headings stand before a chapter, outer first."""
    seen = {i for chapter in novel.chapters[:index] for i in _nest(novel, chapter.part)}
    return [novel.parts[i] for i in _nest(novel, novel.chapters[index].part) if i not in seen]


def _nest(novel: Novel, part: int | None) -> list[int]:
    return [] if part is None else [*_nest(novel, novel.parts[part].parent), part]


def cardinal(number: int) -> str:
    """In words, 1 to 99: "twenty-one"."""
    if number < 20:
        return ONES[number]
    return TENS[number // 10] + (f"-{ONES[number % 10]}" if number % 10 else "")


def roman(number: int) -> str:
    out = ""
    for value, sign in (
        (100, "C"),
        (90, "XC"),
        (50, "L"),
        (40, "XL"),
        (10, "X"),
        (9, "IX"),
        (5, "V"),
        (4, "IV"),
        (1, "I"),
    ):
        while number >= value:
            out, number = out + sign, number - value
    return out
