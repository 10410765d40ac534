"""A plan as an OpenDocument text (OASIS OpenDocument 1.3), its looks as automatic styles."""

import re
from collections.abc import Iterator
from xml.sax.saxutils import escape, quoteattr

from bench.structure.writers.epub_page import zipped
from bench.structure.writers.looks import Body, Face, faces
from bench.structure.writers.plan import Line, Plan, pick

ITALIC = re.compile(r"\*([^*]*)\*")
NAMES = " ".join(
    f'xmlns:{short}="urn:oasis:names:tc:opendocument:xmlns:{name}:1.0"'
    for short, name in (("office", "office"), ("text", "text"), ("style", "style"), ("manifest", "manifest"))
)
NAMES += ' xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"'
MIME = "application/vnd.oasis.opendocument.text"
MANIFEST = (
    f'<?xml version="1.0"?><manifest:manifest {NAMES} manifest:version="1.3">'
    f'<manifest:file-entry manifest:full-path="/" manifest:media-type="{MIME}"/>'
    '<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>'
)
STRAY_SIZES = (0, 0, 0, 22, 25)  # half-points
PARENTS = {"Title": "Title", "Subtitle": "Subtitle", "TOCHeading": "Contents_20_Heading", "toc1": "Contents_20_1"}


def written(plan: Plan, habit: str, body: Body, key: str) -> bytes:
    """The file's bytes, the same at every run."""
    looks = faces(habit, "odt", plan, key)
    styles: dict[str, str] = {}
    rows = []
    for i, line in enumerate(plan.lines):
        face = looks.get(line.look, Face())
        rows += ["<text:p/>"] * (0 if line.page else line.blanks)
        rows.append(_paragraph(line, face, body, key, styles, page=line.page and i > 0))
    content = (
        f'<?xml version="1.0" encoding="UTF-8"?><office:document-content {NAMES} office:version="1.3">'
        f"<office:automatic-styles>{''.join(_styles(styles))}</office:automatic-styles>"
        f"<office:body><office:text>{''.join(rows)}</office:text></office:body></office:document-content>"
    )
    return zipped({"mimetype": MIME, "content.xml": content, "META-INF/manifest.xml": MANIFEST})


def _paragraph(line: Line, face: Face, body: Body, key: str, styles: dict[str, str], *, page: bool) -> str:
    properties, letters, lead = "", "", ""
    if face.align:
        properties += f'<style:paragraph-properties fo:text-align="{face.align}"/>'
    elif line.kind in ("story", "matter") and not face.style:
        properties, letters, lead = _told(line, body, key)
    if page:
        properties += '<style:paragraph-properties fo:break-before="page"/>'
    letters += ' fo:font-weight="bold"' * face.bold + ' fo:font-style="italic"' * face.italic
    letters += f' fo:font-size="{face.size / 2}pt"' if face.size else ""
    look = _one(properties) + (f"<style:text-properties{letters}/>" if letters else "")
    parent = f"Heading_20_{face.level}" if face.level else PARENTS.get(face.style, "Standard")
    name = styles.setdefault(f"{parent}|{look}", f"P{len(styles) + 1}")
    inner = lead + _inner(line)
    if face.level:
        return f'<text:h text:style-name="{name}" text:outline-level="{face.level}">{inner}</text:h>'
    return f'<text:p text:style-name="{name}">{inner}</text:p>'


def _told(line: Line, body: Body, key: str) -> tuple[str, str, str]:
    """Properties of paragraph and of letters, and what is typed first."""
    indent = '<style:paragraph-properties fo:text-indent="1.27cm"/>'
    if body == "stray":
        size = pick(STRAY_SIZES, key, line.text[:60], "size")
        properties, lead = pick(((indent, ""), ("", "<text:tab/>"), ("", '<text:s text:c="5"/>')), key, line.text[:60])
        return properties, f' fo:font-size="{size / 2}pt"' if size else "", lead
    if body == "block":
        return '<style:paragraph-properties fo:margin-bottom="0.28cm"/>', "", ""
    return (indent if body == "indent" else ""), "", ("<text:tab/>" if body == "tab" else "")


def _one(properties: str) -> str:
    """Several elements of paragraph properties as one."""
    attributes = " ".join(re.findall(r"fo:[a-z-]+=\"[^\"]*\"", properties))
    return f"<style:paragraph-properties {attributes}/>" if attributes else ""


def _styles(styles: dict[str, str]) -> Iterator[str]:
    italic = '<style:text-properties fo:font-style="italic"/>'
    yield f'<style:style style:name="I" style:family="text">{italic}</style:style>'
    for look, name in styles.items():
        parent, _, inner = look.partition("|")
        yield (
            f'<style:style style:name="{name}" style:family="paragraph" style:parent-style-name={quoteattr(parent)}>'
            f"{inner}</style:style>"
        )


def _inner(line: Line) -> str:
    text = escape(line.text)
    if line.kind != "break":
        text = ITALIC.sub(r'<text:span text:style-name="I">\1</text:span>', text)
    return text.replace("\n", "<text:line-break/>")
