"""Say where scenes happen."""

from collections.abc import Sequence

from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted, scenes_called
from afterdraft.work.finding import known_called, named
from afterdraft.work.ports import Book, Desk


def mark_setting(book: Book, scenes: Sequence[str], name: str, *, there: bool = True) -> None:
    """The place is found by any name, or added. One edit. Raises `NotPossible`, `Missing`."""
    wanted = named(name, "A place")
    if not scenes:
        raise NotPossible("No scene was chosen.")

    def change(desk: Desk) -> None:
        place = known_called(desk, "place", wanted)
        for scene in scenes:
            desk.set_setting(scene, place, there=there)

    book.edit(f"{scenes_called(book, scenes)} {'in' if there else 'not in'} {quoted(wanted)}", change)
