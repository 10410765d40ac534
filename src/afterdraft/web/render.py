"""Pages from templates: one environment, the frame every screen shares, and a word said once after an act."""

import json
from dataclasses import dataclass, field
from functools import cache
from urllib.parse import quote, unquote, urlsplit

from jinja2 import Environment, PackageLoader, StrictUndefined
from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import HTMLResponse, RedirectResponse

from afterdraft.manuscript.naming import chapter_name
from afterdraft.web.assets import static
from afterdraft.web.body import text
from afterdraft.web.foreedge import ForeEdge, fore_edge
from afterdraft.web.prose import prose
from afterdraft.web.view import BookView
from afterdraft.work.ports import Book, Edits

SAID = "afterdraft-said"  # cookie that carries one message across the redirect after a form
LETTERS = "afterdraft-letters"  # cookie: "off" when single-letter keys are turned off
AWAY = "afterdraft-away"  # cookie: names of screens whose first words were put away
KEPT = 400 * 24 * 3600  # seconds; browsers keep a cookie no longer


@dataclass(frozen=True, slots=True)
class Frame:
    """What surrounds a screen: the bar, the fore-edge, the message."""

    title: str  # of the window
    screen: str  # which entry of the bar is current
    book: BookView | None = None
    edge: ForeEdge | None = None
    edits: Edits = field(default_factory=lambda: Edits(None, None))
    said: str = ""
    path: str = "/"  # where an undo returns to
    query: str = ""
    letters: bool = True  # whether single-letter keys are on
    away: frozenset[str] = frozenset()  # screens whose first words were put away


@cache
def environment() -> Environment:
    made = Environment(
        loader=PackageLoader("afterdraft.web"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    made.filters["prose"] = prose
    made.filters["n"] = lambda number: f"{number:,}"
    made.globals["static"] = static
    made.globals["many"] = many
    made.globals["chapter_name"] = chapter_name
    return made


def many(number: int, one: str, more: str = "") -> str:
    """ "1 scene", "12 scenes", "1,204 words"."""
    return f"{number:,} {one if number == 1 else more or one + 's'}"


def render(request: Request, template: str, screen: object, frame: Frame, *, status: int = 200) -> HTMLResponse:
    """Fill `template` with its own context `screen` and the `frame` round it."""
    html = environment().get_template(template).render(s=screen, frame=frame, request=request)
    response = HTMLResponse(html, status_code=status)
    if frame.said:
        response.delete_cookie(SAID)
    return response


def frame(request: Request, title: str, screen: str, *, book: BookView | None = None, here: str = "") -> Frame:
    """What goes round every page; with a book, what is new in it is read from now on."""
    if book:
        request.app.state.reading.want(book.book, book.draft, (book.edits, book.facts.changed))
    return Frame(
        title=f"{title} · {book.facts.title}" if book else f"{title} · Afterdraft",
        screen=screen,
        book=book,
        edge=fore_edge(book, here=here) if book else None,
        edits=book.edits if book else Edits(None, None),
        said=unquote(request.cookies.get(SAID, "")),
        path=request.url.path + (f"?{request.url.query}" if request.url.query else ""),
        query=request.query_params.get("q", ""),
        letters=request.cookies.get(LETTERS) != "off",
        away=frozenset(request.cookies.get(AWAY, "").split()),
    )


def book_of(request: Request) -> Book:
    """The open book that the address names. Raises `NotABook` where there is none of that id."""
    book: Book = request.app.state.registry.book(request.path_params["book"])
    return book


def go(path: str, *, said: str = "") -> RedirectResponse:
    """After a form: on to another page, with a word on what was done."""
    response = RedirectResponse(path, status_code=303)
    if said:
        response.set_cookie(SAID, quote(said), max_age=30, httponly=True, samesite="strict")
    return response


def back(form: FormData, otherwise: str) -> str:
    """The page a form came from, if it is one of ours; else `otherwise`."""
    return ours(text(form, "back"), otherwise)


def ours(path: str, otherwise: str) -> str:
    """`path` if it leads to a page of this program; else `otherwise`."""
    parts = urlsplit(path)
    inside = path.startswith("/") and not path.startswith("//") and not parts.scheme and not parts.netloc
    return path if inside and "\\" not in path else otherwise


def number(form: FormData, name: str, otherwise: int = -1) -> int:
    return number_of(text(form, name), otherwise)


def number_of(value: str, otherwise: int) -> int:
    """A whole number from an address or a form; `otherwise` for anything else. Nine digits are enough for all."""
    return int(value) if value.isascii() and value.isdigit() and len(value) < 10 else otherwise


def edits_header(edits: Edits) -> str:
    """The top of the undo stack for a page that stays as it is: ASCII JSON, fit for a header."""
    told = {
        name: {"number": edit.number, "name": edit.name} if edit else None
        for name, edit in (("undo", edits.undo), ("redo", edits.redo))
    }
    return json.dumps(told)
