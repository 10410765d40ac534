"""A plan as a Word document. Uses python-docx for the package; the body is plain XML."""

import io
import re
import zipfile
from dataclasses import replace
from xml.sax.saxutils import escape

import docx
from docx.document import Document
from docx.oxml import parse_xml

from bench.structure.writers.looks import Body, Face, Faces, faces
from bench.structure.writers.plan import Line, Plan, pick

W = 'xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"'
ITALIC = re.compile(r"\*([^*]*)\*")
YEAR_ONE = (1980, 1, 1, 0, 0, 0)  # the earliest a zip file can say: the same bytes at every run


TAB = "<w:r><w:tab/></w:r>"
SPACES = '<w:r><w:t xml:space="preserve">     </w:t></w:r>'
STRAY_STYLES = ("", "", "", "BodyText", "NormalWeb", "ListParagraph")
STRAY_SIZES = (0, 0, 0, 22, 25)  # half-points


def written(plan: Plan, habit: str, body_set: Body, key: str) -> bytes:
    """The file's bytes, the same at every run. `key` picks what the habit leaves open."""
    document = docx.Document()
    _styles(document, courier=habit == "pages and bare numbers")
    page = _Page(habit, faces(habit, "docx", plan, key), body_set, key, document)
    body = document.element.body
    section = body.sectPr
    for child in list(body):
        body.remove(child)
    for paragraph in parse_xml(f"<w:body {W}>{page.body(plan)}</w:body>"):
        body.append(paragraph)
    body.append(section)
    saved = io.BytesIO()
    document.save(saved)
    return _dated(saved.getvalue())


class _Page:
    """Writes paragraphs; keeps count of the automatic numbers, which Word would count."""

    def __init__(self, habit: str, faces: Faces, body: Body, key: str, document: Document) -> None:
        self.faces = faces
        self.set = body
        self.key = key
        self.turn = pick(("property", "run", "paragraph"), key, habit, "page")
        self.form = pick(("decimal", "cardinalText", "upperRoman"), key, habit, "number form")
        self.numbering = document.part.numbering_part.element if habit == "auto-numbered" else None
        self.counted = ("", 0)
        self.list = 0

    def body(self, plan: Plan) -> str:
        return "".join(self._line(line, first=i == 0) for i, line in enumerate(plan.lines))

    def _line(self, line: Line, *, first: bool) -> str:
        face = self.faces.get(line.look, Face())
        page = line.page and not first
        before = "<w:p/>" * line.blanks
        if page and self.turn == "paragraph":
            before = '<w:p><w:r><w:br w:type="page"/></w:r></w:p>' + before
            page = False
        elif page:
            before = ""  # blank lines after the break would part it from its heading's paragraph
        return before + self._paragraph(line, face, page=page)

    def _paragraph(self, line: Line, face: Face, *, page: bool) -> str:
        properties = f'<w:pStyle w:val="{face.style}"/>' if face.style else ""
        properties += "<w:pageBreakBefore/>" if page and self.turn == "property" else ""
        properties += self._number(line) if face.numbered else ""
        lead = ""
        if line.kind in ("story", "matter") and not face.align and not face.style:
            face, more, lead = self._told(line, face)
            styled = f'<w:pStyle w:val="{face.style}"/>' if face.style else ""
            properties = styled + properties + more
        properties += f'<w:jc w:val="{face.align}"/>' if face.align else ""
        turned = '<w:r><w:br w:type="page"/></w:r>' if page and self.turn == "run" else ""
        return (
            f"<w:p><w:pPr>{properties}</w:pPr>{turned}{lead}{_runs(line.text, face, marks=line.kind != 'break')}</w:p>"
        )

    def _told(self, line: Line, face: Face) -> tuple[Face, str, str]:
        """Face, properties and what is typed first, of a paragraph of text."""
        match self.set:
            case "indent":
                return face, '<w:ind w:firstLine="720"/>', ""
            case "tab":
                return face, "", TAB
            case "block":
                return face, '<w:spacing w:after="160"/>', ""
            case "stray":
                return self._stray(line, face)
            case "plain":
                return face, "", ""

    def _stray(self, line: Line, face: Face) -> tuple[Face, str, str]:
        key = (self.key, line.text[:60])
        style = pick(STRAY_STYLES, *key, "style")
        space = pick(("", "", '<w:spacing w:before="60"/>', '<w:spacing w:after="100"/>'), *key, "space")
        indent = '<w:ind w:firstLine="720"/>'
        properties, lead = pick(((indent, ""), ("", TAB), ("", SPACES), ("", TAB)), *key, "lead")
        return replace(face, style=style, size=pick(STRAY_SIZES, *key, "size")), space + properties, lead

    def _number(self, line: Line) -> str:
        """The list a numbered heading belongs to: a new one where the count does not run on."""
        if line.number is None:
            return '<w:numPr><w:ilvl w:val="0"/><w:numId w:val="0"/></w:numPr>'
        if self.counted != (line.label, line.number - 1):
            self._new_list(line.label, line.number)
        self.counted = (line.label, line.number)
        return f'<w:numPr><w:ilvl w:val="0"/><w:numId w:val="{self.list}"/></w:numPr>'

    def _new_list(self, label: str, start: int) -> None:
        self.list = 100 if not self.list else self.list + 1
        level = (
            f'<w:lvl w:ilvl="0"><w:start w:val="1"/><w:numFmt w:val="{self.form}"/><w:suff w:val="space"/>'
            f'<w:lvlText w:val="{label} %1{self._point()}"/><w:lvlJc w:val="left"/></w:lvl>'
        )
        kind = parse_xml(f'<w:abstractNum {W} w:abstractNumId="{self.list}">{level}</w:abstractNum>')
        assert self.numbering is not None
        first = self.numbering.find(f"{{{W[9:-1]}}}num")
        first.addprevious(kind)
        self.numbering.append(
            parse_xml(
                f'<w:num {W} w:numId="{self.list}"><w:abstractNumId w:val="{self.list}"/>'
                f'<w:lvlOverride w:ilvl="0"><w:startOverride w:val="{start}"/></w:lvlOverride></w:num>'
            )
        )

    def _point(self) -> str:
        return ":" if self.form == "decimal" else ""


def _runs(text: str, face: Face, *, marks: bool) -> str:
    pieces = ITALIC.split(text) if marks else [text]
    return "".join(_run(piece, face, italic=i % 2 == 1) for i, piece in enumerate(pieces) if piece)


def _run(text: str, face: Face, *, italic: bool) -> str:
    look = "<w:b/>" if face.bold else ""
    look += "<w:i/>" if italic or face.italic else ""
    look += f'<w:sz w:val="{face.size}"/>' if face.size else ""
    inner = "<w:br/>".join(f'<w:t xml:space="preserve">{escape(row)}</w:t>' for row in text.split("\n"))
    return f"<w:r>{f'<w:rPr>{look}</w:rPr>' if look else ''}{inner}</w:r>"


def _styles(document: Document, *, courier: bool) -> None:
    styles = document.styles.element
    for style in ("BodyText", "NormalWeb", "ListParagraph"):
        if not styles.xpath(f'w:style[@w:styleId="{style}"]'):
            styles.append(
                parse_xml(f'<w:style {W} w:type="paragraph" w:styleId="{style}"><w:name w:val="{style}"/></w:style>')
            )
    based = '<w:name w:val="toc 1"/><w:basedOn w:val="Normal"/>'
    styles.append(parse_xml(f'<w:style {W} w:type="paragraph" w:styleId="toc1">{based}</w:style>'))
    if courier:
        normal = document.styles["Normal"]
        normal.font.name = "Courier New"
        normal.paragraph_format.line_spacing = 2.0


def _dated(data: bytes) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            info = zipfile.ZipInfo(name, YEAR_ONE)
            info.compress_type = zipfile.ZIP_DEFLATED
            new.writestr(info, old.read(name))
    return out.getvalue()
