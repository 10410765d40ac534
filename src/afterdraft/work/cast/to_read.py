"""What of a draft is to be read, as the book stands now."""

from dataclasses import replace

from afterdraft.manuscript.headings import headings_over
from afterdraft.manuscript.outline import outline, paragraph_offsets
from afterdraft.whole.task import Task, task
from afterdraft.work.cast.given import given
from afterdraft.work.ports import Book


def to_read(book: Book, draft: str, *, model: str) -> Task:
    """`model` names what analyses the words. Reads the whole text: some hundredths of a second."""
    division = book.division(draft)
    texts = [block.text for block in book.blocks(draft)]
    offsets = paragraph_offsets(division, texts)
    scenes = outline(division, [0] * len(texts)).scenes
    places = {paragraph: (scene.index, place) for scene in scenes for place, paragraph in enumerate(scene.story)}
    order = {scene.scene.id: scene.index for scene in scenes}
    times = {order[scene]: words for scene, words in book.scene_times(draft).items() if scene in order}
    settings = {order[one.scene]: one.place for one in reversed(book.settings(draft)) if one.scene in order}
    return task(
        [scene.scene.id for scene in scenes],
        [[texts[paragraph] for paragraph in scene.story] for scene in scenes],
        [[offsets[paragraph] for paragraph in scene.story] for scene in scenes],
        replace(given(book, draft, places), times=times, settings=settings),
        model=model,
        heads=headings_over(division, scenes, texts),
    )
