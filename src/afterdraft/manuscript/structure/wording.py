"""What the words of a heading say: its kind, its number, its title.

`name("CHAPTER THE FIRST. In which we set out")` → kind "chapter", number 1, title "In which we set out".
"""

import re
from dataclasses import dataclass
from itertools import islice
from typing import Literal

from afterdraft.manuscript.structure.numerals import Form, read

Kind = Literal["part", "chapter", "prologue", "epilogue", "interlude", "letter", "none"]

WORDS: dict[Kind, str] = {
    "part": "part book volume vol teil buch band partie livre tome parte libro deel del",
    "chapter": "chapter chap ch kapitel chapitre capítulo capitulo capitolo hoofdstuk kapittel",
    "letter": "letter",
    "prologue": "prologue prolog prelude prólogo prologo proloog",
    "epilogue": "epilogue epilog conclusion coda postscript épilogue epílogo epilogo epiloog",
    "interlude": "interlude intermezzo intermission zwischenspiel interludio",
}
KINDS: dict[str, Kind] = {word: kind for kind, words in WORDS.items() for word in words.split()}
NOUNS: dict[str, Kind] = KINDS | {"period": "part", "narrative": "part", "act": "part", "movement": "part"}
ORDINAL = re.compile(
    r"(?:the\s+)?(?P<number>[a-z-]+(?:st|nd|rd|th)|\d+(?:st|nd|rd|th))\s+(?P<noun>[a-z]+)\b", re.IGNORECASE
)
ALONE = {"prologue", "epilogue", "interlude"}  # these name a chapter without a number

# the longest run of words that can be a number: "one hundred and twenty-one"
LONGEST = 5
SMALL = 3  # letters of a word that a title may leave small
LABEL = re.compile(
    r"(?P<word>[^\W\d_]+)(?P<filler>\.?(?:[\s:–—-]+(?:the\s+|no\.?\s*|number\s+)?|(?=\d)|$))?", re.IGNORECASE
)
BETWEEN = re.compile(r"\s*(?P<sign>[.:,;)\]]?\s*[-–—―]{1,3}|[.:,;)\]]|\n|\t|$)\s*")
INITIALS = re.compile(r"([A-Z]\. ?){2,}([A-Z][a-z’']+)?$")  # of a name: "C. S. Tovik"
DATED = re.compile(  # the month after a day: "3. May" is no third chapter
    r"(jan(uary)?|feb(ruary)?|mar(ch)?|apr(il)?|may|june?|july?|aug(ust)?|(sept|octo|novem|decem)(ember|ber)?|oct|nov|dec)\b",
    re.IGNORECASE,
)
DRESSING = " \t\n*_-–—―~=.:[]()"


@dataclass(frozen=True, slots=True)
class Name:
    """A heading taken apart. `sign` is what stands between number and title, "" where nothing does."""

    kind: Kind
    word: str  # the label as typed, lower case: "chapter", "book"; "" for a bare number or title
    number: int | None
    form: Form | None
    title: str
    sign: str = ""


def name(text: str) -> Name:
    """Takes `text` apart; a line without label or number is all title, kind "none"."""
    text = text.strip()
    return (
        _labelled(text) or _ordinal(text) or _numbered(text, kind="none", word="") or Name("none", "", None, None, text)
    )


def _labelled(text: str) -> Name | None:
    bare = text.lstrip(DRESSING).rstrip("*_ ")
    label = LABEL.match(bare)
    if not label or label["word"].lower() not in KINDS:
        return None
    word = label["word"].lower()
    kind = KINDS[word]
    rest = bare[label.end() :] if label["filler"] is not None else ""
    numbered = _numbered(rest, kind=kind, word=word) or _unsigned(rest, kind=kind, word=word)
    if numbered and kind not in ALONE:
        return numbered
    after = BETWEEN.match(bare, label.end("word"))
    if kind in ALONE and after and (after["sign"].strip() or after.end() == len(bare) or "\n" in after.group()):
        return Name(kind, word, None, None, _title(bare[after.end() :]), after["sign"].strip())
    return None


def _ordinal(text: str) -> Name | None:
    """`Second Narrative`, `First Period: The Loss`."""
    found = ORDINAL.match(text)
    after = BETWEEN.match(text, found.end()) if found else None
    if not found or not after or found["noun"].lower() not in NOUNS:
        return None
    numeral = read(found["number"])
    if numeral is None:
        return None
    word = found["noun"].lower()
    return Name(NOUNS[word], word, numeral.value, numeral.form, _title(text[after.end() :]), after["sign"].strip())


def _numbered(text: str, *, kind: Kind, word: str) -> Name | None:
    """A number at the start of `text`, ended by a sign, a new line, or the end."""
    text = text.lstrip(DRESSING)
    for end, sign, begin in _cuts(text):
        numeral = read(text[:end].strip(DRESSING))
        if numeral and (word or not (INITIALS.match(text) or DATED.match(text[begin:]))):
            return Name(kind, word, numeral.value, numeral.form, _title(text[begin:]), sign)
    return None


def _unsigned(text: str, *, kind: Kind, word: str) -> Name | None:
    """A number and a title with nothing between them but space: `Chapter 3 The Ferry`."""
    number, _, title = text.partition(" ")
    numeral = read(number)
    told = title.endswith(".") and any(word[0].islower() for word in title.split() if len(word) > SMALL)
    if numeral and title.lstrip("“‘\"'")[:1].isupper() and not told:
        return Name(kind, word, numeral.value, numeral.form, _title(title), "")
    return None


def _cuts(text: str) -> list[tuple[int, str, int]]:
    """Places where a leading number may end: `(end of number, sign, start of title)`, the longest first."""
    cuts: list[tuple[int, str, int]] = []
    for token in islice(re.finditer(r"\S+", text), LONGEST):
        bare = re.match(r"[\w‐‑-]*\w", token.group())
        end = token.start() + bare.end() if bare else token.end()
        sign = BETWEEN.match(text, end)
        if sign:
            cuts.append((end, sign["sign"].strip(), sign.end()))
    return cuts[::-1]


def _title(text: str) -> str:
    return " ".join(text.split()).rstrip(" -–—―:").strip()
