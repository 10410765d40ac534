"""Arrangements side by side: the draft's own order and those tried beside it, chapter by chapter on a level."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.arrangement import Arrangement, Laid, Row
from afterdraft.desk.arranging import drafts_order
from afterdraft.desk.comparing import Became, Compared, compared, levelled
from afterdraft.desk.intent import Intent
from afterdraft.manuscript.naming import chapter_name, shortened
from afterdraft.manuscript.outline import SceneView
from afterdraft.web.render import book_of, frame, render
from afterdraft.web.view import BookView, view
from afterdraft.work.cards.arranging import DRAFT

SIGNS: Mapping[Became, Intent] = {"moved": "move", "new": "new", "joined": "join", "split": "split"}


@dataclass(frozen=True, slots=True)
class Column:
    """One arrangement; the draft's own order has the id "draft"."""

    id: str
    name: str
    given_up: bool
    told: tuple[str, ...]  # how it differs: "3 moved", "1 set aside"; none for the draft's own order


@dataclass(frozen=True, slots=True)
class Said:
    """A sign and its word."""

    sign: Intent | None
    words: str


@dataclass(frozen=True, slots=True)
class CardCell:
    code: str
    name: str
    titled: bool
    path: str
    said: tuple[Said, ...]


@dataclass(frozen=True, slots=True)
class ChapterCell:
    name: str
    said: Said | None
    cards: tuple[CardCell, ...]


@dataclass(frozen=True, slots=True)
class Line:
    """What lies on a level, a cell for each column."""

    cells: tuple[tuple[ChapterCell, ...], ...]


@dataclass(frozen=True, slots=True)
class ArrangementsPage:
    view: BookView
    columns: tuple[Column, ...]
    lines: tuple[Line, ...]
    aside: tuple[tuple[CardCell, ...], ...]  # a cell for each column
    known: tuple[Arrangement, ...]
    shown: frozenset[str]  # ids


def arrangements(request: Request) -> Response:
    """`/books/{book}/arrangements`, with `?with=` the id of an arrangement, any number of times; else all that are
    being tried."""
    seen = view(book_of(request))
    context = arrangements_page(seen, frozenset(request.query_params.getlist("with")))
    title = "Arrangements side by side"
    return render(request, "arrangements.html", context, frame(request, title, "arrangements", book=seen))


def arrangements_page(seen: BookView, wanted: frozenset[str]) -> ArrangementsPage:
    known = seen.book.arrangements(seen.draft.id)
    shown = [one for one in known if (one.id in wanted if wanted else not one.given_up)]
    own = drafts_order(seen.draft.id, seen.division)
    beside = [Beside(seen, own, one) for one in (own, *shown)]
    lines = zip(*(one.levels() for one in beside), strict=True)
    return ArrangementsPage(
        view=seen,
        columns=tuple(one.column() for one in beside),
        lines=tuple(Line(cells) for cells in lines if any(cells)),
        aside=tuple(one.aside() for one in beside),
        known=known,
        shown=frozenset(one.id for one in shown),
    )


class Beside:
    """One arrangement beside the draft's own order, as the page shows it."""

    def __init__(self, seen: BookView, own: Arrangement, arrangement: Arrangement) -> None:
        self._seen = seen
        self._own = own
        self._arrangement = arrangement
        self._became = compared(own, arrangement)
        self._chapters: dict[str | None, str] = {one.id: chapter_name(one) for one in seen.division.chapters}
        self._scenes = {scene.scene.id: scene for scene in seen.outline.scenes}
        self._query = f"?a={arrangement.id or DRAFT}"

    def column(self) -> Column:
        one = self._arrangement
        return Column(one.id or DRAFT, one.name or "The draft’s own order", one.given_up, tuple(self._told()))

    def levels(self) -> Iterator[tuple[ChapterCell, ...]]:
        for level in levelled(self._own, self._arrangement):
            yield tuple(self._row(row, kept=row.chapter == level.chapter) for row in level.rows)

    def aside(self) -> tuple[CardCell, ...]:
        return tuple(self._card(card) for card in self._arrangement.aside)

    def _told(self) -> Iterator[str]:
        if self._arrangement.id:
            counted = [became for one in self._became.values() for became in one.became]
            for became in ("moved", "new", "joined", "split", "set aside"):
                if became in counted:
                    yield f"{counted.count(became)} {became}"

    def _row(self, row: Row, *, kept: bool) -> ChapterCell:
        known = row.chapter in self._chapters
        said = None if kept else Said("move", "moved") if known else Said("new", "new chapter")
        return ChapterCell(
            row.title or self._chapters.get(row.chapter, "New chapter"), said, tuple(map(self._card, row.cards))
        )

    def _card(self, card: Laid) -> CardCell:
        scene: SceneView | None = next((self._scenes[one] for one in card.scenes if one in self._scenes), None)
        title = card.title or (scene.scene.title if scene else "")
        opening = self._seen.first_words(scene) if scene else card.next.what
        path = f"/books/{self._seen.facts.id}/cards/{card.code}{self._query}"
        return CardCell(card.code, title or shortened(opening), bool(title), path, tuple(self._said(card)))

    def _said(self, card: Laid) -> Iterator[Said]:
        one = self._became[card.id]
        for became in one.became:
            if became == "moved":
                yield Said("move", self._moved(card, one))
            elif became == "set aside":
                yield Said(None, f"from {self._chapters[one.origin]}" if one.origin else "")
            elif became == "joined":
                yield Said("join", f"joined of {' and '.join(self._codes(card))}")
            else:
                yield Said(SIGNS[became], became)

    def _moved(self, card: Laid, one: Compared) -> str:
        row = next(row for row in self._arrangement.rows if row.id == card.row)
        return "moved within the chapter" if row.chapter == one.origin else f"moved from {self._chapters[one.origin]}"

    def _codes(self, card: Laid) -> list[str]:
        return [self._scenes[scene].scene.code for scene in card.scenes if scene in self._scenes]
