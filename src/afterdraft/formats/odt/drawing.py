"""What a drawing is: a picture, a line, a box of text, or several of them."""

from afterdraft.formats.markup import Node, written
from afterdraft.formats.odt.names import DRAW, SVG, TEXT, points

_ORNAMENT_HEIGHT = 54.0  # points: ¾ inch; a picture lower than this that stands alone is an ornament (common practice)
_RULE_HEIGHT = 6.0  # points; a rectangle no higher is a rule (chosen: thick rules measure 1 to 6 points)
_BOX = f"{DRAW}text-box"
_LINES = (f"{DRAW}line", f"{DRAW}connector")
_FLAT = (f"{DRAW}rect", f"{DRAW}custom-shape")
_PARAGRAPH = f"{TEXT}p"


def boxes(node: Node) -> list[Node]:
    """The boxes of text within: frames of text, and shapes that are written in; not those within another."""
    if node.tag == _BOX or any(written(each).strip() for each in node.iterfind(_PARAGRAPH)):
        return [node]
    return [box for child in node for box in boxes(child)]


def is_picture(node: Node) -> bool:
    return node.tag != _BOX and (node.tag == f"{DRAW}image" or any(is_picture(child) for child in node))


def alternative(node: Node) -> str:
    """The text that stands for a picture."""
    return next((text for name in ("desc", "title") for each in node.iter(SVG + name) if (text := each.text)), "")


def is_ornament(node: Node) -> bool:
    return 0 < _height(node) <= _ORNAMENT_HEIGHT


def is_rule(node: Node) -> bool:
    """A drawn line, or a rectangle as flat as one."""
    return node.tag in _LINES or (node.tag in _FLAT and 0 < _height(node) <= _RULE_HEIGHT)


def _height(node: Node) -> float:
    return next((height for each in node.iter() if (height := points(each.get(f"{SVG}height")))), 0.0)
