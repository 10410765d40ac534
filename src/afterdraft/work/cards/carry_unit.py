"""The card of a chapter, a part or the book is carried from the draft before, instead of being written anew."""

from afterdraft.desk.unit_card import UNIT_FIELDS, UnitCard, UnitCardKind
from afterdraft.errors import NotPossible
from afterdraft.work.cards.arranging import draft_id
from afterdraft.work.cards.unit_called import unit_called
from afterdraft.work.cards.write_unit import card_of
from afterdraft.work.ports import Book, Desk

CLIENT = ""  # these saves belong to no window


def carry_unit(book: Book, kind: UnitCardKind, unit: str | None, source: UnitCard) -> None:
    """The card of `unit`, an id in the newest draft (None: the book), takes the words of `source` in every field that
    is empty yet. Raises `Missing`, `NotPossible` where there is nothing to carry."""
    draft = draft_id(book)
    name = f"Carry the card of {unit_called(book, draft, kind, unit)}"

    def change(desk: Desk) -> bool:
        own = card_of(desk.unit_cards(draft), kind, unit)
        words = {field: getattr(source, field) for field in UNIT_FIELDS if getattr(source, field).strip()}
        wanted = {field: text for field, text in words.items() if own is None or not getattr(own, field).strip()}
        if not wanted:
            return False
        if own is None:
            own = UnitCard(desk.new_id("unit card"), kind, unit)
            desk.add_unit_card(draft, own)
        for field, text in wanted.items():
            desk.set_field("unit", own.id, field, text, client=CLIENT, sequence=0)
        return True

    if not book.edit(name, change):
        raise NotPossible("The card before has no words that are not on this one.")
