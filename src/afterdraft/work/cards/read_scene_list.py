"""Read a scene list of the writer's own into the cards: what each row would do, and doing it, as one edit."""

from collections.abc import Iterable, Mapping, Sequence, Set
from dataclasses import dataclass
from typing import Final, Literal

from afterdraft.desk.aligning import By, Placed, aligned, stems
from afterdraft.desk.card import CARD_FIELDS
from afterdraft.desk.scene_list import SEVERAL, Column, Listed
from afterdraft.manuscript import editing
from afterdraft.manuscript.outline import Outline, outline
from afterdraft.work.called import quoted
from afterdraft.work.cards.arranging import draft_id
from afterdraft.work.cards.outline_table import present
from afterdraft.work.finding import called, known_called
from afterdraft.work.plain import line, plain
from afterdraft.work.ports import Book, Desk

Told = Literal["title", "summary", "comes_in", "leaves", "needed_for"]
TOLD: Final[tuple[Told, ...]] = ("title", *CARD_FIELDS)
Stands = Literal["keep", "both", "replace"]  # what becomes of words that stand on a card and differ from the table's
STANDS: Final[tuple[Stands, ...]] = ("keep", "both", "replace")


@dataclass(frozen=True, slots=True)
class Difference:
    """Words of the table that are not what stands on the card."""

    field: Told
    stands: str
    comes: str


@dataclass(frozen=True, slots=True)
class Proposed:
    """A row, and the scene it is thought to mean."""

    row: Listed
    scene: str | None  # id
    by: By | None  # why that one; None where she chose it
    differs: tuple[Difference, ...] = ()


@dataclass(frozen=True, slots=True)
class Wanted:
    """What she has decided for a row."""

    row: Listed
    scene: str | None  # id; without one it can become a loose note
    stands: Stands = "keep"
    note: bool = True  # a row without a scene becomes a loose note


@dataclass(frozen=True, slots=True)
class TakenIn:
    scenes: int  # whose cards, titles, people, places or notes the table had words for
    notes: int  # loose ones


def propose(
    book: Book, rows: Sequence[Listed], *, chosen: Mapping[int, str | None] | None = None
) -> tuple[Proposed, ...]:
    """Each row with its scene. `chosen`: the scenes (ids) that she gave the rows herself, by index of the row in the
    sheet; None for a row that is to have none."""
    draft = draft_id(book)
    division = book.division(draft)
    whole = outline(division, book.words(draft))
    given = chosen or {}
    pairs = aligned(rows, _placed(book, draft, whole), division.chapters) if chosen is None else (None,) * len(rows)
    cards, titles = book.cards(draft), {scene.id: scene.title for scene in division.scenes}

    def proposed(row: Listed, pair_scene: str | None, by: By | None) -> Proposed:
        if pair_scene is None:
            return Proposed(row, None, None)
        stands = {"title": titles[pair_scene]} | {field: getattr(cards[pair_scene], field) for field in CARD_FIELDS}
        differs = (Difference(field, stands[field], _comes(row, field)) for field in TOLD)
        real = tuple(one for one in differs if one.stands.strip() and _is_new(one.comes, one.stands))
        return Proposed(row, pair_scene, by, real)

    found = []
    for row, pair in zip(rows, pairs, strict=True):
        scene = whole.scenes[pair.scene].scene.id if pair else given.get(row.row)
        found.append(proposed(row, scene, pair.by if pair else None))
    return tuple(found)


def take_in(book: Book, wanted: Sequence[Wanted], *, name: str) -> TakenIn:
    """Everything as one edit. `name`: of the file. What stands on a card is only touched where she wants it.

    Where several rows mean one scene, their words go one under the other. Raises `Missing`.
    """
    draft = draft_id(book)
    people = present(book, draft)
    notes = {(note.scene, note.text) for note in book.notes()}

    def change(desk: Desk) -> TakenIn:
        taking = _Taking(desk, draft, people, notes)
        for one in wanted:
            taking.take(one)
        taking.put_titles()
        return TakenIn(len(taking.scenes), taking.notes)

    return book.edit(f"Read in {quoted(name)}", change)


def note_of(row: Listed) -> str:
    """Everything that stands in a row, as a note."""
    if len(row.all) == 1:
        return row.all[0][1]
    return "\n".join(f"{column}: {text}" for column, text in row.all)


class _Taking:
    """One edit under way."""

    def __init__(
        self,
        desk: Desk,
        draft: str,
        present: Mapping[str, Mapping[Column, str]],
        notes: Set[tuple[str | None, str]],
    ) -> None:
        self._desk = desk
        self._draft = draft
        self._present = present
        self._notes = notes  # that are there already: scene and words
        self._titles = {scene.id: scene.title for scene in desk.division(draft).scenes}
        self._new_titles: dict[str, str] = {}
        self._written: set[tuple[str, Told]] = set()
        self.scenes: set[str] = set()
        self.notes = 0

    def take(self, one: Wanted) -> None:
        if one.row.heading:
            return
        if one.scene is None:
            if one.note and one.row.all:
                self._loose(plain(note_of(one.row)))
            return
        self._card(one, one.scene)
        self._title(one, one.scene)
        self._cast(one.row, one.scene)
        self._note(one.row, one.scene)

    def _loose(self, text: str) -> None:
        if (None, text) not in self._notes:
            self._desk.add_note(text=text, scene=None)
            self.notes += 1

    def put_titles(self) -> None:
        division = self._desk.division(self._draft)
        for scene, title in self._new_titles.items():
            division = editing.retitle_scene(division, scene, title)
        if self._new_titles:
            self._desk.set_division(self._draft, division)

    def _card(self, one: Wanted, scene: str) -> None:
        card = self._desk.card_of(scene)
        for field in CARD_FIELDS:
            stands = self._desk.fields("card", card.id).texts[field]
            text = self._decided(one, field, scene, stands, "\n")
            if text != stands:
                self._desk.set_field("card", card.id, field, text, client="", sequence=0)
                self.scenes.add(scene)

    def _title(self, one: Wanted, scene: str) -> None:
        stands = self._new_titles.get(scene, self._titles[scene])
        text = self._decided(one, "title", scene, stands, " / ")
        if text != stands:
            self._new_titles[scene] = text
            self.scenes.add(scene)

    def _decided(self, one: Wanted, field: Told, scene: str, stands: str, joint: str) -> str:
        """What is to stand in a field; where another row of this table wrote there, both do."""
        comes = _comes(one.row, field)
        if not _is_new(comes, stands):
            return stands
        again = (scene, field) in self._written
        if not stands.strip() or (one.stands == "replace" and not again):
            text = comes
        elif one.stands == "both" or again:
            text = f"{stands}{joint}{comes}"
        else:
            return stands
        self._written.add((scene, field))
        return text

    def _cast(self, row: Listed, scene: str) -> None:
        """Who and where is only added to; a cell that says what is marked already changes nothing."""
        marked = self._present.get(scene, {})
        for kind in ("viewpoint", "people", "place"):
            text = row.text(kind)
            if text.strip() and line(text) != line(marked.get(kind, "")):
                for name in _names(text):
                    self._mark(scene, kind, name, marked.get(kind, ""))
                self.scenes.add(scene)

    def _mark(self, scene: str, kind: Literal["viewpoint", "people", "place"], name: str, marked: str) -> None:
        if line(name).casefold() in {line(other).casefold() for other in _names(marked)}:
            return
        if kind == "place":
            self._desk.set_setting(scene, known_called(self._desk, "place", name), there=True)
        elif kind == "viewpoint":
            self._desk.set_presence(scene, known_called(self._desk, "person", name), "viewpoint")
        elif not self._is_there(scene, name):
            self._desk.set_presence(scene, known_called(self._desk, "person", name), "on page")

    def _is_there(self, scene: str, name: str) -> bool:
        """Whoever has the viewpoint is on the page already, by whatever name."""
        person = called(self._desk.known("person"), name)
        return person is not None and person.id in self._desk.viewpoints(scene)

    def _note(self, row: Listed, scene: str) -> None:
        text = plain(row.text("note")).strip()
        if text and (scene, text) not in self._notes:
            self._desk.add_note(text=text, scene=scene)
            self.scenes.add(scene)


def _comes(row: Listed, field: Told) -> str:
    text = row.text(field)
    return line(text) if field == "title" else plain(text)


def _is_new(comes: str, stands: str) -> bool:
    """Whether words of the table do not stand there already, alone or as lines among others."""
    wanted = comes.strip()
    return bool(wanted) and f"\n{wanted}\n" not in f"\n{stands.strip()}\n"


def _names(text: str) -> list[str]:
    """Names in a cell, as people part them."""
    for sign in (SEVERAL.strip(), ",", "/", "\n", "&"):
        text = text.replace(sign, "\n")
    return list(dict.fromkeys(name for name in map(line, text.split("\n")) if name))


def _placed(book: Book, draft: str, whole: Outline) -> list[Placed]:
    chapters = {view.chapter.id: view for view in whole.chapters}
    blocks = book.blocks(draft)
    found = []
    for scene in whole.scenes:
        chapter = chapters[scene.chapter]
        within = next(n for n, one in enumerate(chapter.scenes, 1) if one is scene)
        texts: Iterable[str] = (blocks[n].text for n in scene.story)
        words = stems(" ".join([scene.scene.title, *texts]))
        found.append(Placed(scene.scene.code, scene.scene.title, chapter.index, within, words))
    return found
