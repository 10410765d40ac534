"""The application: routes, what every handler finds in `request.app.state`, and how trouble becomes an answer.

Handlers are plain functions `def page(request) -> Response`, run on worker threads. They find `registry` (the open
books), `suggesting` (scene breaks that nobody marked), `reading` (what is read off the page), `asking`
(questions), `comparing` (drafts), `gathering` (offcuts), `close` (ends the program) and `log` (the file where faults
are written down) in `request.app.state`.
"""

from collections.abc import Callable, Sequence

from starlette.applications import Starlette
from starlette.exceptions import HTTPException
from starlette.middleware import Middleware
from starlette.requests import Request
from starlette.responses import JSONResponse, PlainTextResponse, Response
from starlette.routing import BaseRoute, Route
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from afterdraft.errors import AfterdraftError, Fault, Stale
from afterdraft.faultlog import write_down
from afterdraft.web import assets, handover, messages, pages
from afterdraft.web.asking import Asking
from afterdraft.web.comparing import Comparing
from afterdraft.web.gathering import Gathering
from afterdraft.web.guard import Guard
from afterdraft.web.pages.trouble import trouble
from afterdraft.web.reading import Reading
from afterdraft.web.registry import Registry
from afterdraft.web.suggesting import Suggesting


def build(
    registry: Registry,
    *,
    key: str,
    port: int,
    close: Callable[[], tuple[str, ...]],
    log: str,
    routes: Sequence[BaseRoute] | None = None,
    reading: Reading | None = None,
    asking: Asking | None = None,
) -> ASGIApp:
    """The whole application behind its guard. `routes`, `reading` and `asking` stand in for its own in tests."""
    app = Starlette(
        routes=[
            Route("/static/{digest}/{path:path}", assets.serve),
            Route("/open", handover.take, methods=["POST"]),
            *(pages.ROUTES if routes is None else routes),
        ],
        middleware=[Middleware(Faults, log=log)],
        exception_handlers={AfterdraftError: _on_error, HTTPException: _on_refusal},
    )
    app.state.registry = registry
    app.state.suggesting = Suggesting()
    app.state.comparing = Comparing()
    app.state.gathering = Gathering()
    app.state.reading = reading or Reading()
    app.state.asking = asking or Asking()
    registry.on_close = lambda book: _end(app, book)
    app.state.close = close
    app.state.log = log
    return Guard(app, key=key, port=port)


def _end(app: Starlette, book: str) -> None:
    """Nothing of the book of this id is remembered."""
    app.state.reading.end(book)
    app.state.asking.end(book)
    app.state.gathering.end(book)


def _on_error(request: Request, error: Exception) -> Response:
    if not isinstance(error, AfterdraftError):
        raise error
    return answer(request, error, messages.status(error))


def _on_refusal(request: Request, error: Exception) -> Response:
    if not isinstance(error, HTTPException):
        raise error
    return answer(request, messages.refused(error.status_code, error.detail), error.status_code)


def answer(request: Request, error: AfterdraftError, status: int) -> Response:
    """A script that asks for JSON gets `{"error": sentence}`, and what stands now after a stale save; else a page."""
    if not wants_json(request):
        return trouble(request, error, status)
    body: dict[str, object] = {"error": str(error)}
    if isinstance(error, Stale):
        body |= {"stands": error.stands, "revision": error.revision}
    return JSONResponse(body, status)


def wants_json(request: Request) -> bool:
    return "application/json" in request.headers.get("accept", "")


class Faults:
    """Turns a fault of ours into a page in plain words, and writes its place down."""

    def __init__(self, app: ASGIApp, *, log: str) -> None:
        self._app = app
        self._log = log

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        begun = False

        async def watched(message: Message) -> None:
            nonlocal begun
            begun = True
            await send(message)

        try:
            await self._app(scope, receive, watched)
        except Exception as fault:  # noqa: BLE001 the last line: whatever it is, she gets an answer
            write_down(fault)
            if not begun:
                await self._apology(Request(scope, receive))(scope, receive, send)

    def _apology(self, request: Request) -> Response:
        error = Fault(self._log)
        try:
            return answer(request, error, 500)
        except Exception as fault:  # noqa: BLE001 the page that tells of faults may itself be the fault
            write_down(fault)
            return PlainTextResponse(str(error), 500)
