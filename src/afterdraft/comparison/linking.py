"""Which scenes, or chapters, live on in which: many to many, by the words they keep."""

from collections import Counter, defaultdict
from collections.abc import Mapping, Sequence

Kept = Mapping[tuple[int, int], int]  # words, by old and new unit
BEST = 0.15  # share of either side's words, for two that keep more of each other than of anything else
OTHER = 0.3  # of one side, which keeps more of the other than of anything else: a part split off, a scene taken in;
# a paragraph saved from a scene that was cut is less, and does not make the scene live on


def linked(kept: Kept, old_words: Sequence[int], new_words: Sequence[int]) -> list[tuple[int, int]]:
    """Old and new index of each link, in order."""
    best_old, best_new = _best(kept)
    found = []
    for (old, new), words in kept.items():
        of_old, of_new = words / max(old_words[old], 1), words / max(new_words[new], 1)
        ours, theirs = best_old[old] == new, best_new[new] == old
        mutual = ours and theirs and max(of_old, of_new) >= BEST
        if mutual or (ours and of_old >= OTHER) or (theirs and of_new >= OTHER):
            found.append((old, new))
    return sorted(found)


def hanging_together(links: Sequence[tuple[int, int]]) -> list[tuple[tuple[int, ...], tuple[int, ...]]]:
    """Old and new indices of each group that is joined by links."""
    news: defaultdict[int, set[int]] = defaultdict(set)
    olds: defaultdict[int, set[int]] = defaultdict(set)
    for old, new in links:
        news[old].add(new)
        olds[new].add(old)
    groups = []
    seen: set[int] = set()
    for start in sorted(news):
        if start not in seen:
            group_old, group_new = _group(start, news, olds)
            seen |= group_old
            groups.append((tuple(sorted(group_old)), tuple(sorted(group_new))))
    return groups


def _group(start: int, news: Mapping[int, set[int]], olds: Mapping[int, set[int]]) -> tuple[set[int], set[int]]:
    group_old, group_new = {start}, set[int]()
    ahead = [start]
    while ahead:
        for new in news[ahead.pop()] - group_new:
            group_new.add(new)
            ahead += olds[new] - group_old
            group_old |= olds[new]
    return group_old, group_new


def _best(kept: Kept) -> tuple[dict[int, int], dict[int, int]]:
    """For each old index the new one it keeps most words with, and the other way round; the first of equals."""
    ours: dict[int, int] = {}
    theirs: dict[int, int] = {}
    for (old, new), words in sorted(kept.items()):
        if old not in ours or words > kept[old, ours[old]]:
            ours[old] = new
        if new not in theirs or words > kept[theirs[new], new]:
            theirs[new] = old
    return ours, theirs


def summed(kept: Kept, old_home: Sequence[int], new_home: Sequence[int]) -> Counter[tuple[int, int]]:
    """The words kept between larger units; `…_home` say which each smaller one lies in."""
    total: Counter[tuple[int, int]] = Counter()
    for (old, new), words in kept.items():
        total[old_home[old], new_home[new]] += words
    return total
