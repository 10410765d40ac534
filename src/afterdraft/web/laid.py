"""Cards of an arrangement as pages show them."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from afterdraft.desk.arrangement import Arrangement, Laid, Row
from afterdraft.desk.arranging import drafts_order
from afterdraft.errors import Missing
from afterdraft.manuscript.naming import chapter_name, shortened
from afterdraft.manuscript.outline import SceneView
from afterdraft.web.marks import Mark, marks
from afterdraft.web.view import BookView
from afterdraft.work.cards.arranging import DRAFT, chosen


@dataclass(frozen=True, slots=True)
class Sheet:
    """A card as it lies."""

    laid: Laid
    scenes: tuple[SceneView, ...]
    name: str  # title; else the scene's title or first words; else what shall happen; "" for a blank new card
    titled: bool  # the name is a title, not first words
    summary: str  # what is on the page
    words: int
    piece: bool  # another card stands for the same scene
    marks: tuple[Mark, ...]

    @property
    def code(self) -> str:
        return self.laid.code

    @property
    def called(self) -> str:
        """How it is read out: "F47, The ferry"."""
        return f"{self.code}, {self.name}" if self.name else self.code


@dataclass(frozen=True, slots=True)
class RowView:
    row: Row
    name: str
    part: str  # heading of the part that begins with it; "" otherwise
    sheets: tuple[Sheet, ...]
    words: int


@dataclass(frozen=True, slots=True)
class Table:
    """All of an arrangement."""

    arrangement: Arrangement
    rows: tuple[RowView, ...]
    aside: tuple[Sheet, ...]
    known: tuple[Arrangement, ...]  # all that were made for the draft

    @property
    def id(self) -> str:
        return self.arrangement.id

    @property
    def fixed(self) -> bool:
        """Whether it is only looked at: one given up, or the draft's own order beside others."""
        return self.arrangement.given_up or (not self.id and any(not one.given_up for one in self.known))

    @property
    def query(self) -> str:
        """What an address of this arrangement ends in: "?a=…"; "" where none is made yet."""
        return f"?a={self.id or DRAFT}" if self.id or self.fixed else ""

    def sheets(self) -> tuple[Sheet, ...]:
        """All cards in order, those set aside last."""
        return (*(sheet for row in self.rows for sheet in row.sheets), *self.aside)

    def by_code(self, code: str) -> Sheet:
        """Raises `Missing`."""
        for sheet in self.sheets():
            if sheet.code == code.upper():
                return sheet
        raise Missing(f"The card {code}")

    def row_of(self, sheet: Sheet) -> RowView | None:
        """None where it is set aside."""
        return next((row for row in self.rows if row.row.id == sheet.laid.row), None)


def table(view: BookView, wanted: str) -> Table:
    """The arrangement of this id; `DRAFT`: the draft's own order; "": the last looked at, or the newest, or the
    draft's own. Raises `Missing`."""
    known = view.book.arrangements(view.draft.id)
    return laid_out(view, _shown(view, known, wanted), known)


def laid_out(view: BookView, shown: Arrangement, known: tuple[Arrangement, ...]) -> Table:
    """An arrangement as pages show it; `known`: all that were made for the draft."""
    lying = marks(view)
    by_id = {scene.scene.id: scene for scene in view.outline.scenes}
    shared = _shared(shown)

    def sheets(cards: tuple[Laid, ...]) -> tuple[Sheet, ...]:
        return tuple(_sheet(view, card, by_id, shared, lying) for card in cards)

    return Table(shown, tuple(_rows(view, shown, sheets)), sheets(shown.aside), known)


def _shown(view: BookView, known: tuple[Arrangement, ...], wanted: str) -> Arrangement:
    if wanted == DRAFT:
        return drafts_order(view.draft.id, view.division)
    named = wanted or view.book.last_arrangement()
    found = next((one for one in known if one.id == named and (wanted or not one.given_up)), None)
    if found is None and wanted:
        raise Missing("This arrangement")
    return found or chosen(known, "") or drafts_order(view.draft.id, view.division)


def _shared(shown: Arrangement) -> frozenset[str]:
    """Scenes that more than one card stands for."""
    seen: set[str] = set()
    twice: set[str] = set()
    for card in (*shown.cards(), *shown.aside):
        twice |= seen & set(card.scenes)
        seen |= set(card.scenes)
    return frozenset(twice)


def _rows(
    view: BookView, shown: Arrangement, sheets_of: Callable[[tuple[Laid, ...]], tuple[Sheet, ...]]
) -> Iterator[RowView]:
    parts = {part.id: part.title or "Unnamed part" for part in view.division.parts}
    chapters = {chapter.id: chapter_name(chapter) for chapter in view.division.chapters}
    before: str | None = None
    for row in shown.rows:
        part = parts.get(row.part or "", "") if row.part != before else ""
        before = row.part
        own = sheets_of(row.cards)
        name = row.title or chapters.get(row.chapter or "", "New chapter")
        yield RowView(row, name, part, own, sum(sheet.words for sheet in own))


def _sheet(
    view: BookView,
    card: Laid,
    by_id: Mapping[str, SceneView],
    shared: frozenset[str],
    lying: Mapping[str, tuple[Mark, ...]],
) -> Sheet:
    scenes = tuple(by_id[scene] for scene in card.scenes if scene in by_id)
    own = tuple(scene for scene in scenes if scene.scene.id not in shared or scene.scene.code == card.code)
    places = dict.fromkeys((*card.scenes, card.id))  # what can be marked: its scenes, and itself while it has none
    title = card.title or (scenes[0].scene.title if scenes else "")
    opening = view.first_words(scenes[0]) if scenes else card.next.what
    return Sheet(
        laid=card,
        scenes=scenes,
        name=title or shortened(opening),
        titled=bool(title),
        summary="\n".join(text for scene in scenes if (text := view.cards[scene.scene.id].summary.strip())),
        words=sum(scene.words for scene in own),
        piece=any(scene.scene.id in shared for scene in scenes),
        marks=tuple(mark for place in places for mark in lying.get(place, ())),
    )
