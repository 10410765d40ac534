"""The container of an e-book (EPUB 3.3 §4 and §5; EPUB 2.0.1 where it differs): its pages, in order."""

import posixpath
from collections.abc import Iterator
from dataclasses import dataclass
from urllib.parse import unquote, urlsplit

from afterdraft.errors import DamagedFile, ProtectedFile
from afterdraft.formats.archive import Archive
from afterdraft.formats.html.css import Sheet
from afterdraft.formats.html.document import check, document, find, tag
from afterdraft.formats.markup import Node, parsed, written

_CONTAINER = "META-INF/container.xml"
_ENCRYPTION = "META-INF/encryption.xml"
_RIGHTS = ("META-INF/rights.xml", "META-INF/sinf.xml")
_PAGES = ("application/xhtml+xml", "text/html", "text/x-oeb1-document", "application/x-dtbook+xml")
_FONTS_ONLY = (  # hiding of fonts, which keeps no text back (EPUB 3.3 §4.3; the other by a maker of programs)
    "http://www.idpf.org/2008/embedding",
    "http://ns.adobe.com/pdf/enc#RC",
)
_OTHER_ARCHIVES = {  # what archives of other kinds hold
    "word/document.xml": "it is a Word document under another name: give it the ending .docx",
    "content.xml": "it is an OpenDocument file under another name: give it the ending .odt",
}


@dataclass(frozen=True, slots=True)
class Page:
    part: str  # its name in the package
    root: Node
    sheet: Sheet


class Package:
    """An opened e-book."""

    def __init__(self, data: bytes, name: str) -> None:
        """Raises an UnreadableManuscript that says in plain words what the file is instead."""
        self.name = name
        if not data.startswith(b"PK"):
            raise DamagedFile(name, "it is not an e-book" if data else "it is empty")
        self._archive = Archive(data, name)
        if _CONTAINER not in self._archive:
            raise DamagedFile(name, self._what_instead())
        if self._is_protected():
            raise ProtectedFile(name)
        self._opf = self._package_part()
        self._root = self._xml(self._opf)
        self._sheets: dict[str, str] = {}

    def pages(self) -> Iterator[Page]:
        """In the order of reading."""
        there = [part for part in self._listed() if part in self._archive]
        check((self._archive.read(part) for part in there), self.name)
        for part in there:
            root = document(self._archive.read(part), self.name)
            yield Page(part, root, self._sheet(part, root))

    def missing(self) -> int:
        """How many pages the order of reading names that are not there."""
        return sum(part not in self._archive for part in self._listed())

    def _listed(self) -> Iterator[str]:
        """The parts that the order of reading names, pictures left out."""
        items = {node.get("id", ""): node for node in find(self._root, "item")}
        for reference in find(self._root, "itemref"):
            node = items.get(reference.get("idref", ""))
            if node is not None and node.get("media-type", _PAGES[0]) in _PAGES:
                yield self._resolved(self._opf, node.get("href", ""))

    def said(self, name: str) -> str:
        """What the package says of itself: "title", "creator", "language"."""
        return next((text for node in find(self._root, name) if (text := " ".join(written(node).split()))), "")

    def _sheet(self, part: str, root: Node) -> Sheet:
        sheet = Sheet()
        for node in root.iter():
            if tag(node) == "style":
                sheet.read(written(node))
            elif tag(node) == "link" and "stylesheet" in node.get("rel", "").lower():
                sheet.read(self._text_of(self._resolved(part, node.get("href", ""))))
        return sheet

    def _text_of(self, part: str) -> str:
        """A style sheet; "" where it is not there."""
        if part not in self._sheets:
            there = part in self._archive
            self._sheets[part] = self._archive.read(part).decode("utf-8", "replace") if there else ""
        return self._sheets[part]

    def _package_part(self) -> str:
        roots = (node.get("full-path", "") for node in find(self._xml(_CONTAINER), "rootfile"))
        part = next((root for root in roots if root in self._archive), None)
        if part is None:
            raise DamagedFile(self.name, "it does not say which of its parts is the book")
        return part

    def _is_protected(self) -> bool:
        if any(part in self._archive for part in _RIGHTS):
            return True
        if _ENCRYPTION not in self._archive:
            return False
        ways = {node.get("Algorithm", "") for node in self._data_ways()}
        return not ways <= set(_FONTS_ONLY)

    def _data_ways(self) -> Iterator[Node]:
        """How each encrypted part is encrypted; not how their keys are."""
        for data in find(self._xml(_ENCRYPTION), "encrypteddata"):
            yield from (node for node in data if tag(node) == "encryptionmethod")

    def _xml(self, part: str) -> Node:
        return parsed(self._archive.read(part), part=part, name=self.name)

    def _resolved(self, base: str, href: str) -> str:
        """The part that an address in the part `base` names; one that leads elsewhere names none."""
        try:
            address = urlsplit(href)
        except ValueError:
            return ""
        if address.scheme or address.netloc:
            return ""
        return posixpath.normpath(posixpath.join("/", posixpath.dirname(base), unquote(address.path))).lstrip("/")

    def _what_instead(self) -> str:
        for entry, what in _OTHER_ARCHIVES.items():
            if entry in self._archive:
                return what
        return "it does not say which of its parts is the book, so it is not a whole e-book"
