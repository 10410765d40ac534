"""Drafts: what became of each scene from one draft to the next."""

from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft import wiring
from afterdraft.comparison.comparison import Became, Totals
from afterdraft.web.anew import as_they_were, before
from afterdraft.web.drawn_drafts import DrawnDrafts, drawn_chapters, drawn_scenes
from afterdraft.web.fates import WORDS, FateRow, chapter_rows, fate_rows, words_not_reached
from afterdraft.web.render import book_of, frame, render
from afterdraft.web.two_drafts import TwoDrafts, two_drafts
from afterdraft.web.view import BookView, view

LEVELS: Mapping[str, Callable[[TwoDrafts], tuple[FateRow, ...]]] = {
    "scenes": fate_rows,
    "chapters": chapter_rows,
    "book": fate_rows,
}
COUNTED: Mapping[Became, str] = {**WORDS, "same": "as they were"}


@dataclass(frozen=True, slots=True)
class DraftsPage:
    view: BookView
    two: TwoDrafts | None  # None in a book of one draft
    rows: tuple[FateRow, ...]  # of scenes, or of chapters
    by: str  # level: "scenes", "chapters", "book"
    drawn: DrawnDrafts | None
    opened: str  # key of the fate that is being changed
    accepts: str  # endings for the file chooser
    reads: str  # the same, for a person
    carries: int  # scenes that are as they were and whose cards can be carried
    demonstration: bool  # whether this is the demonstration book, and its second draft is not in yet

    @property
    def facts(self) -> str:
        """ "Scenes: 6 as they were, 22 revised, 2 cut; 1 moved"."""
        counted = Counter(row.fate.became for row in self.rows)
        told = [f"{counted[became]} {word}" for became, word in COUNTED.items() if counted[became]]
        moved = sum(row.fate.moved for row in self.rows)
        what = "Chapters" if self.by == "chapters" else "Scenes"
        return f"{what}: {', '.join(told)}{f'; {moved} moved' if moved else ''}"

    @property
    def totals(self) -> Totals | None:
        """Words of both drafts."""
        return self.two.compared.found.totals if self.two else None

    @property
    def unreached(self) -> int:
        """Words of the old draft that a part-way one has not come to: they count neither as kept nor as cut."""
        return words_not_reached(self.two.compared.found) if self.two else 0

    @property
    def doubtful(self) -> tuple[FateRow, ...]:
        return tuple(row for row in self.rows if row.doubtful and self.by == "scenes")

    @property
    def certain(self) -> tuple[FateRow, ...]:
        return tuple(row for row in self.rows if not row.doubtful or self.by != "scenes")


def drafts(request: Request) -> Response:
    """`/books/{book}/drafts`, with `?old=1&new=2` any two by number, `?by=chapters` or `book`, and `?open=` a fate that
    is being changed."""
    seen = view(book_of(request))
    two, wanted = two_drafts(request, seen), request.query_params.get("by", "")
    by = wanted if wanted in LEVELS else "scenes"
    rows = LEVELS[by](two) if two else ()
    context = DraftsPage(
        view=seen,
        two=two,
        rows=rows,
        by=by,
        drawn=_drawn(two, by, rows) if two else None,
        opened=request.query_params.get("open", ""),
        accepts=",".join(wiring.endings()),
        reads=wiring.READS,
        carries=_carries(seen, two) if by == "scenes" else 0,
        demonstration=two is None and bool(wiring.next_of_demonstration(seen.book)),
    )
    return render(request, "drafts.html", context, frame(request, "Drafts", "drafts", book=seen))


def _carries(seen: BookView, two: TwoDrafts | None) -> int:
    """Only of the last two drafts: a card is carried from the draft before."""
    then = before(seen, two.compared) if two and not two.query else None
    return len(as_they_were(then, seen.cards)) if then else 0


def _drawn(two: TwoDrafts, by: str, rows: tuple[FateRow, ...]) -> DrawnDrafts | None:
    if by == "book":
        return None
    return drawn_chapters(two, rows) if by == "chapters" else drawn_scenes(two, rows)
