"""A plan as rich text (RTF 1.9), as a word processor saves it: a style sheet, and each paragraph's own properties."""

import re

from bench.structure.writers.looks import Body, Face, faces
from bench.structure.writers.plan import Line, Plan, pick

ITALIC = re.compile(r"\*([^*]*)\*")
STYLES = ("Title", "Subtitle", "TOC Heading", "toc 1")
NUMBERS = {"Title": 11, "Subtitle": 12, "TOCHeading": 13, "toc1": 14}
SHEET = "".join(f"{{\\s{n}\\outlinelevel{n - 1} heading {n};}}" for n in range(1, 5))
SHEET += "".join(f"{{\\s{number} {name};}}" for number, name in zip(NUMBERS.values(), STYLES, strict=True))
HEAD = "{\\rtf1\\ansi\\ansicpg1252\\deff0{\\fonttbl{\\f0 Times New Roman;}}{\\stylesheet{\\s0 Normal;}" + SHEET + "}\n"
STRAY_SIZES = (24, 24, 24, 22, 25)  # half-points


def written(plan: Plan, habit: str, body: Body, key: str) -> bytes:
    """The file's bytes."""
    looks = faces(habit, "rtf", plan, key)
    rows = []
    for i, line in enumerate(plan.lines):
        rows += ["\\pard\\plain\\fs24\\par\n"] * (0 if line.page else line.blanks)
        rows.append(_paragraph(line, looks.get(line.look, Face()), body, key, page=line.page and i > 0))
    return (HEAD + "".join(rows) + "}").encode("ascii")


def _paragraph(line: Line, face: Face, body: Body, key: str, *, page: bool) -> str:
    properties, lead, size = "\\qc" * bool(face.align), "", face.size or 24
    if face.style:
        properties += f"\\s{face.level}\\outlinelevel{face.level - 1}" if face.level else f"\\s{NUMBERS[face.style]}"
    elif line.kind in ("story", "matter") and not face.align:
        properties, lead, size = _told(line, body, key)
    properties += "\\pagebb" * page
    letters = f"\\fs{size}" + "\\b" * face.bold + "\\i" * face.italic
    return f"\\pard\\plain{properties}{letters} {lead}{_inner(line)}\\par\n"


def _told(line: Line, body: Body, key: str) -> tuple[str, str, int]:
    """Properties, what is typed first, and the size in half-points."""
    if body == "stray":
        properties, lead = pick((("\\fi720", ""), ("", "\\tab "), ("", "     ")), key, line.text[:60], "lead")
        return properties, lead, pick(STRAY_SIZES, key, line.text[:60], "size")
    if body == "block":
        return "\\sa160", "", 24
    return "\\fi720" * (body == "indent"), "\\tab " * (body == "tab"), 24


def _inner(line: Line) -> str:
    text = "".join(map(_sign, line.text))
    return text if line.kind == "break" else ITALIC.sub(r"{\\i \1}", text)


def _sign(sign: str) -> str:
    if sign in "\\{}":
        return f"\\{sign}"
    if sign == "\n":
        return "\\line "
    if ord(sign) < 128:
        return sign
    return "".join(f"\\u{unit - 65536 * (unit > 32767)}?" for unit in _units(sign))


def _units(sign: str) -> list[int]:
    data = sign.encode("utf-16-le")
    return [int.from_bytes(data[i : i + 2], "little") for i in range(0, len(data), 2)]
