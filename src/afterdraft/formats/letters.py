"""What is said of letters, and how they look by it, in formats where what is nearest to the letters decides."""

from dataclasses import dataclass, fields, replace
from functools import lru_cache
from typing import Literal

from afterdraft.formats.looks import Face
from afterdraft.manuscript.blocks import Emphasis

Position = Literal["superscript", "subscript", "baseline"]


@dataclass(frozen=True, slots=True)
class Letters:
    """What is said of letters; None where nothing is."""

    bold: bool | None = None
    italic: bool | None = None
    underline: bool | None = None
    strike: bool | None = None
    small_caps: bool | None = None
    caps: bool | None = None
    hidden: bool | None = None
    position: Position | None = None
    size: float | None = None  # points
    scale: float | None = None  # of the size around

    def over(self, base: "Letters") -> "Letters":
        """This, and what `base` says where this is silent."""
        said = {each.name: getattr(self, each.name) for each in fields(self) if each.name != "scale"}
        result = replace(base, **{name: own for name, own in said.items() if own is not None})
        if self.scale is None:
            return result
        return replace(result, scale=self.scale) if base.size is None else replace(result, size=base.size * self.scale)


@lru_cache(maxsize=1000)  # the same few looks are on all letters
def face(said: Letters) -> Face:
    """How letters look of which all is said."""
    shown: dict[Emphasis, bool | None] = {
        "bold": said.bold,
        "italic": said.italic,
        "underline": said.underline,
        "strike": said.strike,
        "small caps": said.small_caps,
    }
    kinds: set[Emphasis] = {kind for kind, on in shown.items() if on}
    if said.position and said.position != "baseline":
        kinds.add(said.position)
    size = {} if said.size is None else {"size": said.size}
    return Face(frozenset(kinds), caps=bool(said.caps), hidden=bool(said.hidden), **size)
