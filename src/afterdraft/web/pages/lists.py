"""Adding to the writer's lists (threads, setups, reveals, strands, people, places), and what can be done with a row."""

from collections.abc import Callable
from typing import get_args
from urllib.parse import urlencode

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.cast import KnownKind
from afterdraft.desk.lines import LineKind
from afterdraft.errors import Missing, NameTaken
from afterdraft.web.body import form, text
from afterdraft.web.render import back, book_of, go
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.cast.join_known import join_known
from afterdraft.work.cast.remove_known import remove_known
from afterdraft.work.lines.add_line import add_line, add_strand
from afterdraft.work.lines.letter_line import letter_line
from afterdraft.work.lines.remove_line import remove_line, remove_strand
from afterdraft.work.ports import Book
from afterdraft.work.ports.cast import Listed
from afterdraft.work.reorder import reorder

Act = Callable[[Book, Listed, str, FormData], None]


def add(request: Request) -> Response:
    """`POST /books/{book}/lists/{kind}` with a `name`; kind as `LineKind`, "strand", "person", "place".

    A person or place whose name is taken is asked about; with `all_the_same` it is added."""
    book, posted, kind = book_of(request), form(request), request.path_params["kind"]
    name = text(posted, "name")
    page = _page(book, kind)
    try:
        made = _add(book, kind, name, all_the_same=text(posted, "all_the_same") == "1")
    except NameTaken:
        return go(f"{page}?{urlencode({'again': name, 'kind': kind})}#add-{kind}")
    return go(f"{page}?open={made}#l-{made}", said=f"{name.strip()} is added.")


def change(request: Request) -> Response:
    """`POST /books/{book}/lists/{kind}/{id}/{act}`; kind as `Listed`."""
    book, posted = book_of(request), form(request)
    kind, row = _listed(request.path_params["kind"]), request.path_params["id"]
    act = ACTS.get(request.path_params["act"])
    if act is None:
        raise Missing("This act")
    act(book, kind, row, posted)
    top = book.edits().undo
    return go(back(posted, _page(book, kind)), said=top.name if top else "")


def _add(book: Book, kind: str, name: str, *, all_the_same: bool) -> str:
    for line in get_args(LineKind):
        if line == kind:
            return add_line(book, line, name)
    for known in get_args(KnownKind):
        if known == kind:
            return add_known(book, known, name, all_the_same=all_the_same)
    if kind == "strand":
        return add_strand(book, name)
    raise Missing("This list")


def _page(book: Book, kind: str) -> str:
    return f"/books/{book.id}/{'people' if kind in get_args(KnownKind) else 'threads'}"


def _listed(kind: str) -> Listed:
    for one in get_args(Listed):
        if one == kind:
            return one  # type: ignore[no-any-return]  # get_args does not know the literal's type
    raise Missing("This list")


def _letter(book: Book, kind: Listed, row: str, posted: FormData) -> None:
    if kind == "person" or kind == "place":
        raise Missing("This act")
    letter_line(book, kind, row, text(posted, "letter"))


def _remove(book: Book, kind: Listed, row: str, posted: FormData) -> None:
    if kind == "line":
        remove_line(book, row)
    elif kind == "strand":
        remove_strand(book, row)
    else:
        remove_known(book, kind, row)


def _join(book: Book, kind: Listed, row: str, posted: FormData) -> None:
    if kind == "line" or kind == "strand":
        raise Missing("This act")
    join_known(book, kind, into=text(posted, "into"), of=row)


ACTS: dict[str, Act] = {
    "up": lambda book, kind, row, _: reorder(book, kind, row, by=-1),
    "down": lambda book, kind, row, _: reorder(book, kind, row, by=1),
    "letter": _letter,
    "remove": _remove,
    "join": _join,
}
