"""The container: a docx file is a zip archive of XML parts joined by relationships (ECMA-376 part 2)."""

import posixpath

from afterdraft.errors import DamagedFile, LockedFile
from afterdraft.formats.archive import Archive
from afterdraft.formats.docx.names import Node
from afterdraft.formats.markup import parsed

_RELATIONSHIP = "{http://schemas.openxmlformats.org/package/2006/relationships}Relationship"

# ISO/IEC 29500 Strict has its own namespaces with the same content; they are read as the transitional ones.
_STRICT = b"http://purl.oclc.org/ooxml/"
_STRICT_NAMES = (
    (b"http://purl.oclc.org/ooxml/wordprocessingml/main", b"wordprocessingml/2006/main"),
    (b"http://purl.oclc.org/ooxml/officeDocument/relationships", b"officeDocument/2006/relationships"),
    (b"http://purl.oclc.org/ooxml/officeDocument/math", b"officeDocument/2006/math"),
    (b"http://purl.oclc.org/ooxml/drawingml/main", b"drawingml/2006/main"),
    (b"http://purl.oclc.org/ooxml/drawingml/wordprocessingDrawing", b"drawingml/2006/wordprocessingDrawing"),
)

_OLE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_OTHER_KINDS = (  # how files of other kinds begin
    (b"{\\rtf", "it is a rich text file under another name: give it the ending .rtf"),
    (b"%PDF", "it is a PDF, not a Word document"),
    (b"\x89PNG", "it is a picture, not a Word document"),
    (b"\xff\xd8\xff", "it is a picture, not a Word document"),
    (b"GIF8", "it is a picture, not a Word document"),
)
_OTHER_ARCHIVES = (  # what archives of other kinds hold
    ("xl/workbook.xml", "it is a spreadsheet, not a Word document"),
    ("ppt/presentation.xml", "it is a presentation, not a Word document"),
    ("META-INF/container.xml", "it is an e-book under another name: give it the ending .epub"),
    ("content.xml", "it is an OpenDocument file under another name: give it the ending .odt"),
)


class Package:
    """An opened docx. `main` is the name of the document part, usually "word/document.xml"."""

    def __init__(self, data: bytes, name: str) -> None:
        """Raises an UnreadableManuscript that says in plain words what the file is instead."""
        self.name = name
        _refuse_other_kinds(data, name)
        self._archive = Archive(data, name)
        self.main = self._find("", "officeDocument") or "word/document.xml"
        if self.main not in self._archive:
            raise DamagedFile(name, self._what_instead())

    def document(self) -> Node:
        return self._parse(self.main)

    def related(self, kind: str) -> Node | None:
        """The root of the part that the document refers to as `kind` ("styles", "comments", …), or None."""
        part = self._find(self.main, kind)
        return self._parse(part) if part in self._archive else None

    def core_properties(self) -> Node | None:
        part = self._find("", "core-properties")
        return self._parse(part) if part in self._archive else None

    def _find(self, source: str, kind: str) -> str:
        """Name of the part related to `source` ("" for the package itself) as `kind`; "" if there is none."""
        folder, file = posixpath.split(source)
        listing = posixpath.join(folder, "_rels", f"{file}.rels")
        if listing not in self._archive:
            return ""
        for relation in self._parse(listing).iter(_RELATIONSHIP):
            outside = relation.get("TargetMode") == "External"
            if not outside and relation.get("Type", "").rpartition("/")[2] == kind:
                return posixpath.normpath(posixpath.join("/", folder, relation.get("Target", ""))).lstrip("/")
        return ""

    def _parse(self, part: str) -> Node:
        text = self._archive.read(part)
        if _STRICT in text:
            text = _as_transitional(text)
        return parsed(text, part=part, name=self.name)

    def _what_instead(self) -> str:
        for entry, what in _OTHER_ARCHIVES:
            if entry in self._archive:
                return what
        return "it has no text part, so it is not a whole Word document"


def _refuse_other_kinds(data: bytes, name: str) -> None:
    if data.startswith(_OLE):
        if "EncryptedPackage".encode("utf-16-le") in data:
            raise LockedFile(name)
        raise DamagedFile(name, "it is an old Word 97 .doc file: save it as .docx")
    for beginning, what in _OTHER_KINDS:
        if data.startswith(beginning):
            raise DamagedFile(name, what)
    if not data.startswith(b"PK"):
        raise DamagedFile(name, "it is not a Word document" if data else "it is empty")


def _as_transitional(text: bytes) -> bytes:
    for strict, transitional in _STRICT_NAMES:
        text = text.replace(strict, b"http://schemas.openxmlformats.org/" + transitional)
    return text
