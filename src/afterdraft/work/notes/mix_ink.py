"""Mix inks: name them, colour them, letter them, put them in order, do without one."""

from collections.abc import Sequence
from dataclasses import replace

from afterdraft.desk.ink import COLOURS, Colour, Ink
from afterdraft.desk.lettering import free_letter, is_letter
from afterdraft.desk.order import beside, between
from afterdraft.errors import Missing, NotPossible
from afterdraft.work.called import quoted
from afterdraft.work.finding import alike, named
from afterdraft.work.ports import Book, Desk

STARTING = ("Motive", "Timeline", "Voice", "Pace")  # common practice: what first rounds of revision look at
_STRONG: Sequence[Colour] = ("vermillion", "blue", "bluish green", "reddish purple", "orange", "sky blue")


def mix_ink(book: Book, name: str, *, colour: Colour | None = None) -> str:
    """A new ink after all others; without a colour it takes one that no ink has yet. Returns its id.

    Raises `NotPossible` for an empty name, or one that another ink has.
    """
    wanted = named(name, "An ink")
    return book.edit(f"Ink {quoted(wanted)}", lambda desk: _add(desk, wanted, colour))


def starting_inks(book: Book) -> None:
    """Four inks to begin with, those left out that are there already; one edit."""

    def change(desk: Desk) -> None:
        for name in STARTING:
            if not _by_name(desk, name):
                _add(desk, name, None)

    book.edit("Four inks to begin with", change)


def recolour_ink(book: Book, ink: str, colour: Colour) -> None:
    """Raises `Missing`."""
    _change(book, ink, f"{colour.capitalize()} for the ink {{}}", colour=colour)


def letter_ink(book: Book, ink: str, letter: str) -> None:
    """One or two capitals, its own among inks. Raises `NotPossible`, `Missing`."""
    wanted = letter.strip().upper()
    if not is_letter(wanted):
        raise NotPossible("A letter is one or two of A to Z.")
    holder = next((one for one in book.inks() if one.letter == wanted and one.id != ink), None)
    if holder:
        raise NotPossible(f"The letter {wanted} is that of {quoted(holder.name)}.")
    _change(book, ink, f"Letter {wanted} for the ink {{}}", letter=wanted)


def move_ink(book: Book, ink: str, *, by: int) -> None:
    """`by` places: less than 0 is up. At either end it stays. Raises `Missing`."""
    listed = book.inks()
    here = next((n for n, one in enumerate(listed) if one.id == ink), 0)
    others = [one.place for one in listed if one.id != ink]
    to = min(max(here + by, 0), len(others))
    if to != here:
        _change(book, ink, f"Move the ink {{}} {'up' if by < 0 else 'down'}", place=between(*beside(others, to)))


def remove_ink(book: Book, ink: str) -> None:
    """Its notes stay, in plain pencil. Raises `Missing`."""
    book.edit(f"Do without the ink {quoted(_found(book.inks(), ink).name)}", lambda desk: desk.remove_ink(ink))


def _add(desk: Desk, name: str, colour: Colour | None) -> str:
    known = desk.inks()
    if _by_name(desk, name):
        raise NotPossible(f"There is an ink called {quoted(name)} already.")
    letter = free_letter(name, {one.letter for one in known})
    place = between(known[-1].place if known else "", "")
    return desk.add_ink(name=name, colour=colour or _free_colour(known), letter=letter, place=place)


def _free_colour(known: Sequence[Ink]) -> Colour:
    """The colour that the fewest inks have, strong ones first."""
    used = [one.colour for one in known]
    return min((*_STRONG, *COLOURS), key=used.count)


def _by_name(desk: Desk, name: str) -> Ink | None:
    return next((one for one in desk.inks() if alike(one.name, name)), None)


def _change(
    book: Book,
    ink: str,
    name: str,
    *,
    colour: Colour | None = None,
    letter: str | None = None,
    place: str | None = None,
) -> None:
    def change(desk: Desk) -> None:
        was = _found(desk.inks(), ink)
        now = replace(was, colour=colour or was.colour, letter=letter or was.letter, place=place or was.place)
        desk.set_ink(ink, colour=now.colour, letter=now.letter, place=now.place)

    book.edit(name.format(quoted(_found(book.inks(), ink).name)), change)


def _found(known: Sequence[Ink], ink: str) -> Ink:
    for one in known:
        if one.id == ink:
            return one
    raise Missing("This ink")
