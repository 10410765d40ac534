"""Which file formats are read, and how one is told from another: by content first, then by the name's ending."""

import codecs
import io
import zipfile
from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from afterdraft.errors import DamagedFile, LockedFile, UnknownFormat
from afterdraft.formats.kinds import READS
from afterdraft.manuscript.blocks import Blocks


@dataclass(frozen=True, slots=True)
class Format:
    name: str
    endings: tuple[str, ...]  # lower case, with the dot
    read: Callable[[bytes, str], Blocks]


def _docx(data: bytes, name: str) -> Blocks:
    from afterdraft.formats.docx.read import read as read_docx  # heavy, so only when needed

    return read_docx(data, name)


def _odt(data: bytes, name: str) -> Blocks:
    from afterdraft.formats.odt.read import read as read_odt

    return read_odt(data, name)


def _epub(data: bytes, name: str) -> Blocks:
    from afterdraft.formats.epub.read import read as read_epub

    return read_epub(data, name)


def _html(data: bytes, name: str) -> Blocks:
    from afterdraft.formats.html.read import read as read_html

    return read_html(data, name)


def _rtf(data: bytes, name: str) -> Blocks:
    from afterdraft.formats.rtf.read import read as read_rtf

    return read_rtf(data, name)


def _text(data: bytes, name: str) -> Blocks:
    from afterdraft.formats.txt.read import read as read_text

    return read_text(data, name)


DOCX: Final = Format("docx", (".docx", ".docm", ".dotx"), _docx)
ODT: Final = Format("odt", (".odt", ".ott"), _odt)
EPUB: Final = Format("epub", (".epub",), _epub)
HTML: Final = Format("html", (".html", ".htm", ".xhtml"), _html)
RTF: Final = Format("rtf", (".rtf",), _rtf)
TEXT: Final = Format("txt", (".txt", ".text"), _text)
MARKDOWN: Final = Format("md", (".md", ".markdown"), _text)
FORMATS: Final = (DOCX, ODT, RTF, EPUB, HTML, TEXT, MARKDOWN)
PACKAGES: Final = (DOCX, ODT, EPUB)

ZIP: Final = b"PK\x03\x04"
OLE: Final = bytes.fromhex("d0cf11e0a1b11ae1")  # [MS-CFB] 2.2: old Word files, and docx files with a password
LOCKED: Final = "EncryptedPackage".encode("utf-16-le")  # [MS-OFFCRYPTO] 2.3.4.4: the stream that holds a locked docx
RICH: Final = b"{\\rtf"
XML: Final = b"<?xml"
PAGE: Final = (b"<!doctype html", b"<html")  # how web pages begin, in small letters
# First bytes, in small letters, of what people take for a manuscript: PDF, pictures, archives.
OTHERS: Final = (
    *(b"%pdf", b"\x89png", b"\xff\xd8\xff", b"gif8", b"rar!", b"7z\xbc\xaf", b"\x1f\x8b"),
    *(b"<!doctype", XML),
)


def read(data: bytes, name: str) -> Blocks:
    """Read a manuscript file. `name` is its name without folders.

    Raises UnreadableManuscript (UnknownFormat, LockedFile, DamagedFile, EmptyManuscript, TooLarge).
    """
    return told(data, name).read(data, name)


def told(data: bytes, name: str) -> Format:
    """The format of a file. Raises UnknownFormat, LockedFile or DamagedFile."""
    ending = _ending(name)
    package = next((form for form in PACKAGES if ending in form.endings), None)
    if data.startswith(ZIP):
        return _zipped(data, name, package)
    if package:
        return package  # its reader says what the file is instead
    if data.startswith(OLE):
        raise LockedFile(name) if LOCKED in data else UnknownFormat(name, READS)
    head = _head(data)
    if head.startswith(RICH):
        return RTF
    if head.startswith(PAGE) or (head.startswith(XML) and b"<html" in head):
        return HTML
    if head.startswith(OTHERS):
        raise UnknownFormat(name, READS)
    if ending in ("", *TEXT.endings):
        return TEXT
    named = next((form for form in FORMATS if ending in form.endings), None)
    if named is None:
        raise UnknownFormat(name, READS)
    return named


def _head(data: bytes) -> bytes:
    """How a file begins, in small letters, without marks of its encoding and white space."""
    head = data[:2000]
    for mark in (codecs.BOM_UTF8, codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE):
        head = head.removeprefix(mark)
    return head.replace(b"\0", b"").lstrip().lower()


def _zipped(data: bytes, name: str, package: Format | None) -> Format:
    """By its parts, whatever the file is called; where they say nothing, the reader that the name asks for says what
    is wrong with it."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            parts = archive.namelist()
    except (zipfile.BadZipFile, ValueError, NotImplementedError) as fault:
        if package:
            return package
        raise DamagedFile(name, "it is only the beginning of a file, or damaged") from fault
    if any(part.startswith("word/") for part in parts):
        return DOCX
    if "META-INF/container.xml" in parts:
        return EPUB
    if "content.xml" in parts:
        return ODT
    if package:
        return package
    raise UnknownFormat(name, READS)


def _ending(name: str) -> str:
    stem, dot, ending = name.rpartition(".")
    return f".{ending.lower()}" if dot and stem else ""
