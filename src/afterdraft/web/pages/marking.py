"""Marking scenes, one or several at once: what runs through them, who is in them, where they are; and taking off."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.anchor import Passage
from afterdraft.desk.cast import Presence
from afterdraft.desk.lines import DOES, Does, LineKind
from afterdraft.errors import Missing, NotPossible
from afterdraft.web.body import form, text
from afterdraft.web.passages import passages
from afterdraft.web.render import back, book_of, go
from afterdraft.web.view import BookView, view
from afterdraft.work.cast.carry import carry, put_down
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.cast.mark_setting import mark_setting
from afterdraft.work.finding import alike
from afterdraft.work.lines.link_scenes import link_scenes, unlink_scenes
from afterdraft.work.lines.mark_point import mark_point, unmark_point
from afterdraft.work.lines.put_in_strand import put_in_strand

KINDS: Mapping[LineKind, tuple[Does, Does]] = {  # what is meant by a name alone: first, and when that is marked already
    "thread": ("opens", "carries"),
    "setup": ("setup", "return"),
    "reveal": ("learns", "learns"),
}


@dataclass(frozen=True, slots=True)
class _Asked:
    seen: BookView
    posted: FormData
    scenes: tuple[str, ...]  # ids
    laid: tuple[str, ...]  # ids of planned cards without a scene

    def text(self, name: str) -> str:
        return text(self.posted, name).strip()


def mark(request: Request) -> Response:
    """`POST /books/{book}/mark` with `code` of each scene (`laid`: id of each planned card without a scene) and `does`.

    `does` says which act, and so which field is read: `thread`, `setup`, `reveal` with `who`; `strand`; `person`;
    `place`. With `words` of the scene's text, or their `passage`, a point is fastened to them. Without `does` the
    field that is filled decides.
    """
    book, posted = book_of(request), form(request)
    seen = view(book)
    codes = [code for code in posted.getlist("code") if isinstance(code, str)]
    laid = tuple(one for one in posted.getlist("laid") if isinstance(one, str))
    asked = _Asked(seen, posted, tuple(seen.by_code(code).scene.id for code in codes), laid)
    act = text(posted, "does") or _meant(asked)
    if act not in ACTS:
        raise Missing("This act")
    field = ACTS[act](asked)
    top = book.edits().undo
    place = "" if "#" in text(posted, "back") else f"#mark-{field}"
    return go(back(posted, f"/books/{book.id}/threads") + place, said=top.name if top else "")


def unmark(request: Request) -> Response:
    """`POST /books/{book}/lines/{line}/unmark` with `point`."""
    book, posted = book_of(request), form(request)
    unmark_point(book, request.path_params["line"], text(posted, "point"))
    return go(back(posted, f"/books/{book.id}/threads"), said="The mark is taken off.")


def link(request: Request) -> Response:
    """`POST /books/{book}/follows` with the `scene` that follows, its `source` (each by code or title), and `why`."""
    book, posted = book_of(request), form(request)
    seen = view(book)
    scene = _scene_meant(seen, text(posted, "scene"))
    link_scenes(book, scene, source=_scene_meant(seen, text(posted, "source")), why=text(posted, "why"))
    return go(back(posted, f"/books/{book.id}/threads"), said="The scenes are linked.")


def unlink(request: Request) -> Response:
    """`POST /books/{book}/follows/{link}`"""
    book, posted = book_of(request), form(request)
    unlink_scenes(book, view(book).draft.id, request.path_params["link"])
    return go(back(posted, f"/books/{book.id}/threads"), said="The scenes are not linked any more.")


def carried(request: Request) -> Response:
    """`POST /books/{book}/carried` with the scene's `code`, a `person`, `comes_in`, `leaves`."""
    book, posted = book_of(request), form(request)
    scene = view(book).by_code(text(posted, "code")).scene.id
    words = {"comes_in": text(posted, "comes_in"), "leaves": text(posted, "leaves")}
    carry(book, scene, text(posted, "person"), **words)
    return go(back(posted, f"/books/{book.id}/people"), said="Kept on the card.")


def put_away(request: Request) -> Response:
    """`POST /books/{book}/carried/{carried}` with the scene's `code`: take it off."""
    book, posted = book_of(request), form(request)
    put_down(book, view(book).by_code(text(posted, "code")).scene.id, request.path_params["carried"])
    return go(back(posted, f"/books/{book.id}/people"), said="Taken off the card.")


def _meant(asked: _Asked) -> str:
    """What a name alone means: where it is known and begun, that it goes on; else that it begins."""
    for kind, (first, then) in KINDS.items():
        if name := asked.text(kind):
            lines = asked.seen.book.lines(asked.seen.draft.id)
            known = next((line for line in lines if line.kind == kind and alike(line.name, name)), None)
            return then if known and any(point.does == first for point in known.points) else first
    return next((act for field, act in _ALONE.items() if asked.text(field)), "opens")


def _point(kind: LineKind, does: Does) -> Callable[[_Asked], str]:
    def act(asked: _Asked) -> str:
        mark_point(
            asked.seen.book,
            kind,
            asked.text(kind),
            does,
            scenes=asked.scenes,
            laid=asked.laid,
            who=asked.text("who"),
            passages=_passages(asked),
        )
        return kind

    return act


def _passages(asked: _Asked) -> tuple[Passage, ...]:
    """Where the words lie that a point is fastened to: as the selection says, or else as they are found."""
    if asked.text("words") and len(asked.scenes) != 1:
        raise NotPossible("A passage belongs to one scene.")
    return passages(asked.seen.book, asked.scenes[0], asked.posted) if asked.scenes else ()


def _presence(how: Presence | None, *, also: bool = False) -> Callable[[_Asked], str]:
    def act(asked: _Asked) -> str:
        mark_presence(asked.seen.book, asked.scenes, asked.text("person"), how, also=also)
        return "person"

    return act


def _strand(asked: _Asked) -> str:
    if not asked.text("strand"):
        raise NotPossible("A strand needs a name.")
    put_in_strand(asked.seen.book, asked.scenes, asked.text("strand"))
    return "strand"


def _no_strand(asked: _Asked) -> str:
    put_in_strand(asked.seen.book, asked.scenes, "")
    return "strand"


def _place(*, there: bool) -> Callable[[_Asked], str]:
    def act(asked: _Asked) -> str:
        mark_setting(asked.seen.book, asked.scenes, asked.text("place"), there=there)
        return "place"

    return act


_ALONE = {"strand": "strand", "person": "on page", "place": "place"}
ACTS: dict[str, Callable[[_Asked], str]] = {
    **{does: _point(kind, does) for kind, several in DOES.items() for does in several},
    "strand": _strand,
    "no strand": _no_strand,
    "viewpoint": _presence("viewpoint"),
    "also viewpoint": _presence("viewpoint", also=True),
    "on page": _presence("on page"),
    "mentioned": _presence("mentioned"),
    "not here": _presence(None),
    "place": _place(there=True),
    "not in place": _place(there=False),
}


def _scene_meant(seen: BookView, words: str) -> str:
    """Id of the scene that is meant by its code, or code and name as the list offers them, or by its name."""
    first = words.split()[0].rstrip(":·").upper() if words.split() else ""
    found = [one for one in seen.outline.scenes if one.scene.code == first]
    found = found or [one for one in seen.outline.scenes if alike(seen.name(one), words)]
    if len(found) != 1:
        raise NotPossible(
            "Choose the scene by its code, or by its title." if not found else "Two scenes are called so."
        )
    return found[0].scene.id
