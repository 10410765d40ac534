"""Side by side: scenes of the old draft and what became of them, paragraph by paragraph."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.errors import Missing
from afterdraft.web.beside import BesideRow, beside
from afterdraft.web.fates import FateRow, fate_rows
from afterdraft.web.render import book_of, frame, go, render
from afterdraft.web.two_drafts import TwoDrafts, two_drafts
from afterdraft.web.view import BookView, view


@dataclass(frozen=True, slots=True)
class SidePage:
    view: BookView
    two: TwoDrafts
    row: FateRow
    before: FateRow | None
    after: FateRow | None
    paragraphs: tuple[BesideRow, ...]


def first(request: Request) -> Response:
    """`/books/{book}/drafts/side`: on to the first scene that is not as it was."""
    book = book_of(request)
    two = two_drafts(request, view(book))
    if two is None:
        return go(f"/books/{book.id}/drafts")
    rows = fate_rows(two)
    if not rows:
        return go(f"{two.base}/drafts{two.query}")
    changed = next((row for row in rows if row.fate.became != "same"), rows[0])
    return go(f"{two.base}/drafts/side/{changed.key}{two.query}")


def side(request: Request) -> Response:
    """`/books/{book}/drafts/side/{code}`, by a scene's code; "1-" before it is the old draft, "2-" the new."""
    seen = view(book_of(request))
    two = two_drafts(request, seen)
    if two is None:  # its draft was taken back meanwhile
        return go(f"/books/{seen.facts.id}/drafts")
    rows = fate_rows(two)
    at = _place(rows, request.path_params["code"].upper())
    if at is None:
        raise Missing(f"The scene {request.path_params['code']}")
    context = SidePage(
        view=seen,
        two=two,
        row=rows[at],
        before=rows[at - 1] if at else None,
        after=rows[at + 1] if at + 1 < len(rows) else None,
        paragraphs=beside(two, rows[at].fate),
    )
    here = rows[at].news[0].code if rows[at].news and two.new is two.known[-1] else ""
    return render(request, "side.html", context, frame(request, rows[at].called, "side", book=seen, here=here))


def _place(rows: tuple[FateRow, ...], code: str) -> int | None:
    """A code alone is of the new draft, else of the old: a scene that lives on keeps it."""
    for n, row in enumerate(rows):
        if code in {f"1-{one.code}" for one in row.olds} | {f"2-{one.code}" for one in row.news}:
            return n
    codes = [[one.code for one in row.news] for row in rows], [[one.code for one in row.olds] for row in rows]
    return next((n for side in codes for n, some in enumerate(side) if code in some), None)
