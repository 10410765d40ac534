"""Doubt, as figures and tables: what was wrong and asked about, and how far `sure` can be believed."""

from collections.abc import Sequence

from bench.report import Figure
from bench.structure.decisions import Tally, calibration_error, reliability, risk_against_coverage
from bench.structure.run import Result, tallied

UNSURE = 0.95  # decisions less sure than this are looked at on their own


def figures(told: Tally) -> list[Figure]:
    wrong, mended = max(1, told.doubted), told.mended
    return [
        Figure("doubted wrong decisions that the other reading puts right", mended / wrong),
        Figure("expected calibration error of `sure`", calibration_error(told.sure)),
        Figure(f"the same, of decisions with `sure` below {UNSURE}", calibration_error(told.sure, below=UNSURE)),
    ]


def tables(results: Sequence[Result]) -> list[str]:
    return [*_by_habit(results), "", *_reliability(results), "", *_risk(results)]


def _by_habit(results: Sequence[Result]) -> list[str]:
    lines = [
        "| habit | right decisions | wrong | wrong, among the doubts | mended by the other reading | "
        "places asked about | questions |",
        "|---" + "|---:" * 6 + "|",
    ]
    habits = list(dict.fromkeys(result.habit for result in results))
    rows = [(habit, tallied(r for r in results if r.habit == habit)) for habit in habits]
    sides = [(f"{side} half", tallied(r for r in results if r.half == side)) for side in ("tune", "report")]
    for name, told in [*rows, *sides, ("all", tallied(results))]:
        cells = (told.right, told.wrong, told.doubted, told.mended, told.doubts, told.questions)
        lines.append(f"| {name} | " + " | ".join(map(str, cells)) + " |")
    return lines


def _reliability(results: Sequence[Result]) -> list[str]:
    lines = ["| `sure`, by half | decisions | said, in the mean | were right |", "|---" + "|---:" * 3 + "|"]
    for side in ("tune", "report"):
        told = tallied(result for result in results if result.half == side)
        for name, count, said, right in reliability(told.sure):
            lines.append(f"| {name}, {side} | {count} | {said:.3f} | {right:.3f} |")
    return lines


def _risk(results: Sequence[Result]) -> list[str]:
    lines = ["| decisions at least so sure | share of all | wrong among them |", "|---" + "|---:" * 2 + "|"]
    for level, coverage, risk in risk_against_coverage(tallied(results).sure):
        lines.append(f"| {level:.2f} | {coverage:.4f} | {risk:.5f} |")
    return lines
