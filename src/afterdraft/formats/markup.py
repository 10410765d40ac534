"""XML from strangers: nothing is followed, nothing fetched, no entity expanded, and the parser's own limits kept."""

import io

from lxml import etree

from afterdraft.errors import DamagedFile

Node = etree._Element


def parsed(text: bytes, *, part: str, name: str) -> Node:
    """The root of one part of a package; `name` is the file's, for messages. Raises DamagedFile.

    Declarations (how entity bombs come) are refused: no word processor writes them.
    """
    try:
        tree = etree.parse(io.BytesIO(text), _parser())
    except (etree.XMLSyntaxError, ValueError) as trouble:
        raise DamagedFile(name, f"its part “{part}” is damaged") from trouble
    if tree.docinfo.doctype:  # type: ignore[union-attr]  # the stubs leave this property out
        raise DamagedFile(name, f"its part “{part}” holds declarations that no word processor writes")
    return tree.getroot()


def written(node: Node) -> str:
    """All the text within."""
    return "".join(str(text) for text in node.itertext())


def _parser() -> etree.XMLParser:
    return etree.XMLParser(
        resolve_entities=False,
        no_network=True,
        load_dtd=False,
        huge_tree=False,
        remove_comments=True,
        remove_pis=True,
    )
