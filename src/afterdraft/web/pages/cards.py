"""Cards: the arrangement in rows of chapters, one card opened to both its sides, and *Move…* as a plain form."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.arranging import everything
from afterdraft.desk.card import Card
from afterdraft.desk.intent import INTENTS, Intent
from afterdraft.errors import Missing, NotPossible
from afterdraft.web.anew import Anew, Before, anew, before
from afterdraft.web.filters import Filters, filters
from afterdraft.web.laid import RowView, Sheet, Table, table
from afterdraft.web.render import SAID, book_of, frame, go, number_of, render
from afterdraft.web.view import BookView, view

ZOOM = "afterdraft-zoom"  # cookie: how near the cards are looked at
ZOOMS = (1, 2, 3, 4, 5)  # 1: the whole book, 5: one chapter
USUAL = 3


@dataclass(frozen=True, slots=True)
class CardsPage:
    view: BookView
    table: Table
    zoom: int
    zooms: tuple[int, ...]
    filters: Filters
    intents: tuple[Intent, ...]


@dataclass(frozen=True, slots=True)
class Front:
    """What is on the page of one of a card's scenes."""

    code: str
    name: str
    words: int
    card: Card
    anew: Anew | None  # what the card has from the draft before; None in a book of one draft


@dataclass(frozen=True, slots=True)
class CardPage:
    view: BookView
    table: Table
    sheet: Sheet
    row: RowView | None
    fronts: tuple[Front, ...]
    before: Sheet | None
    after: Sheet | None
    intents: tuple[Intent, ...]


@dataclass(frozen=True, slots=True)
class MovePage:
    view: BookView
    table: Table
    moved: tuple[Sheet, ...]
    beside: str  # code of the card after which they lie now, or ""
    row: str  # id of the row in which they lie now, or ""


def cards(request: Request) -> Response:
    """`/books/{book}/cards`, with `?a=` an arrangement's id or "draft", `?zoom=` 1 to 5, and filters."""
    book = book_of(request)
    seen = view(book)
    try:
        shown = table(seen, request.query_params.get("a", ""))
    except Missing as gone:
        return _to_the_cards(request, gone)
    if shown.id:
        book.set_last_arrangement(shown.id)
    asked = filters(seen, shown, request.query_params)
    context = CardsPage(seen, shown, _zoom(request), ZOOMS, asked, INTENTS)
    return render(request, "cards.html", context, frame(request, "Cards", "cards", book=seen))


def card(request: Request) -> Response:
    """`/books/{book}/cards/{code}`, with `?old=shown` where the card of the draft before is wished for; a card's id
    leads on to its code in its own arrangement."""
    seen = view(book_of(request))
    code = request.path_params["code"]
    for arrangement in seen.book.arrangements(seen.draft.id):
        found = next((one for one in everything(arrangement) if one.id == code), None)
        if found:
            return go(f"/books/{seen.facts.id}/cards/{found.code}?a={arrangement.id}")
    try:
        shown = table(seen, request.query_params.get("a", ""))
        then = before(seen, request.app.state.comparing.beside_the_last(seen.book))
        wished = request.query_params.get("old") == "shown"
        context = card_page(seen, shown, shown.by_code(code), then, wished=wished)
    except Missing as gone:
        return _to_the_cards(request, gone)
    here = context.sheet.scenes[0].scene.code if context.sheet.scenes else ""
    return render(
        request, "cards_card.html", context, frame(request, context.sheet.called, "card", book=seen, here=here)
    )


def card_page(
    seen: BookView, shown: Table, sheet: Sheet, then: Before | None = None, *, wished: bool = False
) -> CardPage:
    order = shown.sheets()
    at = order.index(sheet)
    return CardPage(
        view=seen,
        table=shown,
        sheet=sheet,
        row=shown.row_of(sheet),
        fronts=tuple(
            Front(
                scene.scene.code,
                seen.name(scene),
                scene.words,
                seen.cards[scene.scene.id],
                anew(then, scene, seen.cards[scene.scene.id], show=wished),
            )
            for scene in sheet.scenes
        ),
        before=order[at - 1] if at else None,
        after=order[at + 1] if at + 1 < len(order) else None,
        intents=INTENTS,
    )


def move(request: Request) -> Response:
    """`/books/{book}/cards/move?card=…&card=…`: where the cards shall lie."""
    seen = view(book_of(request))
    shown = table(seen, request.query_params.get("a", ""))
    codes = {code.upper() for code in request.query_params.getlist("card")}
    moved = tuple(sheet for sheet in shown.sheets() if sheet.code in codes)
    if not moved:
        raise NotPossible("No card was chosen.")
    context = MovePage(seen, shown, moved, *_lies(shown, moved[0]))
    return render(request, "cards_move.html", context, frame(request, "Move cards", "card", book=seen))


def _to_the_cards(request: Request, gone: Missing) -> Response:
    """What she took back a moment ago leads to where it was; anything else that is not there is told."""
    if SAID not in request.cookies:
        raise gone
    return go(f"/books/{request.path_params['book']}/cards")


def _lies(shown: Table, sheet: Sheet) -> tuple[str, str]:
    row = shown.row_of(sheet)
    if row is None:
        return "", ""
    at = row.sheets.index(sheet)
    return row.sheets[at - 1].code if at else "", row.row.id


def _zoom(request: Request) -> int:
    wanted = request.query_params.get("zoom") or request.cookies.get(ZOOM, "")
    zoom = number_of(wanted, USUAL)
    return zoom if zoom in ZOOMS else USUAL
