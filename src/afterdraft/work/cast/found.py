"""Somebody, or a place, that a page shows: the writer's own row, or one that only reading knows yet."""

from dataclasses import dataclass

from afterdraft.desk.cast import Known, KnownKind
from afterdraft.errors import Missing
from afterdraft.work.called import quoted
from afterdraft.work.cast.add_known import THINGS
from afterdraft.work.finding import alike, at_the_end, called, named
from afterdraft.work.plain import line
from afterdraft.work.ports import Desk


@dataclass(frozen=True, slots=True)
class Found:
    """With names as they are written in the book; `row` is "" as long as only reading knows them."""

    name: str
    aliases: tuple[str, ...] = ()
    row: str = ""

    @property
    def told(self) -> str:
        """For the undo button."""
        return quoted(self.name)


def of_known(known: Known) -> Found:
    return Found(known.name, known.aliases, known.id)


def kept(desk: Desk, kind: KnownKind, found: Found) -> str:
    """Id of the row; made of what reading found at the first correction, met where she has the name already.

    Raises `Missing` for a row that is gone, `NotPossible` for no name.
    """
    listed = desk.known(kind)
    if found.row:
        if not any(one.id == found.row for one in listed):
            raise Missing("This person" if kind == "person" else "This place")
        return found.row
    known = called(listed, found.name)
    if known is not None:
        return known.id
    name = named(found.name, THINGS[kind])
    made = desk.add_known(kind, name=name, place=at_the_end(listed))
    taken = [name for one in listed for name in one.names]
    free = [
        other for other in map(line, found.aliases) if other and not any(alike(other, one) for one in [name, *taken])
    ]
    desk.set_names(kind, made, name, free)
    return made
