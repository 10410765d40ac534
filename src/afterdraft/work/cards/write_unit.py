"""Write on the card of a chapter, a part or the book: the first words make the card, in the same edit."""

from afterdraft.desk.unit_card import UnitCard, UnitCardKind
from afterdraft.work.cards.arranging import draft_id
from afterdraft.work.cards.unit_called import unit_called
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Desk, Saved
from afterdraft.work.write_field import FIELD_NAMES, write_field


def write_unit(
    book: Book,
    kind: UnitCardKind,
    unit: str | None,
    field: str,
    text: str,
    *,
    revision: int,
    client: str,
    sequence: int,
    done: bool,
) -> Saved:
    """Save one field of the card of `unit`, an id in the newest draft; None stands for the book.

    Arguments, result and errors are those of `write_field`; `Missing` also where the unit is gone.
    """
    draft = draft_id(book)
    called = unit_called(book, draft, kind, unit)
    own = card_of(book.unit_cards(draft), kind, unit)
    if own is None:
        made = book.edit("A card", lambda desk: desk.new_id("unit card"))
        name = f"{FIELD_NAMES.get(('unit', field), field)} of {called}"
        first = UnitCard(made, kind, unit)
        saved = _first(book, name, draft, first, field, plain(text), client=client, sequence=sequence, done=done)
        if saved is not None:
            return saved
        own = card_of(book.unit_cards(draft), kind, unit) or first
    return write_field(
        book, "unit", own.id, field, text, revision=revision, client=client, sequence=sequence, done=done
    )


def _first(
    book: Book, name: str, draft: str, card: UnitCard, field: str, words: str, *, client: str, sequence: int, done: bool
) -> Saved | None:
    """Make the card and write; None where another window was quicker. Without words there is no card."""

    def write(desk: Desk) -> Saved | None:
        if card_of(desk.unit_cards(draft), card.kind, card.unit) is not None:
            return None
        if not words:
            return Saved(0)
        desk.add_unit_card(draft, card)
        return Saved(desk.set_field("unit", card.id, field, words, client=client, sequence=sequence))

    merge = f"{card.id} {field} {client}"
    saved = book.edit(name, write, merge=merge)
    if done:
        book.end_merge(merge)
    return saved


def card_of(cards: tuple[UnitCard, ...], kind: UnitCardKind, unit: str | None) -> UnitCard | None:
    """The card of a unit; None where it has none yet."""
    return next((card for card in cards if (card.kind, card.unit) == (kind, unit)), None)
