"""Who may ask, and what every answer says to the browser.

The server listens on this machine only, but so do other programs, and any web page may try to post to it. So
each request must name this address (Host), carry the secret (a cookie, handed out once in exchange for `?key=`),
and, when it changes anything, come from one of our own pages (Origin). Sources: RFC 6265 (cookies) and its successor
draft for SameSite; Content Security Policy level 3; Fetch (Origin, Cross-Origin-Resource-Policy); HTML (COOP).
"""

import hmac
from collections.abc import Iterable
from http import HTTPStatus
from urllib.parse import parse_qsl, urlencode

from starlette.datastructures import Headers, MutableHeaders
from starlette.exceptions import HTTPException
from starlette.requests import cookie_parser
from starlette.responses import PlainTextResponse, RedirectResponse, Response
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from afterdraft.web import messages

POST_LIMIT = 256 * 2**20  # bytes of one request: several manuscripts with pictures, or one book
SAFE = frozenset({"GET", "HEAD"})
POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; "
    "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
)
HEADERS = {
    "Content-Security-Policy": POLICY,
    "Referrer-Policy": "same-origin",  # "no-referrer" would make our own forms send a null Origin
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
}


def cookie_name(port: int) -> str:
    """Cookies know no ports, so the name does: two programs side by side do not push each other out."""
    return f"afterdraft-{port}"


class Guard:
    """ASGI middleware round the whole application. `key` is the secret, `port` the one listened on."""

    def __init__(self, app: ASGIApp, *, key: str, port: int, post_limit: int = POST_LIMIT) -> None:
        self._app = app
        self._key = key.encode()
        self._cookie = cookie_name(port)
        self._hosts = frozenset({f"127.0.0.1:{port}", f"localhost:{port}"})
        self._post_limit = post_limit

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] == "lifespan":
            await self._app(scope, receive, send)
            return
        if scope["type"] != "http":
            return  # no other protocol is spoken here; returning unanswered closes it
        guarded = _with_headers(send)
        refusal = self._refusal(scope)
        if refusal is not None:
            await refusal(scope, receive, guarded)
        elif _declared_length(scope) > self._post_limit:
            await _drain(receive)  # a browser shows an answer only when it could send all it had
            await _plain(messages.too_much(self._post_limit), HTTPStatus.REQUEST_ENTITY_TOO_LARGE)(
                scope, receive, guarded
            )
        else:
            await self._app(scope, _limited(receive, self._post_limit), guarded)

    def _refusal(self, scope: Scope) -> Response | None:
        headers = Headers(scope=scope)
        host = headers.get("host", "")
        if host not in self._hosts:
            return _plain(messages.WRONG_ADDRESS, HTTPStatus.MISDIRECTED_REQUEST)
        query = parse_qsl(scope["query_string"].decode("latin-1"), keep_blank_values=True)
        given = [value for name, value in query if name == "key"]
        if given and scope["method"] in SAFE:
            return self._let_in(scope, query) if self._is_key(given[0]) else _shut_out()
        if not self._has_cookie(headers):
            return _shut_out()
        if scope["method"] not in SAFE and headers.get("origin") != f"http://{host}":
            return _plain(messages.FOREIGN_FORM, HTTPStatus.FORBIDDEN)
        return None

    def _let_in(self, scope: Scope, query: Iterable[tuple[str, str]]) -> Response:
        """To the same address without the key, with the cookie."""
        rest = urlencode([(name, value) for name, value in query if name != "key"])
        path = "/" + scope["raw_path"].decode("latin-1").split("?")[0].lstrip("/")  # "//host" would leave the machine
        answer = RedirectResponse(f"{path}?{rest}" if rest else path, HTTPStatus.SEE_OTHER)
        answer.set_cookie(self._cookie, self._key.decode(), path="/", httponly=True, samesite="strict")
        return answer

    def _has_cookie(self, headers: Headers) -> bool:
        return self._is_key(cookie_parser(headers.get("cookie", "")).get(self._cookie, ""))

    def _is_key(self, given: str) -> bool:
        return hmac.compare_digest(given.encode(), self._key)


def _shut_out() -> Response:
    return _plain(messages.OPEN_FROM_PROGRAM, HTTPStatus.FORBIDDEN)


def _plain(sentence: str, status: HTTPStatus) -> Response:
    return PlainTextResponse(sentence, status)


def _with_headers(send: Send) -> Send:
    async def guarded(message: Message) -> None:
        if message["type"] == "http.response.start":
            headers = MutableHeaders(scope=message)
            headers.update(HEADERS)
            headers.setdefault("Cache-Control", "no-store")
        await send(message)

    return guarded


def _declared_length(scope: Scope) -> int:
    declared = Headers(scope=scope).get("content-length", "0")
    return int(declared) if declared.isdecimal() else 0


def _limited(receive: Receive, limit: int) -> Receive:
    """The same, but a body that was sent without a length is refused once it grows past `limit` bytes."""
    taken = 0

    async def limited() -> Message:
        nonlocal taken
        message = await receive()
        taken += len(message.get("body", b""))
        if taken > limit:
            if message.get("more_body", False):
                await _drain(receive)
            raise HTTPException(HTTPStatus.REQUEST_ENTITY_TOO_LARGE, messages.too_much(limit))
        return message

    return limited


async def _drain(receive: Receive) -> None:
    message = await receive()
    while message["type"] == "http.request" and message.get("more_body", False):
        message = await receive()
