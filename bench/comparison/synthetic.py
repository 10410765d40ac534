"""Every novel of a half revised by every seed, and scored: `python -m bench.comparison.synthetic [tune|report]`."""

import sys
from collections import Counter

from bench.comparison.halves import novels, scenes
from bench.comparison.revise import revision
from bench.comparison.score import Tally, score
from bench.structure.halves import Half

SEEDS = range(10)


def measured(which: Half, *, seeds: range = SEEDS) -> Tally:
    """Each novel lends its paragraphs to the one before it, for what is told anew or put in."""
    tally = Tally()
    books = novels(which)
    for place, novel in enumerate(books):
        donor = [paragraph for scene in scenes(books[(place + 1) % len(books)]) for paragraph in scene]
        for seed in seeds:
            score(revision(scenes(novel), donor, seed), tally, seed=seed)
    return tally


def main() -> None:
    """What was right, and on the tune half what was wrong, commonest first."""
    which: Half = "report" if "report" in sys.argv else "tune"
    tally = measured(which, seeds=range(2) if "quick" in sys.argv else SEEDS)
    for name in sorted({name.rsplit(" ", 1)[0] for name in tally.counts if name.endswith(" all")}):
        print(f"{name:34} {tally.share(name):.4f}  of {tally.counts[f'{name} all']}")
    print("anchors wrong", tally.counts["anchors wrong"])
    if which == "tune":
        print(Counter(line.split(":")[0].split(" (")[0] for line in tally.wrong).most_common(12))
        print("\n".join(tally.wrong[:: max(1, len(tally.wrong) // 60)]))


if __name__ == "__main__":
    main()
