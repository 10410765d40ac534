"""The scenes of two drafts joined: by bookmarks, by the words they keep, and last by what they are about."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from afterdraft.comparison.chain import heaviest
from afterdraft.comparison.comparison import Link, Reason
from afterdraft.comparison.linking import Kept, linked
from afterdraft.comparison.told import Told

MOST = 0.5  # share of a scene's words that makes a link the scene itself; less is a part of it
PART = 0.3  # what a part weighs against a whole scene, where it is asked which have moved
LATER = 1e-6  # of two scenes that changed places, the one that is told later than before has moved
SURE = 0.6  # of a link that rests on hardly any words; from 0.4 of them kept it is certain


Places = Mapping[tuple[int, int], tuple[int, int]]  # for two scenes, where the pair of units lies that keeps most words


@dataclass(frozen=True, slots=True)
class Sizes:
    """Words of each scene, old and new."""

    old: Sequence[int]
    new: Sequence[int]


def scene_links(old: Told, new: Told, kept: Kept, places: Places, words: Sizes) -> list[Link]:
    """By old scene, then new. `places` covers all scenes that share words."""
    marked = _bookmarked(old, new)
    pairs = sorted(marked | {pair for pair in linked(kept, words.old, words.new) if _allowed(pair, marked)})
    moved = moved_among(pairs, kept, places, words)
    return [
        Link(
            *pair,
            kept.get(pair, 0),
            moved[place],
            1.0 if pair in marked else sureness(_share(pair, kept, words)),
            _why(pair in marked, pair in kept),
        )
        for place, pair in enumerate(pairs)
    ]


def sureness(share: float) -> float:
    """How sure a link is that rests on words, by the share kept."""
    return round(min(1.0, SURE + share), 2)


def moved_among(
    pairs: Sequence[tuple[int, int]],
    kept: Kept,
    places: Places,
    words: Sizes,
) -> list[bool]:
    """Whether each pair of scenes lies outside the longest run that is told in the order it was told in."""
    placed = [place for place, pair in enumerate(pairs) if pair in places]
    weights = [
        (1.0 if _share(pairs[place], kept, words) >= MOST else PART) + LATER * pairs[place][0] for place in placed
    ]
    in_order = {placed[n] for n in heaviest([places[pairs[place]] for place in placed], weights, shared=True)}
    return [place not in in_order and pair in places for place, pair in enumerate(pairs)]


def _share(pair: tuple[int, int], kept: Kept, words: Sizes) -> float:
    count = kept.get(pair, 0)
    return max(count / max(words.old[pair[0]], 1), count / max(words.new[pair[1]], 1))


def _bookmarked(old: Told, new: Told) -> set[tuple[int, int]]:
    homes = {scene.bookmark: index for index, scene in enumerate(old.scenes) if scene.bookmark}
    return {(homes[scene.bookmark], index) for index, scene in enumerate(new.scenes) if scene.bookmark in homes}


def _allowed(pair: tuple[int, int], marked: set[tuple[int, int]]) -> bool:
    """Words do not join two scenes that bookmarks both join to others."""
    olds, news = {old for old, _ in marked}, {new for _, new in marked}
    return not (pair[0] in olds and pair[1] in news)


def _why(marked: bool, worded: bool) -> tuple[Reason, ...]:
    reasons: tuple[tuple[Reason, bool], ...] = (("bookmark", marked), ("words", worded))
    return tuple(reason for reason, holds in reasons if holds)
