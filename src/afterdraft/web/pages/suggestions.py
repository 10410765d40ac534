"""What she answers where a scene may begin unmarked."""

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.errors import Missing
from afterdraft.web.body import form, text
from afterdraft.web.render import back, book_of, go, number
from afterdraft.work.split.split_scene import split_scene
from afterdraft.work.split.suggest_breaks import decline_break


def answer(request: Request) -> Response:
    """`POST /books/{book}/suggestions`: a scene begins at the paragraph, or none does."""
    book, posted = book_of(request), form(request)
    draft = book.facts().draft
    if draft is None:
        raise Missing("The draft")
    take = split_scene if text(posted, "take") == "scene" else decline_break
    take(book, draft.id, number(posted, "paragraph"))
    return go(back(posted, f"/books/{book.id}/split?perhaps=open#perhaps"))
