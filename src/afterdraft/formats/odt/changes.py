"""Tracked changes: they stand together before the text, and the text refers to them (ODF 1.3 part 3, §5.5)."""

from dataclasses import dataclass

from afterdraft.formats.markup import Node
from afterdraft.formats.odt.names import DC, OFFICE, TEXT, XML


@dataclass(frozen=True, slots=True)
class Change:
    author: str
    when: str  # as the file states it
    inserted: bool
    deleted: Node | None  # holds the paragraphs that are gone


def changes(text: Node) -> dict[str, Change]:
    """All changes of a text body, by id."""
    regions = text.iterfind(f"{TEXT}tracked-changes/{TEXT}changed-region")
    return {node.get(f"{TEXT}id", node.get(f"{XML}id", "")): _change(node) for node in regions}


def _change(region: Node) -> Change:
    deletion = region.find(f"{TEXT}deletion")
    info = next(region.iter(f"{OFFICE}change-info"), None)
    return Change(
        (info.findtext(f"{DC}creator") or "") if info is not None else "",
        (info.findtext(f"{DC}date") or "") if info is not None else "",
        region.find(f"{TEXT}insertion") is not None,
        deletion,
    )
