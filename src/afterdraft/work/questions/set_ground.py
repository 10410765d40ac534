"""Say which real place and year the book is set in."""

from afterdraft.desk.ground import Ground
from afterdraft.errors import NotPossible
from afterdraft.work.plain import line
from afterdraft.work.ports import Book

YEARS = range(1753, 2201)  # whole years of the Gregorian calendar in Britain, and as far as anyone writes


def set_ground(book: Book, place: str, year: str) -> None:
    """`place`: a town that is known by name, or degrees north and east; "" for none. `year` may be "". Raises
    `NotPossible`."""
    from afterdraft.questions.sky import located  # late: with it comes the astronomy library

    words, said = line(place), line(year)
    if not words:
        book.edit("The book has no real place", lambda desk: desk.set_ground(None))
        return
    known = located(words)
    if known is None:
        raise NotPossible(
            f"No place is known as “{words}”. Choose one of the list, or give degrees north and east, as 52.6, 1.3."
        )
    if said and not (said.isdecimal() and int(said) in YEARS):
        raise NotPossible(f"A year from {YEARS[0]} to {YEARS[-1]}, in four digits, or none.")
    ground = Ground(*known, year=int(said) if said else None)
    when = f", {ground.year}" if ground.year else ""
    book.edit(f"The book is set in {ground.place}{when}", lambda desk: desk.set_ground(ground))
