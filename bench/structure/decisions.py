"""How well the program knows what it does not know: each decision, how sure it was, and whether it asked.

A decision is a place where a chapter or a scene was begun, or should have been. It is right if the place and the
level are. It was doubted if one of the doubts shown lies on the place, and could be mended by it if the doubt's
other reading is what was written.
"""

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from afterdraft.manuscript.division import Doubt, Reading
from afterdraft.manuscript.draft import Draft
from bench.structure.match import Match, neutral, within
from bench.structure.writers.plan import Plan

ENDS = (0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1.0)  # upper ends of the classes of sureness; a last class is certainty itself
CERTAIN = 1.0
Sureness = tuple[float, bool]  # how sure, and whether right


@dataclass(frozen=True, slots=True)
class Decision:
    said: Reading | None  # "chapter", "scene"; None for text
    true: Reading | None
    right: bool
    sure: float | None  # None where nothing was begun
    doubted: bool
    mended: bool


@dataclass(frozen=True, slots=True)
class Tally:
    right: int = 0
    wrong: int = 0
    doubted: int = 0  # wrong ones among the doubts shown
    mended: int = 0  # of these, those that the other reading puts right
    doubts: int = 0  # places asked about, in all
    questions: int = 0  # about one or several of these, that say the same
    files: int = 0
    asked: int = 0  # files with a doubt
    sure: Mapping[Sureness, int] = field(default_factory=dict)

    def __add__(self, other: "Tally") -> "Tally":
        return Tally(
            right=self.right + other.right,
            wrong=self.wrong + other.wrong,
            doubted=self.doubted + other.doubted,
            mended=self.mended + other.mended,
            doubts=self.doubts + other.doubts,
            questions=self.questions + other.questions,
            files=self.files + other.files,
            asked=self.asked + other.asked,
            sure=Counter(self.sure) + Counter(other.sure),
        )

    @property
    def caught(self) -> float:
        """Share of the wrong decisions that are among the doubts; 1 where none is wrong."""
        return self.doubted / self.wrong if self.wrong else 1.0

    @property
    def asking(self) -> float:
        """Places asked about for each right decision."""
        return self.doubts / self.right if self.right else 0.0


def tally(draft: Draft, plan: Plan) -> Tally:
    found = list(decisions(draft, plan))
    wrong = [one for one in found if not one.right]
    return Tally(
        right=len(found) - len(wrong),
        wrong=len(wrong),
        doubted=sum(one.doubted for one in wrong),
        mended=sum(one.mended for one in wrong),
        doubts=len(draft.doubts),
        questions=len({(doubt.what, doubt.other) for doubt in draft.doubts}),
        files=1,
        asked=bool(draft.doubts),
        sure=Counter((one.sure, one.right) for one in found if one.sure is not None),
    )


def decisions(draft: Draft, plan: Plan) -> Iterator[Decision]:
    """In order of their places; pieces that may be read either way are left out."""
    match = Match(draft, plan)
    starts = match.want.starts
    true: dict[int, Reading] = {starts[i]: "scene" for i, line in enumerate(plan.lines) if line.scene}
    true |= {starts[i]: "chapter" for i, line in enumerate(plan.lines) if line.opens is not None}
    chapters = {chapter.at for chapter in draft.division.chapters}
    sure = {match.place(one.at): one.sure for one in draft.division.scenes}
    said: dict[int, Reading] = {match.place(one.at): "scene" for one in draft.division.scenes}
    said |= {match.place(at): "chapter" for at in chapters}
    asked = {match.place(doubt.paragraph): doubt for doubt in draft.doubts}
    taste = neutral(plan.lines, match.want)
    for place in sorted(true.keys() | said.keys()):
        if place in true or not within(place, taste):
            yield _decision(said.get(place), true.get(place), sure.get(place), asked.get(place), levels=plan.levels)


def reliability(sure: Mapping[Sureness, int]) -> list[tuple[str, int, float, float]]:
    """Rows of a reliability table: class, decisions, mean sureness, share that was right."""
    rows = []
    low = 0.0
    for high in ENDS:
        some = {(s, right): n for (s, right), n in sure.items() if low <= s < high}
        rows.append((f"{low:.2f} to {high:.2f}", *_row(some)))
        low = high
    rows.append(("1.00", *_row({(s, right): n for (s, right), n in sure.items() if s >= CERTAIN})))
    return [row for row in rows if row[1]]


def calibration_error(sure: Mapping[Sureness, int], *, below: float = 2.0) -> float:
    """Expected calibration error over the classes above: mean gap between sureness and share right, weighed by the
    decisions of each class (Naeini, Cooper & Hauskrecht 2015); of decisions less sure than `below`."""
    rows = reliability({(s, right): n for (s, right), n in sure.items() if s < below})
    total = sum(count for _, count, _, _ in rows)
    return sum(count * abs(mean - right) for _, count, mean, right in rows) / total if total else 0.0


def risk_against_coverage(sure: Mapping[Sureness, int]) -> list[tuple[float, float, float]]:
    """For each sureness that occurs, from the surest down: the sureness, the share of decisions at least so sure, and
    the share of these that is wrong (El-Yaniv & Wiener 2010)."""
    total = sum(sure.values())
    rows, taken, wrong = [], 0, 0
    for level in sorted({s for s, _ in sure}, reverse=True):
        taken += sure.get((level, True), 0) + sure.get((level, False), 0)
        wrong += sure.get((level, False), 0)
        rows.append((level, taken / total, wrong / taken))
    return rows


def _row(some: Mapping[Sureness, int]) -> tuple[int, float, float]:
    count = sum(some.values())
    if not count:
        return 0, 0.0, 0.0
    mean = sum(s * n for (s, _), n in some.items()) / count
    return count, mean, sum(n for (_, right), n in some.items() if right) / count


def _decision(
    said: Reading | None, true: Reading | None, sure: float | None, doubt: Doubt | None, *, levels: bool
) -> Decision:
    right = said == true if levels else (said is None) == (true is None)
    other = None if doubt is None or doubt.other not in ("chapter", "scene") else doubt.other
    mended = doubt is not None and (other == true if levels else (other is None) == (true is None))
    return Decision(said, true, right, sure, doubt is not None, mended)
