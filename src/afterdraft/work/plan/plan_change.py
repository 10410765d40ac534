"""Plan a change: straight, or from a note."""

from afterdraft.desk.change import Change, When
from afterdraft.desk.order import between
from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Desk


def plan_change(book: Book, wrong: str, *, decide: str = "", when: When = "must", scene: str | None = None) -> str:
    """A change after all others, with a scene as its first place if one is given. Returns its id.

    Raises `NotPossible` where neither what is wrong nor what she decides is said; `Missing`.
    """
    said = plain(wrong).strip()
    decided = plain(decide).strip()
    if not said and not decided:
        raise NotPossible("A change needs some words: what is wrong, or what you decide.")

    def make(desk: Desk) -> str:
        made = desk.add_change(wrong=said, decide=decided, when=when, place=at_the_end(desk.changes()))
        if scene is not None:
            desk.add_change_place(made, scene=scene)
        return made

    return book.edit(f"Plan {quoted(said or decided)}", make)


def plan_from_note(book: Book, note: str, *, when: When = "must") -> str:
    """The note's words are what is wrong, its scene is the first place. Returns the change's id: that of the one made
    from this note already, if there is one. Raises `Missing`."""
    about = book.note(note)

    def make(desk: Desk) -> str:
        known = desk.changes()
        already = next((one for one in known if one.note == note), None)
        if already is not None:
            return already.id
        made = desk.add_change(wrong=about.text, decide="", when=when, place=at_the_end(known), note=note)
        if about.scene is not None:
            desk.add_change_place(made, scene=about.scene)
        return made

    return book.edit(f"Plan {quoted(about.text)}", make)


def at_the_end(known: tuple[Change, ...]) -> str:
    """Text key of the place after all others."""
    return between(max((one.place for one in known), default=""), "")
