"""She says what became of scenes: as it was found, or otherwise. Every act can be undone."""

from collections.abc import Callable, Sequence

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.errors import Missing, NotPossible
from afterdraft.web.body import form, text
from afterdraft.web.render import back, book_of, go
from afterdraft.web.two_drafts import Named, TwoDrafts, two_drafts
from afterdraft.web.view import view
from afterdraft.work.drafts.say_fate import confirm_fates, say_apart, say_gone, say_lives_on
from afterdraft.work.ports import Book

Act = Callable[[Book, TwoDrafts, FormData], None]


def say_fate(request: Request) -> Response:
    """`POST /books/{book}/drafts/fates/{act}` with codes `old` and `new`, or ids `scene`; `?old=1&new=2` as there."""
    book, posted = book_of(request), form(request)
    two, act = two_drafts(request, view(book)), ACTS.get(request.path_params["act"])
    if act is None or two is None:
        raise Missing("This act")
    act(book, two, posted)
    top = book.edits().undo
    return go(back(posted, f"{two.base}/drafts{two.query}"), said=top.name if top else "")


def _as_found(book: Book, _: TwoDrafts, posted: FormData) -> None:
    confirm_fates(book, [scene for scene in posted.getlist("scene") if isinstance(scene, str)])


def _cut(book: Book, two: TwoDrafts, posted: FormData) -> None:
    say_gone(book, _old(two, posted).id, "cut", new=two.new.id)


def _not_reached(book: Book, two: TwoDrafts, posted: FormData) -> None:
    say_gone(book, _old(two, posted).id, "not reached", new=two.new.id)


def _lives_on(book: Book, two: TwoDrafts, posted: FormData) -> None:
    say_lives_on(book, _old(two, posted).id, _new(two, posted).id)


def _apart(book: Book, two: TwoDrafts, posted: FormData) -> None:
    say_apart(book, _old(two, posted).id, _new(two, posted).id)


def _old(two: TwoDrafts, posted: FormData) -> Named:
    return _coded(two.olds, text(posted, "old"), two.old.number)


def _new(two: TwoDrafts, posted: FormData) -> Named:
    return _coded(two.news, text(posted, "new"), two.new.number)


def _coded(scenes: Sequence[Named], code: str, draft: int) -> Named:
    wanted = code.strip().upper()
    for one in scenes:
        if one.code == wanted:
            return one
    if not wanted:
        raise NotPossible(f"No scene of draft {draft} was named. Nothing was changed. Type its code, or choose it.")
    raise NotPossible(
        f"There is no scene {wanted} in draft {draft}. Nothing was changed. Look at its code in the list."
    )


ACTS: dict[str, Act] = {
    "as-found": _as_found,
    "cut": _cut,
    "not-reached": _not_reached,
    "lives-on": _lives_on,
    "apart": _apart,
}
