"""Tables in and out: the reverse outline to take along, and a scene list read in, step by step.

A file is chosen; its columns are matched by hand; its rows are shown beside the scenes they seem to mean; then all is
taken in as one edit. The table travels in the page from step to step.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import get_args
from urllib.parse import quote

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft import wiring
from afterdraft.desk.aligning import By
from afterdraft.desk.scene_list import KINDS, NAMES, Kind, Listed, guessed, head, listed, names
from afterdraft.desk.table import Sheet
from afterdraft.errors import Missing, NotPossible
from afterdraft.web.body import files, form, text
from afterdraft.web.carried import packed, unpacked
from afterdraft.web.render import book_of, frame, go, many, number, render
from afterdraft.web.view import BookView, view
from afterdraft.work.cards.read_scene_list import STANDS, Proposed, Stands, Wanted, propose, take_in

NAMES_OF: Mapping[str, str] = {str(column): name for column, name in NAMES.items()} | {"note": "Note"}
SHOWN = 3  # values of a column that show what it holds
HEADS = 12  # rows that can be said to hold the names of the columns
WORDS: Mapping[Kind, str] = {
    "": "(not read in)",
    "code": "Code: which scene is meant",
    "chapter": "Chapter: helps to find the scene",
    "number": "Number: helps to find the scene",
    "first words": "First words: help to find the scene",
    "note": "A note on the scene",
}
WHY: Mapping[By, str] = {
    "code": "by its code",
    "title": "by its title",
    "number": "by its number",
    "words": "by its words",
    "order": "by its place in the order alone",
}


@dataclass(frozen=True, slots=True)
class TablePage:
    view: BookView
    accepts: str


@dataclass(frozen=True, slots=True)
class ColumnRow:
    name: str
    kind: Kind
    shown: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class ColumnsPage:
    view: BookView
    file: str
    carried: str
    sheets: tuple[str, ...]
    sheet: int
    heads: tuple[tuple[int, str], ...]  # rows that may hold the names, from 0, with how they begin
    head: int | None
    columns: tuple[ColumnRow, ...]
    kinds: tuple[tuple[Kind, str], ...]
    rows: int  # below the names


@dataclass(frozen=True, slots=True)
class RowPage:
    proposed: Proposed
    code: str
    name: str  # of the scene
    why: str
    stands: str
    trouble: str

    @property
    def row(self) -> Listed:
        return self.proposed.row

    @property
    def told(self) -> tuple[tuple[str, str], ...]:
        """What is read in of it, but for title and summary, which stand out."""
        kept = (
            kind for kind in KINDS if kind not in ("", "code", "title", "summary", "chapter", "number", "first words")
        )
        return tuple((NAMES_OF[kind], self.row.text(kind)) for kind in kept if self.row.text(kind))


@dataclass(frozen=True, slots=True)
class RowsPage:
    view: BookView
    file: str
    carried: str
    head: int | None
    kinds: tuple[Kind, ...]
    rows: tuple[RowPage, ...]
    scenes: tuple[tuple[str, str], ...]
    stands: str
    note: bool

    @property
    def facts(self) -> str:
        """ "60 rows: 57 meet a scene, 3 meet none · 4 differ from what stands on the card"."""
        real = [row for row in self.rows if not row.row.heading]
        met = sum(1 for row in real if row.proposed.scene)
        none = f", {len(real) - met} none" if met < len(real) else ""
        differ = sum(1 for row in real if row.proposed.differs)
        return f"{many(len(real), 'row')}: {met} meet a scene{none}" + (f" · {differ} differ" if differ else "")

    @property
    def unmet(self) -> tuple[RowPage, ...]:
        return tuple(row for row in self.rows if not row.row.heading and not row.proposed.scene)


def table(request: Request) -> Response:
    """`/books/{book}/table`"""
    seen = view(book_of(request))
    context = TablePage(seen, ",".join(wiring.TABLE_ENDINGS))
    return render(request, "table.html", context, frame(request, "Tables in and out", "table", book=seen))


def again(request: Request) -> Response:
    """A step asked for by its address alone: from the beginning."""
    return go(f"/books/{book_of(request).id}/table")


def download(request: Request) -> Response:
    """`/books/{book}/outline.{form}`: xlsx, csv, docx."""
    book, wanted = book_of(request), request.path_params["form"]
    content = wiring.outline_file(book, wanted)
    name = quote(f"{book.facts().title or 'Book'} – reverse outline.{wanted}", safe="")
    headers = {"Content-Disposition": f"attachment; filename*=UTF-8''{name}"}  # RFC 6266, RFC 8187
    return Response(content, media_type=wiring.TABLE_TYPES[wanted], headers=headers)


def read(request: Request) -> Response:
    """`POST /books/{book}/table` with a file: its columns."""
    chosen = files(form(request), "file")
    if not chosen:
        raise NotPossible("No file was chosen.")
    sheets = wiring.read_tables(chosen[0])
    largest = max(range(len(sheets)), key=lambda n: sum(map(len, sheets[n].rows)))
    return _columns(request, chosen[0][0], sheets, largest, head(sheets[largest]))


def step(request: Request) -> Response:
    """`POST /books/{book}/table/{step}`: columns (another sheet or row of names), rows, take."""
    steps = {"columns": _look_again, "rows": _rows, "take": _take}
    act = steps.get(request.path_params["step"])
    if act is None:
        raise Missing("This step")
    return act(request, form(request))


def _look_again(request: Request, posted: FormData) -> Response:
    sheets = unpacked(text(posted, "table"))
    sheet = min(max(number(posted, "sheet", 0), 0), len(sheets) - 1)
    same = number(posted, "was", -1) == sheet
    return _columns(request, text(posted, "file"), sheets, sheet, _head(posted) if same else head(sheets[sheet]))


def _columns(request: Request, file: str, sheets: tuple[Sheet, ...], at: int, named: int | None) -> Response:
    seen = view(book_of(request))
    sheet = sheets[at]
    called = names(sheet, named)
    below = sheet.rows[0 if named is None else named + 1 :]
    columns = tuple(
        ColumnRow(name, kind, _examples(below, n))
        for n, (name, kind) in enumerate(zip(called, guessed(called), strict=True))
    )
    context = ColumnsPage(
        view=seen,
        file=file,
        carried=packed(sheets),
        sheets=tuple(one.name for one in sheets),
        sheet=at,
        heads=tuple((n, " · ".join(cell for cell in row if cell.strip())) for n, row in enumerate(sheet.rows[:HEADS])),
        head=named,
        columns=columns,
        kinds=tuple((kind, WORDS.get(kind) or NAMES_OF[kind]) for kind in KINDS),
        rows=len(below),
    )
    return render(request, "table_columns.html", context, frame(request, "What the columns are", "table", book=seen))


def _examples(rows: tuple[tuple[str, ...], ...], column: int) -> tuple[str, ...]:
    filled = (row[column] for row in rows if column < len(row) and row[column].strip())
    return tuple(cell for cell, _ in zip(filled, range(SHOWN), strict=False))


def _rows(request: Request, posted: FormData) -> Response:
    """The rows beside the scenes they seem to mean; or, when it was shown already, those that she named."""
    seen = view(book_of(request))
    sheet, kinds = _table(posted)
    if not any(kind in ("title", "summary", "comes_in", "leaves", "needed_for") for kind in kinds) and not any(
        kind in ("viewpoint", "people", "place", "note") for kind in kinds
    ):
        raise NotPossible("None of the columns would be read in. Say of one at least what it is, the summary perhaps.")
    rows = _listed(seen, sheet, _head(posted), kinds)
    typed = _typed(posted, rows) if "looked" in posted else None
    return _preview(request, seen, posted, rows, typed)


def _take(request: Request, posted: FormData) -> Response:
    seen = view(book_of(request))
    sheet, kinds = _table(posted)
    rows = _listed(seen, sheet, _head(posted), kinds)
    typed = _typed(posted, rows)
    known = {one.scene.code: one.scene.id for one in seen.outline.scenes}
    if any(code and code not in known for code in typed.values()):
        return _preview(request, seen, posted, rows, typed)
    otherwise, note = _stands(text(posted, "stands"), "keep"), text(posted, "note") == "1"
    wanted = [
        Wanted(row, known.get(typed.get(row.row, "")), _stands(text(posted, f"stands-{row.row}"), otherwise), note)
        for row in rows
    ]
    done = take_in(seen.book, wanted, name=text(posted, "file") or "a table")
    loose = (
        f" {many(done.notes, 'row')} became {'a loose note' if done.notes == 1 else 'loose notes'}."
        if done.notes
        else ""
    )
    said = (
        f"{many(done.scenes, 'scene')} took words from the table.{loose}"
        if done.scenes or done.notes
        else "Nothing is new."
    )
    return go(f"/books/{seen.facts.id}/outline", said=said)


def _preview(
    request: Request, seen: BookView, posted: FormData, rows: tuple[Listed, ...], typed: Mapping[int, str] | None
) -> Response:
    scenes = {one.scene.id: one for one in seen.outline.scenes}
    by_code = {one.scene.code: one.scene.id for one in seen.outline.scenes}
    chosen = None if typed is None else {row: by_code.get(code) for row, code in typed.items()}

    def shown(one: Proposed) -> RowPage:
        scene = scenes.get(one.scene or "")
        code = scene.scene.code if scene else (typed or {}).get(one.row.row, "")
        return RowPage(
            proposed=one,
            code=code,
            name=seen.name(scene) if scene else "",
            why=WHY[one.by] if one.by else "",
            stands=text(posted, f"stands-{one.row.row}"),
            trouble=f"There is no scene with the code {code}." if code and not scene else "",
        )

    context = RowsPage(
        view=seen,
        file=text(posted, "file"),
        carried=packed([_table(posted)[0]]),
        head=_head(posted),
        kinds=_table(posted)[1],
        rows=tuple(map(shown, propose(seen.book, rows, chosen=chosen))),
        scenes=tuple((one.scene.code, seen.name(one)) for one in seen.outline.scenes),
        stands=_stands(text(posted, "stands"), "keep"),
        note="looked" not in posted or text(posted, "note") == "1",
    )
    return render(request, "table_rows.html", context, frame(request, "Rows and scenes", "table", book=seen))


def _table(posted: FormData) -> tuple[Sheet, tuple[Kind, ...]]:
    """The sheet that is meant, and what its columns are. Raises `NotPossible`."""
    sheets = unpacked(text(posted, "table"))
    sheet = sheets[min(max(number(posted, "sheet", 0), 0), len(sheets) - 1)]
    return sheet, tuple(_kind(text(posted, f"kind-{n}")) for n in range(sheet.width))


def _listed(seen: BookView, sheet: Sheet, named: int | None, kinds: tuple[Kind, ...]) -> tuple[Listed, ...]:
    chapters = [one.chapter.title for one in seen.outline.chapters if one.chapter.title]
    return listed(sheet, named, kinds, chapters=chapters)


def _head(posted: FormData) -> int | None:
    named = number(posted, "head")
    return named if named >= 0 else None


def _typed(posted: FormData, rows: tuple[Listed, ...]) -> dict[int, str]:
    """The codes that stand beside the rows, by index of the row."""
    return {row.row: text(posted, f"code-{row.row}").strip().upper() for row in rows if not row.heading}


def _kind(word: str) -> Kind:
    return next((kind for kind in get_args(Kind) if kind == word), "")


def _stands(word: str, otherwise: Stands) -> Stands:
    return next((one for one in STANDS if one == word), otherwise)
