"""What paragraphs and letters look like (ODF 1.3 part 3, §16): styles read once, inheritance resolved and kept.

A style is what it states over what its parent says; the first ancestor stands on the default of its family. Letters
take the text properties of their paragraph's style, then those of each span around them, outermost first.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from afterdraft.formats.letters import Letters, Position, face
from afterdraft.formats.looks import BODY_LEVEL, Face, Shape
from afterdraft.formats.markup import Node
from afterdraft.formats.odt.names import FO, STYLE, TEXT, level, points, share
from afterdraft.manuscript.blocks import Align

_ALIGN: Mapping[str, Align] = {
    "left": "left", "start": "left", "center": "center", "right": "right", "end": "right", "justify": "justify"
}  # fmt: skip
_BOLD_FROM = 600  # weights of fonts: 400 is regular, 700 bold (CSS Fonts 3, §3.2)
_LINK_STYLES = ("internet link", "visited internet link")  # their underline says 'link', not emphasis
_DEEPEST = 50  # ancestors of a style, more than any style sheet has; styles based on each other in a ring end there
_SIDES = ("top", "bottom", "left", "right")


@dataclass(frozen=True, slots=True)
class Style:
    """A style as stated, its parent not yet applied; None where it is silent."""

    name: str = ""
    parent: str = ""
    shape: Shape = field(default_factory=Shape)
    letters: Letters = field(default_factory=Letters)
    numbered: str | None = None  # the list style its paragraphs take; "" for none
    page: str | None = None  # the page style that begins with its paragraphs; "" for none
    turn_after: bool | None = None  # a page ends after it


class Styles:
    """The styles of a file, by family and id. The roots are those of content.xml and styles.xml."""

    def __init__(self, *roots: Node | None) -> None:
        self._styles: dict[tuple[str, str], Style] = {}
        self._defaults: dict[str, Style] = {}
        self._automatic: set[str] = set()  # paragraph styles that stand for formatting by hand
        self.language = ""
        self._whole: dict[str, Style] = {}
        self._spans: dict[tuple[Letters, str], Letters] = {}
        for root in roots:
            if root is not None:
                self._read(root)

    def _read(self, root: Node) -> None:
        for node in root.iter(f"{STYLE}style", f"{STYLE}default-style"):
            family, style = node.get(f"{STYLE}family", ""), _style(node)
            if node.tag == f"{STYLE}default-style":
                self._defaults[family] = style
                if family == "paragraph":
                    self.language = _language(node.find(f"{STYLE}text-properties"))
            else:
                self._styles.setdefault((family, node.get(f"{STYLE}name", "")), style)

    def name(self, id: str, /) -> str:
        """As the author sees it: formatting by hand goes by the style below it."""
        style = self._styles.get(("paragraph", id))
        if style is None:
            return id.replace("_20_", " ")
        named = next((each.name for each in self._ancestors("paragraph", id) if each.name), "")
        return named or style.parent.replace("_20_", " ")

    def paragraph(self, id: str) -> Style:
        """The paragraph style with all it inherits."""
        if id not in self._whole:
            result = self._defaults.get("paragraph", Style())
            for style in reversed(self._ancestors("paragraph", id)):
                result = _over(style, result)
            self._whole[id] = result
        return self._whole[id]

    def by_hand(self, id: str) -> Shape:
        """What stands at the paragraph itself."""
        style = self._styles.get(("paragraph", id))
        return style.shape if style and not style.name else Shape()

    def table(self, id: str) -> Style:
        return self._styles.get(("table", id), Style())

    def span(self, around: Letters, id: str) -> Letters:
        """Letters in a span of the text style `id`, among letters like `around`."""
        key = around, id
        if key not in self._spans:
            result = around
            for style in reversed(self._ancestors("text", id)):
                result = style.letters.over(result)
            self._spans[key] = result
        return self._spans[key]

    def bare(self, id: str, /) -> Face:
        """How letters without formatting of their own look in a paragraph of that style."""
        return face(self.paragraph(id).letters)

    def _ancestors(self, family: str, id: str) -> list[Style]:
        """The style and its ancestors, nearest first."""
        result: list[Style] = []
        key = family, id
        while key in self._styles and len(result) < _DEEPEST:
            result.append(self._styles[key])
            key = family, result[-1].parent
        return result


def shape(properties: Node | None) -> Shape:
    """Read a style:paragraph-properties."""
    if properties is None:
        return Shape()
    before = properties.get(f"{FO}break-before")
    above, below = _lines(properties)
    return Shape(
        align=_ALIGN.get(properties.get(f"{FO}text-align", "")),
        left=_margin(properties, "left"),
        indent=points(properties.get(f"{FO}text-indent")),
        space_before=_margin(properties, "top"),
        space_after=_margin(properties, "bottom"),
        turn=None if before is None else before == "page",
        line_above=above,
        line_below=below,
    )


def _margin(properties: Node, side: str) -> float | None:
    own = points(properties.get(f"{FO}margin-{side}"))
    return points(properties.get(f"{FO}margin")) if own is None else own


def _lines(properties: Node) -> tuple[bool | None, bool | None]:
    """Whether ruled above, below; a box or a bar at the side is no rule."""
    around = properties.get(f"{FO}border")
    stated = {side: properties.get(f"{FO}border-{side}", around) for side in _SIDES}
    if set(stated.values()) == {None}:
        return None, None
    sides = {side for side, line in stated.items() if line not in (None, "none", "hidden")}
    if sides & {"left", "right"}:
        return False, False
    return "top" in sides, "bottom" in sides


def _style(node: Node) -> Style:
    name, parent = node.get(f"{STYLE}name", ""), node.get(f"{STYLE}parent-style-name", "")
    automatic = (above := node.getparent()) is not None and above.tag.endswith("}automatic-styles")
    shown = "" if automatic else node.get(f"{STYLE}display-name", name)
    properties = node.find(f"{STYLE}paragraph-properties")
    said = _letters(node.find(f"{STYLE}text-properties"))
    outline = node.get(f"{STYLE}default-outline-level")
    own = shape(properties if properties is not None else node.find(f"{STYLE}table-properties"))
    after = properties.get(f"{FO}break-after") if properties is not None else None
    return Style(
        name=shown,
        parent=parent,
        shape=own if outline is None else replace(own, level=level(outline) if outline else BODY_LEVEL),
        letters=replace(said, underline=None) if shown.casefold() in _LINK_STYLES else said,
        numbered=node.get(f"{STYLE}list-style-name"),
        page=node.get(f"{STYLE}master-page-name"),
        turn_after=None if after is None else after == "page",
    )


def _letters(properties: Node | None) -> Letters:
    """Read a style:text-properties."""
    if properties is None:
        return Letters()
    size = properties.get(f"{FO}font-size")
    return Letters(
        bold=_bold(properties.get(f"{FO}font-weight")),
        italic=_is(properties.get(f"{FO}font-style"), "italic", "oblique"),
        underline=_not_none(properties.get(f"{STYLE}text-underline-style")),
        strike=_not_none(
            properties.get(f"{STYLE}text-line-through-style", properties.get(f"{STYLE}text-line-through-type"))
        ),
        small_caps=_is(properties.get(f"{FO}font-variant"), "small-caps"),
        caps=_is(properties.get(f"{FO}text-transform"), "uppercase"),
        hidden=_is(properties.get(f"{TEXT}display"), "none"),
        position=_position(properties.get(f"{STYLE}text-position")),
        size=points(size),
        scale=share(size),
    )


def _bold(weight: str | None) -> bool | None:
    if weight is None:
        return None
    return int(weight) >= _BOLD_FROM if weight.isascii() and weight.isdigit() else weight == "bold"


def _is(value: str | None, *wanted: str) -> bool | None:
    return None if value is None else value in wanted


def _not_none(value: str | None) -> bool | None:
    return None if value is None else value != "none"


def _position(value: str | None) -> Position | None:
    """ "super 58%", "sub", or how far above the line, in per cent."""
    if not value:
        return None
    word = value.split()[0]
    if word in ("super", "sub"):
        return "superscript" if word == "super" else "subscript"
    if word.rstrip("%").lstrip("-").strip("0.") == "":
        return "baseline"
    return "subscript" if word.startswith("-") else "superscript"


def _language(properties: Node | None) -> str:
    """BCP 47, as far as the file states it."""
    if properties is None:
        return ""
    parts = (properties.get(f"{FO}language", "none"), properties.get(f"{FO}country", "none"))
    return "" if parts[0] == "none" else "-".join(part for part in parts if part != "none")


def _over(own: Style, base: Style) -> Style:
    return Style(
        name=own.name or base.name,
        parent=own.parent,
        shape=own.shape.over(base.shape),
        letters=own.letters.over(base.letters),
        numbered=base.numbered if own.numbered is None else own.numbered,
        page=base.page if own.page is None else own.page,
        turn_after=base.turn_after if own.turn_after is None else own.turn_after,
    )
