"""Write on the Next side of a card while there is no arrangement yet: the first words make one, in the same edit."""

from dataclasses import replace

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import by_code, change
from afterdraft.work.cards.arranging import begun, card_called, chosen, draft_id, seen
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Desk, Saved
from afterdraft.work.write_field import FIELD_NAMES, write_field


def write_next(
    book: Book, code: str, field: str, text: str, *, revision: int, client: str, sequence: int, done: bool
) -> Saved:
    """Save one field of the Next side of the card with this code in the present arrangement; arguments, result and
    errors as `write_field`."""
    shown = seen(book, "")
    card = by_code(shown, code)
    own = card.id
    if not shown.id:
        own = book.edit("A card", lambda desk: desk.new_id("laid"))
        name = f"{FIELD_NAMES.get(('next', field), field)} of {card_called(book, card)}"
        saved = _first(book, name, code, field, plain(text), own, client=client, sequence=sequence)
        if saved is not None:
            if done:
                book.end_merge(f"{own} {field} {client}")
            return saved
        own = by_code(seen(book, ""), code).id
    return write_field(book, "next", own, field, text, revision=revision, client=client, sequence=sequence, done=done)


def _first(
    book: Book, name: str, code: str, field: str, words: str, own: str, *, client: str, sequence: int
) -> Saved | None:
    """Make the arrangement, with `own` as the card's id, and write; None where another window was quicker."""
    draft = draft_id(book)

    def write(desk: Desk) -> Saved | None:
        known = desk.arrangements(draft)
        if chosen(known, "") is not None:
            return None
        if not words:
            return Saved(0)
        desk.set_arrangement(_with_id(begun(desk, draft, known), code, own))
        return Saved(desk.set_field("next", own, field, words, client=client, sequence=sequence))

    return book.edit(name, write, merge=f"{own} {field} {client}")


def _with_id(arrangement: Arrangement, code: str, own: str) -> Arrangement:
    return change(arrangement, [by_code(arrangement, code).id], lambda card: replace(card, id=own))
