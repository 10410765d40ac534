"""*Close*: everything is saved, each book is backed up, the program ends."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import HTMLResponse, Response

from afterdraft.web.render import environment


@dataclass(frozen=True, slots=True)
class Closed:
    troubles: tuple[str, ...]


def close(request: Request) -> Response:
    troubles: tuple[str, ...] = request.app.state.close()
    return HTMLResponse(environment().get_template("closed.html").render(s=Closed(troubles)))
