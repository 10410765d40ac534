"""What things are called on the undo button."""

from collections.abc import Sequence

from afterdraft.errors import Missing
from afterdraft.manuscript.division import Division, Scene
from afterdraft.manuscript.naming import scene_name, shortened
from afterdraft.manuscript.outline import leaves
from afterdraft.work.ports import Book

_WITHIN = str.maketrans('“”"', "‘’'")


def quoted(text: str) -> str:
    """On one line, shortened, in quotation marks; its own are single within them."""
    return f"“{shortened(text).translate(_WITHIN)}”"


def scene_called(book: Book, scene: str) -> str:
    """Its title, else its first words, else its code, in quotation marks. Raises `Missing`."""
    draft = book.draft_of(scene)
    division = book.division(draft)
    for unit, start, end in leaves(division):
        if isinstance(unit, Scene) and unit.id == scene:
            return quoted(scene_name(unit, _first_words(book, draft, division, start, end)))
    raise Missing("This scene")


def scenes_called(book: Book, scenes: Sequence[str], *, more: int = 0) -> str:
    """One scene as `scene_called`; of several, and of `more` cards without a scene, how many. Raises `Missing`."""
    if len(scenes) == 1 and not more:
        return scene_called(book, scenes[0])
    count = len(scenes) + more
    return f"{count} {'scenes' if scenes else 'card' if count == 1 else 'cards'}"


def line_called(book: Book, draft: str, paragraph: int) -> str:
    """A paragraph's first words in quotation marks. Raises `Missing`."""
    words = book.first_words(draft, [paragraph])
    if paragraph not in words:
        raise Missing("This line")
    return quoted(words[paragraph])


def _first_words(book: Book, draft: str, division: Division, start: int, end: int) -> str:
    told = next((n for n in range(start, end) if division.roles[n] == "story"), None)
    return "" if told is None else book.first_words(draft, [told]).get(told, "")
