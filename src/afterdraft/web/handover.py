"""`POST /open`: a second `afterdraft BOOK` hands its book to the one that runs; it holds the key, so it is let in."""

from pathlib import Path

from starlette.requests import Request
from starlette.responses import JSONResponse, Response

from afterdraft.web.body import form, text


def take(request: Request) -> Response:
    """Field `path` names a book on this machine, empty for none. Answers `{"to": path of its page}`."""
    path = text(form(request), "path")
    if not path:
        return JSONResponse({"to": "/"})
    book = request.app.state.registry.open(Path(path))
    return JSONResponse({"to": f"/books/{book.id}/"})
