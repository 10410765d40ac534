"""Say who is in scenes: whose viewpoint it is, who is on the page, who is mentioned."""

from collections.abc import Sequence

from afterdraft.desk.cast import Presence
from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted, scenes_called
from afterdraft.work.finding import known_called, named
from afterdraft.work.ports import Book, Desk

_TOLD: dict[Presence | None, str] = {
    "viewpoint": "Viewpoint of {}",
    "on page": "{} on the page",
    "mentioned": "{} mentioned",
    None: "{} not",
}


def mark_presence(book: Book, scenes: Sequence[str], name: str, how: Presence | None, *, also: bool = False) -> None:
    """The person is found by any name, or added to the cast; None takes them out of the scenes. One edit.

    A scene has one viewpoint: whose it was before is on the page then. With `also` it has both.
    Raises `NotPossible`, `Missing`.
    """
    wanted = named(name, "A person")
    if not scenes:
        raise NotPossible("No scene was chosen.")

    def change(desk: Desk) -> None:
        person = known_called(desk, "person", wanted)
        for scene in scenes:
            if how == "viewpoint" and not also:
                _step_back(desk, scene, person)
            desk.set_presence(scene, person, how)

    book.edit(f"{_TOLD[how].format(quoted(wanted))} in {scenes_called(book, scenes)}", change)


def _step_back(desk: Desk, scene: str, person: str) -> None:
    """Whoever else had the viewpoint is on the page."""
    for other in desk.viewpoints(scene):
        if other != person:
            desk.set_presence(scene, other, "on page")
