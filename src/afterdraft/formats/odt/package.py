"""The container: an odt file is a zip archive of XML parts with fixed names (ODF 1.3 part 2)."""

from afterdraft.errors import DamagedFile, LockedFile, TooLarge
from afterdraft.formats.archive import Archive
from afterdraft.formats.markup import Node, parsed
from afterdraft.formats.odt.names import MANIFEST, OFFICE

CONTENT = "content.xml"
MOST_TAGS = 600_000  # read in some 7 seconds; a million words with every third sentence marked have 300,000
_MANIFEST = "META-INF/manifest.xml"
_KINDS = {  # the one child of office:body, where it is not a text
    f"{OFFICE}spreadsheet": "it is a spreadsheet, not a text",
    f"{OFFICE}presentation": "it is a presentation, not a text",
    f"{OFFICE}drawing": "it is a drawing, not a text",
}
_OTHER_ARCHIVES = {  # what archives of other kinds hold
    "word/document.xml": "it is a Word document under another name: give it the ending .docx",
    "META-INF/container.xml": "it is an e-book under another name: give it the ending .epub",
}


class Package:
    """An opened odt."""

    def __init__(self, data: bytes, name: str) -> None:
        """Raises an UnreadableManuscript that says in plain words what the file is instead."""
        self.name = name
        if not data.startswith(b"PK"):
            raise DamagedFile(name, "it is not an OpenDocument text" if data else "it is empty")
        self._archive = Archive(data, name)
        if self._is_locked():
            raise LockedFile(name)
        if CONTENT not in self._archive:
            raise DamagedFile(name, self._what_instead())

    def content(self) -> Node:
        """The root of the content. Raises TooLarge where it is more than can be read in good time."""
        content = self._archive.read(CONTENT)
        tags = content.count(b"<")
        if tags > MOST_TAGS:
            raise TooLarge(self.name, f"{tags:,} signs of markup")
        return parsed(content, part=CONTENT, name=self.name)

    def text(self, content: Node) -> Node:
        """The text body. Raises DamagedFile where there is none."""
        body = content.find(f"{OFFICE}body")
        text = body.find(f"{OFFICE}text") if body is not None else None
        if text is None:
            kinds = (_KINDS[child.tag] for child in (body if body is not None else ()) if child.tag in _KINDS)
            raise DamagedFile(self.name, next(kinds, "its text part holds no text body"))
        return text

    def part(self, name: str) -> Node | None:
        """The root of another part ("styles.xml", "meta.xml"), or None."""
        return parsed(self._archive.read(name), part=name, name=self.name) if name in self._archive else None

    def _is_locked(self) -> bool:
        manifest = self.part(_MANIFEST)
        return manifest is not None and next(manifest.iter(f"{MANIFEST}encryption-data"), None) is not None

    def _what_instead(self) -> str:
        for entry, what in _OTHER_ARCHIVES.items():
            if entry in self._archive:
                return what
        return "it has no text part, so it is not a whole OpenDocument text"
