"""The reverse outline as a table: a row a scene, in telling order."""

from collections.abc import Mapping

from afterdraft.desk.arrangement import NEXT_FIELDS, Laid
from afterdraft.desk.arranging import everything
from afterdraft.desk.card import CARD_FIELDS
from afterdraft.desk.cast import Presence
from afterdraft.desk.scene_list import SEVERAL, Column, table
from afterdraft.desk.table import Cell, Row
from afterdraft.manuscript.naming import chapter_name
from afterdraft.manuscript.outline import SceneView, outline
from afterdraft.work.cards.arranging import draft_id, seen
from afterdraft.work.ports import Book


def outline_table(book: Book) -> tuple[Row, ...]:
    """The names of the columns, then the scenes of the newest draft. Raises `Missing` where there is none."""
    draft = draft_id(book)
    whole = outline(book.division(draft), book.words(draft))
    openings = book.first_words(draft, [_opening(scene) for scene in whole.scenes])
    chapters = {view.chapter.id: view for view in whole.chapters}
    parts = {view.part.id: view.part.title for view in whole.parts}
    cards, extra = book.cards(draft), _extra(book, draft)

    def row(scene: SceneView) -> Mapping[Column, Cell]:
        chapter = chapters[scene.chapter]
        card = cards[scene.scene.id]
        told: dict[Column, Cell] = {
            "code": scene.scene.code,
            "part": parts.get(chapter.part or "", ""),
            "chapter": chapter_name(chapter.chapter),
            "number": scene.index + 1,
            "title": scene.scene.title,
            "first words": openings.get(_opening(scene), ""),
            "words": scene.words,
        }
        return told | {field: getattr(card, field) for field in CARD_FIELDS} | extra.get(scene.scene.id, {})

    return table([row(scene) for scene in whole.scenes])


def present(book: Book, draft: str) -> dict[str, dict[Column, str]]:
    """Viewpoint, people and places of each scene as the table tells them, by scene id."""
    people = {one.id: one.name for one in book.known("person")}
    places = {one.id: one.name for one in book.known("place")}
    names: dict[str, dict[Column, list[str]]] = {}
    for one in book.present(draft):
        names.setdefault(one.scene, {}).setdefault(_COLUMNS[one.how], []).append(people[one.person])
    for setting in book.settings(draft):
        names.setdefault(setting.scene, {}).setdefault("place", []).append(places[setting.place])
    return {scene: {column: SEVERAL.join(several) for column, several in told.items()} for scene, told in names.items()}


_COLUMNS: Mapping[Presence, Column] = {"viewpoint": "viewpoint", "on page": "people", "mentioned": "people"}


def _extra(book: Book, draft: str) -> dict[str, dict[Column, Cell]]:
    """What not every book has, by scene id."""
    found: dict[str, dict[Column, Cell]] = {scene: dict(told) for scene, told in present(book, draft).items()}
    arrangement = seen(book, "")
    for card in everything(arrangement) if arrangement.id else ():
        if len(card.scenes) == 1:
            found.setdefault(card.scenes[0], {}).update(_next(card))
    return found


def _next(card: Laid) -> dict[Column, Cell]:
    told: dict[Column, Cell] = {"intent": card.intent or ""}
    for field in NEXT_FIELDS:
        told[f"next {field}"] = getattr(card.next, field)  # type: ignore[index]  # the columns are named so
    return told


def _opening(scene: SceneView) -> int:
    return scene.story[0] if scene.story else scene.start
