"""Reads every manuscript back with the program and sums the scores up."""

import os
import sys
import traceback
from collections.abc import Callable, Iterable, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from functools import reduce
from operator import add
from pathlib import Path

from afterdraft.formats.table import read
from afterdraft.manuscript.structure import structure
from bench import corpus
from bench.structure.halves import Half, half
from bench.structure.manuscripts import habits, manuscript
from bench.structure.score import Count, Score, score
from bench.structure.writers.habits import Habit

PROCESSES = 2


@dataclass(frozen=True, slots=True)
class Result:
    slug: str
    habit: str
    score: Score


def measured(*, habit: str = "", book: str = "", half: Half | None = None) -> list[Result]:
    """The scores of the novels and habits asked for; all of them by default."""
    jobs = [(path, h) for h in habits(habit) for path in corpus.paths() if book in path.name and _in(path, half)]
    if len(jobs) < PROCESSES or PROCESSES == 1:
        return [_one(job) for job in jobs]
    with ProcessPoolExecutor(PROCESSES, initializer=os.nice, initargs=(10,)) as pool:
        return list(pool.map(_one, jobs))


def _in(path: Path, wanted: Half | None) -> bool:
    return wanted is None or half(corpus.novel(path).title) == wanted


def _one(job: tuple[Path, Habit]) -> Result:
    path, habit = job
    made = manuscript(path, habit)
    try:
        found = score(structure(read(made.data, made.name)), made.plan)
    except Exception:  # noqa: BLE001 - a crash is a result: the worst
        found = _crashed(len(made.plan.chapters), sum(line.scene for line in made.plan.lines), _fault())
    return Result(made.slug, habit.name, found)


def _crashed(chapters: int, breaks: int, fault: str) -> Score:
    missed = Count(0, 0, chapters)
    return Score(missed, missed, Count(0, 0, breaks), texts=Count(0, 1, 1), faults=(fault,))


def _fault() -> str:
    """The exception being handled, on one line: what, and where in the program."""
    _, fault, trace = sys.exc_info()
    last = traceback.extract_tb(trace)[-1]
    return f"CRASH {fault!r} at {Path(last.filename).name}:{last.lineno}"


FIGURES: Sequence[tuple[str, Callable[[Score], float]]] = (
    ("chapter F1", lambda s: s.chapters.f1),
    ("titles", lambda s: s.titles.f1),
    ("break F1", lambda s: s.breaks.f1),
    ("heads F1", lambda s: s.heads.f1),
    ("front kept out", lambda s: s.front.recall),
    ("story kept in", lambda s: s.story.recall),
    ("paragraphs F1", lambda s: s.paragraphs.f1),
    ("italics F1", lambda s: s.italics.f1),
    ("text kept", lambda s: s.texts.recall),
)


def total(results: Iterable[Result]) -> Score:
    return reduce(add, (result.score for result in results), Score())


def table(results: Sequence[Result]) -> str:
    """One row a habit and one for all; then the worst files."""
    names = list(dict.fromkeys(result.habit for result in results))
    rows = [(name, [r for r in results if r.habit == name]) for name in names]
    lines = [_row("habit", ["files", *(name for name, _ in FIGURES)])]
    lines += [_figures(name, some) for name, some in [*rows, ("all", list(results))]]
    lines += ["", "worst:"]
    lines += [_worst(result) for result in worst(results)]
    return "\n".join(lines)


def worst(results: Sequence[Result], most: int = 12) -> list[Result]:
    """The files with the lowest chapter, break or title figure, if any is below 1."""
    bad = [r for r in results if _lowest(r) < 1]
    return sorted(bad, key=_lowest)[:most]


def _lowest(result: Result) -> float:
    s = result.score
    return min(s.chapters.f1, s.breaks.f1, s.titles.f1, s.texts.recall)


def _figures(name: str, results: Sequence[Result]) -> str:
    summed = total(results)
    return _row(name, [str(len(results)), *(f"{figure(summed):.4f}" for _, figure in FIGURES)])


def _row(name: str, cells: Sequence[str]) -> str:
    return f"{name:24}" + "".join(f"{cell:>15}" for cell in cells)


def _worst(result: Result) -> str:
    s = result.score
    return (
        f"  {result.slug[:44]:44} {result.habit:22} chapters {s.chapters.f1:.3f} titles {s.titles.f1:.3f} "
        f"breaks {s.breaks.f1:.3f} text {s.texts.recall:.0f}: {s.faults[0][:110] if s.faults else ''}"
    )
