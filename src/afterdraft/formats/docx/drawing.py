"""What a drawing is: its elements, as `tree.elements` gives them, looked at for pictures and lines."""

from collections.abc import Sequence

from afterdraft.formats.docx.names import WP, A, Node, O, V, whole

_ORNAMENT_HEIGHT = 685_800  # EMU: ¾ inch; a picture lower than this that stands alone is an ornament (common practice)
_RULE_HEIGHT = 76_200  # EMU: 6 points; a rectangle no higher is a rule (chosen: thick rules measure 1 to 6 points)
_LINES = ("line", "straightConnector1")  # names of drawn straight lines (ST_ShapeType)


def is_picture(parts: Sequence[Node]) -> bool:
    return any(part.tag in (f"{A}blip", f"{V}imagedata") for part in parts)


def alternative(parts: Sequence[Node]) -> str:
    """The text that stands for a picture."""
    for part in parts:
        if part.tag == f"{WP}docPr":
            return part.get("descr") or part.get("title") or ""
        if part.tag == f"{V}shape":
            return part.get("alt", "")
    return ""


def is_low(parts: Sequence[Node], limit: int = _ORNAMENT_HEIGHT) -> bool:
    """Whether the drawing is no higher than `limit` (EMU)."""
    heights = [whole(part.get("cy")) for part in parts if part.tag == f"{WP}extent"]
    return bool(heights) and 0 < heights[0] <= limit


def is_rule(parts: Sequence[Node]) -> bool:
    """A drawn straight line, or a rectangle as flat as one, which converters make of horizontal rules."""
    flat = is_low(parts, _RULE_HEIGHT)
    return any(_is_line(part) or (flat and _is_rectangle(part)) for part in parts)


def _is_rectangle(part: Node) -> bool:
    return part.tag == f"{A}prstGeom" and part.get("prst") == "rect"


def _is_line(part: Node) -> bool:
    drawn = part.tag == f"{A}prstGeom" and part.get("prst") in _LINES
    return drawn or part.tag == f"{V}line" or part.get(f"{O}hr", "f") in ("t", "true", "1")
