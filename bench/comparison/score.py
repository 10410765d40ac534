"""What comparison makes of a synthetic revision, scored against the truth of it."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import accumulate, pairwise
from random import Random

from afterdraft.comparison.carrying import Carrier
from afterdraft.comparison.compare import compare
from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.told import Told, ToldScene
from bench.comparison.revise import Revision, unique

LENGTHS = {"15 words and more": (15, 10**9), "6 to 14 words": (6, 14), "1 to 5 words": (0, 5)}  # of the old paragraph
ANCHOR = 5  # words
ANCHORS = 200  # tried in each revision
MARK = 4  # words of a short passage, at most: it may stand many times


@dataclass(slots=True)
class Tally:
    """Counts over revisions, and examples of what went wrong."""

    counts: Counter[str] = field(default_factory=Counter)
    wrong: list[str] = field(default_factory=list)

    def count(self, name: str, right: int, total: int) -> None:
        self.counts[f"{name} right"] += right
        self.counts[f"{name} all"] += total

    def share(self, name: str) -> float:
        return self.counts[f"{name} right"] / max(1, self.counts[f"{name} all"])


def told(scenes: Sequence[Sequence[str]]) -> Told:
    ends = list(accumulate(map(len, scenes)))
    return Told(
        tuple(paragraph for scene in scenes for paragraph in scene),
        tuple(ToldScene(end - len(scene), end, 0) for scene, end in zip(scenes, ends, strict=True)),
    )


def score(revision: Revision, tally: Tally, *, seed: int) -> Comparison:
    """Add one revision to the tally."""
    found = compare(told(revision.old), told(revision.new))
    links = {(link.old, link.new) for link in found.links}
    # a scene in wholly new words is offered, not known: its link is scored by itself
    offered = {(link.old, link.new) for link in found.links if not link.kept}
    asked = {link for link in revision.links if link[0] not in revision.anew}
    sure = links - offered - {link for link in revision.links if link[0] in revision.anew}
    tally.count("links recall", len(asked & links), len(asked))
    tally.count("links precision", len(sure & asked), len(sure))
    tally.count("offers recall", len(revision.links & links) - len(asked & links), len(revision.links) - len(asked))
    tally.count("offers precision", len(offered & revision.links), len(offered))
    _moves(revision, found, tally)
    _fates(revision, found, tally)
    _paragraphs(revision, found, tally)
    _anchors(revision, found, tally, Random(seed))
    _marks(revision, found, tally, Random(seed))
    tally.wrong += [f"link missed {one} {revision.became[one[0]]}" for one in sorted(asked - links)]
    tally.wrong += [f"link false {one} {revision.became[one[0]]}" for one in sorted(sure - asked)]
    return found


def _moves(revision: Revision, found: Comparison, tally: Tally) -> None:
    """Another choice of as few scenes, without which the rest keeps its order, is as true."""
    said = {(link.old, link.new) for link in found.links if link.moved}
    truth = revision.moved
    if len(said) <= len(truth) and _in_order(revision.links - said):
        tally.count("moves recall", len(truth), len(truth))
        tally.count("moves precision", len(said), len(said))
        return
    tally.count("moves recall", len(said & truth), len(truth))
    tally.count("moves precision", len(said & truth), len(said))
    tally.wrong += [f"move missed {one}" for one in sorted(truth - said)] + [
        f"move false {one}" for one in sorted(said - truth)
    ]


def _in_order(links: frozenset[tuple[int, int]] | set[tuple[int, int]]) -> bool:
    ordered = sorted(links)
    return all(before[1] <= after[1] for before, after in pairwise(ordered))


def _fates(revision: Revision, found: Comparison, tally: Tally) -> None:
    said = {old: fate.became for fate in found.scenes for old in fate.old}
    for old, truth in revision.became.items():
        right = said[old] == truth
        tally.count("fates", right, 1)
        tally.count(f"fates, {'told anew' if old in revision.anew else truth}", right, 1)
        if not right:
            tally.wrong.append(f"fate {old}: {truth}{' anew' if old in revision.anew else ''} said {said[old]}")
    fresh = {at for at in range(len(revision.new)) if at not in {new for _, new in revision.links}}
    new = {at for fate in found.scenes if fate.became == "new" for at in fate.new}
    tally.count("fates", len(fresh & new), len(fresh))
    tally.count("fates, new", len(fresh & new), len(fresh))


def _paragraphs(revision: Revision, found: Comparison, tally: Tally) -> None:
    old, new = found.old.paragraphs, found.new.paragraphs
    said = {(pair.old, pair.new) for pair in found.pairs}
    for name, (least, most) in LENGTHS.items():
        asked = {pair for pair in revision.pairs if least <= len(old[pair[0]].split()) <= most}
        there = {pair for pair in said if least <= len(old[pair[0]].split()) <= most}
        tally.count(f"recall {name}", len(asked & there), len(asked))
        tally.count(f"precision {name}", len(there & revision.pairs), len(there))
    tally.count("precision", len(said & revision.pairs), len(said))
    moved = {(pair.old, pair.new) for pair in found.pairs if pair.moved}
    tally.count("single paragraphs moved", len(revision.strays & moved), len(revision.strays))
    tally.wrong += [f"pair false: {old[a][:70]} || {new[b][:70]}" for a, b in sorted(said - revision.pairs)[:40]]
    tally.wrong += [f"pair missed: {old[a][:70]} || {new[b][:70]}" for a, b in sorted(revision.pairs - said)[:40]]


def _anchors(revision: Revision, found: Comparison, tally: Tally, chance: Random) -> None:
    """Runs of words unique in both drafts, and where they stand now by their words' own memory."""
    old = [paragraph.split() for paragraph in found.old.paragraphs]
    new = [[word for word, _ in paragraph] for paragraph in revision.words]
    both = unique(old, ANCHOR) & unique(new, ANCHOR)
    places = _places(old, both), _places(new, both)
    carrier = Carrier(found)
    for run in chance.sample(sorted(both), min(ANCHORS, len(both))):
        paragraph, at = places[0][run]
        start = _start(old[paragraph], at)
        carried = carrier.carried(paragraph, start, start + len(" ".join(run)))
        home, there = places[1][run]
        wanted = home, _start(new[home], there)
        right = carried.state == "there" and (carried.paragraph, carried.start) == wanted
        tally.count("anchors", right, 1)
        tally.counts["anchors wrong"] += carried.state == "there" and not right


def _marks(revision: Revision, found: Comparison, tally: Tally, chance: Random) -> None:
    """Short passages anywhere: there, if their words stand beside one another as they did; else anything but there."""
    old = [paragraph.split() for paragraph in found.old.paragraphs]
    new = [[word for word, _ in paragraph] for paragraph in revision.words]
    homes = {home: (n, at) for n, words in enumerate(revision.words) for at, (_, home) in enumerate(words) if home}
    carrier = Carrier(found)
    for _ in range(ANCHORS):
        paragraph = chance.randrange(len(old))
        many = min(chance.randint(1, MARK), len(old[paragraph]))
        at = chance.randint(0, len(old[paragraph]) - many)
        start = _start(old[paragraph], at)
        carried = carrier.carried(paragraph, start, start + len(" ".join(old[paragraph][at : at + many])))
        first, *rest = (homes.get((paragraph, one), (-1, one)) for one in range(at, at + many))
        if first[0] >= 0 and rest == [(first[0], first[1] + step) for step in range(1, many)]:
            wanted = first[0], _start(new[first[0]], first[1])
            tally.count("short passages, there", (carried.paragraph, carried.start) == wanted, 1)
        else:
            tally.count("short passages, not there", carried.state != "there", 1)


def _start(words: Sequence[str], at: int) -> int:
    """The character that a word begins at."""
    return len(" ".join(words[:at])) + (at > 0)


def _places(
    paragraphs: Sequence[Sequence[str]], wanted: set[tuple[str, ...]]
) -> dict[tuple[str, ...], tuple[int, int]]:
    return {run: place for run, place in _runs(paragraphs) if run in wanted}


def _runs(paragraphs: Sequence[Sequence[str]]) -> Iterator[tuple[tuple[str, ...], tuple[int, int]]]:
    for number, words in enumerate(paragraphs):
        for at in range(len(words) - ANCHOR + 1):
            yield tuple(words[at : at + ANCHOR]), (number, at)
