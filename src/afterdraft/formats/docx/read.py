"""docx in (ECMA-376 / ISO/IEC 29500, transitional and strict): the one function that others call."""

from collections.abc import Iterable
from hashlib import sha256

from afterdraft.errors import DamagedFile, EmptyManuscript
from afterdraft.formats.asides import Parts, asides
from afterdraft.formats.docx.asides import read_comments, read_notes
from afterdraft.formats.docx.body import Body
from afterdraft.formats.docx.inline import Inline, Met
from afterdraft.formats.docx.names import DC, Node, W, value
from afterdraft.formats.docx.numbering import Numbering
from afterdraft.formats.docx.package import Package
from afterdraft.formats.docx.styles import Styles
from afterdraft.formats.docx.tree import boxes, unclosed_fields
from afterdraft.formats.making import Making
from afterdraft.manuscript.blocks import Blocks


def read(data: bytes, name: str) -> Blocks:
    """The final text of the docx file `data`, called `name`. Raises an UnreadableManuscript."""
    try:
        return _read(Package(data, name), data)
    except RecursionError as trouble:
        raise DamagedFile(name, "its parts are nested deeper than any word processor nests them") from trouble


def _read(package: Package, data: bytes) -> Blocks:
    document = package.document()
    content = document.find(f"{W}body")
    if content is None:
        raise DamagedFile(package.name, "its text part holds no text body")
    styles = Styles(package.related("styles"))
    language = styles.language or _theme_language(package.related("settings"))
    numbering = Numbering(package.related("numbering"), language)
    met = Met()

    def walk(containers: Iterable[Node]) -> Making:
        making = Making(package.main, styles)
        body = Body(document, styles, numbering, _inline(styles, document, met), making)
        for container in containers:
            body.read(container)
        return making

    making = walk([content])
    if not _has_text(making):  # some layouts put all text into boxes; then the boxes are the text
        making = walk(boxes(content))
    if not _has_text(making):
        raise EmptyManuscript(package.name)
    title, author = _properties(package.core_properties())
    return Blocks(
        name=package.name,
        format="docx",
        sha256=sha256(data).hexdigest(),
        size=len(data),
        blocks=tuple(making.blocks),
        asides=asides(making.placed, _parts(package, styles, met)),
        title=title,
        author=author,
        language=language,
        notices=_notices(met),
    )


def _has_text(making: Making) -> bool:
    return any(block.text for block in making.blocks)


def _inline(styles: Styles, root: Node | None, met: Met) -> Inline:
    return Inline(styles, unclosed_fields(root) if root is not None else frozenset(), met)


def _parts(package: Package, styles: Styles, met: Met) -> Parts:
    comments, footnotes, endnotes = (package.related(kind) for kind in ("comments", "footnotes", "endnotes"))
    return Parts(
        read_comments(comments, package.related("commentsExtended"), _inline(styles, comments, met)),
        read_notes(footnotes, "footnote", _inline(styles, footnotes, met)),
        read_notes(endnotes, "endnote", _inline(styles, endnotes, met)),
    )


def _properties(core: Node | None) -> tuple[str, str]:
    """Title and author; what the file says of itself is often wrong."""
    if core is None:
        return "", ""
    return (core.findtext(f"{DC}title") or "").strip(), (core.findtext(f"{DC}creator") or "").strip()


def _theme_language(settings: Node | None) -> str:
    return (value(settings, "themeFontLang") or "") if settings is not None else ""


def _notices(met: Met) -> tuple[str, ...]:
    found = []
    if met.hidden:
        where = "one place" if met.hidden == 1 else f"{met.hidden:,} places"
        found.append(f"Text formatted as hidden was left out in {where}. It is still in your file.")
    if met.parts:
        found.append("The file refers to other documents for part of its text. Those were not read: bring them in too.")
    return tuple(found)
