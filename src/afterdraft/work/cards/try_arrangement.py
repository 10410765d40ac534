"""Try another arrangement; name one, give one up, take it up again."""

from dataclasses import replace

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import copied, drafts_order, free_name
from afterdraft.errors import Missing
from afterdraft.work.called import quoted
from afterdraft.work.cards.arranging import DRAFT, FIRST_NAME, draft_id, last_place
from afterdraft.work.plain import line, plain
from afterdraft.work.ports import Book, Desk
from afterdraft.work.write_field import write_once


def try_arrangement(book: Book, of: str, name: str = "") -> Arrangement:
    """A copy of the arrangement `of` (`DRAFT` or "": of the draft's own order) under a name of its own.

    Raises `Missing`.
    """
    draft = draft_id(book)

    def change(desk: Desk) -> Arrangement:
        known = desk.arrangements(draft)
        own = not of or of == DRAFT
        source = drafts_order(draft, desk.division(draft)) if own else _named(known, of)
        made = copied(
            source,
            id=desk.new_id("arrangement"),
            name=free_name([one.name for one in known], line(name) or source.name or FIRST_NAME),
            place=last_place(known),
            new_id=desk.new_id,
        )
        desk.set_arrangement(made)
        return made

    called = line(name)
    return book.edit(f"Try the arrangement {quoted(called)}" if called else "Try another arrangement", change)


def rename_arrangement(book: Book, arrangement: str, name: str) -> None:
    """Raises `Missing`, `NotPossible` for an empty name."""
    write_once(book, "arrangement", arrangement, "name", line(name))


def give_up(book: Book, arrangement: str, why: str = "") -> None:
    """It is kept, with the reason, but not shown among those being tried. Raises `Missing`."""
    _set(book, arrangement, "Give {} up", given_up=True, why=plain(why).strip())


def take_up(book: Book, arrangement: str) -> None:
    """Raises `Missing`."""
    _set(book, arrangement, "Take {} up again", given_up=False, why="")


def _set(book: Book, arrangement: str, name: str, *, given_up: bool, why: str) -> None:
    draft = draft_id(book)

    def change(desk: Desk) -> None:
        stands = _named(desk.arrangements(draft), arrangement)
        desk.set_arrangement(replace(stands, given_up=given_up, why=why or stands.why))

    book.edit(name.format(quoted(_named(book.arrangements(draft), arrangement).name)), change)


def _named(known: tuple[Arrangement, ...], arrangement: str) -> Arrangement:
    for one in known:
        if one.id == arrangement:
            return one
    raise Missing("This arrangement")
