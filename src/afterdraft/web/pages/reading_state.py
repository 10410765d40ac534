"""How far reading is: for scripts that look on, and the two acts by which it is stopped and goes on."""

from starlette.requests import Request
from starlette.responses import JSONResponse, Response

from afterdraft.errors import Missing
from afterdraft.web.body import form
from afterdraft.web.reading import Reading
from afterdraft.web.reading_words import told
from afterdraft.web.render import back, book_of, go
from afterdraft.work.ports import Book, DraftFacts


def state(request: Request) -> Response:
    """`/books/{book}/read`: state and counts, and a sentence for a person."""
    book = book_of(request)
    reading: Reading = request.app.state.reading
    progress = reading.progress(book, _draft(book).id)
    return JSONResponse(
        {
            "state": progress.state,
            "running": progress.running,
            "scenes_done": progress.scenes_done,
            "scenes": progress.scenes,
            "words_done": progress.words_done,
            "words": progress.words,
            "seconds_left": progress.seconds_left,
            "told": told(progress),
        }
    )


def act(request: Request) -> Response:
    """`POST /books/{book}/read/{act}`: stop, or go-on."""
    book, posted = book_of(request), form(request)
    reading: Reading = request.app.state.reading
    if request.path_params["act"] == "stop":
        reading.stop(book, _draft(book).id)
        said = "Reading is stopped. What was read stays."
    elif request.path_params["act"] == "go-on":
        reading.go_on(book, _draft(book))
        said = "Reading goes on."
    else:
        raise Missing("This act")
    return go(back(posted, f"/books/{book.id}/people"), said=said)


def _draft(book: Book) -> DraftFacts:
    draft = book.facts().draft
    if draft is None:
        raise Missing("The draft")
    return draft
