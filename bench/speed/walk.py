"""Every page of a book, and edits of every kind, each timed from outside."""

import time
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import islice
from typing import Any
from urllib.parse import urlsplit

import httpx2
from lxml import html

from afterdraft.web import pages

PAGES_A_ROUTE = 40  # different pages of one route that are asked for
TIMES = 3  # each page is asked for


@dataclass(frozen=True, slots=True)
class Timed:
    what: str  # a route's pattern, or a kind of edit
    took: tuple[float, ...]  # seconds, each answer


def every_page(client: httpx2.Client, book: str) -> list[Timed]:
    """Follow all links from the book's pages; the answers of each route that was met."""
    seen: dict[str, set[str]] = {}
    took: dict[str, list[float]] = {}
    waiting = [f"{book}/split", f"{book}/scenes", f"{book}/search?q=the", f"{book}/edits.json", "/"]
    asked: set[str] = set()
    while waiting:
        address = waiting.pop(0)
        route = route_of(address)
        if address in asked or route is None or len(seen.setdefault(route, set())) >= PAGES_A_ROUTE:
            continue
        asked.add(address)
        seen[route].add(address)
        answer = _timed(client, address, took.setdefault(route, []))
        waiting += [link for link in links(answer) if link.startswith(book) or link == "/"]
    return [Timed(route, tuple(times)) for route, times in sorted(took.items())]


def route_of(address: str) -> str | None:
    """The pattern of the GET route that answers an address; None for files and addresses of no route."""
    scope = {"type": "http", "method": "GET", "path": urlsplit(address).path}
    for route in pages.ROUTES:
        match, _ = route.matches(dict(scope))
        if match.value == 2:  # full: path and method
            return str(getattr(route, "path", ""))
    return None


def links(answer: httpx2.Response) -> Iterator[str]:
    if "html" in answer.headers.get("content-type", "") and answer.content:
        for link in _page(answer).xpath("//a/@href"):
            yield str(link).partition("#")[0]


def _timed(client: httpx2.Client, address: str, took: list[float]) -> httpx2.Response:
    for _ in range(TIMES):
        began = time.perf_counter()
        answer = client.get(address)
        took.append(time.perf_counter() - began)
        assert answer.status_code < 400, f"{address}: {answer.status_code}"
    return answer


def every_edit(client: httpx2.Client, book: str, times: int) -> list[Timed]:
    """Cards saved, scenes split and joined, a title changed, a note made, edits taken back: `times` of each."""
    return [
        Timed("save a card's summary", tuple(islice(_cards(client, book), times))),
        *_acts(client, book, times),
    ]


def _cards(client: httpx2.Client, book: str) -> Iterator[float]:
    """A field saved as the page saves it while one types: the time to its 204, which is said once it is durable."""
    scenes = [link for link in links(client.get(f"{book}/split")) if "/scenes/" in link]
    sequence = 0
    while True:
        for scene in scenes:
            form = _form(client.get(scene), "/cards/")
            if form is None:
                continue
            sequence += 1
            sent = dict(form.form_values()) | {
                "client": "bench",
                "sequence": str(sequence),
                "text": f"It happens, {sequence}.",
            }
            yield _post(client, f"{form.action}/summary", sent, 204)


def _acts(client: httpx2.Client, book: str, times: int) -> Iterator[Timed]:
    for act, fill in (("join", {}), ("at", {"begin": "scene"}), ("retitle-scene", {"title": "The ferry"})):
        took = []
        for number in range(times):
            form = _form(client.get(f"{book}/split"), f"/split/{act}", skip=number + 1)
            if form is None:
                break
            took.append(_post(client, form.action, dict(form.form_values()) | fill, 303))
        if took:
            yield Timed(f"mend the split: {act}", tuple(took))
    undone = []
    for _ in range(times):
        form = _form(client.get(f"{book}/split"), "/undo")
        if form is None:
            break
        undone.append(_post(client, form.action, dict(form.form_values()), 303))
    if undone:
        yield Timed("undo", tuple(undone))


def _form(page: httpx2.Response, action: str, *, skip: int = 0) -> Any:
    forms = _page(page).forms
    return next(islice((form for form in forms if action in (form.action or "")), skip, None), None)


def _page(answer: httpx2.Response) -> Any:
    return html.fromstring(answer.content)


def _post(client: httpx2.Client, address: str, sent: dict[str, str], expected: int) -> float:
    began = time.perf_counter()
    answer = client.post(address, data=sent)
    took = time.perf_counter() - began
    assert answer.status_code == expected, f"{address}: {answer.status_code} {answer.text[:300]}"
    return took
