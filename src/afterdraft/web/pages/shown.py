"""Shown, never asked: figures of the scenes beside the book's own, as tables."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.web.facts_here import FactsHere, progress_of, read_of
from afterdraft.web.render import book_of, frame, render
from afterdraft.web.view import BookView, view

if TYPE_CHECKING:
    from afterdraft.web.shown import Shown


@dataclass(frozen=True, slots=True)
class ShownPage:
    view: BookView
    shown: "Shown"
    facts: FactsHere


def shown(request: Request) -> Response:
    """`/books/{book}/questions/shown`"""
    from afterdraft.web.shown import shown as figures  # late: only this page counts

    seen = view(book_of(request))
    around = frame(request, "Shown, never asked", "questions-shown", book=seen)
    context = ShownPage(seen, figures(seen, read_of(request, seen)), progress_of(request, seen))
    return render(request, "questions_shown.html", context, around)
