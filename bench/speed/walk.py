"""Every page of a book, and edits of every kind, each timed from outside."""

import re
import time
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import cycle, islice
from typing import Any
from urllib.parse import urlsplit

import httpx2
from lxml import html
from starlette.routing import BaseRoute

from afterdraft.web import pages

PAGES_A_ROUTE = 40  # different pages of one route that are asked for
TIMES = 3  # each page is asked for


@dataclass(frozen=True, slots=True)
class Timed:
    what: str  # a route's pattern, or a kind of edit
    took: tuple[float, ...]  # seconds, each answer


class Refused(Exception):
    """The program did not do as it was asked."""


def every_page(client: httpx2.Client, book: str) -> list[Timed]:
    """Follow all links from the book's pages; the answers of each route. Raises AssertionError for one never met."""
    seen: dict[str, set[str]] = {}
    took: dict[str, list[float]] = {}
    waiting = [
        f"{book}/{page}"
        for page in (
            "split",
            "scenes",
            "drafts",
            "drafts/offcuts.txt",
            "search?q=the",
            "edits.json",
            "table/columns",
            "read",
            "questions/state",
        )
    ]
    waiting += ["/", "/folder"]
    asked: set[str] = set()
    while waiting:
        address = waiting.pop(0)
        route = route_of(address)
        if address in asked or route is None or len(seen.setdefault(route, set())) >= PAGES_A_ROUTE:
            continue
        asked.add(address)
        seen[route].add(address)
        answer = _timed(client, address, took.setdefault(route, []))
        waiting += [link for link in links(answer) if link.startswith(book) or not link.startswith("/books/")]
    missed = {str(getattr(route, "path", "")) for route in pages.ROUTES if _is_page(route)} - took.keys()
    assert not missed, f"no link leads to {missed}"
    return [Timed(route, tuple(times)) for route, times in sorted(took.items())]


def route_of(address: str) -> str | None:
    """The pattern of the GET route that answers an address; None for files and addresses of no route."""
    scope = {"type": "http", "method": "GET", "path": urlsplit(address).path}
    for route in pages.ROUTES:
        match, _ = route.matches(dict(scope))
        if match.value == 2:  # full: path and method
            return str(getattr(route, "path", ""))
    return None


def _is_page(route: BaseRoute) -> bool:
    return "GET" in (getattr(route, "methods", None) or ())


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
    """Edits of every kind, `times` of each: what she does, as a form that a page of hers holds, filled in."""
    kinds = {
        "save a card's summary": _cards(client, book),
        "note on a scene": _notes(client, book),
        "join a scene to the one before": _mends(client, book, "join"),
        "split a scene": _splits(client, book),
        "title of a chapter": _mends(client, book, "retitle-chapter"),
        "begin an arrangement by a move": _begun(client, book),
        "move a card": _moved(client, book),
        "save what shall happen on a card": _next_sides(client, book),
        "undo": _undone(client, book),
    }
    return [Timed(kind, tuple(islice(took, times))) for kind, took in kinds.items()]


def _cards(client: httpx2.Client, book: str) -> Iterator[float]:
    """A field saved as the page saves it while one types: the time to its 204, which is said once it is durable."""
    for sequence, scene in enumerate(cycle(_scenes(client, book)), 1):
        form = _form(client.get(scene), "/fields/card/")
        typed = {"client": "bench", "sequence": str(sequence), "text": f"It happens for the {sequence}th time."}
        yield _post(client, f"{form.action}/summary", dict(form.form_values()) | typed)


def _notes(client: httpx2.Client, book: str) -> Iterator[float]:
    for number, scene in enumerate(cycle(_scenes(client, book)), 1):
        form = _form(client.get(scene), "/notes")
        yield _post(client, form.action, dict(form.form_values()) | {"text": f"Look at this again, {number}."})


def _mends(client: httpx2.Client, book: str, act: str) -> Iterator[float]:
    """At one place of the page after the other, each taken back; a place where the act is refused is passed over."""
    typed = {"title": "The ferry"} if act.startswith("retitle") else {}
    places = len(_forms(client.get(f"{book}/split"), f"/split/{act}"))
    for place in cycle(range(places)):
        form = _forms(client.get(f"{book}/split"), f"/split/{act}")[place]
        try:
            yield _post(client, form.action, dict(form.form_values()) | typed)
        except Refused:
            continue
        next(_undone(client, book))


def _splits(client: httpx2.Client, book: str) -> Iterator[float]:
    """Each in the middle of its scene."""
    for scene in cycle(_scenes(client, book)):
        code = scene.rpartition("/")[2]
        forms = _forms(client.get(f"{book}/split?open={code}"), "/split/at")
        able = [form for form in forms if form.xpath(".//button[@value='scene']")]
        if able:
            form = able[len(able) // 2]
            yield _post(client, form.action, dict(form.form_values()) | {"begin": "scene"})


def _begun(client: httpx2.Client, book: str) -> Iterator[float]:
    """The first move, which copies the draft's order into an arrangement; taken back each time."""
    while True:
        yield next(_moved(client, book))
        next(_undone(client, book))


def _moved(client: httpx2.Client, book: str) -> Iterator[float]:
    """One card after the other to the end of the book."""
    for address in cycle(link for link in links(client.get(f"{book}/cards")) if f"{book}/cards/move" in link):
        form = _form(client.get(address), "/cards/move")
        last = form.xpath(".//option/@value")[-1]
        yield _post(client, form.action, dict(form.form_values()) | {"to": last, "side": "after"})


def _next_sides(client: httpx2.Client, book: str) -> Iterator[float]:
    """As `_cards`, on the other side."""
    addresses = [link for link in links(client.get(f"{book}/cards")) if re.search(r"/cards/[A-Z]\d+", link)]
    for sequence, address in enumerate(cycle(addresses), 1):
        form = _form(client.get(address), "/fields/next/")
        typed = {"client": "bench", "sequence": str(sequence), "text": f"It shall happen for the {sequence}th time."}
        yield _post(client, f"{form.action}/what", dict(form.form_values()) | typed)


def _undone(client: httpx2.Client, book: str) -> Iterator[float]:
    while True:
        form = _form(client.get(f"{book}/split"), "/undo")
        yield _post(client, form.action, dict(form.form_values()))


def _scenes(client: httpx2.Client, book: str) -> list[str]:
    return list(dict.fromkeys(link for link in links(client.get(f"{book}/split")) if f"{book}/scenes/" in link))


def _form(page: httpx2.Response, action: str) -> Any:
    """The first form whose address holds `action`. Raises IndexError where the page has none."""
    return _forms(page, action)[0]


def _forms(page: httpx2.Response, action: str) -> list[Any]:
    return [form for form in _page(page).forms if action in (form.action or "")]


def _page(answer: httpx2.Response) -> Any:
    return html.fromstring(answer.content)


def _post(client: httpx2.Client, address: str, sent: dict[str, str]) -> float:
    began = time.perf_counter()
    answer = client.post(address, data=sent)
    took = time.perf_counter() - began
    if answer.status_code not in (204, 303):
        raise Refused(f"{address}: {answer.status_code} {_page(answer).text_content()[:500]}")
    return took
