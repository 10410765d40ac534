"""`read_scenes`: the facts of scenes. What keeps them, and reads only what is new, is `afterdraft.alongside`."""

from collections.abc import Iterator, Sequence

from afterdraft.engine.pipeline import analyse
from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.scene import scene_facts


def read_scenes(scenes: Sequence[Sequence[str]]) -> Iterator[SceneFacts]:
    """One value a scene, in order, each made when asked for; `scenes` are their story paragraphs."""
    for paragraphs in scenes:
        yield scene_facts(analyse(paragraphs))
