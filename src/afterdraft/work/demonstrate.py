"""Put into a book what its writer has done so far, as a file beside the demonstration manuscript tells it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from afterdraft.desk.card import CardField
from afterdraft.errors import Missing
from afterdraft.manuscript.outline import SceneView, outline
from afterdraft.work.ports import Book
from afterdraft.work.write_field import write_field
from afterdraft.work.write_note import write_note

HERE = "demonstration"  # stands for the window that wrote it


@dataclass(frozen=True, slots=True)
class Written:
    """One card's words; `opens` is how its scene begins, long enough to be found once."""

    opens: str
    fields: Mapping[CardField, str]


@dataclass(frozen=True, slots=True)
class Work:
    cards: Sequence[Written] = ()
    notes: Sequence[tuple[str | None, str]] = field(default=())  # how its scene begins, None for a loose one; words


def demonstrate(book: Book, draft: str, work: Work) -> None:
    """Write the cards and notes. Raises `Missing` for a scene that is not there."""
    for written in work.cards:
        card = book.cards(draft)[_scene(book, draft, written.opens)]
        for sequence, (name, text) in enumerate(written.fields.items(), start=1):
            now = book.card(card.id).revision
            write_field(book, "card", card.id, name, text, revision=now, client=HERE, sequence=sequence, done=True)
    for opens, text in work.notes:
        write_note(book, text, scene=None if opens is None else _scene(book, draft, opens))


def _scene(book: Book, draft: str, opens: str) -> str:
    scenes = outline(book.division(draft), book.words(draft)).scenes
    words = book.first_words(draft, [_opening(scene) for scene in scenes])
    for scene in scenes:
        if words[_opening(scene)].startswith(opens):
            return scene.scene.id
    raise Missing(f"The scene that opens “{opens}”")


def _opening(scene: SceneView) -> int:
    return scene.story[0] if scene.story else scene.start
