"""What holds at a place of a rich text file; a group's end brings back what held at its beginning."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace

from afterdraft.formats.letters import Letters
from afterdraft.formats.looks import Shape
from afterdraft.manuscript.blocks import Align

_TWIPS = 20.0  # in a point
_PLAIN = Letters(size=12.0)  # `\plain`: 12 points

_ALIGN: Mapping[str, Align] = {"ql": "left", "qc": "center", "qr": "right", "qj": "justify", "qd": "justify"}
_RULED = ("brdrs", "brdrth", "brdrdb", "brdrdot", "brdrdash", "brdrhair", "brdremboss", "brdrengrave", "brdrtriple")


@dataclass(slots=True)
class State:
    """One group's. Copied when a group opens."""

    goal: str = "text"  # where text goes
    letters: Letters = _PLAIN
    shape: Shape = field(default_factory=Shape)
    style: str = "0"  # number of the paragraph style
    skip: int = 1  # characters after each `\\u` that stand for it in older programs
    font: int = -1  # number
    in_table: bool = False
    inserted: bool = False
    deleted: bool = False
    author: int = 0  # number of who made the change
    when: int = 0
    edge: str = ""  # the border being described

    def apply(self, word: str, number: int | None) -> bool:
        """Take in a formatting word; False if it is none."""
        if word in _ALIGN:
            self.shape = replace(self.shape, align=_ALIGN[word])
        elif setter := _LETTERS.get(word):
            self.letters = setter(self.letters, number)
        elif shaper := _SHAPES.get(word):
            self.shape = shaper(self.shape, number)
        elif word in ("pard", "plain", "s", "uc", "f", "intbl", "revised", "deleted"):
            self._other(word, number)
        elif word.startswith("brdr") or word == "box":
            self._border(word)
        elif word in ("revauth", "revauthdel"):
            self.author = number or 0
        elif word in ("revdttm", "revdttmdel"):
            self.when = number or 0
        else:
            return False
        return True

    def _other(self, word: str, number: int | None) -> None:
        match word:
            case "pard":
                self.shape, self.style, self.in_table, self.edge = Shape(), "0", False, ""
            case "plain":
                self.letters, self.inserted, self.deleted = _PLAIN, False, False
            case "s":
                self.style = str(number or 0)
            case "uc":
                self.skip = max(0, number or 0)
            case "f":
                self.font = number or 0
            case "intbl":
                self.in_table = True
            case "revised":
                self.inserted = number != 0
            case _:
                self.deleted = number != 0

    def _border(self, word: str) -> None:
        """`\\brdrb\\brdrs`: an edge, then its kind. A box or a bar at the side is no rule."""
        if word in ("box", "brdrl", "brdrr", "brdrbar", "brdrt", "brdrb"):
            self.edge = word
        elif word in _RULED:
            if self.edge == "brdrt" and self.shape.line_above is None:
                self.shape = replace(self.shape, line_above=True)
            elif self.edge == "brdrb" and self.shape.line_below is None:
                self.shape = replace(self.shape, line_below=True)
            elif self.edge not in ("brdrt", "brdrb"):
                self.shape = replace(self.shape, line_above=False, line_below=False)


_Set = Callable[[Letters, int | None], Letters]
_Form = Callable[[Shape, int | None], Shape]


def _position(letters: Letters, word: str) -> Letters:
    return replace(letters, position="superscript" if word in ("super", "up") else "subscript")


def _points(number: int | None) -> float:
    return (number or 0) / _TWIPS


_LETTERS: Mapping[str, _Set] = {
    "b": lambda letters, number: replace(letters, bold=number != 0),
    "i": lambda letters, number: replace(letters, italic=number != 0),
    **dict.fromkeys(
        ("ul", "uld", "uldb", "ulw", "uldash", "uldashd", "ulth", "ulwave"),
        lambda letters, number: replace(letters, underline=number != 0),
    ),
    "ulnone": lambda letters, _: replace(letters, underline=False),
    **dict.fromkeys(("strike", "striked"), lambda letters, number: replace(letters, strike=number != 0)),
    "scaps": lambda letters, number: replace(letters, small_caps=number != 0),
    "caps": lambda letters, number: replace(letters, caps=number != 0),
    "v": lambda letters, number: replace(letters, hidden=number != 0),
    "super": lambda letters, _: _position(letters, "super"),
    "sub": lambda letters, _: _position(letters, "sub"),
    "nosupersub": lambda letters, _: replace(letters, position=None),
    "up": lambda letters, number: _position(letters, "up") if number != 0 else replace(letters, position=None),
    "dn": lambda letters, number: _position(letters, "dn") if number != 0 else replace(letters, position=None),
    "fs": lambda letters, number: replace(letters, size=(24 if number is None else number) / 2),
}
_SHAPES: Mapping[str, _Form] = {
    **dict.fromkeys(("li", "lin"), lambda shape, number: replace(shape, left=_points(number))),
    "fi": lambda shape, number: replace(shape, indent=_points(number)),
    "sb": lambda shape, number: replace(shape, space_before=_points(number)),
    "sa": lambda shape, number: replace(shape, space_after=_points(number)),
    "pagebb": lambda shape, number: replace(shape, turn=number != 0),
    "outlinelevel": lambda shape, number: replace(shape, level=max(0, min(number or 0, 9))),
}
