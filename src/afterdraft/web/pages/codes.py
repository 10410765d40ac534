"""Lay by codes: the row of codes from cards that were laid out on the floor, typed in, checked, shown, then laid."""

from dataclasses import dataclass
from difflib import get_close_matches
from itertools import count

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import relaid
from afterdraft.desk.codes import TypedCodes, typed_codes, written_codes
from afterdraft.errors import NotPossible
from afterdraft.web.body import form, text
from afterdraft.web.laid import Sheet, Table, laid_out, table
from afterdraft.web.render import book_of, frame, go, many, render
from afterdraft.web.view import BookView, view
from afterdraft.work.cards.lay_by_codes import lay_by_codes, trouble

TOLD = 40  # codes that are not right: more are counted, not listed; each is looked at for what it may mean
ALIKE = 0.6  # of difflib's measure, its own usual bound: one figure of three mistyped, two changed about


@dataclass(frozen=True, slots=True)
class Found:
    """A code that is not right, and where it stands: chapter and place in it, both from 1."""

    code: str
    places: tuple[tuple[int, int], ...]
    meant: tuple[str, ...]  # codes like it that are still missing


@dataclass(frozen=True, slots=True)
class CodesPage:
    view: BookView
    table: Table
    text: str  # as typed
    stay: bool  # cards that are missing stay in their chapters; else they are set aside
    typed: TypedCodes | None  # None while nothing was typed
    trouble: str  # why the cards cannot be laid so, after it was asked for
    unknown: tuple[Found, ...]  # the first of them
    twice: tuple[Found, ...]  # the first of them
    missing: tuple[Sheet, ...]
    laid: Table | None  # how the cards would lie


def codes(request: Request) -> Response:
    """`/books/{book}/codes`, with `?a=` an arrangement's id, `?from=now` to begin with the codes as the cards lie."""
    seen = view(book_of(request))
    shown = table(seen, request.query_params.get("a", ""))
    begin = as_they_lie(shown.arrangement) if request.query_params.get("from") == "now" else ""
    return _answer(request, codes_page(seen, shown, begin, stay=False))


def check(request: Request) -> Response:
    """`POST /books/{book}/codes`, with `act` check or lay."""
    book, posted = book_of(request), form(request)
    request.state.yours = text(posted, "codes")
    seen = view(book)
    shown = table(seen, text(posted, "a"))
    page = codes_page(seen, shown, text(posted, "codes"), stay=text(posted, "rest") == "stay")
    if text(posted, "act") != "lay":
        return _answer(request, page)
    if page.typed is None or not page.typed.right:
        page = codes_page(seen, shown, page.text, stay=page.stay, asked=True)
        return _answer(request, page, status=422)
    if shown.fixed:
        raise NotPossible("This order stays as it is. Choose an arrangement first.")
    done = lay_by_codes(book, shown.id, page.text, stay=page.stay)
    if done.id:
        book.set_last_arrangement(done.id)
    return go(f"/books/{book.id}/cards{f'?a={done.id}' if done.id else ''}", said=_said(shown.arrangement, done))


def codes_page(seen: BookView, shown: Table, words: str, *, stay: bool, asked: bool = False) -> CodesPage:
    """`asked`: the cards were to be laid so, and cannot be."""
    typed = typed_codes(shown.arrangement, words) if words.strip() else None
    left_out = typed.left_out if typed else ()
    return CodesPage(
        view=seen,
        table=shown,
        text=words,
        stay=stay,
        typed=typed,
        trouble=trouble(typed or typed_codes(shown.arrangement, "")) if asked else "",
        unknown=_found(words, typed.unknown, left_out) if typed else (),
        twice=_found(words, typed.twice, ()) if typed else (),
        missing=tuple(shown.by_code(code) for code in left_out),
        laid=_laid(seen, shown, typed, stay=stay) if typed and typed.right else None,
    )


def as_they_lie(arrangement: Arrangement) -> str:
    """The row of codes, a line for each chapter; "|" keeps a chapter without cards its place."""
    lines = [" ".join(card.code for card in row.cards) for row in arrangement.rows]
    return "\n".join(lines) if all(lines) else f"| {' | '.join(lines)} |"


def _found(words: str, codes: tuple[str, ...], left_out: tuple[str, ...]) -> tuple[Found, ...]:
    places: dict[str, list[tuple[int, int]]] = {}
    for chapter, line in enumerate(written_codes(words), 1):
        for place, code in enumerate(line, 1):
            places.setdefault(code, []).append((chapter, place))
    return tuple(
        Found(code, tuple(places[code][:TOLD]), tuple(get_close_matches(code, left_out, n=2, cutoff=ALIKE)))
        for code in codes[:TOLD]
    )


def _laid(seen: BookView, shown: Table, typed: TypedCodes, *, stay: bool) -> Table:
    """How the cards would lie; new chapters have ids that are only good for looking."""
    numbers = count(1)
    would = relaid(shown.arrangement, typed.lines, stay=stay, new_id=lambda kind: f"{kind}-{next(numbers)}")
    return laid_out(seen, would, shown.known)


def _said(before: Arrangement, done: Arrangement) -> str:
    aside = len(done.aside) - len(before.aside)
    return "The cards lie as you typed them" + (f"; {many(aside, 'card')} set aside." if aside > 0 else ".")


def _answer(request: Request, page: CodesPage, *, status: int = 200) -> Response:
    return render(request, "codes.html", page, frame(request, "Lay by codes", "codes", book=page.view), status=status)
