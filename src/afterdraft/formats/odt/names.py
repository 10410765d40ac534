"""Names of OpenDocument (ISO/IEC 26300; OASIS ODF 1.3 part 3), and how its attribute values are read."""

import re
from functools import lru_cache

_ODF = "urn:oasis:names:tc:opendocument:xmlns"
OFFICE = f"{{{_ODF}:office:1.0}}"
TEXT = f"{{{_ODF}:text:1.0}}"
STYLE = f"{{{_ODF}:style:1.0}}"
TABLE = f"{{{_ODF}:table:1.0}}"
DRAW = f"{{{_ODF}:drawing:1.0}}"
META = f"{{{_ODF}:meta:1.0}}"
MANIFEST = f"{{{_ODF}:manifest:1.0}}"
FO = f"{{{_ODF}:xsl-fo-compatible:1.0}}"
SVG = f"{{{_ODF}:svg-compatible:1.0}}"
LOEXT = "{urn:org:documentfoundation:names:experimental:office:xmlns:loext:1.0}"  # LibreOffice's additions
DC = "{http://purl.org/dc/elements/1.1/}"
XML = "{http://www.w3.org/XML/1998/namespace}"

P, H = f"{TEXT}p", f"{TEXT}h"

_POINTS = {"pt": 1.0, "in": 72.0, "inch": 72.0, "cm": 72 / 2.54, "mm": 72 / 25.4, "pc": 12.0, "px": 0.75}
_LENGTH = re.compile(r"(-?[0-9]{1,9}(?:\.[0-9]{1,9})?|-?\.[0-9]{1,9})(pt|inch|in|cm|mm|pc|px)")
_PERCENT = re.compile(r"([0-9]{1,4}(?:\.[0-9]{1,9})?)%")
_WHOLE = re.compile(r"[0-9]{1,9}")


@lru_cache(maxsize=1000)  # the same few lengths stand in every style
def points(text: str | None) -> float | None:
    """A length ("0.5in") as points; None where it is none, or a share of another length."""
    match = _LENGTH.fullmatch(text or "")
    return round(float(match[1]) * _POINTS[match[2]], 2) if match else None


def share(text: str | None) -> float | None:
    """ "80%" as 0.8; None where it is no percentage."""
    match = _PERCENT.fullmatch(text or "")
    return float(match[1]) / 100 if match else None


def whole(text: str | None, default: int) -> int:
    return int(text) if text and _WHOLE.fullmatch(text) else default


def level(text: str | None) -> int:
    """An outline or list level, 1…10, as counted from 0."""
    return max(1, min(whole(text, 1), 10)) - 1
