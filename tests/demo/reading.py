"""The demonstration's files as the program reads them."""

from functools import cache
from pathlib import Path

from afterdraft.formats.table import read
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.structure import structure

FORGOTTEN = 14  # the scene of the first draft whose break was not typed; it is read as the end of the one before


@cache
def draft(path: Path) -> Draft:
    return structure(read(path.read_bytes(), path.name))


@cache
def paragraphs_of(path: Path) -> list[list[str]]:
    """The story paragraphs of every scene."""
    found = draft(path)
    ats = [scene.at for scene in found.division.scenes]
    blocks, roles = found.source.blocks, found.division.roles
    return [
        [blocks[at].text.strip() for at in range(start, end) if roles[at] == "story"]
        for start, end in zip(ats, [*ats[1:], len(blocks)], strict=True)
    ]


def scenes_of(path: Path) -> list[str]:
    return ["\n".join(paragraphs) for paragraphs in paragraphs_of(path)]


def scene_of(path: Path, number: int) -> str:
    """The first draft's scene of that number in the lists, which count the one whose break was forgotten."""
    return scenes_of(path)[number - 1 - (number >= FORGOTTEN)]
