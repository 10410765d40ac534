"""The lines of headings that stand over scenes."""

from collections.abc import Iterable, Sequence

from afterdraft.manuscript.division import Division
from afterdraft.manuscript.outline import SceneView


def headings_over(division: Division, scenes: Iterable[SceneView], texts: Sequence[str]) -> list[list[str]]:
    """For each scene the lines of its chapter's or its own heading right over it; none where it has none. `texts` are
    the paragraphs of the whole file."""
    return [
        [texts[at] for at in range(scene.start, scene.end) if division.roles[at] in ("heading", "head")]
        for scene in scenes
    ]
