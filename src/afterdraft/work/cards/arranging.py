"""What all acts on an arrangement have in common: which one is meant, how it comes to be, what cards are called."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from afterdraft.desk.arrangement import Arrangement, Laid, Row
from afterdraft.desk.arranging import by_code, copied, drafts_order, free_name, in_order, row_called
from afterdraft.desk.order import between
from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.naming import chapter_name
from afterdraft.work.called import quoted, scene_called
from afterdraft.work.ports import Book, Desk

FIRST_NAME = "Next draft"  # of the arrangement that the first act makes
DRAFT = "draft"  # stands for the draft's own order where an arrangement is named

Act = Callable[[Desk, Arrangement], Arrangement]


@dataclass(frozen=True, slots=True)
class Spot:
    """Where cards are to lie: in a row before or after a card of it (by code), or first; else at its end."""

    row: str  # id of the row, or of the draft's chapter it came from
    before: str = ""
    after: str = ""
    first: bool = False


def arrange(book: Book, arrangement: str, name: str, act: Act) -> Arrangement:
    """Change an arrangement by `act` as one edit called `name`; returns what it is now.

    With "" the present one is meant; where there is none, the draft's own order is copied into a first one as part of
    the edit, unless the act changes nothing. Raises `Missing`, `NotPossible`.
    """
    draft = draft_id(book)

    def change(desk: Desk) -> Arrangement:
        known = desk.arrangements(draft)
        meant = chosen(known, arrangement)
        stands = begun(desk, draft, known) if meant is None else meant
        changed = act(desk, stands)
        if changed != stands:
            desk.set_arrangement(changed)
        return changed

    return book.edit(name, change)


def begun(desk: Desk, draft: str, known: Sequence[Arrangement]) -> Arrangement:
    """The draft's own order as an arrangement that can be changed; not written yet."""
    return copied(
        drafts_order(draft, desk.division(draft)),
        id=desk.new_id("arrangement"),
        name=free_name([one.name for one in known], FIRST_NAME),
        place=last_place(known),
        new_id=desk.new_id,
    )


def chosen(known: Sequence[Arrangement], arrangement: str) -> Arrangement | None:
    """The arrangement of this id, fit to be changed; for "" the newest not given up, None where there is none."""
    if not arrangement:
        return next((one for one in reversed(known) if not one.given_up), None)
    meant = next((one for one in known if one.id == arrangement), None)
    if meant is None:
        raise Missing("This arrangement")
    if meant.given_up:
        raise NotPossible("This arrangement was given up. Take it up again first.")
    return meant


def last_place(known: Sequence[Arrangement]) -> str:
    return between(known[-1].place if known else "", "")


def seen(book: Book, arrangement: str) -> Arrangement:
    """What a page shows: the arrangement of this id; for "" the present one; else the draft's own order.

    Raises `Missing`.
    """
    draft = draft_id(book)
    known = book.arrangements(draft)
    if arrangement != DRAFT:
        meant = next((one for one in known if one.id == arrangement), None) if arrangement else chosen(known, "")
        if meant is not None:
            return meant
        if arrangement:
            raise Missing("This arrangement")
    return drafts_order(draft, book.division(draft))


def draft_id(book: Book) -> str:
    """Id of the newest draft. Raises `Missing`."""
    draft = book.facts().draft
    if draft is None:
        raise Missing("The draft")
    return draft.id


def ids(arrangement: Arrangement, codes: Sequence[str]) -> tuple[str, ...]:
    """Of the cards with these codes, as they lie. Raises `Missing` where one is not there, `NotPossible` for none."""
    if not codes:
        raise NotPossible("No card was chosen.")
    return in_order(arrangement, [by_code(arrangement, code).id for code in codes])


def place_of(arrangement: Arrangement, spot: Spot) -> tuple[str, str | None]:
    """Row and the card to lay before (ids). Raises `Missing` where the card beside it is in that row no longer."""
    row = row_called(arrangement, spot.row)
    if spot.first and row.cards:
        return row.id, row.cards[0].id
    if not spot.before and not spot.after:
        return row.id, None
    beside = by_code(arrangement, spot.before or spot.after)
    if beside not in row.cards:
        raise Missing(f"The card {beside.code} in this chapter")
    if spot.before:
        return row.id, beside.id
    follows = row.cards[row.cards.index(beside) + 1 :]
    return row.id, follows[0].id if follows else None


def card_called(book: Book, card: Laid) -> str:
    """A card's title, its scene's title or first words, else what shall happen, else its code; in quotation marks."""
    if card.title:
        return quoted(card.title)
    if card.scenes:
        return scene_called(book, card.scenes[0])
    return quoted(card.next.what) if card.next.what.strip() else quoted(card.code)


def cards_called(book: Book, arrangement: Arrangement, codes: Sequence[str]) -> str:
    """ "“The ferry”", "3 cards". Raises as `ids`."""
    meant = ids(arrangement, codes)
    if len(meant) > 1:
        return f"{len(meant)} cards"
    return card_called(book, by_code(arrangement, codes[0]))


def row_name(book: Book, row: Row) -> str:
    """A row's own title; else what the draft's chapter is called; else "New chapter"."""
    if row.title:
        return row.title
    chapters = book.division(draft_id(book)).chapters
    return next((chapter_name(one) for one in chapters if one.id == row.chapter), "New chapter")
