"""Move a thread, setup, reveal, strand, person or place up or down in its list."""

from collections.abc import Sequence

from afterdraft.desk.cast import Known
from afterdraft.desk.lines import Line, Strand
from afterdraft.desk.order import beside, between
from afterdraft.errors import Missing
from afterdraft.work.called import quoted
from afterdraft.work.ports import Book, Desk
from afterdraft.work.ports.cast import Listed


def reorder(book: Book, kind: Listed, id: str, *, by: int) -> None:
    """`by` places: less than 0 is up. At either end it stays there. Raises `Missing`."""

    def change(desk: Desk) -> None:
        listed = _listed(desk, kind, id)
        here = next((n for n, one in enumerate(listed) if one.id == id), None)
        if here is None:
            raise Missing("This")
        others = [one.place for one in listed if one.id != id]
        to = min(max(here + by, 0), len(others))
        if to != here:
            desk.set_place(kind, id, between(*beside(others, to)))

    name = quoted(book.fields(kind, id).texts["name"])
    book.edit(f"Move {name} {'up' if by < 0 else 'down'}", change)


def _listed(desk: Desk, kind: Listed, id: str) -> Sequence[Line | Strand | Known]:
    """The list that it stands in: lines are listed by kind."""
    if kind == "strand":
        return desk.all_strands()
    if kind == "line":
        lines = desk.all_lines()
        own = next((one.kind for one in lines if one.id == id), None)
        return [one for one in lines if one.kind == own]
    return desk.known(kind)
