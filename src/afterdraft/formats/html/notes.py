"""Notes: where the text refers to one, and which elements are notes themselves.

Told by what the standards have for it (EPUB Structural Semantics `noteref`, `footnote`, `endnote`; DPUB-ARIA
`doc-noteref`, `doc-footnote`, `doc-endnotes`, `doc-backlink`) and by the classes that LibreOffice writes.
"""

from collections.abc import Mapping, Set
from dataclasses import dataclass, field
from typing import Literal

from afterdraft.formats.html.document import tag
from afterdraft.formats.markup import Node

Kind = Literal["footnote", "endnote"]

TYPE = "{http://www.idpf.org/2007/ops}type"
_REFERENCES = {"noteref", "doc-noteref", "sdfootnoteanc", "sdendnoteanc", "footnote-ref"}
BACK = frozenset({"backlink", "doc-backlink", "footnote-back", "sdfootnotesym", "sdendnotesym"})
_ENDNOTES = {"endnote", "endnotes", "rearnote", "rearnotes", "doc-endnote", "sdendnoteanc"}
_NOTHING: Set[str] = frozenset()
_GROUPS = {"footnotes", "endnotes", "rearnotes", "doc-endnotes"}


@dataclass(frozen=True, slots=True)
class Notes:
    """`references`: links of the text → the note each refers to. `apart`: what is not read as text."""

    references: Mapping[Node, Node] = field(default_factory=dict)
    apart: frozenset[Node] = frozenset()


def notes(root: Node) -> Notes:
    """All notes of a page."""
    links = [node for node in root.iter() if tag(node) == "a" and said(node) & _REFERENCES]
    if not links:
        return Notes()
    named = {name: node for node in root.iter() for name in (node.get("id"), node.get("name")) if name}
    references: dict[Node, Node] = {}
    for link in links:
        target = named.get(link.get("href", "").partition("#")[2])
        if target is not None and target is not link:
            references[link] = _whole(target)
    texts = frozenset(references.values())
    groups = (node for node in root.iter() if said(node) & _GROUPS and _holds_only(node, texts))
    return Notes(references, texts | frozenset(groups))


def kind(link: Node, note: Node) -> Kind:
    return "endnote" if (said(link) | said(note)) & _ENDNOTES else "footnote"


def said(node: Node) -> Set[str]:
    """What an element says it is, by type, role or class."""
    if not node.attrib:
        return _NOTHING
    names = (node.get(TYPE), node.get("epub:type"), node.get("role"), node.get("class"))
    return {name for value in names if value for name in value.lower().split()}


def _whole(target: Node) -> Node:
    """The note around the place that a link names: LibreOffice names the number in it."""
    if tag(target) != "a":
        return target
    above = next((node for node in target.iterancestors() if tag(node) in ("div", "li", "aside", "p")), target)
    around = above.getparent()
    return around if around is not None and around.get("id", "").startswith("sd") else above


def _holds_only(group: Node, texts: frozenset[Node]) -> bool:
    """Whether all that is in it is notes."""
    inside = {below for note in texts for below in note.iter()} | texts
    return all(node in inside or not (node.text or "").strip() for node in group.iter())
