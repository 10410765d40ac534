"""Who is let in, and what every answer tells the browser."""

from collections.abc import Iterator

import pytest
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import PlainTextResponse, Response
from starlette.routing import Route
from starlette.testclient import TestClient

from afterdraft.web.guard import Guard, cookie_name

KEY = "the-secret"
PORT = 9000
HOME = f"http://127.0.0.1:{PORT}"
LET_IN = {"Cookie": f"{cookie_name(PORT)}={KEY}"}
LIMIT = 1000  # bytes of one post, small for the test


async def echo(request: Request) -> Response:
    return PlainTextResponse(f"{request.method} {request.url.path} {request.url.query} {len(await request.body())}")


@pytest.fixture
def client() -> TestClient:
    app = Starlette(routes=[Route("/{path:path}", echo, methods=["GET", "POST", "PUT", "DELETE"])])
    return TestClient(Guard(app, key=KEY, port=PORT, post_limit=LIMIT), base_url=HOME, follow_redirects=False)


def test_the_key_is_exchanged_for_a_cookie_and_leaves_the_address(client: TestClient) -> None:
    answer = client.get(f"/books/7/?a=1&key={KEY}&b=x%20y")
    assert answer.status_code == 303
    assert answer.headers["location"] == "/books/7/?a=1&b=x+y"
    cookie = answer.headers["set-cookie"]
    assert cookie.startswith(f"afterdraft-{PORT}={KEY};")
    assert {"HttpOnly", "Path=/", "SameSite=strict"} <= set(cookie.split("; "))


def test_the_cookie_opens_every_page(client: TestClient) -> None:
    assert client.get("/books/7/", headers=LET_IN).text == "GET /books/7/  0"


def test_an_address_that_begins_with_two_strokes_does_not_lead_away(client: TestClient) -> None:
    answer = client.get(f"{HOME}//elsewhere.example/?key={KEY}")
    assert answer.headers["location"] == "/elsewhere.example/"


@pytest.mark.parametrize(
    ("why", "path", "headers", "status"),
    [
        ("no cookie", "/", {}, 403),
        ("a cookie of another value", "/", {"Cookie": f"{cookie_name(PORT)}=guess"}, 403),
        ("an empty cookie", "/", {"Cookie": f"{cookie_name(PORT)}="}, 403),
        ("the cookie of another port", "/", {"Cookie": f"{cookie_name(PORT + 1)}={KEY}"}, 403),
        ("a wrong key", "/?key=guess", {}, 403),
        ("a wrong key beside the right cookie", "/?key=guess", LET_IN, 403),
        ("letters outside ASCII", "/?key=%C3%A9%FF", {}, 403),
        ("another host (DNS rebinding)", "/", LET_IN | {"Host": "elsewhere.example"}, 421),
        ("another port", "/", LET_IN | {"Host": "127.0.0.1:80"}, 421),
        ("a host that only begins like ours", "/", LET_IN | {"Host": f"127.0.0.1:{PORT}.elsewhere.example"}, 421),
    ],
)
def test_is_refused(client: TestClient, why: str, path: str, headers: dict[str, str], status: int) -> None:
    answer = client.get(path, headers=headers)
    assert answer.status_code == status, why
    assert "GET /" not in answer.text  # the application was not asked
    assert "set-cookie" not in answer.headers


def test_a_refusal_says_how_to_come_in(client: TestClient) -> None:
    assert "Open it from the program" in client.get("/").text


def test_localhost_is_this_machine_too(client: TestClient) -> None:
    assert client.get("/", headers=LET_IN | {"Host": f"localhost:{PORT}"}).status_code == 200


@pytest.mark.parametrize("method", ["POST", "PUT", "DELETE"])
@pytest.mark.parametrize(
    ("origin", "status"),
    [
        (HOME, 200),
        (None, 403),
        ("null", 403),
        ("http://elsewhere.example", 403),
        (f"http://localhost:{PORT}", 403),  # not the address this page is at
        (f"https://127.0.0.1:{PORT}", 403),
        ("http://127.0.0.1:1", 403),
    ],
)
def test_changes_come_from_our_own_pages(client: TestClient, method: str, origin: str | None, status: int) -> None:
    headers = LET_IN | ({"Origin": origin} if origin else {})
    assert client.request(method, "/", headers=headers).status_code == status


def test_a_key_in_a_post_lets_nobody_in(client: TestClient) -> None:
    assert client.post(f"/?key={KEY}", headers={"Origin": HOME}).status_code == 403


HEADERS = {
    "referrer-policy": "same-origin",
    "x-content-type-options": "nosniff",
    "x-frame-options": "DENY",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "cache-control": "no-store",
}
POLICY = {
    "default-src": "'none'",
    "script-src": "'self'",
    "style-src": "'self'",
    "img-src": "'self'",
    "font-src": "'self'",
    "connect-src": "'self'",
    "form-action": "'self'",
    "base-uri": "'none'",
    "frame-ancestors": "'none'",
}


@pytest.mark.parametrize(
    ("path", "headers"),
    [("/", LET_IN), ("/", {}), (f"/?key={KEY}", {}), ("/", LET_IN | {"Host": "elsewhere.example"})],
    ids=["a page", "shut out", "let in", "wrong host"],
)
def test_every_answer_carries_the_headers(client: TestClient, path: str, headers: dict[str, str]) -> None:
    answer = client.get(path, headers=headers).headers
    assert {name: answer[name] for name in HEADERS} == HEADERS
    policy = dict(rule.strip().split(" ", 1) for rule in answer["content-security-policy"].split(";"))
    assert policy == POLICY


@pytest.mark.parametrize("size", [LIMIT, LIMIT + 1])
@pytest.mark.parametrize("declared", [True, False], ids=["with its length", "in chunks"])
def test_a_post_has_a_limit(client: TestClient, size: int, declared: bool) -> None:
    def chunks() -> Iterator[bytes]:
        yield b"x" * (size - 1)
        yield b"x"

    body = b"x" * size if declared else chunks()
    answer = client.post("/", content=body, headers=LET_IN | {"Origin": HOME})
    if size <= LIMIT:
        assert answer.text.endswith(f" {size}")
    else:
        assert answer.status_code == 413
        assert "Nothing was changed" in answer.text
