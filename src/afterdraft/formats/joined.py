"""Several files as one draft: their order, and their paragraphs in a row."""

import hashlib
import re
from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Final

from afterdraft.errors import EmptyManuscript
from afterdraft.formats.table import FORMATS
from afterdraft.manuscript.blocks import Aside, Block, Blocks

# What comes before the first chapter and after the last in a book: common practice of the trade.
FIRST: Final = ("cover", "title", "copyright", "dedication", "epigraph", "contents", "foreword", "preface", "front",
                "introduction", "prologue")  # fmt: skip
LAST: Final = ("epilogue", "afterword", "coda", "acknowledgements", "acknowledgments", "appendix", "notes", "back")

_UNITS: Final = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
                 "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen")  # fmt: skip
_TENS: Final = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_WORDS: Final = (
    dict(zip(_UNITS, range(1, 20), strict=True))
    | {ten: 20 + 10 * i for i, ten in enumerate(_TENS)}
    | {f"{ten}{joint}{unit}": 20 + 10 * i + 1 + j
       for i, ten in enumerate(_TENS) for j, unit in enumerate(_UNITS[:9]) for joint in ("", "-", " ", "_")}
)  # fmt: skip
_NUMBER: Final = re.compile(
    r"\d+|(?<![a-z])(?:" + "|".join(sorted(_WORDS, key=len, reverse=True)) + r")(?![a-z])"
    r"|(?<=chapter )[ivxlc]+(?![a-z])|(?<=part )[ivxlc]+(?![a-z])|(?<=book )[ivxlc]+(?![a-z])"
)
_ROMAN: Final = {"i": 1, "v": 5, "x": 10, "l": 50, "c": 100}


def is_manuscript(name: str) -> bool:
    """Whether a file in a folder is one to bring in: of a format that is read, and no lock file or hidden file."""
    endings = tuple(ending for form in FORMATS for ending in form.endings)
    return name.lower().endswith(endings) and not name.startswith((".", "~$", "~"))


def order(names: Iterable[str]) -> list[str]:
    """File names in the order a writer means: chapter 2 before chapter 10, the prologue first, the epilogue last."""
    return sorted(names, key=_key)


def joined(many: Sequence[Blocks]) -> Blocks:
    """The files as one, in the order given. Raises EmptyManuscript where there is none."""
    if not many:
        raise EmptyManuscript("The folder")
    if len(many) == 1:
        return many[0]
    first = many[0]
    return Blocks(
        name=first.name,
        format=first.format if len({one.format for one in many}) == 1 else "several",
        sha256=hashlib.sha256("".join(one.sha256 for one in many).encode()).hexdigest(),
        size=sum(one.size for one in many),
        blocks=tuple(_moved(block, file, i) for file, one in enumerate(many) for i, block in enumerate(one.blocks)),
        asides=tuple(_asides(many)),
        title=next((one.title for one in many if one.title), ""),
        author=next((one.author for one in many if one.author), ""),
        language=next((one.language for one in many if one.language), ""),
        notices=tuple(f"{one.name}: {notice}" for one in many for notice in one.notices),
    )


def _moved(block: Block, file: int, index: int) -> Block:
    gap = replace(block.gap, file=True) if file and index == 0 else block.gap
    return replace(block, gap=gap, source=replace(block.source, file=file))


def _asides(many: Sequence[Blocks]) -> Iterable[Aside]:
    before = 0
    for one in many:
        yield from (replace(aside, block=aside.block + before) for aside in one.asides)
        before += len(one.blocks)


def _key(name: str) -> tuple[int, int, list[tuple[int, int, str]], str]:
    stem = re.sub(r"[\s_]+", " ", name.rpartition(".")[0].lower()) or name.lower()
    pieces: list[tuple[int, int, str]] = []
    at = 0
    for match in _NUMBER.finditer(stem):
        pieces.append((1, 0, stem[at : match.start()].strip(" -_.")))
        pieces.append((0, _value(match[0]), ""))
        at = match.end()
    pieces.append((1, 0, stem[at:].strip(" -_.")))
    numbered = any(kind == 0 for kind, _, _ in pieces)
    place, rank = (0, 0) if numbered else _place(stem)
    return place, rank, [piece for piece in pieces if piece != (1, 0, "")], name


def _place(stem: str) -> tuple[int, int]:
    """Before (-1), among (0) or after (1) the chapters, and the rank there."""
    for place, words in ((-1, FIRST), (1, LAST)):
        for rank, word in enumerate(words):
            if re.fullmatch(rf"(?:.*- ?)?{word}(?: page| matter)?(?: ?[-:–—] ?.*)?", stem):
                return place, rank
    return 0, 0


def _value(number: str) -> int:
    if number.isdigit():
        return int(number)
    if number in _WORDS:
        return _WORDS[number]
    values = [_ROMAN[c] for c in number]
    return sum(-v if v < w else v for v, w in zip(values, [*values[1:], 0], strict=True))
