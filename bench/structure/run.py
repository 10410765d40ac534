"""Reads every manuscript back with the program and sums the scores up."""

import hashlib
import os
import pickle
import sys
import traceback
from collections.abc import Callable, Iterable, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from functools import cache, reduce
from operator import add
from pathlib import Path

import afterdraft
from afterdraft.formats.joined import joined
from afterdraft.formats.table import FORMATS, read
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.structure import structure
from bench import corpus
from bench.structure.decisions import Tally, tally
from bench.structure.halves import Half, half
from bench.structure.manuscripts import CACHE, WRITTEN, Manuscript, habits, key, manuscript
from bench.structure.score import Count, Score, score
from bench.structure.writers.habits import Habit

PROCESSES = 2
SAMPLE = 4  # of four novels in a habit and format, one is measured where not all are: some minutes on two cores


@dataclass(frozen=True, slots=True)
class Result:
    slug: str
    habit: str
    form: str
    half: Half
    levels: bool  # something in the file tells chapters from scenes
    score: Score
    tally: Tally


@dataclass(frozen=True, slots=True)
class Job:
    path: Path
    habit: Habit
    form: str


def measured(
    *, habit: str = "", form: str = "", book: str = "", half: Half | None = None, every: int = 1
) -> list[Result]:
    """The scores of the novels, habits and formats asked for; of each pair of these one novel in `every`, by seed."""
    jobs = [
        Job(path, one, ending)
        for one in habits(habit)
        for ending in readable(one)
        if form in ending
        for path in corpus.paths()
        if book in path.name and _sampled(path, one, ending, every) and _in(path, half)
    ]
    if len(jobs) < PROCESSES or PROCESSES == 1:
        return [_kept(job) for job in jobs]
    with ProcessPoolExecutor(PROCESSES, initializer=os.nice, initargs=(10,)) as pool:
        return list(pool.map(_kept, jobs, chunksize=4))


def readable(habit: Habit) -> list[str]:
    """The habit's formats that are both written here and read by the program."""
    names = {form.name for form in FORMATS}
    return [form for form in habit.formats if form in WRITTEN and form in names]


def read_back(made: Manuscript) -> Draft:
    """The manuscript as the program reads it."""
    return structure(joined([read(data, name) for name, data in made.files]))


def _sampled(path: Path, habit: Habit, form: str, every: int) -> bool:
    seed = hashlib.sha256(f"{path.name} {habit.name} {form}".encode()).digest()[0]
    return seed % every == 0


def _in(path: Path, wanted: Half | None) -> bool:
    return wanted is None or half(corpus.novel(path).title) == wanted


def _kept(job: Job) -> Result:
    """From the cache where neither the manuscript nor the program has changed."""
    name = hashlib.sha256(f"{key(job.path, job.habit, job.form)} {_program()}".encode()).hexdigest()[:32]
    kept = CACHE / "results" / f"{name}.pickle"
    if kept.exists():
        found: Result = pickle.loads(kept.read_bytes())  # noqa: S301 - our own cache, named by content
        return found
    result = _one(job)
    kept.parent.mkdir(parents=True, exist_ok=True)
    kept.write_bytes(pickle.dumps(result))
    return result


@cache
def _program() -> str:
    """Names all code that a result depends on."""
    home, here = Path(afterdraft.__file__).parent, Path(__file__).parent
    sources = [*(home / "formats").rglob("*.py"), *(home / "manuscript").rglob("*.py"), *here.glob("*.py")]
    digest = hashlib.sha256()
    for source in sorted(sources):
        digest.update(source.read_bytes())
    return digest.hexdigest()


def _one(job: Job) -> Result:
    made = manuscript(job.path, job.habit, job.form)
    try:
        draft = read_back(made)
        found, told = score(draft, made.plan), tally(draft, made.plan)
    except Exception:  # noqa: BLE001 - a crash is a result: the worst
        found = _crashed(len(made.plan.chapters), sum(line.scene for line in made.plan.lines), _fault())
        told = Tally(wrong=len(made.plan.chapters), files=1)
    return Result(made.slug, job.habit.name, job.form, half(made.title), made.plan.levels, found, told)


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
    ("numbers", lambda s: s.numbers.recall),
    ("parts", lambda s: s.parts.recall),
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


def tallied(results: Iterable[Result]) -> Tally:
    return reduce(add, (result.tally for result in results), Tally())


def table(results: Sequence[Result]) -> str:
    """One row for each habit in each format and one for all; then the worst files of the novels for tuning."""
    names = list(dict.fromkeys((result.habit, result.form) for result in results))
    rows = [(f"{habit} · {form}", [r for r in results if (r.habit, r.form) == (habit, form)]) for habit, form in names]
    lines = [_row("habit", ["files", *(name for name, _ in FIGURES), "wrong", "caught", "asking"])]
    lines += [_figures(name, some) for name, some in [*rows, ("all", list(results))]]
    lines += ["", "worst:"]
    lines += [_worst(result) for result in worst([r for r in results if r.half == "tune"])]
    return "\n".join(lines)


def worst(results: Sequence[Result], most: int = 12) -> list[Result]:
    """The files with the lowest chapter, break or title figure, if any is below 1."""
    bad = [r for r in results if _lowest(r) < 1]
    return sorted(bad, key=_lowest)[:most]


def _lowest(result: Result) -> float:
    s = result.score
    return min(s.chapters.f1, s.breaks.f1, s.titles.f1, s.texts.recall)


def _figures(name: str, results: Sequence[Result]) -> str:
    summed, told = total(results), tallied(results)
    doubt = [str(told.wrong), f"{told.caught:.3f}", f"{told.asking:.4f}"]
    return _row(name, [str(len(results)), *(f"{figure(summed):.4f}" for _, figure in FIGURES), *doubt])


def _row(name: str, cells: Sequence[str]) -> str:
    return f"{name[:34]:34}" + "".join(f"{cell[:10]:>11}" for cell in cells)


def _worst(result: Result) -> str:
    s = result.score
    return (
        f"  {result.slug[:44]:44} {result.habit[:22]:22} {result.form} chapters {s.chapters.f1:.3f} "
        f"titles {s.titles.f1:.3f} breaks {s.breaks.f1:.3f} text {s.texts.recall:.0f}: {''.join(s.faults[:1])[:110]}"
    )
