"""The bench of comparing two drafts as a section of the results."""

from collections.abc import Iterator

from bench.comparison import drafts, timing, using
from bench.comparison.score import LENGTHS, Tally
from bench.comparison.synthetic import SEEDS, measured
from bench.comparison.timing import Timed
from bench.report import Figure, Section

RECALL = dict(zip(LENGTHS, (0.985, 0.92, 0.85), strict=True))
SHARES = {
    "scene links, recall": ("links recall", 0.99),
    "scene links, precision": ("links precision", 0.99),
    "moved scenes, recall": ("moves recall", 0.98),
    "moved scenes, precision": ("moves precision", 0.98),
    "what became of each scene": ("fates", 0.97),
    **{f"paragraphs of {name}, recall": (f"recall {name}", RECALL[name]) for name in LENGTHS},
    "paragraphs, precision": ("precision", 0.995),
    "unique anchors of 5 words, placed": ("anchors", 0.995),
}
QUICK = range(3)  # seeds of the sample


def measure(*, full: bool) -> Section:
    seeds = SEEDS if full else QUICK
    tally = measured("report", seeds=seeds)
    tuned = measured("tune", seeds=seeds) if full else None
    real = drafts.measured()
    sizes = [timing.timed(*pair) for pair in timing.pairs()]
    worst = [timing.timed(*pair, timing.WORST_ROUNDS, others=False) for pair in timing.worst()]
    return Section(
        title="Two drafts compared",
        corpus=(
            f"Six novels of the report half, each revised by {len(seeds)} seeds ([how](comparison/README.md)): "
            f"{tally.counts['fates all']:,} scenes, {tally.counts['precision all']:,} pairs of paragraphs. "
            "The novel of 1818 and 1831: its published map. Times: the quickest run of nine, three, one by size, both "
            "drafts in memory."
        ),
        figures=(*_shares(tally), *_real(real), *_times(sizes), *using.measured()),
        lines=(*_parts(tally, tuned), "", *_table(sizes, worst)),
    )


def _shares(tally: Tally) -> Iterator[Figure]:
    for name, (key, target) in SHARES.items():
        yield Figure(name, tally.share(key), target=target, at_most=False)
    yield Figure("anchors placed wrongly", tally.counts["anchors wrong"], unit="anchors", target=0)


def _real(real: drafts.Found) -> Iterator[Figure]:
    yield Figure("1818 and 1831: chapter links, precision", real.precision, target=1.0, at_most=False)
    yield Figure("1818 and 1831: chapter links, recall", real.recall, target=1.0, at_most=False)
    note = f"{real.listed} listed in story chapters"
    yield Figure("1818 and 1831: listed pairs of paragraphs", real.pairs, target=0.99, at_most=False, note=note)


def _times(sizes: list[Timed]) -> Iterator[Figure]:
    first, last = sizes[0], sizes[-1]
    if "wdiff" in first.others:
        wdiff = first.others["wdiff"]
        share, worked = first.ours.seconds / wdiff.seconds, first.ours.processor / wdiff.processor
        yield Figure(f"time against wdiff, {first.name}", share, target=0.6, reference="wdiff in this run")
        yield Figure(f"processor time against wdiff, {first.name}", worked, target=0.6, reference="wdiff in this run")
    yield Figure(f"memory, {first.name}", first.ours.peak, unit="MB", target=300)
    yield Figure(f"time, {last.name}", last.ours.seconds, unit="s", target=8)
    yield Figure(f"memory, {last.name}", last.ours.peak, unit="MB", target=350)


def _parts(tally: Tally, tuned: Tally | None) -> Iterator[str]:
    """Every share that was counted, of both halves where both were."""
    names = sorted({key.removesuffix(" all") for key in tally.counts if key.endswith(" all")})
    yield "| share | report | of | tune |"
    yield "|---|---:|---:|---:|"
    for name in names:
        beside = f"{tuned.share(name):.4f}" if tuned else ""
        yield f"| {name} | {tally.share(name):.4f} | {tally.counts[f'{name} all']:,} | {beside} |"


def _table(sizes: list[Timed], worst: list[Timed]) -> Iterator[str]:
    others = list(sizes[0].others)
    yield f"| drafts | compared | whole process | {' | '.join(others)} |"
    yield "|---|---:|---:|" + "---:|" * len(others)
    for one in (*sizes, *worst):
        beside = [_cost(one.others[other]) if other in one.others else "" for other in others]
        yield f"| {one.name} | {_cost(one.ours)} | {one.whole:.2f} s | {' | '.join(beside)} |"
    yield ""
    yield "Times are seconds that passed, then those that the processor worked: the second say more on a busy machine."
    yield "The worst cases are of 120,000 words. `git diff` finds what moved by lines only, not with words."


def _cost(cost: timing.Cost) -> str:
    return f"{cost.seconds:.2f} s, {cost.processor:.2f} s, {cost.peak:.0f} MB"
