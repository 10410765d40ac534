"""Builds small odt files from XML written by hand, so that a specimen reads as what it is.

    odt(p("The ferry was late."), h(1, "Low Water"))

Imports nothing of the program: what is expected of a specimen stands in the test that uses it.
"""

from xml.sax.saxutils import escape

from tests.specimens.docx import pack

_ODF = "urn:oasis:names:tc:opendocument:xmlns"
_NAMESPACES = " ".join(
    f'xmlns:{prefix}="{uri}"'
    for prefix, uri in {
        **{name: f"{_ODF}:{name}:1.0" for name in ("office", "style", "text", "table", "meta", "manifest")},
        "draw": f"{_ODF}:drawing:1.0",
        "fo": f"{_ODF}:xsl-fo-compatible:1.0",
        "svg": f"{_ODF}:svg-compatible:1.0",
        "loext": "urn:org:documentfoundation:names:experimental:office:xmlns:loext:1.0",
        "dc": "http://purl.org/dc/elements/1.1/",
        "xlink": "http://www.w3.org/1999/xlink",
    }.items()
)
MIMETYPE = "application/vnd.oasis.opendocument.text"


def p(content: str = "", style: str = "Standard") -> str:
    """A paragraph; `content` is plain text or, where it holds "<", XML."""
    return f'<text:p text:style-name="{style}">{_inside(content)}</text:p>'


def h(level: int, content: str = "", style: str = "", more: str = "") -> str:
    name = style or f"Heading_20_{level}"
    return f'<text:h text:style-name="{name}" text:outline-level="{level}" {more}>{_inside(content)}</text:h>'


def span(content: str, style: str) -> str:
    return f'<text:span text:style-name="{style}">{_inside(content)}</text:span>'


def style(
    name: str, *, parent: str = "", family: str = "paragraph", par: str = "", txt: str = "", more: str = ""
) -> str:
    """`par` and `txt` are the attributes of its paragraph and text properties."""
    above = f' style:parent-style-name="{parent}"' if parent else ""
    inside = (f"<style:paragraph-properties {par}/>" if par else "") + (
        f"<style:text-properties {txt}/>" if txt else ""
    )
    return f'<style:style style:name="{name}" style:family="{family}"{above} {more}>{inside}</style:style>'


def item(*inside: str, more: str = "") -> str:
    return f"<text:list-item {more}>{''.join(inside)}</text:list-item>"


def listed(*items: str, style: str = "", more: str = "") -> str:
    name = f' text:style-name="{style}"' if style else ""
    return f"<text:list{name} {more}>{''.join(items)}</text:list>"


def list_style(name: str, *levels: str) -> str:
    return f'<text:list-style style:name="{name}">{"".join(levels)}</text:list-style>'


def level(at: int, format: str = "1", more: str = "", *, of: str = "list-level-style-number") -> str:
    return f'<text:{of} text:level="{at}" style:num-format="{format}" {more}/>'


def table(*rows: list[str]) -> str:
    """Rows of cells; a cell is XML of its paragraphs."""
    cells = ("".join(f"<table:table-cell>{cell}</table:table-cell>" for cell in row) for row in rows)
    return f"<table:table>{''.join(f'<table:table-row>{row}</table:table-row>' for row in cells)}</table:table>"


def info(author: str = "Ann", date: str = "2026-03-01T10:00:00") -> str:
    return f"<dc:creator>{author}</dc:creator><dc:date>{date}</dc:date>"


def changed(id: str, kind: str, gone: str = "") -> str:
    """A tracked change ("insertion", "deletion"), to stand in `text:tracked-changes`."""
    said = f"<office:change-info>{info()}</office:change-info>"
    return f'<text:changed-region text:id="{id}"><text:{kind}>{said}{gone}</text:{kind}></text:changed-region>'


def odt(*body: str, automatic: str = "", styles: str = "", meta: str = "") -> bytes:
    """The bytes of an odt. `automatic` are the styles of content.xml, `styles` those of styles.xml."""
    return pack(parts(*body, automatic=automatic, styles=styles, meta=meta))


def parts(*body: str, automatic: str = "", styles: str = "", meta: str = "") -> dict[str, str]:
    """The parts of an odt, by name."""
    text = f"<office:body><office:text>{''.join(body)}</office:text></office:body>"
    return {
        "mimetype": MIMETYPE,
        "META-INF/manifest.xml": f"<manifest:manifest {_NAMESPACES}/>",
        "content.xml": _root("content", f"<office:automatic-styles>{automatic}</office:automatic-styles>{text}"),
        "styles.xml": _root("styles", f"<office:styles>{styles}</office:styles>"),
        "meta.xml": _root("meta", f"<office:meta>{meta}</office:meta>"),
    }


def _root(name: str, inside: str) -> str:
    return f"<office:document-{name} {_NAMESPACES}>{inside}</office:document-{name}>"


def _inside(content: str) -> str:
    return content if "<" in content else escape(content)
