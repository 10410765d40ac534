"""Undo and redo: the button posts the number of the edit it names, so that a stale button changes nothing."""

from starlette.requests import Request
from starlette.responses import JSONResponse, Response

from afterdraft.web.body import form
from afterdraft.web.render import back, book_of, go, number
from afterdraft.work.step_back import step_back, step_forward


def undo(request: Request) -> Response:
    book, posted = book_of(request), form(request)
    edit = step_back(book, number(posted, "number"))
    return go(back(posted, f"/books/{book.id}/scenes"), said=f"Taken back: {edit.name}")


def redo(request: Request) -> Response:
    book, posted = book_of(request), form(request)
    edit = step_forward(book, number(posted, "number"))
    return go(back(posted, f"/books/{book.id}/scenes"), said=f"Done again: {edit.name}")


def stamp(request: Request) -> Response:
    """`/books/{book}/edits.json`: what a window asks when it comes back to the front, to see if it is out of date."""
    edits = book_of(request).edits()
    told = {
        name: {"number": edit.number, "name": edit.name} if edit else None
        for name, edit in (("undo", edits.undo), ("redo", edits.redo))
    }
    return JSONResponse(told)
