"""Cards of chapters, parts and the book in a later round: what was written of them in the draft before."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass

from afterdraft.desk.unit_card import UNIT_FIELDS, UnitCard, UnitCardKind
from afterdraft.manuscript.naming import chapter_name
from afterdraft.web.anew import Before
from afterdraft.web.view import BookView
from afterdraft.work.cards.unit_called import THE_BOOK
from afterdraft.work.drafts.compared import Compared

Place = tuple[UnitCardKind, str | None]


@dataclass(frozen=True, slots=True)
class OldUnit:
    """What was written of a chapter, a part or the book."""

    draft: int  # number
    name: str  # what it was called then
    card: UnitCard


def old_cards(seen: BookView, then: Before | None) -> Mapping[Place, OldUnit]:
    """By kind and id in the newest draft; only those with words on them."""
    if then is None:
        return {}
    division = then.compared.old.division
    names: dict[Place, str] = {("book", None): THE_BOOK}
    names |= {("chapter", one.id): chapter_name(one) for one in division.chapters}
    names |= {("part", one.id): one.title or "Unnamed part" for one in division.parts}
    went = _went(then.compared)
    found: dict[Place, OldUnit] = {}
    for card in seen.book.unit_cards(then.draft.id):
        place: Place = (card.kind, card.unit)
        if place in went and any(getattr(card, field).strip() for field in UNIT_FIELDS):
            found[went[place]] = OldUnit(then.draft.number, names[place], card)
    return found


def _went(compared: Compared) -> dict[Place, Place]:
    """Where chapters, parts and the book of the old draft are in the new one; a part where most of its chapters are."""
    went: dict[Place, Place] = {("book", None): ("book", None)}
    parts = {one.id: one.part for one in compared.new.division.chapters}
    counted: Counter[tuple[str, str]] = Counter()
    for chapter in compared.old.division.chapters:
        new = compared.chapters.get(chapter.id)
        if new is None:
            continue
        went["chapter", chapter.id] = ("chapter", new)
        part = parts.get(new)
        if chapter.part and part:
            counted[chapter.part, part] += 1
    taken: set[str] = set()
    for (old, part), _ in counted.most_common():
        if ("part", old) not in went and part not in taken:
            went["part", old] = ("part", part)
            taken.add(part)
    return went
