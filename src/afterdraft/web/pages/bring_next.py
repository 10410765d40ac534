"""The next draft comes into a book: its files, and which of the four kinds of draft it is."""

from collections.abc import Sequence
from typing import get_args

from starlette.requests import Request
from starlette.responses import Response

from afterdraft import wiring
from afterdraft.errors import Missing, NotPossible
from afterdraft.web.body import files, form, text
from afterdraft.web.render import book_of, go, many
from afterdraft.work.drafts.bring_draft import How
from afterdraft.work.ports import Book, DraftFacts


def bring_next(request: Request) -> Response:
    """`POST /books/{book}/drafts/bring` with files and how; then to the split where it is not sure, else to Drafts."""
    book, posted = book_of(request), form(request)
    chosen, how = files(posted, "files"), _how(text(posted, "how", "next"))
    return _bring(request, book, chosen, how)


def bring_demonstration(request: Request) -> Response:
    """`POST /books/{book}/drafts/demonstration`: the demonstration book's own second draft."""
    book = book_of(request)
    return _bring(request, book, wiring.next_of_demonstration(book), "next")


def _bring(request: Request, book: Book, chosen: Sequence[wiring.File], how: How) -> Response:
    if not chosen:
        raise NotPossible("No file was chosen. Nothing was changed. Choose the files of the draft, and bring them in.")
    made = wiring.next_draft(book, chosen, how)
    draft = next(draft for draft in book.drafts() if draft.id == made)
    newest = book.drafts()[-1].id == made
    request.app.state.comparing.beside_the_last(book)  # while she waits anyway: then the next page is there at once
    unsure = len(book.doubts(made)) if newest else 0
    asked = f" {many(unsure, 'place')} in its split {'is' if unsure == 1 else 'are'} not sure: look at them first."
    here = "split" if unsure else "drafts" if newest else f"drafts?old={draft.number}&new={draft.number + 1}"
    return go(f"/books/{book.id}/{here}", said=_said(draft, how) + (asked if unsure else ""))


def _said(draft: DraftFacts, how: How) -> str:
    size = f"{many(draft.scenes, 'scene')}, {many(draft.words, 'word')}"
    if how == "older":
        return f"The older draft is draft {draft.number} now: {size}. All that you wrote stays where it was."
    if how == "again":
        return f"Draft {draft.number} was brought in again: {size}. All that is on its scenes stayed on them."
    part = ", as far as it goes" if draft.part_way else ""
    return f"Draft {draft.number} is in{part}: {size}. Your notes and marks went along with their scenes."


def _how(wanted: str) -> How:
    for how in get_args(How):
        if how == wanted:
            return how  # type: ignore[no-any-return]  # get_args does not know the literal's type
    raise Missing("This way to bring a draft in")
