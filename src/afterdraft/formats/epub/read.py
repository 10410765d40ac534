"""epub in (EPUB 3.3; EPUB 2.0.1): the one function that others call. Each page of the package begins a page."""

from hashlib import sha256

from afterdraft.errors import EmptyManuscript
from afterdraft.formats.asides import asides
from afterdraft.formats.epub.package import Package
from afterdraft.formats.html.read import begin, hidden_notices, walk_page
from afterdraft.formats.long import shortened
from afterdraft.manuscript.blocks import Blocks


def read(data: bytes, name: str) -> Blocks:
    """The text of the e-book `data`, called `name`. Raises an UnreadableManuscript."""
    package = Package(data, name)
    making, walk = begin("")
    for page in package.pages():
        making.part = page.part
        if making.begun:
            making.page()
        walk_page(walk, page.root, page.sheet, name)
    if not any(block.text for block in making.blocks):
        raise EmptyManuscript(name)
    blocks, beside, cut = shortened(making.blocks, asides(making.placed, walk.parts))
    return Blocks(
        name=name,
        format="epub",
        sha256=sha256(data).hexdigest(),
        size=len(data),
        blocks=blocks,
        asides=beside,
        title=package.said("title"),
        author=package.said("creator"),
        language=package.said("language"),
        notices=hidden_notices(walk.hidden) + _missing(package.missing()) + cut,
    )


def _missing(pages: int) -> tuple[str, ...]:
    if not pages:
        return ()
    which = "One page that the e-book names is" if pages == 1 else f"{pages:,} pages that the e-book names are"
    return (f"{which} not in the file. What is there was read.",)
