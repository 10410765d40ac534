"""The bench of unmarked breaks as a section of the results."""

import random
import time
from collections.abc import Callable, Iterator, Mapping, Sequence
from functools import cache, partial
from itertools import pairwise

from afterdraft.manuscript.draft import Suggestion
from afterdraft.manuscript.unmarked import suggested
from bench.report import Figure, Section
from bench.structure.halves import Half
from bench.unmarked import texttiling
from bench.unmarked.measures import Case, Measured, measured
from bench.unmarked.truth import Blind, Kind, novels

TARGET = 0.27
SEEDS = 20  # random guesses, of which the middle one is told
BANDS = (0.0, 0.1, 0.2, 0.3, 1.01)  # of strength
Finder = Callable[[Blind], list[list[int]]]  # paragraphs found in each stretch


def measure(*, full: bool) -> Section:
    typed = novels("hr", "report")
    seconds = min(_seconds(typed) for _ in range(3))
    score = measured(_cases(typed, _ours)).count.f1
    habit = measured(_cases([one for one in typed if one.by_habit], _ours)).count.f1
    floor = max(measured(_cases(typed, finder)).count.f1 for finder in (_tiles, _deepest))
    return Section(
        title="Unmarked scene breaks",
        corpus=(
            "The typed breaks of the corpus folder's novels are removed and looked for ([how](unmarked/README.md)). "
            "Weights are from the tune half; the figures are of the report half. A place counts within one paragraph."
        ),
        figures=(
            Figure(
                "F1 at ± 1 paragraph, novels with a break",
                score,
                target=TARGET,
                at_most=False,
                reference=f"TextTiling {floor:.4f}",
            ),
            Figure("F1 at ± 1 paragraph, novels that mark breaks as a habit", habit, target=TARGET, at_most=False),
            Figure("time for 120,000 words", seconds, unit="s", target=0.3),
        ),
        lines=tuple(_lines()),
    )


def _lines() -> Iterator[str]:
    heads = ("breaks", "novels", "method", "right", "found", "there", "precision", "recall", "F1", "Pk", "WindowDiff")
    yield f"| {' | '.join(heads)} | boundary similarity |"
    yield "|---|---|---|" + "---:|" * 9
    for name, some in _groups():
        for method, finder in METHODS.items():
            yield _row(name, method, measured(_cases(some, finder)))
        yield _row(name, "random, as many", _random(some))
    yield ""
    yield "Pk and WindowDiff: lower is better. They and boundary similarity are means over stretches that have a break."
    yield ""
    yield "| strength | places, report half | of these right |"
    yield "|---|---:|---:|"
    yield from _bands(novels("hr", "report"))
    yield ""
    yield "| novel, report half | right | found | there |"
    yield "|---|---:|---:|---:|"
    for novel in novels("hr", "report"):
        one = measured(_cases([novel], _ours)).count
        yield f"| {novel.slug} | {one.right} | {one.found} | {one.expected} |"


def _groups() -> Iterator[tuple[str, list[Blind]]]:
    kinds: Mapping[Kind, str] = {"hr": "typed", "section": "headed sections"}
    sides: tuple[Half, ...] = ("report", "tune")
    for side in sides:
        for kind, name in kinds.items():
            some = novels(kind, side)
            yield f"{name} | {side}, all with one", some
            if kind == "hr":
                yield f"{name} | {side}, as a habit", [one for one in some if one.by_habit]


def _row(name: str, method: str, found: Measured) -> str:
    one = found.count
    shares = (one.precision, one.recall, one.f1, found.pk, found.window_diff, found.similarity)
    cells = [str(one.right), str(one.found), str(one.expected), *(f"{share:.3f}" for share in shares)]
    return f"| {name} | {method} | " + " | ".join(cells) + " |"


def _cases(some: Sequence[Blind], finder: Finder) -> list[Case]:
    return [
        Case(len(stretch.texts), stretch.breaks, found)
        for novel in some
        for stretch, found in zip(novel.stretches, finder(novel), strict=True)
    ]


def _ours(novel: Blind) -> list[list[int]]:
    found: list[list[int]] = [[] for _ in novel.stretches]
    for stretch, one in _suggested(novel):
        found[stretch].append(one.paragraph)
    return found


def _tiles(novel: Blind) -> list[list[int]]:
    return [texttiling.boundaries(stretch.texts) for stretch in novel.stretches]


def _deepest(novel: Blind) -> list[list[int]]:
    """TextTiling's deepest valleys, as many in the novel as there are suggestions: a floor without its many tiles."""
    ranked = [
        (depth, number, at)
        for number, stretch in enumerate(novel.stretches)
        for at, depth in texttiling.ranked(stretch.texts)
    ]
    best = sorted(ranked, reverse=True)[: len(_suggested(novel))]
    return [sorted(at for _, n, at in best if n == number) for number in range(len(novel.stretches))]


METHODS: Mapping[str, Finder] = {"suggestions": _ours, "TextTiling": _tiles, "TextTiling, as many": _deepest}


def _random(some: Sequence[Blind]) -> Measured:
    """The middle one, by F1, of guesses: as many in each novel as there are suggestions, anywhere in it."""
    guesses = [measured(_cases(some, partial(_guess, seed=seed))) for seed in range(SEEDS)]
    return sorted(guesses, key=lambda one: one.count.f1)[SEEDS // 2]


def _guess(novel: Blind, *, seed: int) -> list[list[int]]:
    gaps = [(n, at) for n, stretch in enumerate(novel.stretches) for at in range(1, len(stretch.texts))]
    picked = random.Random(f"{novel.slug} {seed}").sample(gaps, len(_suggested(novel)))
    return [sorted(at for n, at in picked if n == number) for number in range(len(novel.stretches))]


def _bands(some: Sequence[Blind]) -> Iterator[str]:
    pairs = [
        (one.strength, any(abs(one.paragraph - true) <= 1 for true in novel.stretches[stretch].breaks))
        for novel in some
        for stretch, one in _suggested(novel)
    ]
    for low, high in pairwise(BANDS):
        rights = [right for strength, right in pairs if low <= strength < high]
        share = f"{sum(rights) / len(rights):.2f}" if rights else "–"
        yield f"| {low:.1f} to {min(high, 1):.1f} | {len(rights)} | {share} |"


@cache
def _suggested(novel: Blind) -> list[tuple[int, Suggestion]]:
    return suggested([stretch.texts for stretch in novel.stretches])


def _seconds(some: Sequence[Blind]) -> float:
    """The time all of them take, for 120,000 words."""
    start = time.perf_counter()
    for novel in some:
        suggested([stretch.texts for stretch in novel.stretches])
    return (time.perf_counter() - start) / sum(novel.words for novel in some) * 120_000
