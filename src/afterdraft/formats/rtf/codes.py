"""Code pages by the numbers that rich text names them with (RTF 1.9.1, "Character Set" and "Font Table")."""

import codecs
from collections.abc import Mapping

_CHARSETS: Mapping[int, str] = {
    77: "mac_roman", 128: "cp932", 129: "cp949", 130: "johab", 134: "cp936", 136: "cp950", 161: "cp1253",
    162: "cp1254", 163: "cp1258", 177: "cp1255", 178: "cp1256", 186: "cp1257", 204: "cp1251", 222: "cp874",
    238: "cp1250", 254: "cp437", 255: "cp850",
}  # fmt: skip
BY_WORD: Mapping[str, str] = {"mac": "mac_roman", "pc": "cp437", "pca": "cp850"}
DEFAULT = "cp1252"
_AT, _MASKS = (0, 6, 11, 16, 20), (0x3F, 0x1F, 0x1F, 0xF, 0x1FF)


def by_charset(number: int) -> str | None:
    """Of a font; None where it has no code page of its own."""
    return _CHARSETS.get(number)


def by_page(number: int) -> str | None:
    name = {10000: "mac_roman", 65001: "utf-8"}.get(number, f"cp{number}")
    try:
        return codecs.lookup(name).name
    except LookupError:
        return None


def moment(number: int) -> str:
    """Minute, hour, day, month, year since 1900, packed from the lowest bit (RTF 1.9.1, "Date and time": DTTM)."""
    minute, hour, day, month, year = (number >> at & mask for at, mask in zip(_AT, _MASKS, strict=True))
    return f"{1900 + year}-{month:02}-{day:02}T{hour:02}:{minute:02}:00" if month and day else ""


def decoded(data: bytes, codec: str) -> str:
    """Bytes as characters; those that Windows-1252 lacks are control characters, and left out."""
    return "".join(c for c in data.decode(codec, "replace") if c >= " " or c == "\t")


def joined(text: str) -> str:
    """Halves of characters beyond the first plane, which the file states one by one, as one."""
    return text.encode("utf-16-le", "surrogatepass").decode("utf-16-le", "replace")
