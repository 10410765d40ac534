"""rtf in (Rich Text Format 1.9.1): the one function that others call."""

import locale
from hashlib import sha256

from afterdraft.errors import DamagedFile, EmptyManuscript, TooLarge
from afterdraft.formats.asides import Parts, asides
from afterdraft.formats.long import shortened
from afterdraft.formats.making import Making
from afterdraft.formats.rtf.reader import Reader
from afterdraft.formats.rtf.sheet import Sheet
from afterdraft.manuscript.blocks import Blocks

LARGEST = 64 * 1024 * 1024  # bytes, pictures included, which are written out in letters
MOST_SIGNS = 1_200_000  # control words and groups, read in some 5 seconds; a long novel has 300,000
MOST_PARAGRAPHS = 200_000  # read in some 5 seconds; a million words have 40,000


def read(data: bytes, name: str) -> Blocks:
    """The final text of the rich text file `data`, called `name`. Raises an UnreadableManuscript."""
    _check(data, name)
    sheet = Sheet()
    reader = Reader(name, sheet, Making("", sheet))
    reader.read(data)
    if not any(block.text for block in reader.making.blocks):
        raise EmptyManuscript(name)
    parts = Parts(reader.comments, reader.footnotes, reader.endnotes)
    blocks, beside, cut = shortened(reader.making.blocks, asides(reader.making.placed, parts))
    return Blocks(
        name=name,
        format="rtf",
        sha256=sha256(data).hexdigest(),
        size=len(data),
        blocks=blocks,
        asides=beside,
        title=reader.heads.get("title", ""),
        author=reader.heads.get("author", ""),
        language=locale.windows_locale.get(reader.language, "").replace("_", "-"),
        notices=_notices(reader) + cut,
    )


def _check(data: bytes, name: str) -> None:
    if not data.lstrip().startswith(b"{\\rtf"):
        raise DamagedFile(name, "it is not a rich text file" if data else "it is empty")
    if len(data) > LARGEST:
        raise TooLarge(name, f"{len(data) // 1_000_000} million bytes")
    signs = data.count(b"\\") + data.count(b"{")
    paragraphs = data.count(b"\\par") - data.count(b"\\pard")
    if paragraphs > MOST_PARAGRAPHS:
        raise TooLarge(name, f"{paragraphs:,} paragraphs")
    if signs > MOST_SIGNS:
        raise TooLarge(name, f"{signs:,} signs of formatting")


def _notices(reader: Reader) -> tuple[str, ...]:
    found = []
    if reader.hidden:
        where = "one place" if reader.hidden == 1 else f"{reader.hidden:,} places"
        found.append(f"Text formatted as hidden was left out in {where}. It is still in your file.")
    if not reader.whole:
        found.append("The file breaks off before its end. What is there was read.")
    return tuple(found)
