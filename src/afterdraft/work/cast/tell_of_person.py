"""Say of somebody what reading cannot know for sure: their gender, that they tell the book, that she follows them."""

from typing import get_args

from afterdraft.desk.cast import Gender
from afterdraft.errors import NotPossible
from afterdraft.work.cast.found import Found, kept
from afterdraft.work.ports import Book, Desk


def tell_gender(book: Book, who: Found, gender: str) -> None:
    """ "f", "m", "n"; "" leaves it to reading. Raises `NotPossible`, `Missing`."""
    known: Gender | None = next((one for one in get_args(Gender) if one == gender), None)
    if known is None:
        raise NotPossible("Choose one of the pronouns.")
    chosen: Gender = known
    book.edit(f"Pronouns of {who.told}", lambda desk: desk.set_gender(kept(desk, "person", who), chosen))


def tell_narrator(book: Book, who: Found, *, narrator: bool) -> None:
    """One person at most tells a book as I. Raises `Missing`."""

    def change(desk: Desk) -> None:
        row = kept(desk, "person", who)
        desk.set_narrator(row if narrator else None)

    book.edit(f"{who.told} {'tells' if narrator else 'does not tell'} the book", change)


def follow_speech(book: Book, who: Found, *, followed: bool) -> None:
    """Whether she wants to see what they say. Raises `Missing`."""

    def change(desk: Desk) -> None:
        desk.set_followed(kept(desk, "person", who), followed=followed)

    book.edit(f"Speech of {who.told} {'shown' if followed else 'not shown'}", change)
