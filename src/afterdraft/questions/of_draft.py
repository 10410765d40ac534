"""A manuscript without a book, as checks look at it."""

from collections.abc import Callable, Iterable, Sequence

from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.headings import headings_over
from afterdraft.manuscript.naming import scene_name
from afterdraft.manuscript.outline import JOIN, SceneView, outline
from afterdraft.manuscript.set_in import in_italics, set_in
from afterdraft.questions.seen import Italics, Seen
from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.task import is_read

Read = Callable[[Sequence[Sequence[str]]], Iterable[SceneFacts]]  # story paragraphs of scenes → their facts


def seen_of(draft: Draft, read: Read) -> Seen:
    """Without facts where the text is not English."""
    texts = [block.text for block in draft.source.blocks]
    scenes = outline(draft.division, [0] * len(texts)).scenes
    story = tuple(tuple(texts[index] for index in one.story) for one in scenes)
    return Seen(
        texts=story,
        facts=tuple(read(story)) if is_read(draft.language) else (),
        heads=tuple(map(tuple, headings_over(draft.division, scenes, texts))),
        titles=tuple(scene_name(one.scene, texts[one.story[0]] if one.story else "") for one in scenes),
        set_in=stands_in(scenes, draft.source.blocks),
        italics=italics(scenes, draft.source.blocks),
    )


def stands_in(scenes: Sequence[SceneView], blocks: Sequence[Block]) -> frozenset[tuple[int, int]]:
    """Scene, and paragraph among the scene's, of what stands in from the other paragraphs."""
    found = set_in(blocks)
    return frozenset((one.index, place) for one in scenes for place, index in enumerate(one.story) if index in found)


def italics(scenes: Sequence[SceneView], blocks: Sequence[Block]) -> Italics:
    """By scene, and paragraph among the scene's, where it stands in italics."""
    found = in_italics(blocks)
    return {
        (one.index, place): found[index] for one in scenes for place, index in enumerate(one.story) if index in found
    }


def places_of(seen: Seen) -> tuple[tuple[int, ...], ...]:
    """For each scene, where each of its paragraphs begins in the story text."""
    found, at = [], 0
    for scene in seen.texts:
        here = []
        for text in scene:
            here.append(at)
            at += len(text) + len(JOIN)
        found.append(tuple(here))
    return tuple(found)
