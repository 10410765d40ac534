"""Scripts, styles and fonts: addresses, types, how long they are kept; and what no page may hold."""

import re
from pathlib import Path

import pytest
from starlette.applications import Starlette
from starlette.routing import Route
from starlette.testclient import TestClient

from afterdraft.web import assets

WEB = Path(assets.__file__).parent
TEMPLATES = sorted((WEB / "templates").rglob("*.html"))
# Media types: IANA's registry; text/javascript by RFC 9239, font/woff2 by RFC 8081.
TYPES = {"js": "text/javascript", "css": "text/css", "woff2": "font/woff2", "svg": "image/svg+xml"}


@pytest.fixture
def client() -> TestClient:
    return TestClient(Starlette(routes=[Route("/static/{digest}/{path:path}", assets.serve)]))


@pytest.mark.parametrize("ending", TYPES)
def test_each_kind_has_its_type_and_is_kept(client: TestClient, ending: str) -> None:
    path = next(name for name in assets.assets().files if name.endswith(f".{ending}"))
    answer = client.get(assets.static(path))
    assert answer.status_code == 200
    assert answer.content == (assets.FOLDER / path).read_bytes()
    assert answer.headers["content-type"].split(";")[0] == TYPES[ending]
    assert "immutable" in answer.headers["cache-control"]


def test_an_old_address_gives_the_file_but_is_not_kept(client: TestClient) -> None:
    path = next(iter(assets.assets().files))
    answer = client.get(f"/static/00000000/{path}")
    assert answer.status_code == 200
    assert answer.headers["cache-control"] == "no-store"


@pytest.mark.parametrize("path", ["../app.py", "..%2Fapp.py", "/etc/passwd", "css", ""])
def test_only_what_is_in_the_folder_is_sent(client: TestClient, path: str) -> None:
    assert client.get(f"/static/{assets.assets().digest}/{path}").status_code == 404


def test_the_digest_changes_with_any_file_and_any_name(tmp_path: Path) -> None:
    digests: set[str] = set()
    for name, content in (("a.js", "1"), ("a.js", "2"), ("b.js", "2")):
        folder = tmp_path / str(len(digests))
        folder.mkdir()
        (folder / name).write_text(content, encoding="utf-8")
        digests.add(assets.gather(folder).digest)
    assert len(digests) == 3


def test_a_file_that_is_not_there_is_noticed_when_the_page_is_made() -> None:
    with pytest.raises(KeyError):
        assets.static("nothing.js")


def test_every_file_is_of_a_known_type() -> None:
    files = {path for path in assets.FOLDER.rglob("*") if path.is_file()}
    assert {path.relative_to(assets.FOLDER).as_posix() for path in files} == set(assets.assets().files)


# What the content security policy would refuse, or what would go round it (htmx runs `hx-on` and `js:` by eval).
FORBIDDEN = {
    "inline style": r"\sstyle\s*=|<style",
    "inline script": r"<script(?![^>]*\ssrc=)",
    "import map": r"importmap",
    "handler in an attribute": r"\son[a-z]+\s*=",
    "hx-on": r"hx-on",
    "js: in an attribute": r"\bjs:|javascript:",
    "trigger filter": r"hx-trigger\s*=\s*[\"'][^\"']*\[",
    "another host": r"(?:src|href|action)\s*=\s*[\"'](?:https?:)?//",
}


@pytest.mark.parametrize("template", TEMPLATES, ids=lambda path: path.name)
@pytest.mark.parametrize("what", FORBIDDEN)
def test_no_template_holds(template: Path, what: str) -> None:
    found = re.search(FORBIDDEN[what], template.read_text("utf-8"), re.IGNORECASE)
    assert found is None, found


@pytest.mark.parametrize(
    ("what", "html"),
    [
        ("inline style", '<p style="x">'),
        ("inline script", "<script>x()</script>"),
        ("inline script", '<script type="module">'),
        ("import map", '<script type="importmap" src="x">'),
        ("handler in an attribute", "<a onclick='x'>"),
        ("hx-on", '<a hx-on:click="x">'),
        ("js: in an attribute", '<a hx-vals="js:{}">'),
        ("trigger filter", '<a hx-trigger="keyup[key]">'),
        ("another host", '<img src="//elsewhere.example/x">'),
    ],
)
def test_the_search_itself_finds(what: str, html: str) -> None:
    assert re.search(FORBIDDEN[what], html, re.IGNORECASE)


def test_there_are_templates_to_search() -> None:
    assert len(TEMPLATES) > 3
