"""A division laid out for reading: which paragraphs and how many words each part, chapter and scene holds.

Everything here is worked out from a `Division` and can be thrown away; nothing is stored. Paragraph
ranges are half-open; indices count from 0 in telling order.
"""

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.manuscript.division import Chapter, Division, Matter, Part, Scene

Leaf = Part | Scene | Matter  # the units that paragraphs lie in; a chapter lies over its scenes


@dataclass(frozen=True, slots=True)
class SceneView:
    scene: Scene
    index: int
    chapter: str  # id of its chapter
    start: int
    end: int
    story: tuple[int, ...]  # its paragraphs with the role "story"
    words: int  # of those


@dataclass(frozen=True, slots=True)
class ChapterView:
    chapter: Chapter
    index: int
    start: int
    end: int
    scenes: tuple[SceneView, ...]
    words: int

    @property
    def part(self) -> str | None:
        """Id of its part."""
        return self.chapter.part

    @property
    def number(self) -> int:
        """Its place in telling order, from 1; what is printed stands in `chapter.number`."""
        return self.index + 1


@dataclass(frozen=True, slots=True)
class PartView:
    part: Part
    index: int
    start: int  # of its own lines: heading, epigraph
    end: int
    chapters: tuple[ChapterView, ...]
    words: int  # of its chapters


@dataclass(frozen=True, slots=True)
class MatterView:
    matter: Matter
    index: int
    start: int
    end: int
    words: int  # not counted as story


@dataclass(frozen=True, slots=True)
class Outline:
    parts: tuple[PartView, ...]
    chapters: tuple[ChapterView, ...]
    scenes: tuple[SceneView, ...]
    front: tuple[MatterView, ...]
    back: tuple[MatterView, ...]
    words: int  # of the story

    def scene_of(self, paragraph: int) -> SceneView | None:
        """The scene that holds `paragraph`; None where a part's lines or front or back matter do."""
        place = bisect_right(self.scenes, paragraph, key=lambda view: view.start) - 1
        if place >= 0 and paragraph < self.scenes[place].end:
            return self.scenes[place]
        return None


@dataclass(frozen=True, slots=True)
class Story:
    """The story text: scene paragraphs only, joined by two newlines; `spans` are the scenes' offsets in it."""

    text: str
    spans: tuple[tuple[int, int], ...]


JOIN = "\n\n"


def leaves(division: Division) -> tuple[tuple[Leaf, int, int], ...]:
    """Parts' own lines, scenes and matter in order, each with its paragraph range."""
    units: list[Leaf] = sorted([*division.parts, *division.scenes, *division.matter], key=lambda unit: unit.at)
    ends = [unit.at for unit in units[1:]] + [len(division.roles)]
    return tuple((unit, unit.at, end) for unit, end in zip(units, ends, strict=True))


def outline(division: Division, words: Sequence[int]) -> Outline:
    """The views of a valid `division`; `words` has the word count of each paragraph."""
    placed = leaves(division)
    scenes = tuple(_scenes(division, placed, words))
    chapters = tuple(_chapters(division, scenes))
    matter = [
        MatterView(unit, number, start, end, sum(words[start:end]))
        for number, (unit, start, end) in enumerate(leaf for leaf in placed if isinstance(leaf[0], Matter))
        if isinstance(unit, Matter)
    ]
    return Outline(
        parts=tuple(_parts(placed, chapters)),
        chapters=chapters,
        scenes=scenes,
        front=tuple(view for view in matter if view.matter.where == "front"),
        back=tuple(view for view in matter if view.matter.where == "back"),
        words=sum(view.words for view in scenes),
    )


def story_text(division: Division, texts: Sequence[str]) -> Story:
    """The story text of paragraphs `texts`, and each scene's `(start, end)` in it, end exclusive."""
    pieces: list[str] = []
    spans: list[tuple[int, int]] = []
    position = 0
    for unit, first, last in leaves(division):
        if not isinstance(unit, Scene):
            continue
        told = [texts[index] for index in range(first, last) if division.roles[index] == "story"]
        length = len(JOIN.join(told))
        start = position + (len(JOIN) if pieces and told else 0)
        position = start + length
        spans.append((start, position))
        pieces.extend(told)
    return Story(JOIN.join(pieces), tuple(spans))


def paragraph_offsets(division: Division, texts: Sequence[str]) -> dict[int, int]:
    """Where each story paragraph begins in the story text, by its index in the file."""
    offsets: dict[int, int] = {}
    position = 0
    for index, role in enumerate(division.roles):
        if role == "story":
            offsets[index] = position
            position += len(texts[index]) + len(JOIN)
    return offsets


def _scenes(division: Division, placed: Sequence[tuple[Leaf, int, int]], words: Sequence[int]) -> Iterator[SceneView]:
    index = 0
    for unit, start, end in placed:
        if isinstance(unit, Scene):
            story = tuple(place for place in range(start, end) if division.roles[place] == "story")
            home = bisect_right(division.chapters, start, key=lambda chapter: chapter.at) - 1
            total = sum(words[place] for place in story)
            yield SceneView(unit, index, division.chapters[home].id, start, end, story, total)
            index += 1


def _chapters(division: Division, scenes: Sequence[SceneView]) -> Iterator[ChapterView]:
    for index, chapter in enumerate(division.chapters):
        own = tuple(_between(division, scenes, index))
        yield ChapterView(chapter, index, chapter.at, own[-1].end, own, sum(view.words for view in own))


def _between(division: Division, scenes: Sequence[SceneView], index: int) -> Sequence[SceneView]:
    first = bisect_right(scenes, division.chapters[index].at - 1, key=lambda view: view.start)
    if index + 1 == len(division.chapters):
        return scenes[first:]
    return scenes[first : bisect_right(scenes, division.chapters[index + 1].at - 1, key=lambda view: view.start)]


def _parts(placed: Sequence[tuple[Leaf, int, int]], chapters: Sequence[ChapterView]) -> Iterator[PartView]:
    index = 0
    for unit, start, end in placed:
        if isinstance(unit, Part):
            own = tuple(view for view in chapters if view.part == unit.id)
            yield PartView(unit, index, start, end, own, sum(view.words for view in own))
            index += 1
