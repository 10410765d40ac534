"""The page that says what happened when something could not be done: plain words, nothing lost, a way on."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import HTMLResponse

from afterdraft import errors
from afterdraft.web.render import frame, ours, render

HEADINGS: tuple[tuple[type[errors.AfterdraftError], str], ...] = (
    (errors.UnreadableManuscript, "This file could not be read"),
    (errors.Missing, "Not there"),
    (errors.EditRefused, "Nothing was changed"),
    (errors.BookTrouble, "This book could not be used"),
)


@dataclass(frozen=True, slots=True)
class Trouble:
    heading: str
    sentence: str
    back: str  # path of the page she came from, "" where unknown
    book: str = ""  # path of the book it happened in
    stands: str | None = None  # after a stale save by a form: the text as it is now,
    yours: str = ""  # and the text that was sent by a form that was refused, so that neither is lost


def trouble(request: Request, error: errors.AfterdraftError, status: int) -> HTMLResponse:
    heading = next((words for kind, words in HEADINGS if isinstance(error, kind)), "That did not work")
    stands = error.stands if isinstance(error, errors.Stale) else None
    yours = str(getattr(request.state, "yours", "")) if isinstance(error, errors.EditRefused) else ""
    context = Trouble(heading, str(error), _came_from(request), _book(request, error), stands, yours)
    return render(request, "trouble.html", context, frame(request, heading, "trouble"), status=status)


def _book(request: Request, error: errors.AfterdraftError) -> str:
    book = request.path_params.get("book", "")
    return f"/books/{book}/" if book and not isinstance(error, errors.BookTrouble) else ""


def _came_from(request: Request) -> str:
    """The page before, from the Referer header, which our pages send to us alone."""
    before = request.headers.get("referer", "")
    root = f"{request.url.scheme}://{request.url.netloc}"
    path = before.removeprefix(root) if before.startswith(root + "/") else ""
    return ours(path, "") if path != request.url.path else ""
