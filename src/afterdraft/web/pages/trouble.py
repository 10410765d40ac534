"""What a page says when it cannot be shown."""

from starlette.requests import Request
from starlette.responses import PlainTextResponse, Response

from afterdraft.errors import AfterdraftError


def trouble(request: Request, error: AfterdraftError, status: int) -> Response:
    return PlainTextResponse(str(error), status)
