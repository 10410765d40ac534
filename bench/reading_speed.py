"""How long the background reading takes, how much of it is done again after a change, and how much memory it needs.

`python -m bench.reading_speed` makes one bare pass of the language pipeline over texts on standard input (JSON: a list
of paragraphs), as a process of its own: what the reading is held against.
"""

import json
import subprocess
import sys
import tempfile
import time
from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from threading import Event, Thread

from afterdraft import wiring
from afterdraft.alongside import Reader
from afterdraft.engine.pipeline import MODEL, analyse
from afterdraft.home import BooksFolder
from afterdraft.platform import folders
from afterdraft.reading.keeping import key
from afterdraft.whole.task import Task
from afterdraft.work.cast.to_read import to_read
from bench.report import Figure, Section
from bench.speed.novel import SCENES, WORDS, budget_novel

MILLION = 9  # times the manuscript of 120,000 words
LOOK = 0.05  # seconds between two looks at the memory
MOVED = 40  # the scene whose boundary is moved, and of which a word is changed


@dataclass(frozen=True, slots=True)
class Run:
    seconds: float
    peak: float  # megabytes of the child
    facts: dict[str, str]  # and all else that the program keeps for the next reading


def measure(*, full: bool) -> Section:
    task = _task(1)
    bare = _bare(task)
    whole = _run(task, {})
    moved = _run(_with_boundary_moved(task), whole.facts)
    edited = _run(_with_a_word_changed(task), whole.facts)
    told = _run(task, whole.facts)
    figures = [
        Figure("full reading against one bare pass of the pipeline", whole.seconds / bare, "times", target=1.5),
        Figure("one scene boundary moved, as a share of a full reading", moved.seconds / whole.seconds, target=1 / 15),
        Figure("one scene edited, as a share of a full reading", edited.seconds / whole.seconds, target=1 / 15),
        Figure("full reading", whole.seconds, "s"),
        Figure("what all of it tells, when everything is known", told.seconds, "s"),
        Figure("memory of the child", whole.peak, "MB", target=600),
    ]
    lines = [
        f"A bare pass took {bare:.1f} s, its start and the loading of the pipeline counted on both sides. "
        f"With a boundary moved {moved.seconds:.2f} s: every paragraph was analysed before, and no pipeline is loaded. "
        f"With a scene edited {edited.seconds:.2f} s, of which the loading of the pipeline is the most."
    ]
    if full:
        million = _run(_task(MILLION), {})
        figures.append(Figure(f"memory of the child, {MILLION * WORDS:,} words", million.peak, "MB", target=600))
        figures.append(Figure(f"full reading, {MILLION * WORDS:,} words", million.seconds, "s"))
    return Section(
        title="Speed of reading",
        corpus=f"A docx of {WORDS:,} words in {SCENES} scenes, of the corpus's novels; the real child, each time anew.",
        figures=tuple(figures),
        lines=tuple(lines),
    )


def _task(times: int) -> Task:
    """What is to be read of the manuscript, as a book of it says."""
    made = budget_novel(times)
    with tempfile.TemporaryDirectory() as folder:
        path = wiring.begin(
            [(made.name, made.data)], folder=BooksFolder(folders()), path=Path(folder) / "book.afterdraft"
        )
        book = wiring.open_book(path)
        try:
            return to_read(book, book.drafts()[0].id, model=MODEL)
        finally:
            book.close()


def _bare(task: Task) -> float:
    texts = json.dumps([text for scene in task.texts for text in scene]).encode()
    began = time.perf_counter()
    subprocess.run(
        [sys.executable, "-m", "bench.reading_speed"], input=texts, check=True, cwd=Path(__file__).parents[1]
    )
    return time.perf_counter() - began


def _run(task: Task, known: dict[str, str]) -> Run:
    facts, reader, ended = dict(known), Reader(), Event()
    peaks: list[float] = [0.0]
    watching = Thread(target=_watch, args=(reader, ended, peaks))
    watching.start()
    began = time.perf_counter()
    told = reader.run(task, known, on_scene=facts.__setitem__, keep=facts.update)
    took = time.perf_counter() - began
    ended.set()
    watching.join()
    assert told, "the child ended early"
    return Run(took, max(peaks), facts)


def _watch(reader: Reader, ended: Event, peaks: list[float]) -> None:
    while not ended.wait(LOOK):
        if reader.process:
            peaks.append(_peak(reader.process))


def _peak(process: int) -> float:
    """Megabytes that a process took at most so far, as Linux says; 0 where it has ended."""
    try:
        status = Path(f"/proc/{process}/status").read_text("utf-8")
    except OSError:
        return 0.0
    return max((int(line.split()[1]) / 1024 for line in status.splitlines() if line.startswith("VmHWM")), default=0.0)


def _with_boundary_moved(task: Task) -> Task:
    """The last paragraph of one scene is the first of the next."""
    before, after = task.texts[MOVED], task.texts[MOVED + 1]
    return _with(task, {MOVED: before[:-1], MOVED + 1: (before[-1], *after)})


def _with_a_word_changed(task: Task) -> Task:
    first, *rest = task.texts[MOVED]
    return _with(task, {MOVED: (f"{first} Really.", *rest)})


def _with(task: Task, changed: dict[int, Sequence[str]]) -> Task:
    texts = [tuple(changed.get(number, scene)) for number, scene in enumerate(task.texts)]
    places, at = [], 0
    for scene in texts:
        starts = []
        for text in scene:
            starts.append(at)
            at += len(text) + 2
        places.append(tuple(starts))
    keys = tuple(key(scene, model=MODEL) for scene in texts)
    return replace(task, keys=keys, texts=tuple(texts), places=tuple(places))


if __name__ == "__main__":
    for _ in analyse(json.load(sys.stdin)):
        pass
