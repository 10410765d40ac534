"""The fore-edge: all scenes as widths along the bottom of every screen, drawn as one small SVG."""

from dataclasses import dataclass
from itertools import pairwise

from afterdraft.manuscript.outline import SceneView
from afterdraft.web.view import BookView, chapter_title

WIDTH = 1000.0  # units of the drawing, stretched to the window
HEIGHT = 22.0
GAP = 0.6  # between scenes
CHAPTER_GAP = 2.4  # between chapters
LEAST = 0.8  # the thinnest scene that can still be seen and pointed at


@dataclass(frozen=True, slots=True)
class Leaf:
    """One scene of the strip."""

    x: float
    width: float
    code: str
    label: str  # "Chapter 2: The Weir · The kiln had been cold… · 1,204 words"
    kind: str  # class names: "written", "here"


@dataclass(frozen=True, slots=True)
class ForeEdge:
    leaves: tuple[Leaf, ...]
    label: str  # of the scene one is in, or ""
    progress: str  # "14 of 34 scenes outlined"


def fore_edge(view: BookView, *, here: str = "") -> ForeEdge:
    """The strip for a book; `here` is the code of the scene on screen, "" for none."""
    scenes = view.outline.scenes
    gaps = [_gap(before, after) for before, after in pairwise(scenes)]
    scale = _scale(scenes, WIDTH - sum(gaps))
    leaves: list[Leaf] = []
    x = 0.0
    for scene, gap in zip(scenes, [*gaps, 0.0], strict=False):
        width = max(LEAST, scene.words * scale)
        leaves.append(
            Leaf(round(x, 2), round(width, 2), scene.scene.code, _label(view, scene), _kind(view, scene, here))
        )
        x += width + gap
    current = next((scene for scene in scenes if scene.scene.code == here), None)
    return ForeEdge(
        leaves=tuple(leaves),
        label=_label(view, current) if current else "",
        progress=f"{view.progress:,} of {len(scenes):,} {'scene' if len(scenes) == 1 else 'scenes'} outlined",
    )


def _gap(before: SceneView, after: SceneView) -> float:
    return GAP if before.chapter == after.chapter else CHAPTER_GAP


def _scale(scenes: tuple[SceneView, ...], room: float) -> float:
    """Units a word, so that all scenes fill `room`; scenes too short to be seen get the least width first."""
    words = sum(scene.words for scene in scenes) or 1
    scale = room / words
    thin = sum(1 for scene in scenes if scene.words * scale < LEAST)
    wide = sum(scene.words for scene in scenes if scene.words * scale >= LEAST) or 1
    return max(0.0, room - thin * LEAST) / wide


def _label(view: BookView, scene: SceneView) -> str:
    return f"{chapter_title(view.chapter(scene))} · {view.name(scene)} · {scene.words:,} words"


def _kind(view: BookView, scene: SceneView, here: str) -> str:
    kinds = ["written"] if view.written(scene) else []
    return " ".join([*kinds, "here"] if scene.scene.code == here else kinds)
