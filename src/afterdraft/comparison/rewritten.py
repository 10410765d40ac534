"""Scenes told anew in other words: offered by where they stand, what they speak of, who is there and where it is."""

from bisect import bisect_left
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from math import log, sqrt

from afterdraft.comparison.chain import heaviest
from afterdraft.comparison.comparison import Link, Reason
from afterdraft.comparison.told import Told

ABOUT = 0.075  # cosine of what two scenes speak of, at least (chosen on the tune half of the bench)
FACTS = 0.5  # what the same cast, or the same places, weigh against the cosine, by the share they have in common
SURE = (0.5, 0.9)  # of such a link, at least and at most: it is offered, not known
NONE, END = -1, 2**31  # before the first scene and after the last
Vector = Mapping[str, float]
Sides = tuple[Sequence[str], Sequence[str]]  # for each draft, the words of each scene


def rewritten(old: Told, new: Told, links: Sequence[Link], words: Sides) -> list[Link]:
    """Links between scenes that have none, in the same gap of the book; `words` are each scene's, a character each."""
    lone_old = sorted(set(range(len(old.scenes))) - {link.old for link in links})
    lone_new = sorted(set(range(len(new.scenes))) - {link.new for link in links})
    if not lone_old or not lone_new:
        return []
    vectors = _vectors(words, (lone_old, lone_new))
    offers = [
        offer
        for first, second in _side_by_side(lone_old, lone_new, links)
        if (offer := _offer(old, new, (first, second), vectors)) is not None
    ]
    best = heaviest([(link.old, link.new) for _, link in offers], [weight for weight, _ in offers])
    return [offers[place][1] for place in best]


def _side_by_side(olds: Sequence[int], news: Sequence[int], links: Sequence[Link]) -> Iterator[tuple[int, int]]:
    """Each old and new scene that follow on one scene, or that one scene follows; lone ones are passed over."""
    joined = {(link.old, link.new) for link in links} | {(NONE, NONE), (END, END)}
    old_linked = [NONE, *sorted({link.old for link in links}), END]
    new_linked = [NONE, *sorted({link.new for link in links}), END]
    for old in olds:
        at = bisect_left(old_linked, old)
        for new in news:
            there = bisect_left(new_linked, new)
            if {(old_linked[at - 1], new_linked[there - 1]), (old_linked[at], new_linked[there])} & joined:
                yield old, new


def _offer(
    old: Told, new: Told, pair: tuple[int, int], vectors: tuple[Mapping[int, Vector], Mapping[int, Vector]]
) -> tuple[float, Link] | None:
    """How much speaks for it, and the link."""
    first, second = old.scenes[pair[0]], new.scenes[pair[1]]
    about = _cosine(vectors[0][pair[0]], vectors[1][pair[1]])
    cast, place = _shared(first.cast, second.cast), _shared(first.places, second.places)
    if about < ABOUT:
        return None
    weight = about + FACTS * (cast + place)
    why: tuple[Reason, ...] = ("position", "words")
    if cast:
        why += ("cast",)
    if place:
        why += ("place",)
    return weight, Link(*pair, 0, False, round(min(SURE[1], SURE[0] + weight), 2), why)


def _shared(ours: frozenset[str], theirs: frozenset[str]) -> float:
    return len(ours & theirs) / len(ours | theirs) if ours | theirs else 0.0


def _vectors(words: Sides, lone: tuple[Sequence[int], Sequence[int]]) -> tuple[dict[int, Vector], dict[int, Vector]]:
    """Lone scenes' words by how often they stand there and how few scenes have them (tf-idf, Salton & Buckley 1988)."""
    spread: Counter[str] = Counter()
    for side in words:
        for scene in side:
            spread.update(set(scene))
    total = sum(map(len, words))
    first, second = (
        {number: _vector(Counter(side[number]), spread, total) for number in numbers}
        for side, numbers in zip(words, lone, strict=True)
    )
    return first, second


def _vector(scene: Counter[str], spread: Counter[str], total: int) -> Vector:
    return {word: (1 + log(count)) * log(total / spread[word]) for word, count in scene.items()}


def _cosine(one: Vector, other: Vector) -> float:
    product = sum(weight * other[word] for word, weight in one.items() if word in other)
    size = sqrt(sum(w * w for w in one.values()) * sum(w * w for w in other.values()))
    return product / size if size else 0.0
