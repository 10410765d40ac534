"""What became of each scene, or chapter, told from the links between them."""

from collections.abc import Sequence

from afterdraft.comparison.comparison import Became, Fate, Link
from afterdraft.comparison.linking import hanging_together

SAME = 0.999  # share of both sides' words kept
REVISED = 0.85
GONE_SURE = 0.9  # of a scene that was cut or is new: it has no link, and none was offered


def fates(
    links: Sequence[Link], old_words: Sequence[int], new_words: Sequence[int], *, reached: int | None = None
) -> tuple[Fate, ...]:
    """In the new draft's order, with what was cut after what stood before it.

    `reached` is how far a part-way draft goes: old ones from there on that have no link are not reached, and not cut.
    """
    by_pair = {(link.old, link.new): link for link in links}
    groups = hanging_together(sorted(by_pair))
    found = [_grown(group, by_pair, old_words, new_words) for group in groups]
    with_old = {index for group in groups for index in group[0]}
    with_new = {index for group in groups for index in group[1]}
    limit = len(old_words) if reached is None else reached
    found += [_alone(old=index, gone="cut" if index < limit else "not reached") for index in _lone(old_words, with_old)]
    found += [_alone(new=index) for index in _lone(new_words, with_new)]
    return tuple(_ordered(found))


def reached_by(links: Sequence[Link]) -> int:
    """How far a part-way draft goes: one beyond the last old scene that lives on in its order."""
    return 1 + max((link.old for link in links if not link.moved), default=-1)


def _grown(
    group: tuple[tuple[int, ...], tuple[int, ...]],
    by_pair: dict[tuple[int, int], Link],
    old_words: Sequence[int],
    new_words: Sequence[int],
) -> Fate:
    olds, news = group
    own = [link for pair, link in by_pair.items() if pair[0] in olds and pair[1] in news]
    total = sum(old_words[one] for one in olds) + sum(new_words[one] for one in news)
    kept = 2 * sum(link.kept for link in own) / total if total else 1.0
    return Fate(
        olds,
        news,
        _became(len(olds), len(news), kept),
        any(link.moved for link in own),
        kept,
        min(link.sure for link in own),
        tuple(dict.fromkeys(reason for link in own for reason in link.why)),
    )


def _became(olds: int, news: int, kept: float) -> Became:
    """Where several became several, by which side has more; as many on both were told anew."""
    if olds != news:
        return "split" if olds < news else "joined"
    if olds > 1:
        return "rewritten"
    return "same" if kept >= SAME else "revised" if kept >= REVISED else "rewritten"


def _alone(*, old: int | None = None, new: int | None = None, gone: Became = "cut") -> Fate:
    if old is not None:
        return Fate((old,), (), gone, False, 0.0, GONE_SURE, ())
    return Fate((), () if new is None else (new,), "new", False, 0.0, GONE_SURE, ())


def _lone(words: Sequence[int], joined: set[int]) -> list[int]:
    return [index for index in range(len(words)) if index not in joined]


def _ordered(found: Sequence[Fate]) -> list[Fate]:
    """By the new draft; what is gone stands after what its forerunner became."""
    place = {old: fate.new[0] for fate in found if fate.new for old in fate.old}
    keys = {}
    last = -1
    for old in sorted({old for fate in found for old in fate.old}):
        last = place.get(old, last)
        keys[old] = last
    return sorted(found, key=lambda fate: (fate.new[0], 0, 0) if fate.new else (keys[fate.old[0]], 1, fate.old[0]))
