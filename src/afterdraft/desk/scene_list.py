"""The reverse outline as a table, and scene lists of other makes: what their columns are, what their rows hold."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Final, Literal, get_args

from afterdraft.desk.card import CARD_FIELDS
from afterdraft.desk.table import Cell, Row, Sheet

Column = Literal[
    "code",
    "part",
    "chapter",
    "number",
    "title",
    "first words",
    "summary",
    "comes_in",
    "leaves",
    "needed_for",
    "words",
    "viewpoint",
    "people",
    "place",
    "intent",
    "next what",
    "next viewpoint",
    "next people",
    "next place",
    "next time",
    "next length",
]
NAMES: Final[Mapping[Column, str]] = {
    "code": "Code",
    "part": "Part",
    "chapter": "Chapter",
    "number": "Number",
    "title": "Title",
    "first words": "First words",
    "summary": "Summary",
    "comes_in": "Comes in with",
    "leaves": "Leaves with",
    "needed_for": "Needed for",
    "words": "Words",
    "viewpoint": "Viewpoint",
    "people": "People",
    "place": "Place",
    "intent": "Intent",
    "next what": "Next: what shall happen",
    "next viewpoint": "Next: viewpoint",
    "next people": "Next: people",
    "next place": "Next: place",
    "next time": "Next: time",
    "next length": "Next: length",
}
ALWAYS: Final[tuple[Column, ...]] = get_args(Column)[:11]  # the others only where something stands in them
SEVERAL: Final = "; "  # between people, between places

# What a column of a scene list that is read in can be. "words of the scene" helps to find the scene and is not kept.
Kind = Literal[
    "",
    "code",
    "chapter",
    "number",
    "title",
    "first words",
    "summary",
    "comes_in",
    "leaves",
    "needed_for",
    "viewpoint",
    "people",
    "place",
    "note",
]
KINDS: Final[tuple[Kind, ...]] = get_args(Kind)
FINDING: Final[tuple[Kind, ...]] = ("code", "chapter", "number", "first words")  # these only say which scene is meant
TOLD: Final[tuple[Kind, ...]] = ("title", *CARD_FIELDS)

# How columns are headed in scene lists, in small letters. Common practice of the trade.
_HEADINGS: Final[Mapping[Kind, tuple[str, ...]]] = {
    "code": ("code", "scene code"),
    "chapter": ("chapter", "chap", "ch", "chapter no", "chapter number", "chapter title"),
    "number": ("number", "no", "nr", "num", "scene", "scene no", "scene number", "scene nr", "sc", "#", "scene #"),
    "title": ("title", "scene title", "scene name", "name", "heading", "headline"),
    "first words": ("first words", "first line", "opening words", "opening line", "begins", "starts with"),
    "summary": (
        *("summary", "scene summary", "synopsis", "what happens", "happens", "description", "action", "events"),
        *("event", "plot", "outline", "gist", "in brief", "what happens and what changes", "beats", "content"),
    ),
    "comes_in": ("comes in with", "enters with", "in", "coming in", "state at the start", "start", "before"),
    "leaves": ("leaves with", "exits with", "out", "going out", "state at the end", "end", "after", "outcome"),
    "needed_for": ("needed for", "purpose", "why", "why it is here", "function", "reason", "role in the story"),
    "viewpoint": ("viewpoint", "pov", "point of view", "pov character", "vp", "whose eyes", "narrator"),
    "people": ("people", "characters", "cast", "who", "who is there", "on page", "present", "persons"),
    "place": ("place", "location", "setting", "where", "locale", "places"),
    "note": ("note", "notes", "comment", "comments", "remarks", "to do", "todo", "to fix", "problems", "ideas"),
}
_BY_HEADING: Final = {heading: kind for kind, headings in _HEADINGS.items() for heading in headings}
_LOOKED_AT = 20  # rows among which the names of the columns are looked for


def table(rows: Sequence[Mapping[Column, Cell]]) -> tuple[Row, ...]:
    """The names of the columns, then the rows; columns that may be left out stand where one row has something."""
    columns = [name for name in NAMES if name in ALWAYS or any(row.get(name) for row in rows)]
    return (
        tuple(NAMES[name] for name in columns),
        *(tuple(row.get(name, "") for name in columns) for row in rows),
    )


@dataclass(frozen=True, slots=True)
class Listed:
    """A row of a scene list: a scene, or the name of the chapter that the rows below it belong to."""

    row: int  # index in the sheet
    texts: Mapping[Kind, str]  # several columns of one kind stand one under the other
    all: tuple[tuple[str, str], ...]  # every filled cell with its column's name, so that nothing need be lost
    heading: bool = False

    def text(self, kind: Kind) -> str:
        return self.texts.get(kind, "")


def head(sheet: Sheet) -> int | None:
    """Which row holds the names of the columns: the one, near the top, where most are known; None where none is.

    Of names over two rows, merged cells above and their parts below, it is the lower.
    """
    known = [sum(1 for cell in row if _kind(cell)) for row in sheet.rows[:_LOOKED_AT]]
    best = max(known, default=0)
    if best < 2 and not (best and len(sheet.rows[known.index(best)]) == 1):
        return None
    found = known.index(best)
    below = [cell for row in sheet.rows[found + 1 : found + 2] for cell in row if cell.strip()]
    return found + 1 if below and all(map(_kind, below)) else found


def names(sheet: Sheet, head: int | None) -> tuple[str, ...]:
    """What each column is called; "Column C" where nothing is. A cell merged with the one above has its name there."""
    rows = [] if head is None else [sheet.rows[head]]
    if head and sum(1 for cell in sheet.rows[head - 1] if cell.strip()) > 1:
        rows.append(sheet.rows[head - 1])
    return tuple(_first(rows, n) or f"Column {_letters(n)}" for n in range(sheet.width))


def guessed(names: Sequence[str]) -> tuple[Kind, ...]:
    """What each column is, by its name; each kind once, but for notes."""
    kinds: list[Kind] = []
    for name in names:
        kind = _kind(name)
        kinds.append("" if kind in kinds and kind != "note" else kind)
    return tuple(kinds)


def listed(
    sheet: Sheet, head: int | None, kinds: Sequence[Kind], *, chapters: Iterable[str] = ()
) -> tuple[Listed, ...]:
    """The rows below the names. A chapter's name goes down the rows until the next.

    `chapters`: the titles of the book's, by which a row that holds nothing but one of them is known for a heading.
    """
    called = names(sheet, head)
    titles = {_plain(title) for title in chapters}
    found: list[Listed] = []
    chapter = ""
    for n in range(0 if head is None else head + 1, len(sheet.rows)):
        row = sheet.rows[n]
        filled = tuple((called[m], cell.strip("\n")) for m, cell in enumerate(row) if cell.strip())
        if len(filled) == 1 and sum(map(bool, kinds)) > 1 and _is_heading(filled[0][1], titles):
            chapter = filled[0][1].strip()
            found.append(Listed(n, {"chapter": chapter}, filled, heading=True))
            continue
        texts = _by_kind(row, kinds)
        chapter = texts.get("chapter", chapter)
        found.append(Listed(n, {**texts, "chapter": chapter} if chapter else texts, filled))
    return tuple(found)


def _by_kind(row: Sequence[str], kinds: Sequence[Kind]) -> dict[Kind, str]:
    texts: dict[Kind, str] = {}
    for kind, cell in zip(kinds, row, strict=False):
        if kind and cell.strip():
            texts[kind] = f"{texts[kind]}\n{cell}" if kind in texts else cell
    return texts


def _is_heading(text: str, titles: set[str]) -> bool:
    plain = _plain(text)
    return plain in titles or plain.split(" ")[0].rstrip(".:") in (
        "chapter",
        "part",
        "prologue",
        "epilogue",
        "interlude",
    )


def _kind(name: str) -> Kind:
    return _BY_HEADING.get(_plain(name), "")


def _plain(text: str) -> str:
    return " ".join(text.casefold().replace("_", " ").rstrip(".:?").split())


def _first(rows: Sequence[Sequence[str]], column: int) -> str:
    return next((" ".join(row[column].split()) for row in rows if column < len(row) and row[column].strip()), "")


def _letters(n: int) -> str:
    """As spreadsheets name columns: A … Z, AA …"""
    return _letters(n // 26 - 1) + chr(65 + n % 26) if n >= 26 else chr(65 + n)
