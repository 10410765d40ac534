"""How trouble becomes an answer, and what handlers find in the application."""

import logging
from collections.abc import Iterator
from pathlib import Path

import pytest
from starlette.requests import Request
from starlette.responses import JSONResponse, PlainTextResponse, Response
from starlette.routing import Route
from starlette.testclient import TestClient

from afterdraft import errors, faultlog
from afterdraft.platform import folders
from afterdraft.web import body
from afterdraft.web.app import build
from tests.web.opened import KEY, PORT, let_in, registry

FROM_THE_MANUSCRIPT = "The boats came in"
JSON = {"Accept": "application/json"}

RAISED: dict[str, tuple[errors.AfterdraftError, int]] = {
    "missing": (errors.Missing("The scene K4"), 404),
    "not-possible": (errors.NotPossible("The first scene cannot be joined to one before."), 422),
    "nothing-to-undo": (errors.NothingToUndo("Summary of “The ferry”"), 409),
    "stale": (errors.Stale(what="The summary", stands="Nobody counted them.", revision=7), 409),
    "unknown": (errors.UnknownFormat("a.pdf", ".docx"), 422),
    "damaged-file": (errors.DamagedFile("a.docx", "it ends early"), 422),
    "too-large": (errors.TooLarge("a.docx", "900 MB"), 413),
    "no-book": (errors.NotABook("/x"), 404),
    "damaged-book": (errors.DamagedBook("/x", "its pages do not fit together"), 409),
    "newer": (errors.NewerBook("/x", 9, 1), 409),
    "elsewhere": (errors.BookOpenElsewhere("/x"), 409),
    "disk-full": (errors.CannotWrite("/x", "the disk is full"), 507),
}


def raising(request: Request) -> Response:
    raise RAISED[request.path_params["which"]][0]


def fault(request: Request) -> Response:
    raise ValueError(FROM_THE_MANUSCRIPT)


def taken(request: Request) -> Response:
    form = body.form(request)
    files = body.files(form, "files")
    return JSONResponse({"text": body.text(form, "text"), "files": [[name, len(content)] for name, content in files]})


def echo_json(request: Request) -> Response:
    return JSONResponse(dict(body.json(request)))


def closing(request: Request) -> Response:
    return PlainTextResponse(" ".join(request.app.state.close()))


@pytest.fixture
def log() -> Iterator[Path]:
    root = logging.getLogger()
    before, level = root.handlers, root.level
    file = folders().log
    faultlog.log_to(file)
    yield file
    for handler in root.handlers:
        handler.close()
    root.handlers, root.level = before, level


@pytest.fixture
def client(log: Path) -> TestClient:
    routes = [
        Route("/raise/{which}", raising),
        Route("/fault", fault),
        Route("/taken", taken, methods=["POST"]),
        Route("/json", echo_json, methods=["POST"]),
        Route("/closing", closing),
    ]
    app = build(registry(), key=KEY, port=PORT, close=lambda: ("A word.",), log=str(log), routes=routes)
    return let_in(app)


@pytest.mark.parametrize("which", RAISED)
def test_an_error_is_its_sentence_and_a_status(client: TestClient, which: str) -> None:
    error, status = RAISED[which]
    answer = client.get(f"/raise/{which}", headers=JSON)
    assert answer.status_code == status
    assert answer.json()["error"] == str(error)
    page = client.get(f"/raise/{which}", headers={"Accept": "text/html"})
    assert page.status_code == status
    assert page.headers["content-type"].startswith("text/html")


def test_a_stale_save_brings_what_stands(client: TestClient) -> None:
    answer = client.get("/raise/stale", headers=JSON).json()
    assert (answer["stands"], answer["revision"]) == ("Nobody counted them.", 7)


def test_a_fault_says_where_it_is_written_down_and_quotes_nothing(client: TestClient, log: Path) -> None:
    for headers in (JSON, {"Accept": "text/html"}):
        answer = client.get("/fault", headers=headers)
        assert answer.status_code == 500
        assert str(log) in answer.text
        assert FROM_THE_MANUSCRIPT not in answer.text
    written = log.read_text("utf-8")
    assert "ValueError" in written
    assert "test_app.py" in written
    assert FROM_THE_MANUSCRIPT not in written


def test_the_page_for_trouble_may_itself_be_in_trouble(client: TestClient, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(request: Request, error: errors.AfterdraftError, status: int) -> Response:
        raise RuntimeError

    monkeypatch.setattr("afterdraft.web.app.trouble", broken)
    answer = client.get("/fault")
    assert answer.status_code == 500
    assert "What was saved before is safe" in answer.text


@pytest.mark.parametrize(
    ("method", "path", "status", "says"),
    [
        ("GET", "/nowhere", 404, "no such page"),
        ("GET", "/static/00000000/nothing.js", 404, "no such page"),
        ("POST", "/closing", 405, "program's own buttons"),
        ("POST", "/json", 400, "could not be understood"),
    ],
)
def test_what_is_not_ours_to_answer(client: TestClient, method: str, path: str, status: int, says: str) -> None:
    answer = client.request(method, path, headers=JSON, content=b"[1")
    assert answer.status_code == status
    assert says in answer.json()["error"]


def test_a_handler_can_end_the_program(client: TestClient) -> None:
    assert client.get("/closing").text == "A word."


def test_text_and_files_of_a_form(client: TestClient) -> None:
    files = [
        ("files", ("C:\\Novel\\one.docx", b"1")),
        ("files", ("novel/two.docx", b"22")),
        ("files", ("Ærø.txt", b"")),
    ]
    answer = client.post("/taken", data={"text": "a\r\nb"}, files=files)
    assert answer.json() == {"text": "a\nb", "files": [["one.docx", 1], ["two.docx", 2], ["Ærø.txt", 0]]}


def test_no_file_chosen_is_no_file(client: TestClient) -> None:
    empty = b'--x\r\nContent-Disposition: form-data; name="files"; filename=""\r\n\r\n\r\n--x--\r\n'
    answer = client.post("/taken", content=empty, headers={"Content-Type": "multipart/form-data; boundary=x"})
    assert answer.json()["files"] == []


def test_a_file_has_a_limit(client: TestClient, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(body, "FILE_LIMIT", 2**20)
    fits = client.post("/taken", files=[("files", ("a.docx", b"x" * 2**20))])
    assert fits.json()["files"] == [["a.docx", 2**20]]
    over = client.post("/taken", files=[("files", ("a.docx", b"x" * (2**20 + 1)))], headers=JSON)
    assert over.status_code == 413
    assert "“a.docx” is larger" in over.json()["error"]


def test_json_of_a_page(client: TestClient) -> None:
    assert client.post("/json", json={"a": [1, "ä"]}).json() == {"a": [1, "ä"]}
