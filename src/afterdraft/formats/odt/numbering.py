"""Automatic numbers as they are printed: list styles and the outline's (ODF 1.3 part 3, §16.30 to 16.36)."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace

from afterdraft.formats.looks import Shape
from afterdraft.formats.markup import Node
from afterdraft.formats.numerals import numeral
from afterdraft.formats.odt.names import LOEXT, STYLE, TEXT, level, whole
from afterdraft.formats.odt.styles import shape

_OUTLINE = "outline"  # the key of the one count of all chapter numbers
_FORMATS = {  # the first word of style:num-format; those of more than one letter are LibreOffice's
    "1": "decimal",
    "a": "lowerLetter",
    "A": "upperLetter",
    "i": "lowerRoman",
    "I": "upperRoman",
    "01": "decimalZero",
    "1st": "ordinal",
    "One": "cardinalText",
    "First": "ordinalText",
}
_SPELLED = ("ordinal", "cardinalText", "ordinalText")
_PLACE = re.compile(r"%([1-9]|10)%")
_STYLES = tuple(TEXT + name for name in ("list-style", "outline-style"))


@dataclass(frozen=True, slots=True)
class Level:
    format: str = "none"  # as `numerals` names it; "none" prints nothing
    prefix: str = ""
    suffix: str = ""
    shown: int = 1  # how many levels are printed
    start: int = 1
    pattern: str = ""  # "Chapter %1%"; goes before prefix and suffix
    shape: Shape = field(default_factory=Shape)


Levels = Mapping[int, Level]


@dataclass(slots=True)
class Numbering:
    """The list styles of a file, and the counts so far, in reading order."""

    styles: Mapping[str, Levels]
    outline: Levels
    _counts: dict[str, dict[int, int]] = field(default_factory=dict)  # by list: level → latest number

    def of(self, style: str) -> Levels:
        return self.styles.get(style, {})

    def heading(self, at: int, *, start: int | None) -> str:
        """The label of the next heading at outline level `at` (0…9), which may be counted anew from `start`."""
        return self.next(_OUTLINE, self.outline, at, start=start)

    def next(self, key: str, levels: Levels, at: int, *, start: int | None = None) -> str:
        """The label of the next item at level `at` of the list `key`; "" for bullets."""
        counts = self._counts.setdefault(key, {})
        following = counts[at] + 1 if at in counts else _start(levels, at)
        counts[at] = following if start is None else start
        for deeper in [other for other in counts if other > at]:
            del counts[deeper]
        return _label(levels, at, counts)


def numbering(*roots: Node | None, language: str) -> Numbering:
    """Read all list styles. Numbers are spelled out in English only, in figures elsewhere."""
    spelled = not language or language.casefold().startswith("en")
    styles: dict[str, Levels] = {}
    outline: Levels = {}
    for node in _nodes(roots):
        levels = {level(each.get(f"{TEXT}level")): _level(each, spelled=spelled) for each in node}
        if node.tag == f"{TEXT}outline-style":
            outline = levels
        else:
            styles.setdefault(node.get(f"{STYLE}name", ""), levels)
    return Numbering(styles, outline)


def _nodes(roots: tuple[Node | None, ...]) -> Iterator[Node]:
    for root in roots:
        if root is not None:
            yield from root.iter(*_STYLES)


def _level(node: Node, *, spelled: bool) -> Level:
    name = _FORMATS.get(node.get(f"{STYLE}num-format", "").partition(",")[0], "none")
    properties = node.find(f"{STYLE}list-level-properties")
    aligned = properties.find(f"{STYLE}list-level-label-alignment") if properties is not None else None
    pattern = node.get(f"{STYLE}num-list-format", node.get(f"{LOEXT}num-list-format", ""))
    return Level(
        format="decimal" if name in _SPELLED and not spelled else name,
        prefix=node.get(f"{STYLE}num-prefix", ""),
        suffix=node.get(f"{STYLE}num-suffix", ""),
        shown=whole(node.get(f"{TEXT}display-levels"), 1),
        start=whole(node.get(f"{TEXT}start-value"), 1),
        pattern=pattern,
        shape=replace(shape(aligned), turn=None),
    )


def _start(levels: Levels, at: int) -> int:
    return levels.get(at, Level()).start


def _label(levels: Levels, at: int, counts: Mapping[int, int]) -> str:
    said = levels.get(at, Level())
    if said.format == "none":
        return ""

    def one(which: int) -> str:
        return numeral(counts.get(which, _start(levels, which)), levels.get(which, Level()).format)

    if said.pattern:
        return _PLACE.sub(lambda match: one(int(match[1]) - 1), said.pattern).strip()
    parts = (one(which) for which in range(max(0, at + 1 - said.shown), at + 1))
    return f"{said.prefix}{'.'.join(part for part in parts if part)}{said.suffix}".strip()
