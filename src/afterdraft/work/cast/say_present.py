"""Say of one scene who is in it and where it happens, against what reading found there."""

from typing import Literal

from afterdraft.desk.cast import Presence
from afterdraft.work.called import scene_called
from afterdraft.work.cast.found import Found, kept
from afterdraft.work.ports import Book, Desk

How = Presence | Literal["not here"]
_TOLD: dict[How, str] = {
    "viewpoint": "Viewpoint of {}",
    "on page": "{} on the page",
    "mentioned": "{} mentioned",
    "not here": "{} not",
}


def say_present(book: Book, scene: str, who: Found, how: How) -> None:
    """A scene has one viewpoint: whose it was before, by her mark, is on the page then. One edit. Raises `Missing`."""

    def change(desk: Desk) -> None:
        person = kept(desk, "person", who)
        if how == "viewpoint":
            for other in desk.viewpoints(scene):
                if other != person:
                    desk.set_presence(scene, other, "on page")
        desk.set_presence(scene, person, None if how == "not here" else how)
        desk.set_absent(scene, person, absent=how == "not here")

    book.edit(f"{_TOLD[how].format(who.told)} in {scene_called(book, scene)}", change)


def say_setting(book: Book, scene: str, where: Found, *, there: bool) -> None:
    """One edit. Raises `Missing`."""

    def change(desk: Desk) -> None:
        place = kept(desk, "place", where)
        desk.set_setting(scene, place, there=there)
        desk.set_absent(scene, place, absent=not there)

    book.edit(f"{scene_called(book, scene)} {'in' if there else 'not in'} {where.told}", change)
