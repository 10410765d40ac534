"""How elements look: what browsers do by themselves (WHATWG HTML, §15 "Rendering"), and style sheets over it."""

import re
from collections.abc import Mapping
from functools import lru_cache

from afterdraft.formats.html.css import Said
from afterdraft.formats.letters import Letters, Position
from afterdraft.formats.looks import Shape
from afterdraft.manuscript.blocks import Align

EM = 12.0  # points, of body text in browsers (16 pixels)
_IN = 30.0  # points, of quotations and the like (40 pixels)
_BOLD_FROM = 600  # weights of fonts: 400 is regular, 700 bold (CSS Fonts 3, §3.2)

_LETTERS: Mapping[str, Letters] = {
    **dict.fromkeys(("b", "strong", "th"), Letters(bold=True)),
    **dict.fromkeys(("i", "em", "cite", "dfn", "var", "address"), Letters(italic=True)),
    "u": Letters(underline=True),
    **dict.fromkeys(("s", "strike"), Letters(strike=True)),
    "sup": Letters(position="superscript"),
    "sub": Letters(position="subscript"),
    "small": Letters(scale=0.83),
    "big": Letters(scale=1.2),
    **{
        f"h{level}": Letters(bold=True, scale=scale)
        for level, scale in enumerate((2.0, 1.5, 1.17, 1.0, 0.83, 0.67), start=1)
    },
}
_ALIGN: Mapping[str, Align] = {
    "left": "left", "start": "left", "center": "center", "middle": "center", "right": "right", "end": "right",
    "justify": "justify", "-webkit-center": "center",
}  # fmt: skip
_UNITS = {
    "pt": 1.0,
    "px": 0.75,
    "in": 72.0,
    "cm": 72 / 2.54,
    "mm": 72 / 25.4,
    "pc": 12.0,
    "em": EM,
    "rem": EM,
    "ex": 6.0,
}
_LENGTH = re.compile(r"([+-]?(?:\d{1,6}(?:\.\d{0,6})?|\.\d{1,6}))(pt|px|in|cm|mm|pc|rem|em|ex)?")
_PERCENT = re.compile(r"(\d{1,4}(?:\.\d{0,6})?)%")
_SIZES = {"xx-small": 0.6, "x-small": 0.75, "small": 0.89, "medium": 1.0, "large": 1.2, "x-large": 1.5, "xx-large": 2.0}
_POSITIONS: Mapping[str, Position] = {"super": "superscript", "sub": "subscript", "baseline": "baseline"}
_TURNS = ("always", "page", "left", "right", "recto", "verso")


@lru_cache(maxsize=1000)  # the same few stand within each other all over a page
def inner(name: str, around: Letters) -> Letters:
    """Letters in an element `name`, of which nothing more is said, among letters like `around`."""
    usual = _LETTERS.get(name)
    return usual.over(around) if usual else around


def letters(name: str, said: Said) -> Letters:
    """What the element `name` says of letters."""
    usual = _LETTERS.get(name, Letters())
    return _letters(said).over(usual) if said else usual


def shape(name: str, said: Said) -> Shape:
    """What the element says of the paragraph it is or holds."""
    usual = _usual(name)
    return _shape(said).over(usual) if said else usual


def is_hidden(said: Said) -> bool:
    return said.get("display") == "none" or said.get("visibility") == "hidden"


def ends_page(said: Said) -> bool:
    return said.get("break-after", said.get("page-break-after")) in _TURNS


@lru_cache(maxsize=1000)  # the same few lengths stand in every paragraph
def points(text: str | None) -> float | None:
    """A length as points; None where it is none, or a share of something."""
    match = _LENGTH.fullmatch(text or "")
    if match is None or (match[2] is None and float(match[1])):
        return None
    return round(float(match[1]) * _UNITS[match[2] or "pt"], 2)


@lru_cache(maxsize=100)  # a page has few names
def _usual(name: str) -> Shape:
    if name == "center":
        return Shape(align="center")
    if name in ("blockquote", "dd", "figure"):
        return Shape(left=_IN)
    return Shape(level=int(name[1]) - 1) if name in ("h1", "h2", "h3", "h4", "h5", "h6") else Shape()


def _shape(said: Said) -> Shape:
    top, bottom, left = _margins(said)
    above, below = (_is_line(said.get(f"border-{side}")) for side in ("top", "bottom"))
    turn = said.get("break-before", said.get("page-break-before"))
    return Shape(
        align=_ALIGN.get(said.get("text-align", "")),
        left=left,
        indent=points(said.get("text-indent")),
        space_before=top,
        space_after=bottom,
        turn=None if turn is None else turn in _TURNS,
        line_above=above,
        line_below=below,
    )


def _margins(said: Said) -> tuple[float | None, float | None, float | None]:
    """Top, bottom, left: of the one declaration for all sides (CSS 2.2, §8.3), and those for one."""
    all_ = said.get("margin", "").split()
    by_side = {1: (0, 0, 0), 2: (0, 0, 1), 3: (0, 2, 1), 4: (0, 2, 3)}.get(len(all_))
    shared = tuple(all_[place] for place in by_side) if by_side else (None, None, None)
    sides = zip(("top", "bottom", "left"), shared, strict=True)
    top, bottom, left = (points(said.get(f"margin-{side}", usual)) for side, usual in sides)
    return top, bottom, left


def _is_line(border: str | None) -> bool | None:
    return None if border is None else not {"none", "0", "0px", "0pt", "hidden"} & set(border.split())


def _letters(said: Said) -> Letters:
    decoration = said.get("text-decoration", said.get("text-decoration-line"))
    transform, variant = said.get("text-transform"), said.get("font-variant", said.get("font-variant-caps"))
    size = said.get("font-size")
    return Letters(
        bold=_bold(said.get("font-weight")),
        italic=_has(said.get("font-style"), "italic", "oblique"),
        underline=_has(decoration, "underline"),
        strike=_has(decoration, "line-through"),
        small_caps=_has(variant, "small-caps", "all-small-caps"),
        caps=_has(transform, "uppercase"),
        position=_POSITIONS.get(said.get("vertical-align", "")),
        size=None if size and size.endswith(("em", "ex")) and not size.endswith("rem") else points(size),
        scale=_scale(size),
    )


def _bold(weight: str | None) -> bool | None:
    if weight is None:
        return None
    return int(weight) >= _BOLD_FROM if weight.isascii() and weight.isdigit() else weight in ("bold", "bolder")


def _has(value: str | None, *wanted: str) -> bool | None:
    return None if value is None else not set(wanted).isdisjoint(value.split())


def _scale(size: str | None) -> float | None:
    """Of the size around: "80%", "1.2em", "larger"."""
    if not size:
        return None
    if match := _PERCENT.fullmatch(size):
        return float(match[1]) / 100
    if size.endswith("em") and not size.endswith("rem"):
        length = points(size)
        return None if length is None else length / EM
    return {"larger": 1.2, "smaller": 0.83}.get(size, _SIZES.get(size))
