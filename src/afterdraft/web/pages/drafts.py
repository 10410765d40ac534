"""Drafts: what became of each scene from one draft to the next."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.web.fates import FateRow, fate_rows
from afterdraft.web.render import book_of, frame, render
from afterdraft.web.two_drafts import TwoDrafts, two_drafts
from afterdraft.web.view import BookView, view


@dataclass(frozen=True, slots=True)
class DraftsPage:
    view: BookView
    two: TwoDrafts | None  # None in a book of one draft
    rows: tuple[FateRow, ...]
    opened: str  # key of the fate that is being changed

    @property
    def doubtful(self) -> tuple[FateRow, ...]:
        return tuple(row for row in self.rows if row.doubtful)

    @property
    def certain(self) -> tuple[FateRow, ...]:
        return tuple(row for row in self.rows if not row.doubtful)


def drafts(request: Request) -> Response:
    """`/books/{book}/drafts`, with `?old=1&new=2` any two by number, and `?open=` a fate that is being changed."""
    seen = view(book_of(request))
    two = two_drafts(request, seen)
    context = DraftsPage(seen, two, fate_rows(two) if two else (), request.query_params.get("open", ""))
    return render(request, "drafts.html", context, frame(request, "Drafts", "drafts", book=seen))
