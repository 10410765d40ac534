"""Acts on inks, guarded passages and comments in the file: one edit, then back."""

from collections.abc import Callable, Mapping

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.ink import COLOURS, Colour
from afterdraft.errors import Missing, NotPossible
from afterdraft.web.body import form, text
from afterdraft.web.passages import passages
from afterdraft.web.render import back, book_of, go
from afterdraft.web.view import view
from afterdraft.work.notes.guard_passage import guard_passage, let_go
from afterdraft.work.notes.mix_ink import letter_ink, mix_ink, move_ink, recolour_ink, remove_ink, starting_inks
from afterdraft.work.notes.take_comments import leave_comments, take_comments
from afterdraft.work.ports import Book


def mix(request: Request) -> Response:
    """`POST /books/{book}/inks` with a name and perhaps a colour; or `start`: four inks to begin with."""
    book, posted = book_of(request), form(request)
    if "start" in posted:
        starting_inks(book)
    else:
        mix_ink(book, text(posted, "name"), colour=_colour(posted) if text(posted, "colour") else None)
    return go(
        back(posted, f"/books/{book.id}/notes#inks"),
        said="The inks are mixed." if "start" in posted else "The ink is mixed.",
    )


def change(request: Request) -> Response:
    """`POST /books/{book}/inks/{ink}` with `do`: look, up, down, remove."""
    book, posted = book_of(request), form(request)
    act = ACTS.get(text(posted, "do"))
    if act is None:
        raise Missing("This act")
    act(book, request.path_params["ink"], posted)
    return go(back(posted, f"/books/{book.id}/notes#inks"))


def guard(request: Request) -> Response:
    """`POST /books/{book}/guarded` with the scene's code and the words or their passage."""
    book, posted = book_of(request), form(request)
    seen = view(book)
    scene = seen.by_code(text(posted, "scene")).scene.id
    guard_passage(book, seen.draft.id, passages(book, scene, posted), why=text(posted, "text"))
    return go(back(posted, f"/books/{book.id}/scenes"), said="The passage is guarded.")


def release(request: Request) -> Response:
    """`POST /books/{book}/guarded/{guarded}`: it is not guarded any more."""
    book, posted = book_of(request), form(request)
    let_go(book, view(book).draft.id, request.path_params["guarded"])
    return go(back(posted, f"/books/{book.id}/scenes"), said="The passage is not guarded any more.")


def comments(request: Request) -> Response:
    """`POST /books/{book}/comments` with `comment` once for each, and `do`: keep (in an `ink`) or leave."""
    book, posted = book_of(request), form(request)
    draft = view(book).draft.id
    asides = [int(one) for one in posted.getlist("comment") if isinstance(one, str) and one.isdigit()]
    if not asides:
        raise NotPossible("No comment was chosen.")
    if text(posted, "do") == "leave":
        leave_comments(book, draft, asides)
        return go(back(posted, f"/books/{book.id}/notes"), said="Left where they are, in your file.")
    take_comments(book, draft, asides, ink=text(posted, "ink") or None)
    return go(back(posted, f"/books/{book.id}/notes"), said="Kept as notes." if len(asides) > 1 else "Kept as a note.")


def _look(book: Book, ink: str, posted: FormData) -> None:
    stands = next((one for one in book.inks() if one.id == ink), None)
    if stands is None:
        raise Missing("This ink")
    if _colour(posted) != stands.colour:
        recolour_ink(book, ink, _colour(posted))
    if text(posted, "letter").strip().upper() != stands.letter:
        letter_ink(book, ink, text(posted, "letter"))


ACTS: Mapping[str, Callable[[Book, str, FormData], None]] = {
    "look": _look,
    "up": lambda book, ink, posted: move_ink(book, ink, by=-1),
    "down": lambda book, ink, posted: move_ink(book, ink, by=1),
    "remove": lambda book, ink, posted: remove_ink(book, ink),
}


def _colour(posted: FormData) -> Colour:
    for colour in COLOURS:
        if colour == text(posted, "colour"):
            return colour
    raise NotPossible("There is no such colour among the inks.")
