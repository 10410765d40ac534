"""What is told of a comparison once it was made, timed: what a page waits for. `python -m bench.comparison.using`."""

import json
import time
from collections.abc import Callable, Iterator
from functools import partial
from typing import TypeVar

from afterdraft.comparison.compare import compare
from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.earlier import offcuts_of_all, search
from afterdraft.comparison.kept_form import from_form, key, to_form
from afterdraft.comparison.said import Said, overruled
from afterdraft.comparison.side_by_side import rows_of
from bench.comparison.revise import revision
from bench.comparison.score import told
from bench.comparison.timing import SMALLEST, Scenes, book, pairs
from bench.report import Figure

Result = TypeVar("Result")
ROUNDS = 5  # of which the quickest counts
DRAFTS, WORDS = 10, 100_000
ASKED = 'window "in the'  # a word that stands in many passages and a phrase
READ_BACK = 20.0  # ms, at most, for a pair of the smallest size


def measured() -> Iterator[Figure]:
    """Milliseconds that the processor worked, but for the ten drafts."""
    name, old, new, _ = pairs()[0]
    found = compare(told(old), told(new))
    yield from _kept(found, name)
    link = next(link for link in found.links if not link.moved)
    said = Said(apart=frozenset({(link.old, link.new)}))
    yield Figure(f"a link denied, {name}", _quickest(lambda: overruled(found, said))[0], unit="ms")
    times = sorted(_quickest(partial(rows_of, found, fate.old, fate.new))[0] for fate in found.scenes)
    longest = max(sum(found.old_words[one] for one in fate.old) for fate in found.scenes)
    yield Figure("scenes side by side, the median one", times[len(times) // 2], unit="ms")
    yield Figure("scenes side by side, the slowest", times[-1], unit="ms", note=f"up to {longest:,} words")
    yield from _ten()


def _kept(found: Comparison, name: str) -> Iterator[Figure]:
    text = json.dumps(to_form(found), separators=(",", ":"))
    spent, back = _quickest(lambda: from_form(json.loads(text), found.old, found.new))
    assert back == found
    yield Figure(f"a kept comparison read back, {name}", spent, unit="ms", target=READ_BACK)
    yield Figure(f"its size, {name}", len(text) / 1000, unit="kB")
    yield Figure(f"its key, {name}", _quickest(lambda: key(found.old, found.new, part_way=False))[0], unit="ms")


def _ten() -> Iterator[Figure]:
    """Each draft revises the one before; all are compared with the last."""
    donor = [paragraph for scene in book(400_000, skip=SMALLEST) for paragraph in scene]
    drafts: list[Scenes] = [book(WORDS)]
    for seed in range(DRAFTS):
        drafts.append(revision(drafts[-1], donor, seed).new)
    earlier = [told(one) for one in drafts]
    found = [(number, compare(one, earlier[-1])) for number, one in enumerate(earlier[:-1])]
    spent, offered = _quickest(lambda: offcuts_of_all(found), rounds=2)
    words = sum(len(one.text.split()) for one in offered)
    note = f"{len(offered):,} passages of {words:,} words"
    yield Figure(f"offcuts of {DRAFTS} earlier drafts of {WORDS:,} words", spent / 1000, unit="s", note=note)
    spent, hits = _quickest(lambda: search(offered, ASKED))
    yield Figure("looking words up in them", spent, unit="ms", note=f"{len(hits)} found")


def _quickest(act: Callable[[], Result], *, rounds: int = ROUNDS) -> tuple[float, Result]:
    """Milliseconds of the quickest round, and what it gave."""
    spent: list[float] = []
    for _ in range(rounds):
        before = time.process_time()
        result = act()
        spent.append(time.process_time() - before)
    return 1000 * min(spent), result


if __name__ == "__main__":
    for figure in measured():
        print(f"{figure.name:55} {figure.value:10.2f} {figure.unit:3} {figure.note}")
