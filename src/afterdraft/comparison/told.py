"""What comparison reads of a draft: its story paragraphs in order, and the scenes and chapters they lie in."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from afterdraft.manuscript.division import Division
from afterdraft.manuscript.outline import outline


@dataclass(frozen=True, slots=True)
class ToldScene:
    """A scene: story paragraphs `start` up to `end`, half-open, and what else is known of it."""

    start: int
    end: int
    chapter: int  # index
    bookmark: str = ""  # the code that a writing copy left in the file, or the book gave; "" for none
    cast: frozenset[str] = field(default=frozenset())  # names of who is on page, where they are known
    places: frozenset[str] = field(default=frozenset())


@dataclass(frozen=True, slots=True)
class Told:
    """A draft for comparing. Scenes in order, without a gap between them; indices count story paragraphs from 0."""

    paragraphs: tuple[str, ...]
    scenes: tuple[ToldScene, ...]
    chapters: int = 1  # how many

    def scene_at(self) -> list[int]:
        """The scene of each paragraph."""
        return [number for number, scene in enumerate(self.scenes) for _ in range(scene.start, scene.end)]


def told(division: Division, texts: Sequence[str], *, bookmarks: Mapping[str, str] | None = None) -> Told:
    """A draft's division and all its paragraphs, as comparison reads them.

    `bookmarks` are codes by scene id, where the file or the book has them. They outweigh words.
    """
    whole = outline(division, [0] * len(texts))
    chapters = {view.chapter.id: view.index for view in whole.chapters}
    codes = bookmarks or {}
    paragraphs: list[str] = []
    scenes: list[ToldScene] = []
    for view in whole.scenes:
        start = len(paragraphs)
        paragraphs += [texts[index] for index in view.story]
        scenes.append(ToldScene(start, len(paragraphs), chapters[view.chapter], codes.get(view.scene.id, "")))
    return Told(tuple(paragraphs), tuple(scenes), len(whole.chapters))


def files_paragraphs(division: Division) -> tuple[int, ...]:
    """The index in the file of each story paragraph: what joins this numbering to that of anchors."""
    views = outline(division, [0] * len(division.roles)).scenes
    return tuple(index for view in views for index in view.story)
