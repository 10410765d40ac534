"""Fasten something to passages of the text."""

from collections.abc import Sequence

from afterdraft.desk.anchor import Anchor, Passage, anchor
from afterdraft.errors import NotPossible
from afterdraft.manuscript.division import Division, Scene
from afterdraft.manuscript.validity import leaf_at
from afterdraft.work.ports import Desk

NOT_HERE = "These words are not in the text of this scene."


def fastened(desk: Desk, draft: str, passages: Sequence[Passage], *, scene: str | None = None) -> tuple[Anchor, ...]:
    """Anchors of the passages. Raises `NotPossible` where one is not in the text, or not in `scene`, if given."""
    division = desk.division(draft) if passages else Division()
    made = []
    for one in passages:
        text = desk.text(draft, one.paragraph)
        here = scene is None or scene_of(division, one.paragraph) == scene
        if not (here and 0 <= one.start < one.end <= len(text)):
            raise NotPossible(NOT_HERE)
        made.append(anchor(draft=draft, paragraph=one.paragraph, text=text, start=one.start, end=one.end))
    return tuple(made)


def scene_of(division: Division, paragraph: int) -> str | None:
    """Id of the scene that holds a paragraph; None where none does."""
    holder = leaf_at(division, paragraph)
    return holder[0].id if holder is not None and isinstance(holder[0], Scene) else None
