"""A plan as a file of typed text."""

import textwrap
from dataclasses import dataclass

from bench.structure.writers.looks import Face, Faces, faces
from bench.structure.writers.plan import Line, Plan, pick

WIDTH = 72


@dataclass(frozen=True, slots=True)
class Layout:
    """`tight`: paragraphs are parted by their indents, and not by blank lines."""

    wrapped: bool
    tight: bool


WRAPPED, TYPED = Layout(wrapped=True, tight=False), Layout(wrapped=True, tight=True)
LONG, TABBED = Layout(wrapped=False, tight=False), Layout(wrapped=False, tight=True)


def written(plan: Plan, habit: str, key: str) -> bytes:
    """The file. How paragraphs are set, and the encoding, is picked by `key`."""
    if habit == "hard-wrapped text":
        layout = pick((WRAPPED, WRAPPED, TYPED), key, "indent")
    elif habit == "typed running heads":
        layout = pick((WRAPPED, TYPED), key, "indent")
    else:
        layout = pick((WRAPPED, TYPED, LONG, TABBED), key, habit, "layout")
    looks = faces(habit, "txt", plan, key)
    out: list[str] = []
    for before, line in zip((None, *plan.lines), plan.lines, strict=False):
        out += [""] * _blanks(before, line, layout)
        out += _set(line, layout, looks)
    text = "\r\n".join(out) + "\r\n"
    if pick((True, False), key, "encoding"):
        try:
            return text.encode("cp1252")
        except UnicodeEncodeError:
            pass  # the book has a character that Windows-1252 lacks
    return text.encode("utf-8")


def _blanks(before: Line | None, line: Line, layout: Layout) -> int:
    if before is None:
        return line.blanks
    if line.page:
        return 3
    if line.kind == "story" and (line.scene or line.opens is not None) and line.blanks == 1:
        return 1 if layout.tight else 2  # the blank line is the break
    if line.opens is not None:
        return 2
    flowing = before.kind == line.kind and line.kind in ("story", "matter")
    return 0 if layout.tight and flowing and not line.blanks else 1


def _set(line: Line, layout: Layout, looks: Faces) -> list[str]:
    text = line.text.replace("*", "_") if line.kind != "break" else line.text
    if looks.get(line.look, Face()).align:
        return [piece.center(WIDTH).rstrip() for row in text.split("\n") for piece in textwrap.wrap(row, WIDTH - 16)]
    if line.look in ("contents", "furniture"):
        return [text]
    told = line.kind in ("story", "matter")
    if "\n" in text:
        return _verse(text, layout)
    if not layout.wrapped:
        return ["\t" * (layout.tight and told) + text]
    return textwrap.wrap(text, WIDTH, initial_indent="    " * (layout.tight and told), break_long_words=False)


def _verse(text: str, layout: Layout) -> list[str]:
    if not layout.wrapped:
        return [("\t\t" if layout.tight else "") + row for row in text.split("\n")]
    lead = " " * (12 if layout.tight else 4)
    return [
        piece
        for row in text.split("\n")
        for piece in textwrap.wrap(row, WIDTH, initial_indent=lead, subsequent_indent=lead + "  ")
    ]
