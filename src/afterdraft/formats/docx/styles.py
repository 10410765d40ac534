"""What paragraphs and letters look like: styles.xml read once, inheritance resolved on demand and kept.

Order of inheritance as ECMA-376 part 1, §17.7.2: document defaults, numbering, paragraph style, character style,
then what stands at the paragraph or run itself. Toggle properties as §17.7.3: true in the document defaults is true;
otherwise they are combined among the styles by exclusive or; what stands at the run itself decides alone.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal

from afterdraft.formats.docx.names import PPR, RPR, VAL, Node, W, on, points, value, whole
from afterdraft.formats.looks import BODY_LEVEL, DEFAULT_SIZE, Face, Shape
from afterdraft.manuscript.blocks import Align, Emphasis

Position = Literal["superscript", "subscript", "baseline"]

_ALIGN: Mapping[str, Align] = {"left": "left", "start": "left", "center": "center", "right": "right", "end": "right"}
_TOGGLES: Mapping[str, str] = {
    f"{W}{name}": name for name in ("b", "i", "caps", "smallCaps", "strike", "dstrike", "vanish")
}
_KINDS: Mapping[str, Emphasis] = {
    "b": "bold", "i": "italic", "smallCaps": "small caps", "strike": "strike", "dstrike": "strike"
}  # fmt: skip
_POSITIONS: Mapping[str, Position] = {"superscript": "superscript", "subscript": "subscript", "baseline": "baseline"}
_LINK_STYLES = ("hyperlink", "followedhyperlink")  # their underline says 'link', not emphasis
_U, _VERT_ALIGN, _SZ, _R_STYLE = f"{W}u", f"{W}vertAlign", f"{W}sz", f"{W}rStyle"
_AUTO_SPACE = 14.0  # points of 'automatic' spacing, as word processors show it; from memory
_DEEPEST = 50  # ancestors of a style, more than any style sheet has; styles based on each other in a ring end there

# "heading 1" is the built-in name in every language; converters also write the names that authors see.
_HEADING = re.compile(
    r"(?:heading|überschrift|berschrift|titre|t[ií]tulo|ttulo|titolo|kop|rubrik|overskrift|otsikko|nag[łl]ówek|nagwek"
    r"|nadpis|címsor|cmsor|titlu|başlık|balk|encabezado|cabeçalho|заголовок|标题|標題|見出し|제목)\s*([1-9])",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Letters:
    """What one w:rPr says; None where it is silent."""

    on: frozenset[str] = frozenset()  # names of toggle properties
    off: frozenset[str] = frozenset()
    underline: bool | None = None
    position: Position | None = None
    size: float | None = None  # points
    style: str | None = None  # id of a character style


@dataclass(frozen=True, slots=True)
class Style:
    """A style as stated, its parent not yet applied."""

    id: str
    name: str
    based_on: str | None
    shape: Shape
    letters: Letters


class Styles:
    """The style sheet. `root` is that of styles.xml, or None where the file has none."""

    def __init__(self, root: Node | None) -> None:
        self._styles: dict[str, Style] = {}
        self._defaults = Letters()
        self._base = Shape()
        self._default_id = ""
        self.language = ""
        self._chains: dict[str, tuple[Style, ...]] = {}
        self._letters: dict[str, Letters] = {}
        self._faces: dict[tuple[str, Letters], Face] = {}
        if root is not None:
            self._read(root)

    def _read(self, root: Node) -> None:
        defaults = root.find(f"{W}docDefaults")
        if defaults is not None:
            rpr = defaults.find(f"{W}rPrDefault/{W}rPr")
            self._defaults = letters(rpr)
            self._base = shape(defaults.find(f"{W}pPrDefault/{W}pPr"))
            self.language = value(rpr, "lang") or ""
        for node in root.iterfind(f"{W}style"):
            style = _style(node)
            self._styles[style.id] = style
            if node.get(f"{W}type") == "paragraph" and node.get(f"{W}default", "0") in ("1", "true", "on"):
                self._default_id = style.id

    def resolve_id(self, id: str | None) -> str:
        """The id of the paragraph style that applies where `id` is stated (None: nothing is stated)."""
        return self._default_id if id is None else id

    def name(self, id: str) -> str:
        """As the author sees it; a style that is not in the sheet goes by its id."""
        style = self._styles.get(id)
        name = style.name if style else id
        return f"Heading {name[8:]}" if name.startswith("heading ") else name

    def chain(self, id: str) -> tuple[Style, ...]:
        """The style and its ancestors, nearest first."""
        if id not in self._chains:
            found: list[Style] = []
            next_id: str | None = id
            while next_id in self._styles and len(found) < _DEEPEST:
                found.append(self._styles[next_id])
                next_id = found[-1].based_on
            self._chains[id] = tuple(found)
        return self._chains[id]

    def shape(self, id: str, numbered: Shape | None = None) -> Shape:
        """The paragraph style `id` over what its numbering level says, over the document defaults."""
        result = numbered.over(self._base) if numbered else self._base
        for style in reversed(self.chain(id)):
            result = style.shape.over(result)
        return replace(result, level=self._level(id))

    def _level(self, id: str) -> int | None:
        for style in self.chain(id):
            if style.shape.level is not None:
                return style.shape.level
            if heading := _HEADING.fullmatch(style.name):
                return int(heading[1]) - 1
        heading = _HEADING.fullmatch(id) if id not in self._styles else None
        return int(heading[1]) - 1 if heading else None

    def bare(self, id: str) -> Face:
        """How letters without formatting of their own look in a paragraph of that style."""
        return self.face(id, _SILENT)

    def face(self, paragraph_style: str, direct: Letters) -> Face:
        """How letters with the formatting `direct` look in a paragraph of that style."""
        key = (paragraph_style, direct)
        if key not in self._faces:
            self._faces[key] = self._face(paragraph_style, direct)
        return self._faces[key]

    def _face(self, paragraph_style: str, direct: Letters) -> Face:
        of_paragraph = self._of_style(paragraph_style)
        of_letters = self._of_style(direct.style or "")
        flat = _over(direct, _over(of_letters, _over(of_paragraph, self._defaults)))
        of_styles = self._defaults.on | (of_paragraph.on ^ of_letters.on)
        shown = direct.on | (of_styles - direct.off)
        kinds: set[Emphasis] = {_KINDS[name] for name in shown if name in _KINDS}
        if flat.underline:
            kinds.add("underline")
        if flat.position and flat.position != "baseline":
            kinds.add(flat.position)
        return Face(frozenset(kinds), "caps" in shown, "vanish" in shown, flat.size or DEFAULT_SIZE)

    def _of_style(self, id: str) -> Letters:
        if id not in self._letters:
            result = Letters()
            for style in reversed(self.chain(id)):
                result = _over(style.letters, result)
            self._letters[id] = result
        return self._letters[id]


def letters(rpr: Node | None) -> Letters:
    """Read a w:rPr."""
    if rpr is None or len(rpr) == 0:
        return _SILENT
    said_on: list[str] = []
    said_off: list[str] = []
    underline, position, size, style = None, None, None, None
    for child in rpr:
        tag = child.tag
        if tag in _TOGGLES:
            (said_on if on(child) else said_off).append(_TOGGLES[tag])
        elif tag == _U:
            underline = child.get(VAL, "single") != "none"
        elif tag == _VERT_ALIGN:
            position = _POSITIONS.get(child.get(VAL, ""))
        elif tag == _SZ:
            size = points(child.get(VAL), per_point=2.0)
        elif tag == _R_STYLE:
            style = child.get(VAL)
    return _kept(frozenset(said_on), frozenset(said_off), underline, position, size, style)


_kept = lru_cache(maxsize=1000)(Letters)  # the same few combinations stand at every run


def shape(ppr: Node | None) -> Shape:
    """Read a w:pPr."""
    if ppr is None or len(ppr) == 0:
        return _SHAPELESS
    turn = ppr.find(f"{W}pageBreakBefore")
    level = value(ppr, "outlineLvl")
    number = ppr.find(f"{W}numPr")
    above, below = _lines(ppr.find(f"{W}pBdr"))
    left, indent = _indents(ppr.find(f"{W}ind"))
    before, after = _spaces(ppr.find(f"{W}spacing"))
    return Shape(
        align=_align(value(ppr, "jc")),
        left=left,
        indent=indent,
        space_before=before,
        space_after=after,
        level=None if level is None else max(0, min(whole(level, BODY_LEVEL), BODY_LEVEL)),
        turn=None if turn is None else on(turn),
        number=value(number, "numId"),
        number_level=None if value(number, "ilvl") is None else max(0, min(whole(value(number, "ilvl")), 8)),
        line_above=above,
        line_below=below,
    )


def _align(jc: str | None) -> Align | None:
    return None if jc is None else _ALIGN.get(jc, "justify")


def _indents(ind: Node | None) -> tuple[float | None, float | None]:
    """Left, and first line (negative for hanging)."""
    if ind is None:
        return None, None
    hanging = points(ind.get(f"{W}hanging"))
    first = points(ind.get(f"{W}firstLine"))
    return points(ind.get(f"{W}left") or ind.get(f"{W}start")), -hanging if hanging else first


def _spaces(spacing: Node | None) -> tuple[float | None, float | None]:
    """Before and after."""
    if spacing is None:
        return None, None
    return _space(spacing, "before"), _space(spacing, "after")


def _space(spacing: Node, where: str) -> float | None:
    if spacing.get(f"{W}{where}Autospacing", "0") not in ("0", "false", "off"):
        return _AUTO_SPACE
    return points(spacing.get(f"{W}{where}"))


def _lines(borders: Node | None) -> tuple[bool | None, bool | None]:
    """Whether ruled above, below; a box or a bar at the side is no rule."""
    if borders is None:
        return None, None
    sides = {side for side in ("top", "bottom", "left", "right") if value(borders, side) not in (None, "nil", "none")}
    if sides & {"left", "right"}:
        return False, False
    return "top" in sides, "bottom" in sides


def _style(node: Node) -> Style:
    name = value(node, "name") or ""
    said = letters(node.find(RPR))
    if name.casefold() in _LINK_STYLES:
        said = replace(said, underline=None)
    return Style(node.get(f"{W}styleId", ""), name, value(node, "basedOn"), shape(node.find(PPR)), said)


_SILENT = Letters()
_SHAPELESS = Shape()


def _over(own: Letters, base: Letters) -> Letters:
    return Letters(
        on=(base.on - own.off) | own.on,
        off=(base.off - own.on) | own.off,
        underline=base.underline if own.underline is None else own.underline,
        position=own.position or base.position,
        size=own.size or base.size,
        style=own.style,
    )
