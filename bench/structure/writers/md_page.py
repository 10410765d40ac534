"""A plan as text with Markdown's signs, as writers type them: nothing is escaped."""

from bench.structure.writers.looks import Face, Faces, faces
from bench.structure.writers.plan import Line, Plan, pick


def written(plan: Plan, habit: str, form: str, key: str) -> bytes:
    """The file. Whether the book's title is a heading above all others is picked by `key`."""
    looks = faces(habit, "md", plan, key)
    headed = any(looks.get(line.look, Face()).level for line in plan.lines)
    over = pick((0, 1), key, "title") if headed else 1  # a title that alone stands over the text is marked as one
    end = "\\\n" if form == "md" else "\n"  # what ends a line within a paragraph
    return "\n\n".join(_set(line, looks, over).replace("\n", end) for line in plan.lines).encode() + b"\n"


def _set(line: Line, looks: Faces, over: int) -> str:
    face = looks.get(line.look, Face())
    if line.kind == "break":
        return line.text
    if face.level or (face.style == "Title" and over):
        return "#" * (face.level + over) + " " + " ".join(line.text.split("\n"))
    text = line.text
    heads = line.kind in ("title page", "chapter", "part", "section") and (face.bold or face.align)
    if heads:
        return f"**{text.replace('*', '')}**"
    return f"*{text.replace('*', '')}*" if face.italic else text
