"""The budgets of the project, measured on the real server with the manuscript that they are stated for."""

import json
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from statistics import median
from typing import Any

from afterdraft.web.serve import SETTLED
from bench.report import Figure, Section
from bench.speed.novel import SCENES, WORDS, budget_novel, largest_novel, largest_revised
from bench.speed.serving import bring_in, bring_next, serving
from bench.speed.walk import Timed, every_edit, every_page
from bench.structure.manuscripts import Manuscript

STARTS = 5
IMPORTS = 5
TIMES = 12  # 1,440,000 words; growth is to be linear up to 1,500,000
LINEAR = 1.3  # times the time a word, at most: what caches and page sizes may cost
EDITS = 40  # of each kind; 200 in the full run


@dataclass(frozen=True, slots=True)
class Run:
    """All that was measured on one server."""

    starts: list[float]
    brought: list[float]
    round: float  # until the largest novel's next draft is in, and shown
    peak: float
    rest: float
    pages: list[Timed]
    edits: list[Timed]


def measure(*, full: bool) -> Section:
    budget, largest = budget_novel(), largest_novel()
    stages, longer = _stages(budget), _stages(budget_novel(TIMES))
    run = _run(budget, largest, edits=200 if full else EDITS)
    return Section(
        title="Speed and memory",
        corpus=(
            f"A docx of {WORDS:,} words in {SCENES} scenes, made of the corpus's novels; pages and edits on the "
            "largest novel of the corpus (215,000 words, 104 scenes) with its next draft. Times are from outside: from "
            "a client's request to the whole answer."
        ),
        figures=(*_figures(run), *_growth(stages, longer)),
        lines=(*_table("route", run.pages), "", *_table("edit", run.edits), "", *_by_stage(stages)),
    )


def _run(budget: Manuscript, largest: Manuscript, *, edits: int) -> Run:
    starts = [_start() for _ in range(STARTS)]
    with serving() as server:
        brought = [bring_in(server.client, budget.name, budget.data)[1] for _ in range(IMPORTS)]
        book, _ = bring_in(server.client, largest.name, largest.data)
        revised = largest_revised()
        round_ = bring_next(server.client, book, revised.name, revised.data)
        pages = every_page(server.client, book)
        made = every_edit(server.client, book, edits)
        _, peak = server.memory()
    with serving() as server:
        bring_in(server.client, budget.name, budget.data)
        time.sleep(SETTLED + 2)  # after the book has tidied itself up, and what is loaded later has been loaded
        rest, _ = server.memory()
    return Run(starts, brought, round_, peak, rest, pages, made)


def _start() -> float:
    with serving() as server:
        return server.started


def _stages(made: Manuscript) -> dict[str, Any]:
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / made.name
        file.write_bytes(made.data)
        command = [sys.executable, "-m", "bench.speed.stages", str(file), folder]
        done = subprocess.run(command, capture_output=True, check=True, cwd=Path(__file__).parents[2])
    found: dict[str, Any] = json.loads(done.stdout)
    return found


def _figures(run: Run) -> Iterable[Figure]:
    pages = [one for timed in run.pages for one in timed.took]
    edits = [one for timed in run.edits for one in timed.took]
    slowest = max(run.pages, key=lambda timed: max(timed.took)).what
    middling = max(run.pages, key=lambda timed: median(timed.took))
    yield Figure("bring in a docx, split it, show it", median(run.brought), "s", 2.0, note=_worst(run.brought))
    yield Figure("bring in the next draft of the largest novel", run.round, "s", note="no budget of its own")
    yield Figure("start to first page", median(run.starts), "s", 1.0, note=_worst(run.starts))
    yield Figure("any page, median of the slowest route", 1000 * median(middling.took), "ms", 100, note=middling.what)
    yield Figure("any page, worst", 1000 * max(pages), "ms", 250, note=slowest)
    hardest = max(run.edits, key=lambda timed: median(timed.took))
    yield Figure("any edit, median of the slowest kind", 1000 * median(hardest.took), "ms", 30, note=hardest.what)
    yield Figure("any edit, worst", 1000 * max(edits), "ms", note="no budget of its own")
    yield Figure("memory while bringing in", run.peak, "MB", 700)
    yield Figure("memory at rest", run.rest, "MB", 200)


def _worst(took: Sequence[float]) -> str:
    return f"worst {max(took):.2f} s"


def _growth(stages: dict[str, Any], longer: dict[str, Any]) -> Iterable[Figure]:
    book = (stages["book"] - stages["original"]) / stages["text"]
    slower = (_seconds(longer) / longer["text"]) / (_seconds(stages) / stages["text"])
    words = f"{WORDS * TIMES:,} words"
    yield Figure("book file against the text, original bytes left out", book, "times", 12)
    yield Figure(f"time a word, {words} against {WORDS:,}", slower, "times", LINEAR)
    yield Figure(f"memory for {words}", longer["peak"], "MB", 700)


def _seconds(stages: dict[str, Any]) -> float:
    return float(sum(stages["took"].values()) - stages["took"]["imports"])


def _table(first: str, timed: Sequence[Timed]) -> list[str]:
    lines = [f"| {first} | answers | median ms | worst ms |", "|---|---:|---:|---:|"]
    return lines + [
        f"| `{one.what}` | {len(one.took)} | {1000 * median(one.took):.1f} | {1000 * max(one.took):.1f} |"
        for one in timed
    ]


def _by_stage(stages: dict[str, Any]) -> list[str]:
    told = ", ".join(f"{name} {1000 * took:.0f} ms" for name, took in stages["took"].items())
    return [f"Bringing in, stage by stage, in a fresh process: {told}; its memory {stages['peak']:.0f} MB."]
