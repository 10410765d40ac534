"""Scenes of both drafts side by side, as HTML: what was cut is struck through, what is new is underlined."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from markupsafe import Markup, escape

from afterdraft.comparison.changes import Change, changes
from afterdraft.comparison.comparison import Fate
from afterdraft.comparison.side_by_side import JOIN, RowKind, SideRow, rows_of, text_of
from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.naming import shortened
from afterdraft.web.prose import Stretch, prose
from afterdraft.web.render import many
from afterdraft.web.two_drafts import Named, TwoDrafts

OPENING = 60  # characters of what moved that stand at its old place
Blocks = tuple[Mapping[int, Block], Mapping[int, Block]]  # by story paragraph, of the old draft and of the new


@dataclass(frozen=True, slots=True)
class BesideRow:
    kind: RowKind | Literal["not reached"]
    left: Markup
    right: Markup
    note: str = ""  # of what moved: "from Chapter 3, 12 words changed"
    path: str = ""  # of what moved: where it is on the other side
    old: int | None = None  # its first story paragraph there, for addresses
    new: int | None = None


def beside(two: TwoDrafts, fate: Fate) -> tuple[BesideRow, ...]:
    """What became of scenes, paragraph by paragraph."""
    blocks = two.blocks(two.compared.old, fate.old), two.blocks(two.compared.new, fate.new)
    rows = tuple(_beside(two, row, blocks) for row in rows_of(two.compared.found, fate.old, fate.new))
    if fate.became == "not reached":
        return tuple(replace(row, kind="not reached") if row.kind == "cut" else row for row in rows)
    return rows


def marked(paragraphs: Sequence[Block], changed: Sequence[Change], *, old: bool) -> Markup:
    """One side of what changed, a paragraph a line: of the old text what is gone from it, of the new what came.

    White space at the ends of what changed is left unmarked: a line through it reads as a dash.
    """
    kind = "gone" if old else "come"
    ranges = [change.old if old else change.new for change in changed if change.kind != "kept"]
    lines, at = [], 0
    for block in paragraphs:
        bare = (_bare(block.text, start - at, end - at) for start, end in ranges)
        lines.append(prose(block, [Stretch(*ends, kind) for ends in bare if ends]))
        at += len(block.text) + len(JOIN)
    return escape(JOIN).join(lines)


def _bare(text: str, start: int, end: int) -> tuple[int, int] | None:
    start, end = max(start, 0), min(end, len(text))
    words = text[start:end]
    start, end = start + len(words) - len(words.lstrip()), end - len(words) + len(words.rstrip())
    return (start, end) if start < end else None


def fate_key(two: TwoDrafts, fate: Fate) -> str:
    """Names a fate in addresses: the side and code of its first scene."""
    return f"1-{two.olds[fate.old[0]].code}" if fate.old else f"2-{two.news[fate.new[0]].code}"


def _beside(two: TwoDrafts, row: SideRow, blocks: Blocks) -> BesideRow:
    if row.elsewhere is not None:
        there = _from_there if row.kind == "moved here" else _to_there
        return there(two, row, row.elsewhere, blocks)
    left = marked([blocks[0][one] for one in row.old], row.changes, old=True)
    right = marked([blocks[1][one] for one in row.new], row.changes, old=False)
    return BesideRow(row.kind, left, right, old=_first(row.old), new=_first(row.new))


def _to_there(two: TwoDrafts, row: SideRow, scene: int, _: Blocks) -> BesideRow:
    """A line at the old place; the text is read where it is now."""
    there = two.news[scene]
    stub = escape(shortened(text_of(two.compared.found.old, row.old), OPENING))
    path = _path(two, there, f"n{row.partners[0]}")
    return BesideRow(row.kind, stub, Markup(), f"to {_where(there, row)}", path, old=_first(row.old))


def _from_there(two: TwoDrafts, row: SideRow, scene: int, blocks: Blocks) -> BesideRow:
    there, found = two.olds[scene], two.compared.found
    changed = changes(text_of(found.old, row.partners), text_of(found.new, row.new))
    text = marked([blocks[1][one] for one in row.new], changed, old=False)
    path = _path(two, there, f"o{row.partners[0]}")
    return BesideRow(row.kind, Markup(), text, f"from {_where(there, row)}", path, new=_first(row.new))


def _first(paragraphs: Sequence[int]) -> int | None:
    return paragraphs[0] if paragraphs else None


def _where(there: Named, row: SideRow) -> str:
    """ "Chapter 3, 12 words changed"."""
    changed = f"{many(row.words_changed, 'word')} changed" if row.words_changed else "word for word"
    return f"{there.chapter}, {changed}"


def _path(two: TwoDrafts, there: Named, place: str) -> str:
    return f"{two.base}/drafts/side/{fate_key(two, two.compared.fates[there.id])}{two.query}#{place}"
