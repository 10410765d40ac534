"""Planned changes as screens show them: in their groups, with the names of their places."""

from collections.abc import Mapping
from dataclasses import dataclass

from afterdraft.desk.arrangement import Laid
from afterdraft.desk.arranging import everything
from afterdraft.desk.change import WHENS, Change, ChangePlace, When
from afterdraft.desk.intent import Intent
from afterdraft.manuscript.naming import shortened
from afterdraft.web.view import BookView
from afterdraft.work.cards.arranging import seen as arrangement_seen

WORDS: Mapping[When, tuple[str, str]] = {
    "must": ("Must", "The book is not done without it."),
    "if time": ("If there is time", "It would be better for it."),
    "later": ("Later", "Not in this round."),
}


@dataclass(frozen=True, slots=True)
class PlaceRow:
    """A place as it is listed."""

    place: ChangePlace
    code: str  # of its scene or card; "" where only words say it
    name: str
    path: str  # where it is, within the book; "" where it is nowhere


@dataclass(frozen=True, slots=True)
class ChangeRow:
    change: Change
    places: tuple[PlaceRow, ...]

    @property
    def called(self) -> str:
        """On one line, for labels."""
        return " ".join((self.change.wrong.strip() or self.change.decide).split())

    @property
    def ticked(self) -> int:
        return sum(1 for place in self.change.places if place.done)


@dataclass(frozen=True, slots=True)
class Group:
    when: When
    name: str
    hint: str
    open: tuple[ChangeRow, ...]
    done: tuple[ChangeRow, ...]

    @property
    def rows(self) -> tuple[ChangeRow, ...]:
        return self.open + self.done

    def place(self, row: ChangeRow) -> int:
        """Of a change in the group, done ones among the others, from 1."""
        before = (one for one in self.rows if one.change.place < row.change.place)
        return 1 + sum(1 for _ in before)


@dataclass(frozen=True, slots=True)
class IntentRow:
    """A card that the next draft is to do something with."""

    intent: Intent
    code: str
    name: str


def intents(seen: BookView) -> tuple[IntentRow, ...]:
    """Of the present arrangement, in its order; what is kept as it is, is left out."""
    scenes = {one.scene.id: one for one in seen.outline.scenes}

    def name(card: Laid) -> str:
        scene = scenes.get(card.scenes[0]) if card.scenes else None
        return card.title or (seen.name(scene) if scene else shortened(card.next.what) or "A new card")

    return tuple(
        IntentRow(card.intent, card.code, name(card))
        for card in everything(arrangement_seen(seen.book, ""))
        if card.intent and card.intent != "keep"
    )


def groups(seen: BookView) -> tuple[Group, ...]:
    """All three, also where they are empty."""
    rows = change_rows(seen, seen.book.changes())
    return tuple(
        Group(
            when,
            *WORDS[when],
            open=tuple(row for row in rows if row.change.when == when and not row.change.done),
            done=tuple(row for row in rows if row.change.when == when and row.change.done),
        )
        for when in WHENS
    )


def change_rows(seen: BookView, changes: tuple[Change, ...]) -> tuple[ChangeRow, ...]:
    scenes = {one.scene.id: one for one in seen.outline.scenes}
    laid = {}
    if any(place.laid for change in changes for place in change.places):
        laid = {card.id: card for card in everything(arrangement_seen(seen.book, ""))}

    def row(place: ChangePlace) -> PlaceRow:
        scene, card = scenes.get(place.scene or ""), laid.get(place.laid or "")
        if scene is not None:
            return PlaceRow(place, scene.scene.code, seen.name(scene), f"scenes/{scene.scene.code}")
        if card is not None:
            return PlaceRow(place, card.code, card.title or "A planned card", f"cards/{card.code}")
        if place.scene or place.laid:
            return PlaceRow(place, "", "In an earlier draft or arrangement", "")
        return PlaceRow(place, "", "", "")

    return tuple(ChangeRow(change, tuple(map(row, change.places))) for change in changes)
