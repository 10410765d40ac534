"""From bytes to characters, whatever the encoding.

The encoding is told by content: byte order mark, then zero-byte statistics (UTF-16 without a mark), then
whether the bytes are UTF-8; anything else is Windows-1252, which never fails. Sources: The Unicode
Standard, section 23.8 (byte order marks); WHATWG Encoding Standard, index windows-1252 (bytes 81, 8D, 8F,
90, 9D stand for the C1 controls of the same number).
"""

import codecs
from dataclasses import dataclass
from typing import Final

MARKS: Final = (  # the longer mark first: UTF-32 LE begins as UTF-16 LE does
    (codecs.BOM_UTF8, "utf-8"),
    (codecs.BOM_UTF32_LE, "utf-32-le"),
    (codecs.BOM_UTF32_BE, "utf-32-be"),
    (codecs.BOM_UTF16_LE, "utf-16-le"),
    (codecs.BOM_UTF16_BE, "utf-16-be"),
)
# Spaces and line ends alone give a UTF-16 text of any script more high zero bytes than this (chosen on
# Cyrillic prose, one space in seven characters), and an 8-bit text has none.
ZEROS: Final = 0.05
LATIN: Final = 0.4  # share of zero high bytes that only a text in Latin letters has
# A file is still UTF-8 with a damaged place or two, if whole sequences outnumber broken ones by this much.
SOUND: Final = 10
KEPT: Final = "\t\n\r\v\f"
NEXT_LINE: Final = "\x85"

_C1: Final = {0x80 + i: bytes([0x80 + i]).decode("cp1252", "ignore") or chr(0x80 + i) for i in range(32)}
_C1_CHARACTERS: Final = frozenset(map(chr, _C1))


@dataclass(frozen=True, slots=True)
class Decoded:
    text: str
    encoding: str
    controls: int  # control characters left out
    notices: tuple[str, ...]


def decoded(data: bytes) -> Decoded:
    """The characters of `data`, without marks and control characters (line ends, tabs, form feeds stay)."""
    text, encoding = _characters(data)
    text, controls = _without_controls(text)
    return Decoded(text, encoding, controls, tuple(_notices(text, controls)))


def windows_1252(data: bytes) -> str:
    """As the WHATWG Encoding Standard decodes it; every byte has a character."""
    return data.decode("latin-1").translate(_C1)


def _characters(data: bytes) -> tuple[str, str]:
    for mark, encoding in MARKS:
        if data.startswith(mark):
            return data[len(mark) :].decode(encoding, "replace"), encoding
    wide = _wide(data)
    if wide:
        return data.decode(wide, "replace"), wide
    text = data.decode("utf-8", "replace")
    if _is_utf8(data, text):
        return text, "utf-8"
    return windows_1252(data), "windows-1252"


def _wide(data: bytes) -> str:
    """The name of the UTF-16 that an unmarked text is in; "" where it is not."""
    low, high = data[0::2].count(0), data[1::2].count(0)
    if len(data) < 2:
        return ""
    for encoding, zeros, others in (("utf-16-le", high, low), ("utf-16-be", low, high)):
        share = zeros / max(1, len(data) // 2)
        if share > ZEROS and zeros > SOUND * others and (share > LATIN or _has_spaces(data, encoding)):
            return encoding
    return ""


def _has_spaces(data: bytes, encoding: str) -> bool:
    """A text of any script has spaces or line ends; stray zeros in an 8-bit text read as UTF-16 make none."""
    return not {" ", "\n", "\r"}.isdisjoint(data.decode(encoding, "replace"))


def _is_utf8(data: bytes, text: str) -> bool:
    broken = text.count("\ufffd") - data.count("\ufffd".encode())
    whole = sum(not c.isascii() for c in text) - broken
    return broken == 0 or whole > SOUND * broken


def _without_controls(text: str) -> tuple[str, int]:
    present = {c for c in set(text) if (c < " " or "\x7f" <= c <= "\x9f") and c not in KEPT}
    if present.isdisjoint(_C1_CHARACTERS - {NEXT_LINE}):  # alone, it is a line end; among others, an ellipsis
        present.discard(NEXT_LINE)
    # C1 characters in a Unicode text are Windows-1252 bytes that were widened one by one: the HTML Standard's
    # "numeric character reference end state" reads them the same way.
    table: dict[int, str] = {ord(c): _C1.get(ord(c), "") for c in present}
    table = {c: ("" if s == chr(c) else s) for c, s in table.items()}
    dropped = sum(text.count(chr(c)) for c, s in table.items() if not s)
    return text.translate(table | {0xFEFF: ""}), dropped


def _notices(text: str, controls: int) -> list[str]:
    notices = []
    if controls:
        notices.append(f"{controls} invisible control characters were left out.")
    lost = text.count("\ufffd")
    if lost:
        notices.append(f"{lost} characters were already unreadable in the file; they show as “\ufffd”.")
    return notices
