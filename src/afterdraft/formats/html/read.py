"""html in (WHATWG HTML, XHTML): the one function that others call."""

from hashlib import sha256

from afterdraft.errors import DamagedFile, EmptyManuscript
from afterdraft.formats.asides import Parts, asides
from afterdraft.formats.html.css import Sheet
from afterdraft.formats.html.document import check, document, find
from afterdraft.formats.html.notes import notes
from afterdraft.formats.html.walk import Classes, Walk
from afterdraft.formats.long import shortened
from afterdraft.formats.making import Making
from afterdraft.formats.markup import Node, written
from afterdraft.manuscript.blocks import Blocks


def read(data: bytes, name: str) -> Blocks:
    """The text of the page `data`, called `name`. Raises an UnreadableManuscript."""
    check([data], name)
    if not data.strip():
        raise DamagedFile(name, "it is empty")
    root = document(data, name)
    making, walk = begin("")
    walk_page(walk, root, styles(root), name)
    if not any(block.text for block in making.blocks):
        raise EmptyManuscript(name)
    title = next((" ".join(written(node).split()) for node in find(root, "title")), "")
    blocks, beside, cut = shortened(making.blocks, asides(making.placed, walk.parts))
    return Blocks(
        name=name,
        format="html",
        sha256=sha256(data).hexdigest(),
        size=len(data),
        blocks=blocks,
        asides=beside,
        title=title,
        author=next((node.get("content", "") for node in find(root, "meta") if node.get("name") == "author"), ""),
        language=root.get("lang", root.get("{http://www.w3.org/XML/1998/namespace}lang", "")),
        notices=hidden_notices(walk.hidden) + cut,
    )


def begin(part: str) -> tuple[Making, Walk]:
    """A walk, and what it fills."""
    footnotes: dict[str, str] = {}
    endnotes: dict[str, str] = {}
    making = Making(part, Classes())
    return making, Walk(making, Parts({}, footnotes, endnotes), footnotes, endnotes)


def styles(root: Node) -> Sheet:
    """The style sheets that stand in a page."""
    sheet = Sheet()
    for node in find(root, "style"):
        sheet.read(written(node))
    return sheet


def walk_page(walk: Walk, root: Node, sheet: Sheet, name: str) -> None:
    """Walk one page. Raises DamagedFile."""
    try:
        walk.read(root, sheet, notes(root))
    except RecursionError as trouble:
        raise DamagedFile(name, "its parts are nested deeper than any writing program nests them") from trouble


def hidden_notices(places: int) -> tuple[str, ...]:
    if not places:
        return ()
    where = "one place" if places == 1 else f"{places:,} places"
    return (f"Text that is not shown was left out in {where}. It is still in your file.",)
