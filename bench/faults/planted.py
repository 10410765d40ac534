"""A fault as it is planted: paragraphs of the author's that read otherwise, and the words that show it.

Nothing in `planted`, `novels` and `kinds` imports anything of the program: places are chosen without its output.
"""

from collections.abc import Callable, Container, Iterable, Iterator, Sequence
from dataclasses import dataclass
from random import Random

Scenes = tuple[tuple[str, ...], ...]  # paragraphs of each scene, in telling order


@dataclass(frozen=True, slots=True)
class Edit:
    """A paragraph of a scene, counted from 0, and what stands there instead: one paragraph, or several."""

    scene: int
    paragraph: int
    becomes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Shown:
    """Words that a question about the fault would quote, as they stand once in their scene after the planting."""

    scene: int
    words: str


@dataclass(frozen=True, slots=True)
class Fault:
    kind: str
    edits: tuple[Edit, ...]
    shown: tuple[Shown, ...]  # the planted words first, then those of the author's that they disagree with
    enough: int = 2  # of `shown`, as many as one question must quote for the fault to count as found
    renamed: tuple[str, str] | None = None  # an earlier name and the one that took its place, where she wrote them down


Plant = Callable[[Scenes, Random], Iterator[Fault]]  # every place the seed leads to, in the order to be tried


def plant(scenes: Scenes, kinds: Iterable[Plant], seed: str) -> tuple[Scenes, tuple[Fault, ...]]:
    """A novel with one fault of each kind that it has a place for, no two in one paragraph."""
    taken: set[tuple[int, int]] = set()
    edited: set[tuple[int, int]] = set()
    faults: list[Fault] = []
    for kind in kinds:
        for fault in kind(scenes, Random(f"{seed} {kind.__module__}")):
            touched = {(edit.scene, edit.paragraph) for edit in fault.edits}
            if not touched & taken and _stands(scenes, fault, edited):
                faults.append(fault)
                edited |= touched
                taken |= touched | {place for one in fault.shown for place in _places(scenes, one)}
                break
    return _with(scenes, [edit for fault in faults for edit in fault.edits]), tuple(faults)


def _stands(scenes: Scenes, fault: Fault, edited: Container[tuple[int, int]]) -> bool:
    """Whether other faults left enough of the words that show it."""
    lost = sum(any(place in edited for place in _places(scenes, one)) for one in fault.shown)
    return len(fault.shown) - lost >= fault.enough


def _places(scenes: Scenes, shown: Shown) -> Iterator[tuple[int, int]]:
    """The author's paragraphs that a fault rests on: no other fault may touch them."""
    for number, text in enumerate(scenes[shown.scene]):
        if shown.words in text:
            yield shown.scene, number


def _with(scenes: Scenes, edits: Sequence[Edit]) -> Scenes:
    becomes = {(edit.scene, edit.paragraph): edit.becomes for edit in edits}
    return tuple(
        tuple(text for at, old in enumerate(scene) for text in becomes.get((number, at), (old,)))
        for number, scene in enumerate(scenes)
    )
