"""Keep somebody, or a place, that reading found: in her list from now on, under a name of her choice."""

from afterdraft.desk.cast import KnownKind
from afterdraft.work.called import quoted
from afterdraft.work.cast.add_known import THINGS
from afterdraft.work.cast.found import Found, kept
from afterdraft.work.finding import alike, named
from afterdraft.work.ports import Book, Desk


def keep_found(book: Book, kind: KnownKind, found: Found, *, name: str = "") -> str:
    """Returns the row's id. With a `name` of hers, the one that stands in the text becomes another name. One edit.
    Raises `NotPossible` for no name."""
    wanted = named(name or found.name, THINGS[kind])

    def change(desk: Desk) -> str:
        row = kept(desk, kind, found)
        mine = next(one for one in desk.known(kind) if one.id == row)
        others = [one for one in mine.in_use if not alike(one, wanted)]
        desk.set_names(kind, row, wanted, others)
        return row

    told = f"Call {found.told} {quoted(name)}" if name and not alike(name, found.name) else f"Keep {found.told}"
    return book.edit(told, change)
