"""Names of WordprocessingML (ECMA-376 part 1, transitional), and how its attribute values are read."""

import re
from functools import lru_cache

from lxml import etree

Node = etree._Element

_SCHEMAS = "http://schemas.openxmlformats.org"
W = f"{{{_SCHEMAS}/wordprocessingml/2006/main}}"
R = f"{{{_SCHEMAS}/officeDocument/2006/relationships}}"
MC = f"{{{_SCHEMAS}/markup-compatibility/2006}}"
WP = f"{{{_SCHEMAS}/drawingml/2006/wordprocessingDrawing}}"
A = f"{{{_SCHEMAS}/drawingml/2006/main}}"
M = f"{{{_SCHEMAS}/officeDocument/2006/math}}"
V = "{urn:schemas-microsoft-com:vml}"
O = "{urn:schemas-microsoft-com:office:office}"  # noqa: E741 - the prefix the standard uses
W14 = "{http://schemas.microsoft.com/office/word/2010/wordml}"
W15 = "{http://schemas.microsoft.com/office/word/2012/wordml}"
DC = "{http://purl.org/dc/elements/1.1/}"

VAL = f"{W}val"
P, R_, T = f"{W}p", f"{W}r", f"{W}t"
PPR, RPR = f"{W}pPr", f"{W}rPr"

_OFF = ("0", "false", "off")  # ST_OnOff; anything else, and no value at all, is on
_POINTS = {"pt": 1.0, "in": 72.0, "cm": 72 / 2.54, "mm": 72 / 25.4, "pc": 12.0, "pi": 12.0}  # ST_UniversalMeasure
_MEASURE = re.compile(r"(-?[0-9.]{1,12})(pt|in|cm|mm|pc|pi)?")
_WHOLE = re.compile(r"-?[0-9]{1,9}")


def on(node: Node) -> bool:
    return node.get(VAL, "1") not in _OFF


def value(parent: Node | None, name: str) -> str | None:
    """`w:val` of the child called `w:name`, or None."""
    child = parent.find(W + name) if parent is not None else None
    return child.get(VAL) if child is not None else None


def whole(text: str | None, default: int = 0) -> int:
    return int(text) if text and _WHOLE.fullmatch(text) else default


@lru_cache(maxsize=1000)  # the same few lengths stand in every paragraph
def points(text: str | None, *, per_point: float = 20.0) -> float | None:
    """A length as points: "240" (twentieths, or whatever `per_point` says) or "12pt"; None where it is none."""
    match = _MEASURE.fullmatch(text or "")
    if match is None or match[1].count(".") > 1 or match[1].strip("-.") == "":
        return None
    number = float(match[1])
    return number * _POINTS[match[2]] if match[2] else number / per_point
