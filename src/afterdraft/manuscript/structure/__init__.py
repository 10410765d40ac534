"""Structure recovery: from the blocks of a file to a draft with parts, chapters and scenes.

`structure` reads top to bottom: what each line shows (`lines`), which are contents pages, which are
headings and of what rank (one decision over the whole file), what further lines belong to them, what is
front and back matter, and where scenes break within chapters. Running heads and page numbers that were typed into
the text are left out of all this (`furniture`).
"""

from dataclasses import replace

from afterdraft.manuscript.blocks import Blocks
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.structure.build import Found, build
from afterdraft.manuscript.structure.contents import contents_lines
from afterdraft.manuscript.structure.doubts import doubts
from afterdraft.manuscript.structure.furniture import furniture
from afterdraft.manuscript.structure.lines import read_lines
from afterdraft.manuscript.structure.matter import back_pieces, front_pieces
from afterdraft.manuscript.structure.ranks import rank_headings
from afterdraft.manuscript.structure.spread import spread
from afterdraft.manuscript.structure.titlepage import title_and_author
from afterdraft.manuscript.structure.titles import titled

__all__ = ["structure"]


def structure(blocks: Blocks) -> Draft:
    """The draft as recovered: every block keeps its place, ids are provisional. Linear in the text."""
    aside = furniture(blocks.blocks)
    if not aside:
        return _structure(blocks)
    kept = [index for index in range(len(blocks.blocks)) if index not in aside]
    without = _structure(replace(blocks, blocks=tuple(blocks.blocks[index] for index in kept)))
    return replace(spread(without, kept, len(blocks.blocks)), source=blocks)


def _structure(blocks: Blocks) -> Draft:
    lines = read_lines(blocks.blocks)
    contents = contents_lines(lines)
    headings = titled(lines, rank_headings(lines, contents))
    upper = [heading for heading in headings if heading.rank != "section"]
    first = upper[0].at if upper else len(lines)
    front = front_pieces(lines, first, contents, headed=bool(upper))
    start = front[-1].end if front else 0
    back = back_pieces(lines, max(start, upper[-1].told if upper else 0))
    found = Found(lines, [one for one in headings if one.at >= start], front, back)
    page = lines[: front[0].end] if front and front[0].kind == "title page" else ()
    title, author = title_and_author(blocks, page)
    division = build(found)
    return Draft(
        source=blocks,
        division=division,
        doubts=doubts(found, division),
        title=title,
        author=author,
        language=blocks.language,
    )
