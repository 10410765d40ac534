"""Automatic numbers as they are printed: numbering.xml (ECMA-376 part 1, §17.9).

Paragraphs are counted in reading order by abstract definition, so that two lists of one definition go on
from each other unless one says where it starts anew.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass, field

from afterdraft.formats.docx.names import PPR, VAL, Node, W, on, value, whole
from afterdraft.formats.docx.styles import Styles, shape
from afterdraft.formats.looks import Shape
from afterdraft.formats.numerals import numeral

_LEVELS = 9
_SPELLED = ("cardinalText", "ordinalText", "ordinal")
_PLACE = re.compile(r"%([1-9])")


@dataclass(frozen=True, slots=True)
class Level:
    start: int = 0  # where it states none (§17.9.25)
    format: str = "decimal"
    text: str = ""  # "%1.", "Chapter %1"
    restart: int | None = None  # restarts after this level (counted from 1) or a higher one; 0 never; None: any higher
    plain: bool = False  # all numbers in it in arabic figures ("legal")
    style: str | None = None  # the paragraph style tied to it
    shape: Shape = field(default_factory=Shape)


@dataclass(frozen=True, slots=True)
class Number:
    """A w:num: its definition and what it overrides."""

    abstract: str
    levels: Mapping[int, Level]
    starts: Mapping[int, int]  # level → where it starts anew at this number's first use


class Numbering:
    """The definitions of numbering.xml; `root` is None where the file has none."""

    def __init__(self, root: Node | None, language: str = "") -> None:
        """`language` is that of the text, BCP 47: numbers are spelled out in English only, in figures elsewhere."""
        self._numbers: dict[str, Number] = {}
        if root is None:
            return
        spelled = not language or language.casefold().startswith("en")
        levels: dict[str, Mapping[int, Level]] = {}
        abstract = {node.get(f"{W}abstractNumId", ""): node for node in root.iterfind(f"{W}abstractNum")}
        for node in root.iterfind(f"{W}num"):
            which = value(node, "abstractNumId") or ""
            if which in abstract:
                if which not in levels:
                    levels[which] = _levels(_linked(abstract[which], abstract), spelled=spelled)
                self._numbers[node.get(f"{W}numId", "")] = _number(node, which, levels[which], spelled=spelled)

    def __getitem__(self, id: str) -> Number | None:
        return self._numbers.get(id)

    def shape(self, id: str, level: int) -> Shape:
        """What the level of a numbering says of its paragraphs."""
        number = self._numbers.get(id)
        return number.levels[level].shape if number and level in number.levels else Shape()

    def place(self, given: Shape, styles: Styles, style: str) -> tuple[str, int] | None:
        """Which numbering (id, level) a paragraph takes; `given` is what its pPr says. None: it is not numbered."""
        chain = styles.chain(style)
        by_style = next((each.shape for each in chain if each.shape.number is not None), Shape())
        which = given.number or by_style.number or ""
        number = self._numbers.get(which)
        if number is None:
            return None
        if given.number_level is not None:
            return which, given.number_level
        tied = {said.style: level for level, said in number.levels.items()}
        by_name = next((tied[each.id] for each in chain if each.id in tied), None)
        return which, (by_style.number_level or 0) if by_name is None else by_name


class Counter:
    """Counts the numbered paragraphs of one text, in reading order."""

    def __init__(self, numbering: Numbering) -> None:
        self._numbering = numbering
        self._counts: dict[str, dict[int, int]] = {}  # by abstract definition: level → latest number
        self._used: set[str] = set()

    def next(self, id: str, at: int) -> str:
        """The label of the next paragraph at level `at` (0…8) of numbering `id`; "" for bullets and unknown ids."""
        number = self._numbering[id]
        if number is None:
            return ""
        counts = self._counts.setdefault(number.abstract, {})
        if id not in self._used:
            self._used.add(id)
            for level in number.starts:
                counts.pop(level, None)
        counts[at] = counts[at] + 1 if at in counts else _start(number, at)
        for deeper in range(at + 1, _LEVELS):
            if _restarts(number.levels.get(deeper), deeper, at):
                counts.pop(deeper, None)
        return _label(number, at, counts)


def _restarts(level: Level | None, deeper: int, at: int) -> bool:
    if level is None or level.restart is None:
        return True
    return at < level.restart <= deeper


def _start(number: Number, level: int) -> int:
    return number.starts.get(level, number.levels[level].start if level in number.levels else 1)


def _label(number: Number, at: int, counts: Mapping[int, int]) -> str:
    level = number.levels.get(at)
    if level is None or level.format == "bullet":
        return ""

    def one(match: re.Match[str]) -> str:
        which = int(match[1]) - 1
        printed = "decimal" if level.plain else number.levels.get(which, level).format
        return numeral(counts.get(which, _start(number, which)), printed)

    return _PLACE.sub(one, level.text).strip()


def _number(node: Node, abstract: str, levels: Mapping[int, Level], *, spelled: bool) -> Number:
    own = dict(levels)
    starts: dict[int, int] = {}
    for override in node.iterfind(f"{W}lvlOverride"):
        at = whole(override.get(f"{W}ilvl"))
        level = override.find(f"{W}lvl")
        if level is not None:
            own[at] = _level(level, spelled=spelled)
        start = value(override, "startOverride")
        if start is not None:
            starts[at] = whole(start)
    return Number(abstract, own, starts)


def _linked(node: Node, abstract: Mapping[str, Node]) -> Node:
    """A definition may only name a list style, whose levels stand in another definition."""
    link = value(node, "numStyleLink")
    if link is None:
        return node
    return next((other for other in abstract.values() if value(other, "styleLink") == link), node)


def _levels(abstract: Node, *, spelled: bool) -> dict[int, Level]:
    return {whole(node.get(f"{W}ilvl")): _level(node, spelled=spelled) for node in abstract.iterfind(f"{W}lvl")}


def _level(node: Node, *, spelled: bool) -> Level:
    restart = value(node, "lvlRestart")
    plain = node.find(f"{W}isLgl")
    return Level(
        start=whole(value(node, "start")),
        format=_format(node, spelled=spelled),
        text=value(node, "lvlText") or "",
        restart=None if restart is None else whole(restart),
        plain=plain is not None and on(plain),
        style=value(node, "pStyle"),
        shape=shape(node.find(PPR)),
    )


def _format(node: Node, *, spelled: bool) -> str:
    """Newer formats stand in a choice whose fallback is an old one: the first with a name known here counts."""
    found = [each.get(VAL, "decimal") for each in node.iter(f"{W}numFmt")]
    name = next((name for name in found if name != "custom"), "decimal")
    return "decimal" if name in _SPELLED and not spelled else name
