"""The bench of structure as a section of the results."""

from bench import corpus
from bench.report import Figure, Section
from bench.structure.halves import half
from bench.structure.run import FIGURES, Result, measured, total, worst
from bench.structure.score import Score

TARGETS = {"chapter F1": 0.97, "break F1": 0.95, "titles": 0.95, "text kept": 1.0}
SHOWN = 15  # worst files
FAULTS = 3  # of each


def measure(*, full: bool) -> Section:
    results = measured()
    return Section(
        title="Structure: parts, chapters, scenes",
        corpus=(
            f"{len({r.slug for r in results})} novels of the corpus folder, each in five habits ([what they are, and "
            "how the novels are halved](structure/README.md)). F1 over all chapters and breaks of a habit; a chapter "
            "counts at its very paragraph, a title with its number and part."
        ),
        figures=tuple(_figures(results)),
        lines=(*_table(results), "", *_halves(results), "", *_worst(results)),
    )


def _figures(results: list[Result]) -> list[Figure]:
    names = list(dict.fromkeys(result.habit for result in results))
    made = []
    for name, measure_of in FIGURES:
        if name in TARGETS:
            by_habit = {habit: measure_of(total(r for r in results if r.habit == habit)) for habit in names}
            lowest = min(by_habit, key=lambda habit: by_habit[habit])
            value, named = by_habit[lowest], f"{name}, lowest of five habits"
            made.append(Figure(named, value, target=TARGETS[name], at_most=False, note=lowest))
    return made


def _table(results: list[Result]) -> list[str]:
    names = list(dict.fromkeys(result.habit for result in results))
    rows = [(habit, total(r for r in results if r.habit == habit)) for habit in names]
    return [*_head("habit"), *(_row(name, score) for name, score in [*rows, ("all", total(results))])]


def _halves(results: list[Result]) -> list[str]:
    titles = {corpus.slug(path): corpus.novel(path).title for path in corpus.paths()}
    sides = {side: total(r for r in results if half(titles[r.slug]) == side) for side in ("tune", "report")}
    return [*_head("half of the novels"), *(_row(side, score) for side, score in sides.items())]


def _head(first: str) -> list[str]:
    return [f"| {first} | " + " | ".join(name for name, _ in FIGURES) + " |", "|---" + "|---:" * len(FIGURES) + "|"]


def _row(name: str, score: Score) -> str:
    return f"| {name} | " + " | ".join(f"{figure(score):.4f}" for _, figure in FIGURES) + " |"


def _worst(results: list[Result]) -> list[str]:
    found = worst(results, SHOWN)
    if not found:
        return ["No file has a fault in chapters, titles, breaks or text."]
    lines = ["The worst files, with their first faults:", ""]
    for result in found:
        s = result.score
        faults = "; ".join(s.faults[:FAULTS]) + (
            f"; and {len(s.faults) - FAULTS} more" if len(s.faults) > FAULTS else ""
        )
        figures = f"chapters {s.chapters.f1:.3f}, titles {s.titles.f1:.3f}, breaks {s.breaks.f1:.3f}"
        lines.append(f"- {result.slug}, {result.habit}: {figures}: {faults}")
    return lines
