"""Saving a card: one field at a time while she types, or the whole card by its button where scripts are off."""

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.card import CARD_FIELDS, CardField
from afterdraft.errors import Missing
from afterdraft.web.body import form, text
from afterdraft.web.render import back, book_of, edits_header, go, number
from afterdraft.work.ports import Book
from afterdraft.work.write_card import write_card


def save_field(request: Request) -> Response:
    """`POST /books/{book}/cards/{card}/{field}` with text, revision, client, sequence, done.

    204 once it is durable, with `Afterdraft-Revision` and `Afterdraft-Edits`; 409 where the row has changed since.
    """
    book, posted = book_of(request), form(request)
    saved = write_card(
        book,
        request.path_params["card"],
        _field(request.path_params["field"]),
        text(posted, "text"),
        revision=number(posted, "revision"),
        client=text(posted, "client"),
        sequence=number(posted, "sequence"),
        done=text(posted, "done") == "1",
    )
    headers = {"Afterdraft-Revision": str(saved.revision), "Afterdraft-Edits": edits_header(book.edits())}
    return Response(status_code=204, headers=headers | {"Afterdraft-Progress": _progress(book)})


def save_card(request: Request) -> Response:
    """`POST /books/{book}/cards/{card}`: every field of the form, then back to the page."""
    book, posted = book_of(request), form(request)
    revision = number(posted, "revision")
    for sequence, name in enumerate(CARD_FIELDS, 1):
        if name in posted:
            request.state.yours = text(posted, name)
            revision = _save(book, request.path_params["card"], name, posted, revision, sequence)
    return go(back(posted, f"/books/{book.id}/scenes"), said="The card is saved.")


def _save(book: Book, card: str, name: CardField, posted: FormData, revision: int, sequence: int) -> int:
    saved = write_card(book, card, name, text(posted, name), revision=revision, client="", sequence=sequence, done=True)
    return saved.revision


def _field(name: str) -> CardField:
    for field in CARD_FIELDS:
        if field == name:
            return field
    raise Missing("This field of the card")


def _progress(book: Book) -> str:
    draft = book.facts().draft
    return f"{draft.written} {draft.scenes}" if draft else "0 0"
