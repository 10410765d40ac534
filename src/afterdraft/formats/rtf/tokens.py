"""The signs of a rich text file: groups, control words and symbols, text (RTF 1.9.1, "RTF Syntax")."""

import re
from collections.abc import Iterator
from typing import Literal, NamedTuple

_SIGN = re.compile(
    rb"\\([a-zA-Z]{1,40})(-?[0-9]{1,10})? ?"  # 1, 2: a control word and its number; one space belongs to it
    rb"|\\'([0-9a-fA-F]{2})"  # 3: a byte in hexadecimal
    rb"|\\(.)"  # 4: a control symbol
    rb"|([{}])"  # 5
    rb"|([^\\{}\r\n\0]+)"  # 6: text; line ends are none
    rb"|[\r\n\0]+|\\",
    re.S,
)

Kind = Literal["open", "close", "word", "symbol", "bytes"]


class Token(NamedTuple):
    kind: Kind
    name: str = ""  # of a word; a symbol
    number: int | None = None
    data: bytes = b""


OPEN, CLOSE = Token("open"), Token("close")


def tokens(data: bytes) -> Iterator[Token]:
    """All signs in order; what `\\bin` announces is passed over."""
    at = 0
    while match := _SIGN.match(data, at):
        at = match.end()
        kind = match.lastindex
        if kind == 6:
            yield Token("bytes", data=match[6])
        elif kind == 5:
            yield OPEN if match[5] == b"{" else CLOSE
        elif kind == 3:
            yield Token("bytes", data=bytes.fromhex(match[3].decode()))
        elif kind == 4:
            yield Token("symbol", match[4].decode("latin-1"))
        elif kind in (1, 2):
            number = int(match[2]) if match[2] else None
            if match[1] == b"bin":
                at += max(0, number or 0)
            yield Token("word", match[1].decode(), number)
