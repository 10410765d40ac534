"""A plan as an e-book (EPUB 3.3): a document for each page turned, in the order of the package's spine."""

import io
import zipfile
from collections.abc import Iterator
from html import escape

from bench.structure.writers.html_page import paragraph, sheet
from bench.structure.writers.looks import Body, faces
from bench.structure.writers.plan import Line, Plan

YEAR_ONE = (1980, 1, 1, 0, 0, 0)  # the earliest a zip file can say: the same bytes at every run
CONTAINER = (
    '<?xml version="1.0"?><container version="1.0" xmlns="urn:oasis:names:tc:opendocument:xmlns:container">'
    '<rootfiles><rootfile full-path="book.opf" media-type="application/oebps-package+xml"/></rootfiles></container>'
)
PAGE = (
    '<?xml version="1.0" encoding="utf-8"?>\n<html xmlns="http://www.w3.org/1999/xhtml"><head><title>{title}</title>'
    "<style>{sheet}</style></head><body>\n{rows}\n</body></html>"
)
PACKAGE = (
    '<?xml version="1.0"?><package xmlns="http://www.idpf.org/2007/opf" version="3.0" unique-identifier="id">'
    '<metadata xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:identifier id="id">urn:test:{title}</dc:identifier>'
    "<dc:title>{title}</dc:title><dc:language>en</dc:language></metadata><manifest>{items}</manifest>"
    "<spine>{spine}</spine></package>"
)


def written(plan: Plan, habit: str, body: Body, key: str) -> bytes:
    """The file's bytes, the same at every run."""
    looks = faces(habit, "epub", plan, key)
    title = escape(key)
    names, pages = [], []
    for number, lines in enumerate(_pages(plan)):
        rows = "\n".join(paragraph(line, looks, first=i == 0) for i, line in enumerate(lines))
        names.append(f"page{number}")
        pages.append(PAGE.format(title=title, sheet=sheet(body), rows=rows.replace("&nbsp;", "&#160;")))
    items = "".join(f'<item id="{n}" href="{n}.xhtml" media-type="application/xhtml+xml"/>' for n in names)
    spine = "".join(f'<itemref idref="{n}"/>' for n in names)
    files = {"mimetype": "application/epub+zip", "META-INF/container.xml": CONTAINER}
    files |= {"book.opf": PACKAGE.format(title=title, items=items, spine=spine)}
    return zipped(files | {f"{name}.xhtml": page for name, page in zip(names, pages, strict=True)})


def zipped(files: dict[str, str]) -> bytes:
    """A package whose first file is stored, as both standards ask for `mimetype`."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as package:
        for i, (name, text) in enumerate(files.items()):
            info = zipfile.ZipInfo(name, YEAR_ONE)
            info.compress_type = zipfile.ZIP_DEFLATED if i else zipfile.ZIP_STORED
            package.writestr(info, text.encode())
    return out.getvalue()


def _pages(plan: Plan) -> Iterator[list[Line]]:
    lines: list[Line] = []
    for line in plan.lines:
        if line.page and lines:
            yield lines
            lines = []
        lines.append(line)
    yield lines
