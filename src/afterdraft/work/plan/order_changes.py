"""When a planned change is due, and where it stands in the list: must, if time, later."""

from afterdraft.desk.change import Change, When
from afterdraft.desk.order import beside, between
from afterdraft.errors import Missing
from afterdraft.work.plan.change_places import change_called
from afterdraft.work.ports import Book, Desk


def set_when(book: Book, change: str, when: When) -> None:
    """After the others that are due then. Raises `Missing`."""
    name = f"{change_called(book.change(change))}: {when}"
    book.edit(name, lambda desk: _put(desk, change, when, None))


def step_change(book: Book, change: str, *, by: int) -> None:
    """`by` places in its group: less than 0 is up. At either end it stays there. Raises `Missing`."""

    def step(desk: Desk) -> None:
        moved, others = _apart(desk, change)
        group = [one for one in desk.changes() if one.when == moved.when]
        here = group.index(moved)
        to = min(max(here + by, 0), len(group) - 1)
        if to != here:
            rest = [one for one in others if one.when == moved.when]
            _put(desk, change, moved.when, rest[to].id if to < len(rest) else None)

    book.edit(f"Move {change_called(book.change(change))} {'up' if by < 0 else 'down'}", step)


def move_change(book: Book, change: str, *, when: When, before: str = "") -> None:
    """To a group, before another change of it, or at its end. Raises `Missing`."""
    name = f"Move {change_called(book.change(change))} to {when}"
    book.edit(name, lambda desk: _put(desk, change, when, before or None))


def remove_change(book: Book, change: str) -> None:
    """With its places. Raises `Missing`."""
    name = f"Remove {change_called(book.change(change))} from the plan"
    book.edit(name, lambda desk: desk.remove_change(change))


def _put(desk: Desk, change: str, when: When, before: str | None) -> None:
    """Where it stands so already, nothing is changed."""
    moved, others = _apart(desk, change)
    group = [one for one in others if one.when == when]
    index = next((n for n, one in enumerate(group) if one.id == before), None) if before else len(group)
    if index is None:
        raise Missing("The change to put it before")
    low, high = beside([one.place for one in group], index)
    if moved.when == when and low < moved.place and (not high or moved.place < high):
        return
    desk.put_change(change, when=when, place=between(low, high))


def _apart(desk: Desk, change: str) -> tuple[Change, list[Change]]:
    known = desk.changes()
    moved = next((one for one in known if one.id == change), None)
    if moved is None:
        raise Missing("This change")
    return moved, [one for one in known if one.id != change]
