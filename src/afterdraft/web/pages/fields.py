"""Saving what the writer types: one field by the script, a whole form without it."""

from typing import get_args

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.errors import Missing
from afterdraft.web.body import form, text
from afterdraft.web.render import back, book_of, edits_header, go, number
from afterdraft.work.ports import Book, Written
from afterdraft.work.write_field import write_field


def save_field(request: Request) -> Response:
    """`POST /books/{book}/fields/{kind}/{id}/{field}` with text, revision, client, sequence, done.

    204 once it is durable, with `Afterdraft-Revision` and `Afterdraft-Edits`; 409 where the row has changed since.
    """
    book, posted = book_of(request), form(request)
    saved = write_field(
        book,
        _kind(request),
        request.path_params["id"],
        request.path_params["field"],
        text(posted, "text"),
        revision=number(posted, "revision"),
        client=text(posted, "client"),
        sequence=number(posted, "sequence"),
        done=text(posted, "done") == "1",
    )
    headers = {"Afterdraft-Revision": str(saved.revision), "Afterdraft-Edits": edits_header(book.edits())}
    return Response(status_code=204, headers=headers | {"Afterdraft-Progress": _progress(book)})


def save_form(request: Request) -> Response:
    """`POST /books/{book}/fields/{kind}/{id}`: every field of the form, then back to the page."""
    book, posted = book_of(request), form(request)
    kind, row = _kind(request), request.path_params["id"]
    revision = number(posted, "revision")
    for sequence, name in enumerate((name for name in book.fields(kind, row).texts if name in posted), 1):
        request.state.yours = text(posted, name)
        revision = _save(book, kind, row, name, posted, revision, sequence)
    return go(back(posted, f"/books/{book.id}/scenes"), said="The card is saved." if kind == "card" else "Saved.")


def _save(book: Book, kind: Written, row: str, name: str, posted: FormData, revision: int, sequence: int) -> int:
    return write_field(
        book, kind, row, name, text(posted, name), revision=revision, client="", sequence=sequence, done=True
    ).revision


def _kind(request: Request) -> Written:
    for kind in get_args(Written):
        if kind == request.path_params["kind"]:
            return kind  # type: ignore[no-any-return]  # get_args does not know the literal's type
    raise Missing("What this belongs to")


def _progress(book: Book) -> str:
    draft = book.facts().draft
    return f"{draft.written} {draft.scenes}" if draft else "0 0"
