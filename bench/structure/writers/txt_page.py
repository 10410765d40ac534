"""A plan as a hard-wrapped text file."""

import textwrap

from bench.structure.writers.plan import Line, Plan, pick

WIDTH = 72
CENTRED = {"title", "author", "break", "contents title", "matter title", "centred italic", "part 1", "part 2"}


def written(plan: Plan, key: str) -> bytes:
    """The file. Whether paragraphs are parted by blank lines or by indents, and the encoding, is picked by `key`."""
    indented = pick((False, False, True), key, "indent")
    out: list[str] = []
    for before, line in zip((None, *plan.lines), plan.lines, strict=False):
        out += [""] * _blanks(before, line, indented=indented)
        out += _set(line, indented=indented)
    text = "\r\n".join(out) + "\r\n"
    if pick((True, False), key, "encoding"):
        try:
            return text.encode("cp1252")
        except UnicodeEncodeError:
            pass  # the book has a character that Windows-1252 lacks
    return text.encode("utf-8")


def _blanks(before: Line | None, line: Line, *, indented: bool) -> int:
    if before is None:
        return line.blanks
    if line.page:
        return 3
    flowing = before.kind == line.kind and line.kind in ("story", "matter")
    return 0 if indented and flowing and not line.blanks else 1


def _set(line: Line, *, indented: bool) -> list[str]:
    text = line.text.replace("*", "_") if line.kind != "break" else line.text
    if line.look in CENTRED:
        return [piece.center(WIDTH).rstrip() for row in text.split("\n") for piece in textwrap.wrap(row, WIDTH - 16)]
    if line.look == "contents":
        return [text]
    if "\n" in text:
        lead = " " * (12 if indented else 4)
        return [
            piece
            for row in text.split("\n")
            for piece in textwrap.wrap(row, WIDTH, initial_indent=lead, subsequent_indent=lead + "  ")
        ]
    first = "    " if indented and line.kind in ("story", "matter") else ""
    return textwrap.wrap(text, WIDTH, initial_indent=first, break_long_words=False)
