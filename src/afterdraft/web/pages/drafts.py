"""Drafts: what became of each scene from one draft to the next."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft import wiring
from afterdraft.comparison.comparison import Became
from afterdraft.web.fates import WORDS, FateRow, fate_rows
from afterdraft.web.render import book_of, frame, render
from afterdraft.web.two_drafts import TwoDrafts, two_drafts
from afterdraft.web.view import BookView, view

COUNTED: Mapping[Became, str] = {**WORDS, "same": "as they were"}


@dataclass(frozen=True, slots=True)
class DraftsPage:
    view: BookView
    two: TwoDrafts | None  # None in a book of one draft
    rows: tuple[FateRow, ...]
    opened: str  # key of the fate that is being changed
    accepts: str  # endings for the file chooser
    reads: str  # the same, for a person

    @property
    def facts(self) -> str:
        """ "6 as they were, 22 revised, 2 cut, 1 moved"."""
        counted = Counter(row.fate.became for row in self.rows)
        told = [f"{counted[became]} {word}" for became, word in COUNTED.items() if counted[became]]
        moved = sum(row.fate.moved for row in self.rows)
        return ", ".join([*told, *([f"{moved} of them moved"] if moved else [])])

    @property
    def linked(self) -> frozenset[tuple[int, int]]:
        """Old and new scenes of which the one lives on in the other."""
        return frozenset((link.old, link.new) for link in self.two.compared.found.links) if self.two else frozenset()

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
    context = DraftsPage(
        view=seen,
        two=two,
        rows=fate_rows(two) if two else (),
        opened=request.query_params.get("open", ""),
        accepts=",".join(wiring.endings()),
        reads=wiring.READS,
    )
    return render(request, "drafts.html", context, frame(request, "Drafts", "drafts", book=seen))
