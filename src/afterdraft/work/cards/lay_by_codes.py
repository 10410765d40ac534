"""Lay the cards of an arrangement as a typed row of codes says."""

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import relaid
from afterdraft.desk.codes import TypedCodes, typed_codes
from afterdraft.errors import NotPossible
from afterdraft.work.cards.arranging import arrange
from afterdraft.work.ports import Book, Desk

NAMED = 12  # codes that a sentence can hold


def lay_by_codes(book: Book, arrangement: str, text: str, *, stay: bool) -> Arrangement:
    """Each line of codes is a chapter, in order; a card set aside comes back when its code is there.

    `stay`: cards whose codes are missing stay in their chapters; else they are set aside.
    Raises `NotPossible`, and changes nothing, while a code is unknown or there twice, or there is none.
    """

    def act(desk: Desk, stands: Arrangement) -> Arrangement:
        typed = typed_codes(stands, text)
        if not typed.right:
            raise NotPossible(trouble(typed))
        return relaid(stands, typed.lines, stay=stay, new_id=desk.new_id)

    return arrange(book, arrangement, "Lay the cards by their codes", act)


def trouble(typed: TypedCodes) -> str:
    """What keeps the codes from being laid, in plain sentences; "" when nothing does."""
    said = []
    if typed.unknown:
        said.append(f"No card has the {_codes(typed.unknown)}.")
    if typed.twice:
        said.append(f"There more than once: the {_codes(typed.twice)}.")
    if not typed.lines:
        said.append("There is no code yet.")
    return " ".join(said)


def _codes(codes: tuple[str, ...]) -> str:
    more = f" and {len(codes) - NAMED:,} more" if len(codes) > NAMED else ""
    return f"code{'' if len(codes) == 1 else 's'} {', '.join(codes[:NAMED])}{more}"
