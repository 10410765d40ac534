"""odt in (OpenDocument text, ISO/IEC 26300): the one function that others call."""

from collections.abc import Iterable
from hashlib import sha256

from afterdraft.errors import DamagedFile, EmptyManuscript
from afterdraft.formats.asides import Parts, asides
from afterdraft.formats.long import shortened
from afterdraft.formats.making import Making
from afterdraft.formats.markup import Node
from afterdraft.formats.odt.body import Body
from afterdraft.formats.odt.changes import changes
from afterdraft.formats.odt.inline import Apart, Inline
from afterdraft.formats.odt.names import DC, DRAW, META, OFFICE
from afterdraft.formats.odt.numbering import numbering
from afterdraft.formats.odt.package import CONTENT, Package
from afterdraft.formats.odt.styles import Styles
from afterdraft.manuscript.blocks import Blocks


def read(data: bytes, name: str) -> Blocks:
    """The final text of the odt file `data`, called `name`. Raises an UnreadableManuscript."""
    try:
        return _read(Package(data, name), data)
    except RecursionError as trouble:
        raise DamagedFile(name, "its parts are nested deeper than any word processor nests them") from trouble


def _read(package: Package, data: bytes) -> Blocks:
    content, sheet = package.content(), package.part("styles.xml")
    text = package.text(content)
    styles = Styles(content, sheet)
    ended = frozenset(node.get(f"{OFFICE}name", "") for node in text.iter(f"{OFFICE}annotation-end"))

    def walk(containers: Iterable[Node]) -> tuple[Making, Apart]:
        making, inline = Making(CONTENT, styles), Inline(styles, changes(text), ended)
        body = Body(text, styles, numbering(content, sheet, language=styles.language), inline, making)
        for container in containers:
            body.read(container)
        return making, inline.apart

    making, apart = walk([text])
    if not _has_text(making):  # some layouts put all text into boxes; then the boxes are the text
        making, apart = walk(text.iter(f"{DRAW}text-box"))
    if not _has_text(making):
        raise EmptyManuscript(package.name)
    title, author = _properties(package.part("meta.xml"))
    blocks, beside, cut = shortened(
        making.blocks, asides(making.placed, Parts(apart.comments, apart.footnotes, apart.endnotes))
    )
    return Blocks(
        name=package.name,
        format="odt",
        sha256=sha256(data).hexdigest(),
        size=len(data),
        blocks=blocks,
        asides=beside,
        title=title,
        author=author,
        language=styles.language,
        notices=_notices(apart) + cut,
    )


def _has_text(making: Making) -> bool:
    return any(block.text for block in making.blocks)


def _properties(meta: Node | None) -> tuple[str, str]:
    """Title and author; what the file says of itself is often wrong."""
    found = meta.find(f"{OFFICE}meta") if meta is not None else None
    if found is None:
        return "", ""
    author = found.findtext(f"{META}initial-creator") or found.findtext(f"{DC}creator") or ""
    return (found.findtext(f"{DC}title") or "").strip(), author.strip()


def _notices(apart: Apart) -> tuple[str, ...]:
    if not apart.hidden:
        return ()
    where = "one place" if apart.hidden == 1 else f"{apart.hidden:,} places"
    return (f"Text formatted as hidden was left out in {where}. It is still in your file.",)
