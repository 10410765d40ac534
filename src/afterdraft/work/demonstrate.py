"""Put into a book what its writer has done so far, as a file beside the demonstration manuscript tells it.

Everything goes in by the ordinary use cases. A scene is named by how it opens.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import by_code
from afterdraft.desk.lines import Does, LineKind
from afterdraft.desk.unit_card import UNIT_FIELDS
from afterdraft.errors import Missing
from afterdraft.manuscript.division import Chapter, Scene
from afterdraft.manuscript.validity import leaf_at
from afterdraft.work.cards.add_card import add_card
from afterdraft.work.cards.arranging import DRAFT, Spot
from afterdraft.work.cards.lay_by_codes import lay_by_codes
from afterdraft.work.cards.set_intent import set_intent
from afterdraft.work.cards.try_arrangement import give_up, try_arrangement
from afterdraft.work.cards.write_unit import write_unit
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.cast.mark_setting import mark_setting
from afterdraft.work.lines.link_scenes import link_scenes
from afterdraft.work.lines.mark_point import mark_point
from afterdraft.work.lines.put_in_strand import put_in_strand
from afterdraft.work.notes.find_passage import find_passage
from afterdraft.work.notes.guard_passage import guard_passage
from afterdraft.work.notes.mix_ink import mix_ink
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.plan.change_places import add_places
from afterdraft.work.plan.plan_change import plan_change
from afterdraft.work.ports import Book
from afterdraft.work.write_field import write_once

Entry = Mapping[str, Any]
Work = Mapping[str, Sequence[Entry]]


def demonstrate(book: Book, draft: str, work: Work) -> None:
    """Do all of `work`, by the names of its parts, in the order in which a writer would. Raises `Missing` for a scene
    that is not there, and whatever the use cases raise."""
    here = _Here(book, draft)
    for part, act in _ACTS.items():
        for entry in work.get(part, ()):
            act(here, entry)


@dataclass(frozen=True)
class _Here:
    book: Book
    draft: str

    @cached_property
    def _division(self) -> Any:
        return self.book.division(self.draft)

    @cached_property
    def _texts(self) -> Sequence[str]:
        return [block.text.strip() for block in self.book.blocks(self.draft)]

    def scene(self, opens: str) -> Scene:
        """The scene with a paragraph that opens so: its first one, unless a break was forgotten."""
        for number, text in enumerate(self._texts):
            if text.startswith(opens) and self._division.roles[number] == "story":
                holder = leaf_at(self._division, number)
                if holder and isinstance(holder[0], Scene):
                    return holder[0]
        raise Missing(f"The scene that opens “{opens}”")

    def chapter(self, opens: str) -> Chapter:
        """The chapter with that scene."""
        at = self.scene(opens).at
        chapters: tuple[Chapter, ...] = self._division.chapters
        return next(chapter for chapter in reversed(chapters) if chapter.at <= at)

    def scenes(self, openings: Sequence[str]) -> list[str]:
        return [self.scene(opens).id for opens in openings]


def _summary(here: _Here, entry: Entry) -> None:
    card = here.book.cards(here.draft)[here.scene(entry["opens"]).id]
    for field in ("summary", "comes_in", "leaves", "needed_for"):
        if entry.get(field):
            write_once(here.book, "card", card.id, field, entry[field])


def _unit(here: _Here, entry: Entry) -> None:
    """Of the chapter that begins with the scene named; of the book where none is."""
    chapter = here.chapter(entry["opens"]).id if entry["opens"] else None
    for field in UNIT_FIELDS:
        if entry.get(field):
            write_unit(
                here.book,
                "chapter" if chapter else "book",
                chapter,
                field,
                entry[field],
                revision=0,
                client="",
                sequence=1,
                done=True,
            )


def _ink(here: _Here, entry: Entry) -> None:
    mix_ink(here.book, entry["name"], colour=entry["colour"])


def _note(here: _Here, entry: Entry) -> None:
    inks = {ink.name: ink.id for ink in here.book.inks()}
    scene = entry["opens"] and here.scene(entry["opens"]).id
    write_note(here.book, entry["text"], scene=scene, ink=inks.get(entry.get("ink", "")))


def _guarded(here: _Here, entry: Entry) -> None:
    found = find_passage(here.book, here.scene(entry["opens"]).id, entry["words"])
    guard_passage(here.book, here.draft, found)


def _person(here: _Here, entry: Entry) -> None:
    person = add_known(here.book, "person", entry["name"])
    _more(here, "person", person, entry)


def _place(here: _Here, entry: Entry) -> None:
    _more(here, "place", add_known(here.book, "place", entry["name"]), entry)


def _more(here: _Here, kind: Any, id: str, entry: Entry) -> None:
    for field in ("aliases", "former"):
        if entry.get(field):
            write_once(here.book, kind, id, field, "\n".join(entry[field]))
    if entry.get("note"):
        write_once(here.book, kind, id, "note", entry["note"])


def _presence(here: _Here, entry: Entry) -> None:
    scenes = [here.scene(entry["opens"]).id]
    mark_presence(here.book, scenes, entry["viewpoint"], "viewpoint")
    mark_setting(here.book, scenes, entry["place"])
    for name in entry["people"]:
        mark_presence(here.book, scenes, name, "on page")


def _strand(here: _Here, entry: Entry) -> None:
    put_in_strand(here.book, here.scenes(entry["scenes"]), entry["name"])


def _thread(here: _Here, entry: Entry) -> None:
    for point in entry["scenes"]:
        _point(here, "thread", entry["name"], point["does"], point)


def _setup(here: _Here, entry: Entry) -> None:
    for point in entry["points"]:
        _point(here, "setup", entry["name"], point["is"], point)


def _reveal(here: _Here, entry: Entry) -> None:
    for point in entry["points"]:
        _point(here, "reveal", entry["fact"], "learns", point)


def _point(here: _Here, kind: LineKind, name: str, does: Does, point: Entry) -> None:
    scene = here.scene(point["opens"]).id
    passages = find_passage(here.book, scene, point["words"]) if "words" in point else ()
    mark_point(here.book, kind, name, does, scenes=[scene], who=point.get("who", ""), passages=passages)


def _follows(here: _Here, entry: Entry) -> None:
    for source in here.scenes(entry["from"]):
        link_scenes(here.book, here.scene(entry["opens"]).id, source=source, why=entry["why"])


def _arrangement(here: _Here, entry: Entry) -> None:
    made = try_arrangement(here.book, DRAFT, entry["name"])
    codes = [here.scene(opens).code for opens in entry["order"]]
    lay_by_codes(here.book, made.id, _in_rows(made, list(dict.fromkeys(codes))), stay=False)
    if entry["given_up"]:
        give_up(here.book, made.id, entry["why"])


def _in_rows(arrangement: Arrangement, codes: Sequence[str]) -> str:
    """An order of codes in chapters as long as they were."""
    lines, at = [], 0
    for row in arrangement.rows:
        lines.append(" ".join(codes[at : at + len(row.cards)]))
        at += len(row.cards)
    return "\n".join(lines)


def _change(here: _Here, entry: Entry) -> None:
    made = plan_change(here.book, entry["wrong"], decide=entry["decide"], when=entry["when"])
    add_places(here.book, made, ", ".join(here.scene(place["opens"]).code for place in entry["places"]))


def _next(here: _Here, entry: Entry) -> None:
    code = here.scene(entry["opens"]).code
    arrangement = set_intent(here.book, "", [code], entry["intent"])
    _next_side(here, by_code(arrangement, code).id, entry)


def _new(here: _Here, entry: Entry) -> None:
    after = here.scene(entry["after"]).code
    arrangement = here.book.arrangements(here.draft)[-1]
    row = next(row.id for row in arrangement.rows if any(card.code == after for card in row.cards))
    made = add_card(here.book, arrangement.id, Spot(row, after=after), title=entry.get("title", ""))
    _next_side(here, made.id, entry)


def _next_side(here: _Here, card: str, entry: Entry) -> None:
    written = {**entry, "people": ", ".join(entry.get("people", ()))}
    for field in ("what", "viewpoint", "people", "place", "time", "length"):
        if written.get(field):
            write_once(here.book, "next", card, field, str(written[field]))


_ACTS: Mapping[str, Callable[[_Here, Entry], None]] = {
    "summaries": _summary,
    "units": _unit,
    "inks": _ink,
    "notes": _note,
    "guarded": _guarded,
    "cast": _person,
    "places": _place,
    "presence": _presence,
    "strands": _strand,
    "threads": _thread,
    "setups": _setup,
    "reveals": _reveal,
    "follows_from": _follows,
    "arrangements": _arrangement,
    "next": _next,
    "new": _new,
    "changes": _change,
}
