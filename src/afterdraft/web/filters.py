"""Filters of the Cards screen: what does not match is dimmed, and stays where it lies. Of several, all must match."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Literal
from urllib.parse import urlencode

from afterdraft.desk.intent import INTENTS
from afterdraft.web.laid import Sheet, Table
from afterdraft.web.view import BookView

Kind = Literal["intent", "viewpoint", "person", "thread", "ink", "guarded"]
Facts = Iterator[tuple[str, str]]  # id of a scene or of a card, and a value that is true of it
NONE = "none"  # the value of cards without an intent


@dataclass(frozen=True, slots=True)
class Choice:
    value: str
    label: str
    count: int  # cards of which it is true


@dataclass(frozen=True, slots=True)
class Filter:
    """One question that the cards are asked."""

    kind: Kind
    label: str
    choices: tuple[Choice, ...]
    chosen: str  # a value; "" for all cards


@dataclass(frozen=True, slots=True)
class Filters:
    filters: tuple[Filter, ...]  # those that tell any cards apart
    facts: Mapping[str, frozenset[str]]  # "kind:value" by code of the card
    matching: frozenset[str]  # codes

    @property
    def on(self) -> bool:
        return any(one.chosen for one in self.filters)

    @property
    def query(self) -> str:
        """What goes to the end of an address that begins with another question."""
        asked = [(one.kind, one.chosen) for one in self.filters if one.chosen]
        return f"&{urlencode(asked)}" if asked else ""

    def has(self, sheet: Sheet) -> str:
        """All that is true of a card, for the script."""
        return "|".join(sorted(self.facts[sheet.code]))

    def dims(self, sheet: Sheet) -> bool:
        return sheet.code not in self.matching


def filters(view: BookView, table: Table, wanted: Mapping[str, str]) -> Filters:
    """`wanted`: values by kind, as an address gives them; what is not known leaves all cards as they are."""
    true: dict[str, set[str]] = {}
    for kind, _, facts, _ in KINDS:
        for place, value in facts(view, table):
            true.setdefault(place, set()).add(f"{kind}:{value}")
    by_code = {sheet.code: _of(sheet, true) for sheet in table.sheets()}
    known = tuple(
        Filter(kind, label, tuple(_choices(kind, names(view), by_code)), wanted.get(kind, ""))
        for kind, label, _, names in KINDS
    )
    offered = tuple(_sound(one) for one in known if any(choice.value != NONE for choice in one.choices))
    asked = {f"{one.kind}:{one.chosen}" for one in offered if one.chosen}
    return Filters(offered, by_code, frozenset(code for code, own in by_code.items() if asked <= own))


def _of(sheet: Sheet, true: Mapping[str, set[str]]) -> frozenset[str]:
    places = (sheet.laid.id, *(scene.scene.id for scene in sheet.scenes))
    return frozenset(fact for place in places for fact in true.get(place, ()))


def _choices(kind: Kind, names: Mapping[str, str], facts: Mapping[str, frozenset[str]]) -> Iterator[Choice]:
    """Those that are true of any card."""
    for value, label in names.items():
        count = sum(f"{kind}:{value}" in own for own in facts.values())
        if count:
            yield Choice(value, label, count)


def _sound(one: Filter) -> Filter:
    if one.chosen in {choice.value for choice in one.choices}:
        return one
    return Filter(one.kind, one.label, one.choices, "")


def _intents(view: BookView, table: Table) -> Facts:
    for sheet in table.sheets():
        yield sheet.laid.id, sheet.laid.intent or NONE


def _intent_names(view: BookView) -> Mapping[str, str]:
    return {**{intent: intent.capitalize() for intent in INTENTS}, NONE: "No intent"}


def _viewpoints(view: BookView, table: Table) -> Facts:
    for one in view.book.present(view.draft.id):
        if one.how == "viewpoint":
            yield one.scene, one.person


def _people(view: BookView, table: Table) -> Facts:
    """On the page, or with the viewpoint; who is only mentioned is not there."""
    for one in view.book.present(view.draft.id):
        if one.how != "mentioned":
            yield one.scene, one.person


def _people_names(view: BookView) -> Mapping[str, str]:
    return {one.id: one.name for one in view.book.known("person")}


def _threads(view: BookView, table: Table) -> Facts:
    for line in view.book.lines(view.draft.id):
        for point in line.points:
            place = point.scene or point.laid
            if line.kind == "thread" and place:
                yield place, line.id


def _thread_names(view: BookView) -> Mapping[str, str]:
    return {line.id: f"{line.letter}: {line.name}" for line in view.book.lines(view.draft.id) if line.kind == "thread"}


def _inks(view: BookView, table: Table) -> Facts:
    """Of notes that were not dropped."""
    for note in view.book.notes():
        place = note.scene or note.laid
        if note.ink and place and note.state != "dropped":
            yield place, note.ink


def _ink_names(view: BookView) -> Mapping[str, str]:
    return {ink.id: f"{ink.letter}: {ink.name}" for ink in view.book.inks()}


def _guarded(view: BookView, table: Table) -> Facts:
    for one in view.book.guarded(view.draft.id):
        for anchor in one.anchors:
            scene = view.outline.scene_of(anchor.paragraph)
            if scene:
                yield scene.scene.id, "yes"


def _guarded_names(view: BookView) -> Mapping[str, str]:
    return {"yes": "A passage is guarded"}


# What cards can be asked, in this order: kind, its word, what is true of which scene or card, names of the values.
KINDS: tuple[tuple[Kind, str, Callable[[BookView, Table], Facts], Callable[[BookView], Mapping[str, str]]], ...] = (
    ("intent", "Intent", _intents, _intent_names),
    ("viewpoint", "Viewpoint", _viewpoints, _people_names),
    ("person", "Person", _people, _people_names),
    ("thread", "Thread", _threads, _thread_names),
    ("ink", "Ink", _inks, _ink_names),
    ("guarded", "Guarded", _guarded, _guarded_names),
)
