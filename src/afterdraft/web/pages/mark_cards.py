"""Marking several cards at once, chosen on the Cards screen."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.web.laid import Sheet, table
from afterdraft.web.lines import Lists, lists
from afterdraft.web.render import book_of, frame, render
from afterdraft.web.view import BookView, view


@dataclass(frozen=True, slots=True)
class MarkPage:
    view: BookView
    lists: Lists
    chosen: tuple[Sheet, ...]
    codes: tuple[str, ...]  # of the scenes that the chosen cards stand for
    laid: tuple[str, ...]  # ids of chosen cards without a scene
    back: str


def mark_cards(request: Request) -> Response:
    """`/books/{book}/mark?card=…&card=…`, with `a=` the arrangement they lie in, as the Cards screen names it."""
    seen = view(book_of(request))
    shown = table(seen, request.query_params.get("a", ""))
    chosen = tuple(shown.by_code(code) for code in dict.fromkeys(request.query_params.getlist("card")))
    scenes = dict.fromkeys(scene.scene.code for sheet in chosen for scene in sheet.scenes)
    context = MarkPage(
        view=seen,
        lists=lists(seen.book, seen.draft.id),
        chosen=chosen,
        codes=tuple(scenes),
        laid=tuple(sheet.laid.id for sheet in chosen if not sheet.scenes),
        back=f"/books/{seen.facts.id}/cards{shown.query}",
    )
    return render(request, "lines_mark.html", context, frame(request, "Mark cards", "cards", book=seen))
