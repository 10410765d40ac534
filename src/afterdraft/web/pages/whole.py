"""The cards of the book, its parts and its chapters, each beside the summaries that it is made of."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import get_args

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.unit_card import UNIT_FIELDS, UnitCard, UnitCardKind
from afterdraft.errors import Missing
from afterdraft.manuscript.outline import ChapterView, PartView
from afterdraft.web.anew import Before, before
from afterdraft.web.anew_units import OldUnit, old_cards
from afterdraft.web.body import form, text
from afterdraft.web.render import back, book_of, edits_header, frame, go, number, render
from afterdraft.web.view import BookView, chapter_title, view
from afterdraft.work.cards.write_unit import card_of, write_unit

BOOK = "-"  # stands in addresses for the book's own card


@dataclass(frozen=True, slots=True)
class Piece:
    """What a unit is made of: a scene of a chapter, a chapter of a part, a part or a chapter of the book."""

    path: str
    name: str
    code: str  # of a scene; "" otherwise
    summary: str
    part: bool = False


@dataclass(frozen=True, slots=True)
class Unit:
    """A chapter, a part or the book, and its card; a blank one where nothing was written yet."""

    kind: UnitCardKind
    id: str
    name: str
    card: UnitCard
    words: int
    pieces: tuple[Piece, ...]

    @property
    def gist(self) -> str:
        """What is said of it while it is folded."""
        return next((text for name in UNIT_FIELDS if (text := " ".join(getattr(self.card, name).split()))), "")


@dataclass(frozen=True, slots=True)
class WholePage:
    view: BookView
    whole: Unit
    units: tuple[Unit, ...]  # parts and chapters in telling order
    opened: frozenset[str]  # ids of those that are unfolded
    olds: Mapping[str, OldUnit]  # by id: what was written of it in the draft before


def whole(request: Request) -> Response:
    """`/books/{book}/whole`, with `?open=` the id of a chapter or part, any number of times."""
    seen = view(book_of(request))
    then = before(seen, request.app.state.comparing.beside_the_last(seen.book))
    context = whole_page(seen, frozenset(request.query_params.getlist("open")), then)
    return render(request, "whole.html", context, frame(request, "Chapters, parts, the book", "whole", book=seen))


def save(request: Request) -> Response:
    """`POST /books/{book}/whole/{kind}/{unit}/{field}`, as fields are saved."""
    book, posted = book_of(request), form(request)
    saved = write_unit(
        book,
        *unit_of(request),
        request.path_params["field"],
        text(posted, "text"),
        revision=number(posted, "revision"),
        client=text(posted, "client"),
        sequence=number(posted, "sequence"),
        done=text(posted, "done") == "1",
    )
    headers = {"Afterdraft-Revision": str(saved.revision), "Afterdraft-Edits": edits_header(book.edits())}
    return Response(status_code=204, headers=headers)


def save_form(request: Request) -> Response:
    """`POST /books/{book}/whole/{kind}/{unit}`: every field of the form, then back to the page."""
    book, posted = book_of(request), form(request)
    kind, unit = unit_of(request)
    revision = number(posted, "revision")
    for sequence, field in enumerate((name for name in UNIT_FIELDS if name in posted), 1):
        words = request.state.yours = text(posted, field)
        revision = write_unit(
            book, kind, unit, field, words, revision=revision, client="", sequence=sequence, done=True
        ).revision
    return go(back(posted, f"/books/{book.id}/whole"), said="Saved.")


def whole_page(seen: BookView, opened: frozenset[str], then: Before | None = None) -> WholePage:
    cards = seen.book.unit_cards(seen.draft.id)
    by_id = {
        **{part.part.id: _part(seen, cards, part) for part in seen.outline.parts},
        **{chapter.chapter.id: _chapter(seen, cards, chapter) for chapter in seen.outline.chapters},
    }
    starts = [(part.start, 0, part.part.id) for part in seen.outline.parts]
    starts += [(chapter.start, 1, chapter.chapter.id) for chapter in seen.outline.chapters]
    units = tuple(by_id[unit] for _, _, unit in sorted(starts))
    pieces = tuple(map(_piece, units))
    own = card_of(cards, "book", None) or UnitCard("", "book", None)
    olds = {unit or BOOK: old for (_, unit), old in old_cards(seen, then).items()}
    return WholePage(seen, Unit("book", BOOK, seen.facts.title, own, seen.outline.words, pieces), units, opened, olds)


def _part(seen: BookView, cards: tuple[UnitCard, ...], part: PartView) -> Unit:
    own = card_of(cards, "part", part.part.id) or UnitCard("", "part", part.part.id)
    pieces = tuple(_piece(_chapter(seen, cards, chapter)) for chapter in part.chapters)
    return Unit("part", part.part.id, part.part.title or "Unnamed part", own, part.words, pieces)


def _chapter(seen: BookView, cards: tuple[UnitCard, ...], chapter: ChapterView) -> Unit:
    own = card_of(cards, "chapter", chapter.chapter.id) or UnitCard("", "chapter", chapter.chapter.id)
    base = f"/books/{seen.facts.id}/scenes"
    pieces = tuple(
        Piece(
            f"{base}/{scene.scene.code}", seen.name(scene), scene.scene.code, seen.cards[scene.scene.id].summary.strip()
        )
        for scene in chapter.scenes
    )
    return Unit("chapter", chapter.chapter.id, chapter_title(chapter), own, chapter.words, pieces)


def _piece(unit: Unit) -> Piece:
    return Piece(f"#u-{unit.id}", unit.name, "", unit.card.summary.strip(), part=unit.kind == "part")


def unit_of(request: Request) -> tuple[UnitCardKind, str | None]:
    """Kind and id as an address names them; no id for the book. Raises `Missing`."""
    for kind in get_args(UnitCardKind):
        if kind == request.path_params["kind"]:
            unit = request.path_params["unit"]
            return kind, None if kind == "book" else unit
    raise Missing("This card")
