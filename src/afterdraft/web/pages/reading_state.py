"""How far reading is: for scripts that look on, and the two acts by which it is stopped and goes on."""

from collections.abc import Mapping

from starlette.requests import Request
from starlette.responses import JSONResponse, Response

from afterdraft.errors import Missing
from afterdraft.web.body import form
from afterdraft.web.reading import Progress, Reading, State
from afterdraft.web.render import back, book_of, go, many
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


def told(progress: Progress) -> str:
    """In one sentence; "" where there is nothing to say."""
    scenes = f"{progress.scenes_done:,} of {many(progress.scenes, 'scene')}"
    if progress.state == "reading":
        words = f"{progress.words_done:,} of {many(progress.words, 'word')}"
        return f"Reading the draft: {scenes}, {words}{_left(progress.seconds_left)}."
    if progress.state == "stopped" and progress.scenes:
        return f"Reading is stopped at {scenes}. What was read stays."
    return _SENTENCES[progress.state]


_SENTENCES: Mapping[State, str] = {
    "off": "Reading is off.",
    "waiting": "The draft is about to be read.",
    "reading": "",
    "stopped": "Reading is stopped.",
    "done": "",
    "trouble": "The draft could not be read to its end. Nothing of yours is lost, and what was read stays.",
    "other language": "This draft says that it is not in English, so people, speech, places and times are not read off "
    "the page. Scenes, words, cards and notes work as always.",
}


def _left(seconds: float | None) -> str:
    if seconds is None:
        return ""
    if seconds < 60:
        return f"; about {max(5, round(seconds / 5) * 5)} seconds left"
    return f"; about {many(round(seconds / 60), 'minute')} left"
