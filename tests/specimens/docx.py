"""Builds small docx files from XML written by hand, so that a specimen reads as what it is.

    docx(p("The ferry was late."), p(r("It came ") + r("at last", "<w:i/>")))

Imports nothing of the program: what is expected of a specimen stands in the test that uses it.
"""

import io
import zipfile
from collections.abc import Mapping
from xml.sax.saxutils import escape

_SCHEMAS = "http://schemas.openxmlformats.org"
_WORD = f"{_SCHEMAS}/wordprocessingml/2006/main"
_RELATIONS = f"{_SCHEMAS}/officeDocument/2006/relationships"
_NAMESPACES = " ".join(
    f'xmlns:{prefix}="{uri}"'
    for prefix, uri in {
        "w": _WORD,
        "r": _RELATIONS,
        "mc": f"{_SCHEMAS}/markup-compatibility/2006",
        "wp": f"{_SCHEMAS}/drawingml/2006/wordprocessingDrawing",
        "a": f"{_SCHEMAS}/drawingml/2006/main",
        "pic": f"{_SCHEMAS}/drawingml/2006/picture",
        "m": f"{_SCHEMAS}/officeDocument/2006/math",
        "v": "urn:schemas-microsoft-com:vml",
        "o": "urn:schemas-microsoft-com:office:office",
        "w14": "http://schemas.microsoft.com/office/word/2010/wordml",
        "w15": "http://schemas.microsoft.com/office/word/2012/wordml",
        "wps": "http://schemas.microsoft.com/office/word/2010/wordprocessingShape",
        "x99": "urn:example:not-known",
    }.items()
)
_PARTS = {  # root element and relation of the parts beside the document
    "styles": ("w:styles", f"{_RELATIONS}/styles"),
    "numbering": ("w:numbering", f"{_RELATIONS}/numbering"),
    "comments": ("w:comments", f"{_RELATIONS}/comments"),
    "commentsExtended": ("w15:commentsEx", "http://schemas.microsoft.com/office/2011/relationships/commentsExtended"),
    "footnotes": ("w:footnotes", f"{_RELATIONS}/footnotes"),
    "endnotes": ("w:endnotes", f"{_RELATIONS}/endnotes"),
}
_CORE = (
    '<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties"'
    ' xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:title>{}</dc:title><dc:creator>{}</dc:creator>'
    "</cp:coreProperties>"
)


def r(text: str, props: str = "") -> str:
    """A run; `text` is plain text, `props` the inside of its w:rPr."""
    return f'<w:r>{_wrap("w:rPr", props)}<w:t xml:space="preserve">{escape(text)}</w:t></w:r>'


def p(content: str = "", props: str = "") -> str:
    """A paragraph; `content` is plain text or, where it begins with "<", XML; `props` the inside of its w:pPr."""
    inside = content if content.startswith("<") or not content else r(content)
    return f"<w:p>{_wrap('w:pPr', props)}{inside}</w:p>"


def styled(style: str, content: str = "", props: str = "") -> str:
    return p(content, f'<w:pStyle w:val="{style}"/>{props}')


def br(kind: str = "") -> str:
    """A soft return, or a break of that kind ("page")."""
    return f'<w:r><w:br w:type="{kind}"/></w:r>' if kind else "<w:r><w:br/></w:r>"


def ins(content: str, author: str = "Ann", date: str = "2026-03-01T10:00:00Z") -> str:
    return f'<w:ins w:id="1" w:author="{author}" w:date="{date}">{content}</w:ins>'


def deleted(text: str, author: str = "Ann", date: str = "2026-03-01T10:00:00Z") -> str:
    run = f'<w:r><w:delText xml:space="preserve">{escape(text)}</w:delText></w:r>'
    return f'<w:del w:id="2" w:author="{author}" w:date="{date}">{run}</w:del>'


def style(id: str, name: str, inside: str = "", kind: str = "paragraph", default: bool = False) -> str:
    state = ' w:default="1"' if default else ""
    return f'<w:style w:type="{kind}"{state} w:styleId="{id}"><w:name w:val="{name}"/>{inside}</w:style>'


def table(*rows: list[str]) -> str:
    """Rows of cells; a cell is XML of its paragraphs."""
    cells = ("".join(f"<w:tc>{cell}</w:tc>" for cell in row) for row in rows)
    return f"<w:tbl>{''.join(f'<w:tr>{row}</w:tr>' for row in cells)}</w:tbl>"


def section(kind: str = "") -> str:
    return f"<w:sectPr>{_wrap_value('w:type', kind)}</w:sectPr>"


def docx(*body: str, title: str = "", author: str = "", **parts: str) -> bytes:
    """The bytes of a docx. `parts` are the insides of "styles", "numbering", "comments", "footnotes", …"""
    relations = "".join(
        f'<Relationship Id="rId{number}" Type="{_PARTS[name][1]}" Target="{name}.xml"/>'
        for number, name in enumerate(parts, 1)
    )
    files = {
        "[Content_Types].xml": _content_types(parts),
        "_rels/.rels": _listing(
            f'<Relationship Id="rId1" Type="{_RELATIONS}/officeDocument" Target="word/document.xml"/>'
            f'<Relationship Id="rId2" Type="{_SCHEMAS}/package/2006/relationships/metadata/core-properties"'
            ' Target="docProps/core.xml"/>'
        ),
        "docProps/core.xml": _CORE.format(escape(title), escape(author)),
        "word/_rels/document.xml.rels": _listing(relations),
        "word/document.xml": f"<w:document {_NAMESPACES}><w:body>{''.join(body)}</w:body></w:document>",
        **{f"word/{name}.xml": _part(_PARTS[name][0], inside) for name, inside in parts.items()},
    }
    return pack(files)


def pack(files: Mapping[str, str | bytes]) -> bytes:
    """A zip archive of `files`."""
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in files.items():
            archive.writestr(name, content)
    return target.getvalue()


def unpack(data: bytes) -> dict[str, bytes]:
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


def as_strict(data: bytes) -> bytes:
    """The same docx in the namespaces of ISO/IEC 29500 Strict."""
    pure = "http://purl.oclc.org/ooxml"
    names = {_WORD: f"{pure}/wordprocessingml/main", _RELATIONS: f"{pure}/officeDocument/relationships"}
    files = {name: content.decode() for name, content in unpack(data).items()}
    for usual, strict in names.items():
        files = {name: text.replace(usual, strict) for name, text in files.items()}
    return pack(files)


def _part(root: str, inside: str) -> str:
    return f"<{root} {_NAMESPACES}>{inside}</{root}>"


def _listing(relations: str) -> str:
    return f'<Relationships xmlns="{_SCHEMAS}/package/2006/relationships">{relations}</Relationships>'


def _content_types(parts: Mapping[str, str]) -> str:
    kind = "application/vnd.openxmlformats-officedocument.wordprocessingml"
    overrides = "".join(
        f'<Override PartName="/word/{name}.xml" ContentType="{kind}.{name}+xml"/>' for name in ("document.main", *parts)
    ).replace("/word/document.main.xml", "/word/document.xml")
    return (
        f'<Types xmlns="{_SCHEMAS}/package/2006/content-types">'
        '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>'
        f'<Default Extension="xml" ContentType="application/xml"/>{overrides}'
        '<Override PartName="/docProps/core.xml"'
        ' ContentType="application/vnd.openxmlformats-package.core-properties+xml"/></Types>'
    )


def _wrap(tag: str, inside: str) -> str:
    return f"<{tag}>{inside}</{tag}>" if inside else ""


def _wrap_value(tag: str, value: str) -> str:
    return f'<{tag} w:val="{value}"/>' if value else ""
