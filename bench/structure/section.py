"""The bench of structure as a section of the results."""

from collections.abc import Callable, Sequence

from bench.report import Figure, Section
from bench.structure import doubting
from bench.structure.run import FIGURES, SAMPLE, Result, measured, tallied, total, worst
from bench.structure.score import Score
from bench.structure.signs import signs

TARGETS = {"chapter F1": 0.995, "break F1": 0.99, "titles": 0.98, "text kept": 1.0}
CAUGHT = 0.8  # share of the wrong decisions that are among the doubts
ASKING = 0.05  # doubts for each right decision
SHOWN = 15  # worst files
FAULTS = 3  # of each
Cell = tuple[str, str]  # habit and format


def measure(*, full: bool, every: int = SAMPLE) -> Section:
    """Of each pair of habit and format one novel in `every`, or all."""
    results = measured(every=1 if full else every)
    cells = list(dict.fromkeys((r.habit, r.form) for r in results))
    habits = len({habit for habit, _ in cells})
    return Section(
        title="Structure: parts, chapters, scenes",
        corpus=(
            f"{len({r.slug for r in results})} novels of the corpus folder in {habits} habits of authors, in "
            f"{len(cells)} pairs of habit and format, {len(results)} files"
            f"{'' if full else f' (a sample by seed: one novel in {every} of each pair)'} ([what they are, and how "
            "the novels are halved](structure/README.md)). F1 over all chapters and breaks of a habit and format; a "
            "chapter counts at its very paragraph, a title with its number and part."
        ),
        figures=(*_figures(results, cells), *_doubts(results)),
        lines=(
            *signs(),
            *("", *_table(results, cells)),
            *("", *_halves(results)),
            *("", *doubting.tables(results)),
            *("", *_worst(results)),
        ),
    )


def of(results: Sequence[Result], cell: Cell) -> list[Result]:
    return [result for result in results if (result.habit, result.form) == cell]


def _figures(results: Sequence[Result], cells: Sequence[Cell]) -> list[Figure]:
    """Each figure with a target: over all files, over those of the half that only reports, and in the lowest cell."""
    made = []
    reported = [result for result in results if result.half == "report"]
    for name, measure_of in FIGURES:
        if name in TARGETS:
            by_cell = {cell: measure_of(total(of(results, cell))) for cell in cells}
            lowest = min(by_cell, key=lambda cell: by_cell[cell])
            made += [
                _figure(f"{name}, all files", measure_of(total(results)), name),
                _figure(f"{name}, novels that only report", measure_of(total(reported)), name),
                _figure(f"{name}, lowest habit and format", by_cell[lowest], name, " · ".join(lowest)),
            ]
    return made


def _figure(title: str, value: float, name: str, note: str = "") -> Figure:
    return Figure(title, value, target=TARGETS[name], at_most=False, note=note)


def _doubts(results: Sequence[Result]) -> list[Figure]:
    told = tallied(results)
    blind = tallied(result for result in results if not result.levels)
    return [
        Figure("wrong decisions among the doubts shown", told.caught, target=CAUGHT, at_most=False),
        Figure("doubts for each right decision", told.asking, target=ASKING),
        Figure(
            "files whose blank lines mark chapters and scenes, with a doubt", blind.asked / max(1, blind.files),
            target=1.0, at_most=False,
        ),
        *doubting.figures(told),
    ]  # fmt: skip


def _table(results: Sequence[Result], cells: Sequence[Cell]) -> list[str]:
    rows = [(" · ".join(cell), total(of(results, cell))) for cell in cells]
    return [*_head("habit and format"), *(_row(name, score) for name, score in [*rows, ("all", total(results))])]


def _halves(results: Sequence[Result]) -> list[str]:
    sides = {side: total(r for r in results if r.half == side) for side in ("tune", "report")}
    return [*_head("half of the novels"), *(_row(side, score) for side, score in sides.items())]


def _head(first: str) -> list[str]:
    return [f"| {first} | " + " | ".join(name for name, _ in FIGURES) + " |", "|---" + "|---:" * len(FIGURES) + "|"]


def _row(name: str, score: Score) -> str:
    return f"| {name} | " + " | ".join(_cell(score, figure) for _, figure in FIGURES) + " |"


def _cell(score: Score, figure: Callable[[Score], float]) -> str:
    return f"{figure(score):.4f}"


def _worst(results: Sequence[Result]) -> list[str]:
    """Faults are told of the novels for tuning only: the others are looked at in figures."""
    found = worst([result for result in results if result.half == "tune"], SHOWN)
    if not found:
        return ["No file of the novels for tuning has a fault in chapters, titles, breaks or text."]
    lines = ["The worst files of the novels for tuning, with their first faults:", ""]
    for result in found:
        s = result.score
        faults = "; ".join(s.faults[:FAULTS]) + (
            f"; and {len(s.faults) - FAULTS} more" if len(s.faults) > FAULTS else ""
        )
        figures = f"chapters {s.chapters.f1:.3f}, titles {s.titles.f1:.3f}, breaks {s.breaks.f1:.3f}"
        lines.append(f"- {result.slug}, {result.habit}, {result.form}: {figures}: {faults}")
    return lines
