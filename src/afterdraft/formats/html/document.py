"""From bytes to a tree, by lxml's HTML parser, or as XML where the file says it is and keeps to it.

Nothing is fetched, and no declaration is followed: a DOCTYPE is cut off before the parser sees it, and named
characters (`&nbsp;`) are replaced by themselves.
"""

import codecs
import html
import re
from collections.abc import Iterable, Iterator
from functools import lru_cache

from lxml import etree

from afterdraft.errors import DamagedFile, TooLarge
from afterdraft.formats.markup import Node
from afterdraft.formats.txt.encoding import decoded

LARGEST = 32 * 1024 * 1024  # bytes; a million words with heavy markup are some 15 million
MOST_TAGS = 500_000  # read in some 5 seconds; a million words with every other sentence marked have 300,000
_DECLARED = re.compile(
    rb"""<\?xml[^>]{0,200}?encoding\s*=\s*["']([\w.:-]{1,40})|charset\s*=\s*["']?([\w.:-]{1,40})""", re.I
)
_SEEN = 1024  # bytes looked through for the encoding (WHATWG HTML, "prescan a byte stream")
_LATIN = ("iso8859-1", "ascii")  # names under which Windows-1252 goes (WHATWG Encoding, "names and labels")
_PROLOGUE = re.compile(r"\s*<\?xml[^>]{0,1000}\?>", re.I)
_DOCTYPE = re.compile(r"<!DOCTYPE[^\[>]{0,1000}(?:\[[^\]]{0,100000}\]\s{0,100})?>", re.I)
_END = re.compile(r"</(?:body|html)\s{0,100}>", re.I)  # text after them is text all the same, but the parser drops it
_ENTITY = re.compile(r"&([A-Za-z][A-Za-z0-9]{1,30});")
_OWN = ("amp", "lt", "gt", "quot", "apos")  # what XML itself knows
_XHTML = re.compile(r"""<html[^>]{0,1000}xmlns\s*=\s*["']http://www\.w3\.org/1999/xhtml""", re.I)
_SOUND = 0.02  # a page with a larger share of control characters is no text


def document(data: bytes, name: str) -> Node:
    """The root element. Raises DamagedFile where there is none."""
    text = characters(data, name)
    root = _as_xml(text) if _says_xml(text) else None
    if root is None:
        root = _as_html(text)
    if root is None:
        raise DamagedFile(name, "it is not a web page")
    return root


def check(pages: Iterable[bytes], name: str) -> None:
    """Raises TooLarge where all the pages together are more than can be read in good time."""
    size = tags = 0
    for page in pages:
        size, tags = size + len(page), tags + page.count(b"<")
    if size > LARGEST:
        raise TooLarge(name, f"{size // 1_000_000} million bytes of text")
    if tags > MOST_TAGS:
        raise TooLarge(name, f"{tags:,} signs of markup")


def characters(data: bytes, name: str) -> str:
    """The text of a page, in the encoding it declares, or the one its bytes tell."""
    found = _DECLARED.search(data[:_SEEN])
    marked = data.startswith((codecs.BOM_UTF8, codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE))
    said = (found[1] or found[2]).decode("ascii") if found and not marked else ""
    declared = _declared(data, said)
    content = decoded(data if declared is None else declared.encode())
    if content.controls > _SOUND * len(content.text):
        raise DamagedFile(name, "it is not a web page")
    return content.text


def tag(node: Node) -> str:
    """The element's name in small letters, without a namespace."""
    return _small(node.tag) if isinstance(node.tag, str) else ""


def find(root: Node, name: str) -> Iterator[Node]:
    return (node for node in root.iter() if tag(node) == name)


@lru_cache(maxsize=1000)  # a page has few names
def _small(name: str) -> str:
    return name.rpartition("}")[2].lower()


def _declared(data: bytes, said: str) -> str | None:
    """The text by the encoding it declares; None where that is none, or is wrong."""
    try:
        codec = codecs.lookup(said).name if said else ""
        if not codec or codec in _LATIN or codec.startswith("utf"):
            return None  # the bytes tell these better than declarations do
        return data.decode(codec)
    except (LookupError, ValueError, AttributeError):
        return None


def _says_xml(text: str) -> bool:
    head = text[:4000]
    return bool(_PROLOGUE.match(head) or _XHTML.search(head))


def _as_xml(text: str) -> Node | None:
    text = _DOCTYPE.sub("", _PROLOGUE.sub("", text, count=1), count=1)
    text = _ENTITY.sub(_character, text)
    parser = etree.XMLParser(
        resolve_entities=False, no_network=True, load_dtd=False, huge_tree=True, remove_comments=True, remove_pis=True
    )
    try:
        root = etree.fromstring(text.strip().encode(), parser)
    except (etree.XMLSyntaxError, ValueError):
        return None
    return root if tag(root) == "html" else None


def _as_html(text: str) -> Node | None:
    parser = etree.HTMLParser(
        encoding="utf-8", no_network=True, huge_tree=True, remove_comments=True, remove_pis=True, recover=True
    )
    text = _END.sub("", _DOCTYPE.sub("", _PROLOGUE.sub("", text, count=1), count=1))
    try:
        return etree.fromstring(text.encode(), parser)
    except (etree.XMLSyntaxError, ValueError):
        return None


def _character(match: re.Match[str]) -> str:
    return match[0] if match[1] in _OWN else html.unescape(match[0])
