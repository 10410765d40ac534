"""A plan as a web page, and its pieces for an e-book: looks as style sheet and tags, as word processors save them."""

import re
from html import escape

from bench.structure.writers.looks import Body, Face, Faces, faces
from bench.structure.writers.plan import Line, Plan

ITALIC = re.compile(r"\*([^*]*)\*")
STYLES: dict[Body, str] = {
    "indent": "p { margin: 0; text-indent: 1.5em }",
    "tab": "p { margin: 0 }",
    "block": "p { margin: 0 0 1em 0 }",
    "plain": "p { margin: 0 }",
    "stray": "p { margin: 0 }",
}
SHEET = ".centred { text-align: center; text-indent: 0 } .page { page-break-before: always }"
SIZES = {40: "x-large", 32: "large", 28: "large"}


def sheet(body: Body) -> str:
    return f"{STYLES[body]} {SHEET}"


def written(plan: Plan, habit: str, body: Body, key: str) -> bytes:
    """The whole page."""
    looks = faces(habit, "html", plan, key)
    rows = "\n".join(paragraph(line, looks, first=i == 0) for i, line in enumerate(plan.lines))
    return (
        f'<!DOCTYPE html>\n<html>\n<head>\n<meta charset="utf-8">\n<title>{escape(key)}</title>\n'
        f"<style>{sheet(body)}</style>\n</head>\n<body>\n{rows}\n</body>\n</html>\n"
    ).encode()


def paragraph(line: Line, looks: Faces, *, first: bool) -> str:
    """One element, with the empty paragraphs before it; a page's turn where the line begins one, but for the first."""
    face = looks.get(line.look, Face())
    classes = " ".join(["centred"] * bool(face.align) + ["page"] * (line.page and not first))
    classes = f"{face.style} {classes}".strip() if face.style and not face.level else classes
    tag = f"h{face.level}" if face.level else "p"
    blanks = "<p>&nbsp;</p>\n" * (0 if line.page else line.blanks)
    attribute = f' class="{classes}"' if classes else ""
    return f"{blanks}<{tag}{attribute}>{_inner(line, face)}</{tag}>"


def _inner(line: Line, face: Face) -> str:
    text = escape(line.text, quote=False).replace("\n", "<br/>")
    if line.kind != "break":
        text = ITALIC.sub(r"<i>\1</i>", text)
    if face.size in SIZES:
        text = f'<span style="font-size: {SIZES[face.size]}">{text}</span>'
    text = f"<b>{text}</b>" if face.bold else text
    return f"<i>{text}</i>" if face.italic else text
