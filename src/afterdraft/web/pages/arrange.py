"""The acts on the Cards screen: one edit, then back to the cards, to the one it was about."""

from collections.abc import Callable
from dataclasses import dataclass

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.arrangement import NEXT_FIELDS, Arrangement
from afterdraft.desk.arranging import row_called
from afterdraft.desk.intent import INTENTS, Intent
from afterdraft.errors import Missing, NotPossible
from afterdraft.web.body import form, text
from afterdraft.web.render import back, book_of, edits_header, go, number
from afterdraft.work.cards.add_card import add_card
from afterdraft.work.cards.arranging import Spot, seen
from afterdraft.work.cards.change_rows import add_row, move_row, remove_row, retitle_row
from afterdraft.work.cards.join_cards import join_cards, take_apart
from afterdraft.work.cards.move_cards import move_cards
from afterdraft.work.cards.set_aside import bring_back, set_aside
from afterdraft.work.cards.set_intent import set_intent
from afterdraft.work.cards.split_card import split_card
from afterdraft.work.cards.try_arrangement import give_up, rename_arrangement, take_up, try_arrangement
from afterdraft.work.cards.write_next import write_next
from afterdraft.work.ports import Book


@dataclass(frozen=True, slots=True)
class Posted:
    """A form of the Cards screen."""

    form: FormData

    @property
    def arrangement(self) -> str:
        return text(self.form, "a")

    @property
    def codes(self) -> list[str]:
        return [code for code in self.form.getlist("card") if isinstance(code, str)]

    def text(self, name: str) -> str:
        return text(self.form, name)

    @property
    def code(self) -> str:
        """Of the one card that the act is about."""
        if not self.codes:
            raise NotPossible("No card was chosen.")
        return self.codes[0]

    @property
    def spot(self) -> Spot:
        """`to`: "row|code of the card beside", or `row`, `before`, `after` apart."""
        row, _, beside = self.text("to").partition("|")
        if self.text("to"):
            side = "before" if self.text("side") == "before" and beside else "after"
            return Spot(row, before=beside) if side == "before" else Spot(row, after=beside, first=not beside)
        return Spot(self.text("row"), before=self.text("before"), after=self.text("after"))


Act = Callable[[Book, Posted], tuple[str, str]]  # gives the arrangement to show, and the part of the page to go to


def arrange(request: Request) -> Response:
    """`POST /books/{book}/cards/{act}`"""
    book, posted = book_of(request), Posted(form(request))
    act = ACTS.get(request.path_params["act"])
    if act is None:
        raise Missing("This act")
    shown, place = act(book, posted)
    if shown:
        book.set_last_arrangement(shown)
    return go(back(posted.form, f"/books/{book.id}/cards") + place)


def new(request: Request) -> Response:
    """`POST /books/{book}/cards/new`: a blank card, opened."""
    book, posted = book_of(request), Posted(form(request))
    made = add_card(book, posted.arrangement, posted.spot, title=posted.text("title"))
    return go(f"/books/{book.id}/cards/{made.code}#next-title")


def attempt(request: Request) -> Response:
    """`POST /books/{book}/cards/try`: a copy of an arrangement, and on to it."""
    book, posted = book_of(request), Posted(form(request))
    made = try_arrangement(book, posted.arrangement, posted.text("name"))
    return go(f"/books/{book.id}/cards?a={made.id}", said=f"This is “{made.name}”. The other stays as it is.")


def save_next(request: Request) -> Response:
    """`POST /books/{book}/cards/{code}/next/{field}`, as fields are saved, while there is no arrangement yet."""
    book, posted = book_of(request), Posted(form(request))
    saved = write_next(
        book,
        request.path_params["code"],
        request.path_params["field"],
        posted.text("text"),
        revision=number(posted.form, "revision"),
        client=posted.text("client"),
        sequence=number(posted.form, "sequence"),
        done=posted.text("done") == "1",
    )
    headers = {"Afterdraft-Revision": str(saved.revision), "Afterdraft-Edits": edits_header(book.edits())}
    return Response(status_code=204, headers=headers)


def save_next_form(request: Request) -> Response:
    """`POST /books/{book}/cards/{code}/next`: every field of the form, then back to the card."""
    book, posted = book_of(request), Posted(form(request))
    code, revision = request.path_params["code"], number(posted.form, "revision")
    for sequence, field in enumerate(("title", *NEXT_FIELDS), 1):
        if field in posted.form:
            request.state.yours = posted.text(field)
            revision = write_next(
                book, code, field, posted.text(field), revision=revision, client="", sequence=sequence, done=True
            ).revision
    return go(back(posted.form, f"/books/{book.id}/cards/{code}"), said="Saved.")


def _cards(done: Arrangement, posted: Posted) -> tuple[str, str]:
    """Back to the first of the cards, if it still lies there."""
    lying = {card.code for card in (*done.cards(), *done.aside)}
    code = next((code for code in posted.codes if code in lying), "")
    return done.id, f"#c-{code}" if code else ""


def _move(book: Book, posted: Posted) -> tuple[str, str]:
    return _cards(move_cards(book, posted.arrangement, posted.codes, posted.spot), posted)


def _intent(posted: Posted) -> Intent | None:
    wanted = posted.text("intent")
    if wanted in ("", "none"):
        return None
    for intent in INTENTS:
        if intent == wanted:
            return intent
    raise NotPossible("There is no such intent.")


def _row(done: Arrangement, key: str) -> tuple[str, str]:
    return done.id, f"#r-{row_called(done, key).id}" if key else ""


def _new_row(book: Book, posted: Posted) -> tuple[str, str]:
    known = {row.id for row in seen(book, posted.arrangement).rows}
    done = add_row(book, posted.arrangement, title=posted.text("title"), before=posted.text("before"))
    return _row(done, next((row.id for row in done.rows if row.id not in known), ""))


def _give_up(book: Book, posted: Posted) -> tuple[str, str]:
    give_up(book, posted.arrangement, posted.text("why"))
    return "", ""


def _rename(book: Book, posted: Posted) -> tuple[str, str]:
    rename_arrangement(book, posted.arrangement, posted.text("name"))
    return posted.arrangement, ""


def _take_up(book: Book, posted: Posted) -> tuple[str, str]:
    take_up(book, posted.arrangement)
    return posted.arrangement, ""


ACTS: dict[str, Act] = {
    "move": _move,
    "set-aside": lambda book, p: _cards(set_aside(book, p.arrangement, p.codes), p),
    "bring-back": lambda book, p: _cards(bring_back(book, p.arrangement, p.codes), p),
    "intent": lambda book, p: _cards(set_intent(book, p.arrangement, p.codes, _intent(p)), p),
    "join": lambda book, p: _cards(join_cards(book, p.arrangement, p.codes), p),
    "apart": lambda book, p: _cards(take_apart(book, p.arrangement, p.code), p),
    "split": lambda book, p: _cards(split_card(book, p.arrangement, p.code), p),
    "new-chapter": _new_row,
    "title-chapter": lambda book, p: _row(
        retitle_row(book, p.arrangement, p.text("row"), p.text("title")), p.text("row")
    ),
    "move-chapter": lambda book, p: _row(
        move_row(book, p.arrangement, p.text("row"), before=p.text("before")), p.text("row")
    ),
    "remove-chapter": lambda book, p: (remove_row(book, p.arrangement, p.text("row")).id, ""),
    "rename": _rename,
    "give-up": _give_up,
    "take-up": _take_up,
}
