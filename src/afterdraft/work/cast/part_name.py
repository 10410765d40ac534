"""Part one of somebody's names, or a place's, from the others: it is another's."""

from afterdraft.desk.cast import KnownKind
from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted
from afterdraft.work.cast.add_known import THINGS
from afterdraft.work.cast.found import Found, kept
from afterdraft.work.finding import alike, at_the_end, named
from afterdraft.work.ports import Book, Desk


def part_name(book: Book, kind: KnownKind, who: Found, name: str) -> str:
    """The name is that of a new row, whose id is returned. Raises `NotPossible` where it is not one of several."""
    others = [one for one in (who.name, *who.aliases) if not alike(one, name)]
    if not others or len(others) == len(who.aliases) + 1:
        raise NotPossible(f"{quoted(name)} is not one of several names of {who.told}.")

    def change(desk: Desk) -> str:
        row = kept(desk, kind, who)
        desk.set_names(kind, row, others[0], others[1:])
        return desk.add_known(kind, name=named(name, THINGS[kind]), place=at_the_end(desk.known(kind)))

    what = "a person" if kind == "person" else "a place"
    return book.edit(f"{quoted(name)} {what} apart from {quoted(others[0])}", change)
