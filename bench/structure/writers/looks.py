"""How the looks that a plan names are set, in whatever format."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from bench.structure.writers.plan import Plan, pick

Body = Literal["indent", "tab", "block", "plain", "stray"]
# indent: first lines set in · tab: a typed tab · block: space between paragraphs · plain: nothing at all
# stray: tabs, spaces and indents by turns, some paragraphs in another style or size


@dataclass(frozen=True, slots=True)
class Face:
    """How one look of a plan is set."""

    style: str = ""  # id, as Word's built-in styles have it
    align: str = ""
    bold: bool = False
    italic: bool = False
    size: int = 0  # half-points
    numbered: bool = False

    @property
    def level(self) -> int:
        """1…6 for a heading style."""
        return int(self.style[-1]) if self.style.startswith("Heading") else 0


Faces = Mapping[str, Face]
Table = dict[str, Face]

CENTRED = Face(align="center")
BOLD = Face(align="center", bold=True)
SLANTED = Face(align="center", italic=True)
COMMON: Table = {
    "title": Face(align="center", bold=True, size=40),
    "author": CENTRED,
    "break": CENTRED,
    "head": SLANTED,
    "centred italic": SLANTED,
    "matter title": BOLD,
    "contents title": BOLD,
    "part 1": Face(align="center", bold=True, size=32),
    "part 2": Face(align="center", bold=True, size=28),
    "section": CENTRED,
    "centred": CENTRED,
    "bold": BOLD,
    "bold left": Face(bold=True),
    "another style": Face("Subtitle"),
    "numbered bold": Face(bold=True, numbered=True),
    "numbered 1": Face("Heading1", numbered=True),
    "numbered 2": Face("Heading2", numbered=True),
    "numbered 3": Face("Heading3", numbered=True),
}
BODY: Table = {"title": CENTRED, "author": CENTRED, "break": CENTRED, "head": Face(italic=True)}
# In typed text only what is typed can be seen: where a line stands.
TYPED: Table = {
    **dict.fromkeys(("title", "author", "break", "contents title", "matter title", "centred", "bold"), CENTRED),
    **dict.fromkeys(("centred italic", "part 1", "part 2"), CENTRED),
}


def faces(habit: str, form: str, plan: Plan, key: str) -> Faces:
    """By name of the look. `key` picks what the habit leaves open."""
    if form == "txt":
        return TYPED | ({"section": CENTRED} if habit != "hard-wrapped text" else {})
    if habit in ("styles", "markdown"):
        return COMMON | _styles({line.look for line in plan.lines})
    if habit == "pages and bare numbers":
        return dict.fromkeys(COMMON, Face()) | BODY | {"number": Face(align=pick(("", "center"), key, "number"))}
    if habit == "blank lines only":
        return dict.fromkeys(COMMON, Face())
    return COMMON


def _styles(looks: set[str]) -> Table:
    deepest = 1 + max((n for n in (1, 2) if f"part {n}" in looks), default=0)
    return {
        "title": Face("Title"),
        "author": Face("Subtitle"),
        "matter title": Face(f"Heading{deepest}"),
        "contents title": Face("TOCHeading"),
        "contents": Face("toc1"),
        "part 1": Face("Heading1"),
        "part 2": Face("Heading2"),
        "chapter 1": Face("Heading1"),
        "chapter 2": Face("Heading2"),
        "chapter 3": Face("Heading3"),
        "section": Face(f"Heading{deepest + 1}"),
    }
