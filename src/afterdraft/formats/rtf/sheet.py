"""The tables at the head of a rich text file: fonts, styles, and who made changes."""

from dataclasses import dataclass, field, replace

from afterdraft.formats.letters import Letters, face
from afterdraft.formats.looks import BODY_LEVEL, Face, Shape
from afterdraft.formats.rtf import codes


@dataclass(slots=True)
class Sheet:
    """Filled while the tables are read; styles go by their numbers."""

    _codecs: dict[int, str] = field(default_factory=dict)  # of fonts
    _names: dict[str, str] = field(default_factory=dict)  # of styles
    _shapes: dict[str, Shape] = field(default_factory=dict)  # what the paragraphs of a style do not repeat
    _authors: list[str] = field(default_factory=list)
    _number: int = 0  # of the font or style being read
    _shape: Shape = field(default_factory=Shape)
    _paragraphs: bool = True  # whether it is a paragraph's style
    _text: str = ""

    def name(self, id: str, /) -> str:
        """As the author sees it."""
        name = self._names.get(id, "")
        return f"Heading {name[8:]}" if name.startswith("heading ") else name

    def bare(self, _: str, /) -> Face:
        """Of an empty paragraph: rich text states formatting at the letters."""
        return face(Letters(size=12.0))

    def shape(self, id: str) -> Shape:
        """What holds for the paragraphs of a style though they do not say so: level, and whether they begin a page."""
        return self._shapes.get(id, Shape())

    def codec(self, font: int) -> str | None:
        return self._codecs.get(font)

    def author(self, number: int) -> str:
        return self._authors[number] if 0 <= number < len(self._authors) and number else ""

    def word(self, table: str, word: str, number: int | None) -> None:
        """A word within a table."""
        if table == "fonts" and word == "fcharset":
            codec = codes.by_charset(number or 0)
            if codec:
                self._codecs[self._number] = codec
        elif table == "fonts" and word == "cpg" and (page := codes.by_page(number or 0)):
            self._codecs[self._number] = page
        elif word == ("f" if table == "fonts" else "s"):
            self._number, self._paragraphs = number or 0, True
        elif table == "styles" and word in ("cs", "ds", "ts"):
            self._paragraphs = False
        elif table == "styles" and word == "outlinelevel" and number is not None and 0 <= number < BODY_LEVEL:
            self._shape = replace(self._shape, level=number)
        elif table == "styles" and word == "pagebb":
            self._shape = replace(self._shape, turn=number != 0)

    def say(self, table: str, text: str) -> None:
        """Text within a table; a semicolon ends an entry."""
        self._text += text
        while ";" in self._text:
            entry, _, self._text = self._text.partition(";")
            self._entry(table, entry.strip())

    def close(self, _: str) -> None:
        """A group within a table ends."""
        self._text, self._number, self._shape, self._paragraphs = "", 0, Shape(), True

    def _entry(self, table: str, entry: str) -> None:
        if table == "authors":
            self._authors.append(entry)
        elif table == "styles" and self._paragraphs:
            self._names[str(self._number)] = entry
            self._shapes[str(self._number)] = self._shape
