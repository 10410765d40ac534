"""What the writer says of fates outweighs what was found: links made, links denied, scenes reached or not."""

from collections import Counter
from collections.abc import Sequence
from collections.abc import Set as AbstractSet
from dataclasses import dataclass, replace
from itertools import chain

from afterdraft.comparison.blocks import runs_in_scenes
from afterdraft.comparison.chain import heaviest
from afterdraft.comparison.comparison import Block, Comparison, Fate, Link, Pair
from afterdraft.comparison.fates import fates, reached_by
from afterdraft.comparison.linking import Kept
from afterdraft.comparison.scenes import Places, Sizes, moved_among

ScenePair = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Said:
    """Indices of scenes. What stands in both of two that exclude each other counts as linked, or as not reached."""

    linked: frozenset[ScenePair] = frozenset()  # old, new: the one lives on in the other
    apart: frozenset[ScenePair] = frozenset()  # old, new: it does not
    unreached: frozenset[int] = frozenset()  # old: if no new one goes on from it, the revision has not come there yet
    reached: frozenset[int] = frozenset()  # old: if no new one goes on from it, it was cut


def overruled(found: Comparison, said: Said) -> Comparison:
    """The comparison as the writer has it: links, fates of scenes, and what has moved, worked out from what she says.

    Pairs of paragraphs stay, and the fates of chapters, which go by words. No text is matched again.
    """
    if said == Said():
        return found
    sizes = Sizes(found.old_words, found.new_words)
    links = _linked(found, said, sizes)
    reached = reached_by(links) if found.part_way else None
    told = tuple(_said_of(fate, said) for fate in fates(links, sizes.old, sizes.new, reached=reached))
    ruled = replace(found, links=tuple(links), scenes=told)
    aside = _moved(links) | (said.apart - said.linked).intersection(_homes(found))
    return ruled if aside == _moved(found.links) else _in_order(ruled, aside)


def _linked(found: Comparison, said: Said, sizes: Sizes) -> list[Link]:
    """The links that stand, by old scene, then new, each with whether it has moved."""
    kept, places = _between_scenes(found)
    links = {(link.old, link.new): link for link in found.links if (link.old, link.new) not in said.apart}
    links |= {pair: Link(*pair, kept.get(pair, 0), False, 1.0, ("said",)) for pair in said.linked}
    worded = sorted(pair for pair, link in links.items() if "position" not in link.why)  # others stand where they stood
    moved = {pair for pair, gone in zip(worded, moved_among(worded, kept, places, sizes), strict=True) if gone}
    moved |= _out_of_order(
        said.linked - places.keys(), [pair for pair in worded if pair in places and pair not in moved]
    )
    return [replace(links[pair], moved=pair in moved) for pair in sorted(links)]


def _between_scenes(found: Comparison) -> tuple[Kept, Places]:
    """Words kept between each two scenes, and the pair of paragraphs between them that keeps most."""
    kept: Counter[ScenePair] = Counter()
    main: dict[ScenePair, Pair] = {}
    for pair, home in zip(found.pairs, _homes(found), strict=True):
        kept[home] += pair.kept
        if home not in main or pair.kept > main[home].kept:
            main[home] = pair
    return kept, {home: (pair.old, pair.new) for home, pair in main.items()}


def _homes(found: Comparison) -> list[ScenePair]:
    """The old and new scene of each pair of paragraphs."""
    old, new = found.old.scene_at(), found.new.scene_at()
    return [(old[pair.old], new[pair.new]) for pair in found.pairs]


def _out_of_order(wordless: AbstractSet[ScenePair], in_order: Sequence[ScenePair]) -> set[ScenePair]:
    """Of links that keep no words, those that cross the order of the rest, or of one another."""
    pairs = sorted({*wordless, *in_order})
    weights = [1.0 if pair in wordless else float(len(pairs)) for pair in pairs]
    return set(wordless) - {pairs[place] for place in heaviest(pairs, weights, shared=True)}


def _said_of(fate: Fate, said: Said) -> Fate:
    """What she says of a scene that stands alone."""
    if fate.old and fate.new:
        return fate
    if said.unreached.issuperset(fate.old) and fate.old:
        return replace(fate, became="not reached", sure=1.0, why=("said",))
    if said.reached.issuperset(fate.old) and fate.old:
        return replace(fate, became="cut", sure=1.0, why=("said",))
    parted = any(old in fate.old or new in fate.new for old, new in said.apart)
    return replace(fate, sure=1.0, why=("said",)) if parted else fate


def _in_order(found: Comparison, aside: AbstractSet[ScenePair]) -> Comparison:
    """With the paragraphs that have moved, told anew; those that two scenes of `aside` share follow the rest."""
    kept = {(pair.old, pair.new): pair.kept for pair in found.pairs}
    runs = runs_in_scenes(list(kept), list(kept.values()), _homes(found), aside)
    gone = set(chain.from_iterable(runs.moved))
    return replace(
        found,
        pairs=tuple(
            pair if pair.moved == ((pair.old, pair.new) in gone) else replace(pair, moved=not pair.moved)
            for pair in found.pairs
        ),
        blocks=tuple(
            Block((run[0][0], run[-1][0] + 1), (run[0][1], run[-1][1] + 1), sum(kept[pair] for pair in run))
            for run in runs.moved
        ),
        totals=replace(found.totals, moved=sum(kept[pair] for pair in gone)),
    )


def _moved(links: Sequence[Link]) -> set[ScenePair]:
    return {(link.old, link.new) for link in links if link.moved}
