"""What drafts that nobody had worked on were asked, as they were asked first, and how it was judged: by check.

`as_first_asked.json` has a line for each such question. Later judgements of the same drafts are of checks that were
mended by these, and say nothing about the next draft.
"""

import json
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from bench.judged.judgements import FOLDER as FINISHED
from bench.judged.judgements import VERDICTS, Verdict, judgements

KEPT = Path(__file__).parent / "as_first_asked.json"
FEW, HALF = 3, 1 / 2  # questions from which a check is known, and the share of good ones that it has to have


@dataclass(frozen=True, slots=True)
class Fresh:
    set: int  # the drafts that were asked together
    draft: str
    check: str
    verdict: Verdict
    at_first: bool = True  # whether the check asked at first then; the others were let ask, to be judged


def fresh() -> Sequence[Fresh]:
    return [Fresh(**one) for one in json.loads(KEPT.read_text("utf-8"))]


def by_check(asked: Sequence[Fresh]) -> Mapping[str, Counter[Verdict]]:
    found: defaultdict[str, Counter[Verdict]] = defaultdict(Counter)
    for one in asked:
        found[one.check][one.verdict] += 1
    return found


def finished() -> Mapping[str, Counter[Verdict]]:
    """The same of all that was ever asked of finished novels and judged."""
    known = [one for path in sorted(FINISHED.glob("*.json")) for one in judgements(path.stem)]
    found: defaultdict[str, Counter[Verdict]] = defaultdict(Counter)
    for one in known:
        found[one.check][one.verdict] += 1
    return found


def in_vain(drafts: Mapping[str, Counter[Verdict]], novels: Mapping[str, Counter[Verdict]]) -> frozenset[str]:
    """Checks whose questions are answered in the text, or mistaken, so often that they should not ask at first: of
    fresh drafts, or where they asked too few of them, of these and finished novels."""
    known = {check: drafts.get(check, Counter()) for check in {*drafts, *novels}}
    asked = {check: one if one.total() >= FEW else one + novels.get(check, Counter()) for check, one in known.items()}
    return frozenset(check for check, one in asked.items() if one.total() >= FEW and one["good"] < HALF * one.total())


def table(asked: Sequence[Fresh]) -> Iterator[str]:
    """By check: the most often asked first."""
    yield from ("| check | good | answered | mistaken |", "|---|" + len(VERDICTS) * "---:|")
    for check, verdicts in sorted(by_check(asked).items(), key=lambda one: (-one[1].total(), one[0])):
        yield f"| {check} | " + " | ".join(str(verdicts[one]) for one in VERDICTS) + " |"
