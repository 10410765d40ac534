"""Say what one person comes into a scene with, and leaves it with."""

from afterdraft.desk.cast import Carried
from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted, scene_called
from afterdraft.work.finding import known_called, named
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Desk


def carry(book: Book, scene: str, name: str, *, comes_in: str, leaves: str) -> Carried:
    """The person is found by any name, or added to the cast. Words that stand already stay; these go under them.

    Raises `NotPossible` for no words, `Missing`.
    """
    wanted = named(name, "A person")
    brought, taken = plain(comes_in).strip(), plain(leaves).strip()
    if not brought and not taken:
        raise NotPossible("Say what they come in with, or leave with.")

    def change(desk: Desk) -> Carried:
        return desk.carry(scene, known_called(desk, "person", wanted), comes_in=brought, leaves=taken)

    return book.edit(f"What {quoted(wanted)} comes in and leaves with in {scene_called(book, scene)}", change)


def put_down(book: Book, scene: str, carried: str) -> None:
    """Take it off the scene, words and all. Raises `Missing`."""
    name = f"Take off what one comes in and leaves with in {scene_called(book, scene)}"
    book.edit(name, lambda desk: desk.put_down(carried))
