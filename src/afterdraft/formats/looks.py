"""How a paragraph is set and how letters look, all inheritance resolved: what the readers of packages share."""

from dataclasses import dataclass, fields, replace
from typing import Final, Protocol

from afterdraft.manuscript.blocks import Align, Emphasis

BODY_LEVEL: Final = 9  # the outline level of body text
DEFAULT_SIZE: Final = 10.0  # points, where nothing states a size (ECMA-376 part 1, §17.3.2.38)


@dataclass(frozen=True, slots=True)
class Shape:
    """What is said of a paragraph; None where nothing is. Lengths in points."""

    align: Align | None = None
    left: float | None = None
    indent: float | None = None
    space_before: float | None = None
    space_after: float | None = None
    level: int | None = None  # 0…8, or BODY_LEVEL
    turn: bool | None = None  # begins a page
    number: str | None = None  # id of the numbering; "0" for none
    number_level: int | None = None  # 0…8
    line_above: bool | None = None  # ruled above, and not a box
    line_below: bool | None = None

    def over(self, base: "Shape") -> "Shape":
        """This, and what `base` says where this is silent."""
        said = {each.name: getattr(self, each.name) for each in fields(self)}
        return replace(base, **{name: own for name, own in said.items() if own is not None})


@dataclass(frozen=True, slots=True)
class Face:
    """How letters look, all resolved."""

    kinds: frozenset[Emphasis] = frozenset()
    caps: bool = False
    hidden: bool = False
    size: float = DEFAULT_SIZE


class Sheet(Protocol):
    """A style sheet, as far as blocks are made with it. Styles go by their ids."""

    def name(self, id: str, /) -> str:
        """As the author sees it."""
        ...

    def bare(self, id: str, /) -> Face:
        """How letters without formatting of their own look in a paragraph of that style."""
        ...
