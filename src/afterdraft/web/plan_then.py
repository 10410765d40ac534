"""The plan of a round beside the draft that was written to it: what was meant, and whether the text changed there."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from afterdraft.comparison.carrying import Carrier
from afterdraft.comparison.passages import followed, text_changed, unplanned
from afterdraft.desk.arrangement import Laid, Next
from afterdraft.desk.arranging import everything
from afterdraft.desk.change import Change, ChangePlace
from afterdraft.desk.guarded import Guarded
from afterdraft.desk.intent import Intent
from afterdraft.manuscript.naming import shortened
from afterdraft.web.beside import BesideRow, beside
from afterdraft.web.fates import FateRow, fate_row
from afterdraft.web.two_drafts import Named, TwoDrafts
from afterdraft.work.cards.arranging import chosen
from afterdraft.work.drafts.rounds import changes_then
from afterdraft.work.ports import Book

Passed = Literal["there", "changed", "gone", "not reached"]
CHANGED, AS_IT_WAS = "The text here changed.", "The text here is as it was."
NOT_REACHED, CUT = "Not reached yet.", "It was cut."


@dataclass(frozen=True, slots=True)
class Measured:
    """A scene of the old draft, and whether its text is as it was."""

    scene: Named
    says: str
    as_it_was: bool
    fate: FateRow


@dataclass(frozen=True, slots=True)
class PlaceThen:
    place: ChangePlace
    name: str  # what to call it where it is no scene: a planned card, her words; "" otherwise
    measured: Measured | None  # where it is a scene
    rows: tuple[BesideRow, ...] = ()  # both texts, where they are wished for


@dataclass(frozen=True, slots=True)
class ChangeThen:
    change: Change
    places: tuple[PlaceThen, ...]

    @property
    def called(self) -> str:
        return " ".join((self.change.wrong.strip() or self.change.decide).split())


@dataclass(frozen=True, slots=True)
class IntentThen:
    """A card of the old draft's arrangement that something was meant for."""

    id: str
    intent: Intent | None
    name: str
    next: Next
    measured: tuple[Measured, ...]  # of each of its scenes
    rows: tuple[BesideRow, ...] = ()


@dataclass(frozen=True, slots=True)
class GuardedThen:
    guarded: Guarded
    state: Passed
    now: str  # its words in the new draft, where they changed
    scene: Named | None  # of the old draft
    path: str  # where it is: in the new draft, or, where it is gone, in the old one


def changes_of(two: TwoDrafts, book: Book, opened: str) -> tuple[ChangeThen, ...]:
    """Those that were in the plan when the new draft came in, with their places in the old one."""
    known = changes_then(book, two.new.id)
    laid = {card.id: card for card in _laid(book, two)}
    copies = book.taken_from()
    found = [one for one in book.changes(draft=two.old.id) if (one.places if known is None else one.id in known)]
    return tuple(
        ChangeThen(change, tuple(_place(two, place, laid, opened) for place in change.places if place.id not in copies))
        for change in found
    )


def intents_of(two: TwoDrafts, book: Book, opened: str) -> tuple[IntentThen, ...]:
    """Cards with an intent, or with words on their Next side, in the order of the old draft's arrangement."""
    return tuple(_intent(two, card, opened) for card in _laid(book, two) if card.intent or card.next != Next())


def guarded_of(two: TwoDrafts, book: Book) -> tuple[GuardedThen, ...]:
    """Passages that were guarded in the old draft: those that are gone first, then those that changed."""
    carrier = Carrier(two.compared.found)
    found = [_guarded(two, carrier, one) for one in book.guarded(two.old.id)]
    order: tuple[Passed, ...] = ("gone", "changed", "not reached", "there")
    return tuple(sorted(found, key=lambda one: order.index(one.state)))


def unplanned_of(two: TwoDrafts, changes: Iterable[ChangeThen], intents: Iterable[IntentThen]) -> tuple[FateRow, ...]:
    """What became of scenes that nothing was planned for; and new ones, in the new draft's order."""
    planned = {place.measured.scene.index for one in changes for place in one.places if place.measured}
    planned |= {one.scene.index for card in intents if card.intent != "keep" for one in card.measured}
    return tuple(fate_row(two, fate) for fate in unplanned(two.compared.found, planned))


def _laid(book: Book, two: TwoDrafts) -> Sequence[Laid]:
    shown = chosen(book.arrangements(two.old.id), "")
    return everything(shown) if shown else ()


def _place(two: TwoDrafts, place: ChangePlace, laid: Mapping[str, Laid], opened: str) -> PlaceThen:
    index = two.compared.old.scene_index.get(place.scene or "")
    if index is None:
        card = laid.get(place.laid or "")
        name = f"The planned card {card.code}" if card else "" if place.words else "A place that is there no longer"
        return PlaceThen(place, name, None)
    measured = _measured(two, index)
    return PlaceThen(place, "", measured, beside(two, measured.fate.fate) if opened == place.id else ())


def _intent(two: TwoDrafts, card: Laid, opened: str) -> IntentThen:
    places = two.compared.old.scene_index
    measured = tuple(_measured(two, places[scene]) for scene in card.scenes if scene in places)
    title = card.title or (measured[0].scene.name if measured else shortened(card.next.what) or "A new card")
    rows = beside(two, measured[0].fate.fate) if opened == card.id and measured else ()
    return IntentThen(card.id, card.intent, title, card.next, measured, rows)


def _measured(two: TwoDrafts, index: int) -> Measured:
    found = two.compared.found
    scene = two.olds[index]
    fate = fate_row(two, two.compared.fates[scene.id])
    changed = text_changed(found, index)
    if changed is None:
        return Measured(scene, NOT_REACHED, as_it_was=False, fate=fate)
    if fate.fate.became == "cut":
        return Measured(scene, CUT, as_it_was=False, fate=fate)
    return Measured(scene, CHANGED if changed else AS_IT_WAS, as_it_was=not changed, fate=fate)


def _guarded(two: TwoDrafts, carrier: Carrier, one: Guarded) -> GuardedThen:
    old, new = two.compared.old, two.compared.new
    anchors = [anchor for anchor in one.anchors if anchor.paragraph in old.story_index]
    passages = [(old.story_index[anchor.paragraph], anchor.start, anchor.end) for anchor in anchors]
    where = [followed(two.compared.found, carrier, passage) for passage in passages]
    stays = [found for found in where if found is not None and found.paragraph is not None]
    scene = two.olds[two.compared.found.old.scene_at()[passages[0][0]]] if passages else None
    path = f"{scene.path}#p{anchors[0].paragraph}" if scene else ""
    state: Passed = "gone"
    if passages and all(found is None for found in where):
        state = "not reached"
    elif passages and all(found is not None and found.state == "there" for found in where):
        state = "there"
    elif stays:
        state = "changed"
    if not stays:
        return GuardedThen(one, state, "", scene, path)
    here = [(found.paragraph, found.start, found.end) for found in stays if found.paragraph is not None]
    now = "\n".join(new.told.paragraphs[paragraph][start:end] for paragraph, start, end in here)
    there = two.news[two.compared.found.new.scene_at()[here[0][0]]]
    return GuardedThen(one, state, now, scene, f"{there.path}#p{new.paragraphs[here[0][0]]}")
