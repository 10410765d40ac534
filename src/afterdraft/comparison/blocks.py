"""What kept its order, and what has moved: pairs in runs."""

from collections.abc import Sequence
from collections.abc import Set as AbstractSet
from dataclasses import dataclass

from afterdraft.comparison.chain import heaviest

Pairs = Sequence[tuple[int, int]]
MOVED_WEIGHT = 0.01  # of pairs in scenes that have moved, so that the run of paragraphs follows that of scenes
REACH = 3  # units: pairs that lie no further apart on either side have moved together (tried: 1 to 5)


@dataclass(frozen=True, slots=True)
class Runs:
    """Pairs in old order: `backbone` rises through the whole book, each of `moved` rises by itself."""

    backbone: tuple[tuple[int, int], ...]
    moved: tuple[tuple[tuple[int, int], ...], ...]


def runs(pairs: Pairs, weights: Sequence[float], *, reach: int = REACH) -> Runs:
    """The heaviest rising run is the backbone; the rest, grouped within `reach`, has moved. `pairs` in old order.

    Pairs that share a unit are pieces of it: they keep their order too.
    """
    kept = set(heaviest(pairs, weights, shared=True))
    backbone = tuple(pair for place, pair in enumerate(pairs) if place in kept)
    return Runs(backbone, tuple(_grouped([pair for place, pair in enumerate(pairs) if place not in kept], reach)))


def runs_in_scenes(
    pairs: Pairs, kept: Sequence[int], scenes: Sequence[tuple[int, int]], aside: AbstractSet[tuple[int, int]]
) -> Runs:
    """Runs by the words `kept`. `scenes` has the old and new scene of each pair; those `aside` say little of order."""
    weights = [
        (words + 0.01) * (MOVED_WEIGHT if home in aside else 1.0) for words, home in zip(kept, scenes, strict=True)
    ]
    return runs(pairs, weights)


def _grouped(pairs: Pairs, reach: int) -> list[tuple[tuple[int, int], ...]]:
    """Each pair joins the open group that it goes on from, if there is one."""
    done: list[list[tuple[int, int]]] = []
    open_groups: list[list[tuple[int, int]]] = []
    for old, new in pairs:
        open_groups = [group for group in open_groups if old - group[-1][0] <= reach]
        home = next((group for group in open_groups if 0 <= new - group[-1][1] <= reach), None)
        if home is None:
            home = []
            done.append(home)
            open_groups.append(home)
        home.append((old, new))
    return [tuple(group) for group in done]
