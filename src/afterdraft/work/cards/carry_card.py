"""A card is carried from the draft before, words and all, instead of being written anew."""

from collections.abc import Mapping, Sequence

from afterdraft.desk.card import CARD_FIELDS, Card
from afterdraft.errors import NotPossible
from afterdraft.work.called import scene_called
from afterdraft.work.ports import Book, Desk

CLIENT = ""  # these saves belong to no window


def carry_card(book: Book, scene: str, sources: Sequence[str]) -> None:
    """The card of `scene` takes the words of the cards of `sources` (scenes of the draft before, in telling order), in
    every field that is empty yet. Raises `Missing`, `NotPossible` where there is nothing to carry."""
    name = f"Carry the card of {scene_called(book, scene)}"
    if not book.edit(name, lambda desk: _carried(desk, scene, sources)):
        raise NotPossible("The cards before have no words that are not on this one.")


def carry_cards(book: Book, scenes: Mapping[str, Sequence[str]]) -> int:
    """The same for many scenes at once, where nothing is written yet; returns how many were carried."""

    def change(desk: Desk) -> int:
        blank = [scene for scene in scenes if not desk.card_of(scene).written]
        return sum(_carried(desk, scene, scenes[scene]) for scene in blank)

    return book.edit(f"Carry {len(scenes)} cards", change)


def _carried(desk: Desk, scene: str, sources: Sequence[str]) -> bool:
    """Whether any word was carried."""
    card, before = desk.card_of(scene), [desk.card_of(one) for one in sources]
    words = {field: _joined(before, field) for field in CARD_FIELDS if not getattr(card, field).strip()}
    filled = {field: text for field, text in words.items() if text}
    for field, text in filled.items():
        desk.set_field("card", card.id, field, text, client=CLIENT, sequence=0)
    if filled:
        desk.kept_card(card.id, sources)
    return bool(filled)


def _joined(cards: Sequence[Card], field: str) -> str:
    return "\n".join(text for card in cards if (text := getattr(card, field)).strip())
