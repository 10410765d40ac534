"""Scenes of both drafts side by side, as HTML: what was cut is struck through, what is new is underlined."""

from collections.abc import Sequence
from dataclasses import dataclass

from markupsafe import Markup, escape

from afterdraft.comparison.changes import Change, changes
from afterdraft.comparison.comparison import Fate
from afterdraft.comparison.side_by_side import RowKind, SideRow, rows_of, text_of
from afterdraft.manuscript.naming import shortened
from afterdraft.web.render import many
from afterdraft.web.two_drafts import Named, TwoDrafts

OPENING = 60  # characters of what moved that stand at its old place
_DEL, _INS = Markup("<del>{}</del>"), Markup("<ins>{}</ins>")


@dataclass(frozen=True, slots=True)
class BesideRow:
    kind: RowKind
    left: Markup
    right: Markup
    note: str = ""  # of what moved: "from Chapter 3, 12 words changed"
    path: str = ""  # of what moved: where it is on the other side
    old: int | None = None  # its first story paragraph there, for addresses
    new: int | None = None


def beside(two: TwoDrafts, fate: Fate) -> tuple[BesideRow, ...]:
    """What became of scenes, paragraph by paragraph."""
    return tuple(_beside(two, row) for row in rows_of(two.compared.found, fate.old, fate.new))


def marked(text: str, changed: Sequence[Change], *, old: bool) -> Markup:
    """One side of what changed: of the old text what is gone from it, of the new what came."""
    element = _DEL if old else _INS
    pieces = []
    for change in changed:
        start, end = change.old if old else change.new
        if start < end:
            words = text[start:end]
            pieces.append(escape(words) if change.kind == "kept" else _round(element, words))
    return Markup("").join(pieces)


def _round(element: Markup, words: str) -> Markup:
    """Without the space before and after: a line through it reads as a dash."""
    bare = words.strip()
    if not bare:
        return escape(words)
    before, after = words[: len(words) - len(words.lstrip())], words[len(words.rstrip()) :]
    return escape(before) + element.format(bare) + escape(after)


def fate_key(two: TwoDrafts, fate: Fate) -> str:
    """Names a fate in addresses: the side and code of its first scene."""
    return f"1-{two.olds[fate.old[0]].code}" if fate.old else f"2-{two.news[fate.new[0]].code}"


def _beside(two: TwoDrafts, row: SideRow) -> BesideRow:
    if row.elsewhere is not None:
        return _from_there(two, row, row.elsewhere) if row.kind == "moved here" else _to_there(two, row, row.elsewhere)
    old, new = text_of(two.compared.found.old, row.old), text_of(two.compared.found.new, row.new)
    if row.kind == "changed":
        left, right = marked(old, row.changes, old=True), marked(new, row.changes, old=False)
    else:
        left, right = escape(old), escape(new)
    return BesideRow(row.kind, left, right, old=_first(row.old), new=_first(row.new))


def _to_there(two: TwoDrafts, row: SideRow, scene: int) -> BesideRow:
    """A line at the old place; the text is read where it is now."""
    there = two.news[scene]
    stub = escape(shortened(text_of(two.compared.found.old, row.old), OPENING))
    path = _path(two, there, f"n{row.partners[0]}")
    return BesideRow(row.kind, stub, Markup(), f"to {_where(there, row)}", path, old=_first(row.old))


def _from_there(two: TwoDrafts, row: SideRow, scene: int) -> BesideRow:
    there, found = two.olds[scene], two.compared.found
    new = text_of(found.new, row.new)
    text = marked(new, changes(text_of(found.old, row.partners), new), old=False)
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
