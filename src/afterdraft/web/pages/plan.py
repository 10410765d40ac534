"""Plan: what is to be changed in this round, in which places, and what comes first."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import get_args

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.change import When
from afterdraft.errors import Missing, NotPossible
from afterdraft.web.body import form, text
from afterdraft.web.plan import Group, IntentRow, groups, intents
from afterdraft.web.render import back, book_of, frame, go, many, number, render
from afterdraft.web.view import BookView, view
from afterdraft.work.plan.change_places import add_places, add_words, remove_place, tick_place
from afterdraft.work.plan.order_changes import move_change, remove_change, set_when, step_change
from afterdraft.work.plan.plan_change import plan_change, plan_from_note
from afterdraft.work.ports import Book

Act = Callable[[Book, str, FormData], object]


@dataclass(frozen=True, slots=True)
class PlanPage:
    view: BookView
    groups: tuple[Group, ...]
    opened: str  # id of the change whose places are being added
    intents: tuple[IntentRow, ...]

    @property
    def scenes(self) -> tuple[tuple[str, str], ...]:
        """Code and name of each, to choose from."""
        return tuple((one.scene.code, self.view.name(one)) for one in self.view.outline.scenes)

    @property
    def empty(self) -> bool:
        return not any(group.rows for group in self.groups)

    @property
    def facts(self) -> str:
        """ "3 must, 1 if time · 4 of 9 places ticked off"."""
        rows = [row for group in self.groups for row in group.rows]
        places = sum(len(row.places) for row in rows)
        whens = ", ".join(f"{len(group.rows)} {group.when}" for group in self.groups if group.rows)
        ticked = f" · {sum(row.ticked for row in rows)} of {many(places, 'place')} ticked off" if places else ""
        done = sum(len(group.done) for group in self.groups)
        return f"{many(len(rows), 'change')}: {whens}{ticked}{f' · {done} done' if done else ''}"


def plan(request: Request) -> Response:
    """`/books/{book}/plan`, with `?open=` the id of the change to which places are being added."""
    seen = view(book_of(request))
    context = PlanPage(seen, groups(seen), request.query_params.get("open", ""), intents(seen))
    return render(request, "plan.html", context, frame(request, "Plan", "plan", book=seen))


def add(request: Request) -> Response:
    """`POST /books/{book}/plan` with wrong, decide, when, perhaps a scene's code; or with a note's id."""
    book, posted = book_of(request), form(request)
    note, code = text(posted, "note"), text(posted, "scene")
    if note:
        made = plan_from_note(book, note)
    else:
        scene = view(book).by_code(code).scene.id if code else None
        made = plan_change(
            book, text(posted, "wrong"), decide=text(posted, "decide"), when=_when(posted, "must"), scene=scene
        )
    here = f"/books/{book.id}/plan?open={made}#c-{made}"
    return go(back(posted, here), said="The change is in the plan.")


def change(request: Request) -> Response:
    """`POST /books/{book}/plan/{change}/{act}`; then back to the change."""
    book, posted, meant = book_of(request), form(request), request.path_params["change"]
    act = ACTS.get(request.path_params["act"])
    if act is None:
        raise Missing("This act")
    act(book, meant, posted)
    top = book.edits().undo
    opened = f"?open={meant}" if act is _add_places else ""
    return go(back(posted, f"/books/{book.id}/plan{opened}#c-{meant}"), said=top.name if top else "")


def _add_places(book: Book, change: str, posted: FormData) -> None:
    add = add_words if text(posted, "how") == "words" else add_places
    add(book, change, text(posted, "places"))


def _tick(book: Book, change: str, posted: FormData) -> None:
    tick_place(book, change, text(posted, "place"), done=text(posted, "done") == "1")


def _move(book: Book, change: str, when: When, to: int) -> None:
    """`to`: the place in the group, from 1; beyond the last it is the last."""
    others = [one.id for one in book.changes() if one.when == when and one.id != change]
    after = others[max(to, 1) - 1 :]
    move_change(book, change, when=when, before=after[0] if after else "")


def _when(posted: FormData, otherwise: When | None = None) -> When:
    for when in get_args(When):
        if when == text(posted, "when", otherwise or ""):
            return when  # type: ignore[no-any-return]  # get_args does not know the literal's type
    raise NotPossible("A change is for must, if time or later.")


ACTS: dict[str, Act] = {
    "places": _add_places,
    "tick": _tick,
    "remove-place": lambda book, change, posted: remove_place(book, change, text(posted, "place")),
    "when": lambda book, change, posted: set_when(book, change, _when(posted)),
    "up": lambda book, change, _: step_change(book, change, by=-1),
    "down": lambda book, change, _: step_change(book, change, by=1),
    "move": lambda book, change, posted: _move(book, change, _when(posted), number(posted, "to", 1)),
    "remove": lambda book, change, _: remove_change(book, change),
}
