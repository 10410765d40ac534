"""Is a line nothing but an ornament, such as writers type between two scenes?

One question, answered from the line alone; what an ornament *means* where it stands is for
structure recovery. The shapes are common practice in manuscripts and printed novels: one sign or a
row of signs (`#`, `* * *`, `⁂`, `———`), signs in wings (`~*~`, `-#-`, `[*]`), small letters set as
rings and crosses (`oOo`, `--o0o--`, `x x x`).

What people *say* with signs is not an ornament: an ellipsis (`…`, `. . .`), anything with a quote,
question or exclamation mark, faces (`:-)`, `^_^`). Neither is what may be a number: `I`, `X`, `000`, `- x -`.
"""

import re
import unicodedata

# Any of these in the line, and it is speech, a number or a word.
_NOT = re.compile(r"[^\W_oO0xX]|[\"'“”„‟‘’‚‛?!¿¡‽‼⁇⁈⁉？！。，、：；؟،؛۔,′″‰°©®™\uFFFC\uFFFD]")

# ASCII signs that make an ornament alone; other signs have to stand in a row of at least three.
_STRONG = frozenset("*#~")
_DASHES = frozenset("-–—―⸺⸻−")
_DOTS = frozenset(".…")
_BRACKETS = frozenset("()[]{}«»‹›")
_MARKS = ("So", "Sm", "Po", "Pd", "Co")  # Co: signs of symbol fonts, kept as private-use characters
_EMOJI = range(0x1F300, 0x1F650), range(0x1F680, 0x1FB00)  # messages between people; 1F650… are true ornaments

_ROW = 3  # signs that make a row
_DOT_ROW = 5  # dots that make a row: three or four are an ellipsis (common practice)
_PERIOD = 8  # longest unit looked for in a row of repeated signs
_MIRROR = str.maketrans("()[]{}<>«»‹›/\\❧☙", ")(][}{><»«›‹\\/☙❧")
_RINGS = re.compile(r"[oO0]*o[oO0]*|x[xX]*x")  # oOo, o0o, xXx
_SPACED = re.compile(r"([ox])(?:[^\w]+\1){2,}|X(?: +X){2,}")  # o o o, x-x-x, X X X
_WINGED = re.compile(r"[*#~=\-–—]+([oO0]|[oO0]*o[oO0]*)[*#~=\-–—]+")  # -o-, ~0~, --oOo--


def is_ornament(text: str) -> bool:
    """True if the line `text` consists of an ornament and nothing else; white space does not count."""
    if _NOT.search(text):
        return False
    line = "".join(map(_plain, text)).strip()
    signs = line.replace(" ", "")
    if not signs or not _even(signs):
        return False
    if any(sign in "oO0xX" for sign in signs):
        return _of_letters(line, signs)
    return _of_signs(line, signs)


def _plain(sign: str) -> str:
    """White space as a plain space; joiners, marks and variation selectors dropped."""
    if sign.isspace():
        return " "
    return "" if unicodedata.category(sign) in ("Cf", "Mn", "Me", "Cc") else sign


def _even(signs: str) -> bool:
    """Ornaments mirror themselves (`-=*=-`) or repeat themselves (`-*-*-*`), or are all dingbats (`♠♥♦♣`)."""
    return signs == signs[::-1].translate(_MIRROR) or _repeats(signs) or all(_strong(sign) for sign in signs)


def _repeats(signs: str) -> bool:
    longest = min(_PERIOD, len(signs) // 2)
    return any(signs[period:] == signs[:-period] for period in range(1, longest + 1))


def _of_letters(line: str, signs: str) -> bool:
    if _SPACED.fullmatch(line.strip("*#~=-–— ")):
        return True
    rings = len(signs) >= _ROW and len(set(signs)) > 1
    return rings and bool(_RINGS.fullmatch(signs) or _WINGED.fullmatch(signs))


def _of_signs(line: str, signs: str) -> bool:
    if any(ord(sign) in block for sign in signs for block in _EMOJI):
        return False
    if set(signs) <= _DOTS:
        return _dot_row(line)
    if set(signs) & _DOTS and set(signs) <= _DOTS | _DASHES | _BRACKETS:
        return False  # speech broken off: “— …”, “«…»”
    if _is_face(signs) or set(signs) <= _BRACKETS:
        return False
    return any(_strong(sign) for sign in signs) or set(signs) <= _DASHES | _BRACKETS or len(signs) >= _ROW


def _dot_row(line: str) -> bool:
    """A row of full stops, or of ellipses set apart; a lone ellipsis in any spelling is none."""
    return line.count(".") >= _DOT_ROW or line.split().count("…") >= _ROW


def _is_face(signs: str) -> bool:
    return len(signs) == _ROW and signs[1] in "_." and signs[0] not in _STRONG | {signs[1]} and not _strong(signs[0])


def _strong(sign: str) -> bool:
    if sign.isascii():
        return sign in _STRONG
    return sign not in _DASHES and sign not in _DOTS and unicodedata.category(sign) in _MARKS
