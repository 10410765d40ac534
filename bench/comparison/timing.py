"""Time and memory of comparing, beside what a writer would do without it, in one run on the same files."""

import json
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from bench import corpus
from bench.comparison.halves import scenes
from bench.comparison.revise import revision

Scenes = Sequence[Sequence[str]]
SMALLEST = 120_000  # words
ROUNDS = {SMALLEST: 9, 400_000: 3, 1_500_000: 1}  # runs, of which the quickest counts: others work on the machine too
WORST_ROUNDS = 3
OTHERS = {
    "wdiff": ("wdiff",),
    "git diff --word-diff": ("git", "diff", "--no-index", "--word-diff"),
    "git diff --color-moved": ("git", "diff", "--no-index", "--color-moved", "--color"),
}
LAUNCH = """
import json, os, subprocess, sys, time
before = time.perf_counter()
child = subprocess.Popen(sys.argv[1:], stdout=subprocess.DEVNULL)
usage = os.wait4(child.pid, 0)[2]
seconds = time.perf_counter() - before
worked = usage.ru_utime + usage.ru_stime
print(json.dumps({"seconds": seconds, "processor": worked, "peak": usage.ru_maxrss / 1024}), flush=True)
os._exit(0)
"""


@dataclass(frozen=True, slots=True)
class Cost:
    seconds: float
    processor: float  # seconds of it that the processor worked: what else runs on the machine does not count
    peak: float  # MB


@dataclass(frozen=True, slots=True)
class Timed:
    name: str
    ours: Cost  # comparing, both drafts in memory
    whole: float  # seconds of the process, from its start to its end
    others: dict[str, Cost]  # of each that is installed


def timed(name: str, old: Scenes, new: Scenes, rounds: int, *, others: bool = True) -> Timed:
    """In each round first ours, then the others, so that all meet the same machine."""
    known = {other: command for other, command in OTHERS.items() if others and shutil.which(command[0])}
    ours: list[tuple[Cost, float]] = []
    beside: dict[str, list[Cost]] = {other: [] for other in known}
    with tempfile.TemporaryDirectory() as folder:
        files = [_written(Path(folder) / side, draft) for side, draft in (("old.txt", old), ("new.txt", new))]
        for _ in range(rounds):
            ours.append(_ours(files))
            for other, command in known.items():
                beside[other].append(_told([sys.executable, "-c", LAUNCH, *command, *files]))
    return Timed(
        name,
        _best([cost for cost, _ in ours]),
        min(whole for _, whole in ours),
        {other: _best(costs) for other, costs in beside.items()},
    )


def _best(costs: Sequence[Cost]) -> Cost:
    return Cost(
        min(cost.seconds for cost in costs), min(cost.processor for cost in costs), max(cost.peak for cost in costs)
    )


def pairs() -> list[tuple[str, Scenes, Scenes, int]]:
    """Revisions of each size, scenes moved, cut, split, joined and worked on; and how often they are timed."""
    return [(f"{size:,} words", *_revised(size), rounds) for size, rounds in ROUNDS.items()]


def worst() -> list[tuple[str, Scenes, Scenes]]:
    """What a comparison can stumble over, at 120,000 words."""
    old, new = _revised(SMALLEST)
    other = book(SMALLEST, skip=SMALLEST + 60_000)
    first, second = ([[" ".join(" ".join(scene) for scene in draft)]] for draft in (old, new))
    return [
        ("unrelated drafts", old, other),
        ("order of scenes reversed", old, old[::-1]),
        ("order of all paragraphs reversed", old, [scene[::-1] for scene in old[::-1]]),
        ("one paragraph, worked on", first, second),
        ("nothing changed", old, old),
    ]


@cache
def _revised(size: int) -> tuple[Scenes, Scenes]:
    donor = [paragraph for scene in book(200_000, skip=size) for paragraph in scene]
    made = revision(book(size), donor, 0)
    return made.old, made.new


def book(size: int, *, skip: int = 0) -> list[list[str]]:
    """Scenes of so many words, from the novels in the order of their files, `skip` words on."""
    taken: list[list[str]] = []
    at = 0
    for scene in _all():
        if skip <= at < skip + size:
            taken.append([" ".join(paragraph.split()) for paragraph in scene])
        at += sum(len(paragraph.split()) for paragraph in scene)
    return taken


@cache
def _all() -> tuple[tuple[str, ...], ...]:
    return tuple(scene for path in corpus.paths() for scene in scenes(corpus.novel(path)))


def _written(path: Path, draft: Scenes) -> str:
    path.write_text("\n\n".join("\n".join(scene) for scene in draft), encoding="utf-8")
    return str(path)


def _ours(files: Sequence[str]) -> tuple[Cost, float]:
    before = time.perf_counter()
    cost = _told([sys.executable, "-m", "bench.comparison.child", *files])
    return cost, time.perf_counter() - before


def _told(command: Sequence[str]) -> Cost:
    """What a process that measures says of it. A small one starts the others: a child's highest memory counts from that
    of its parent."""
    done = subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, check=True)
    told = json.loads(done.stdout)
    return Cost(told["seconds"], told["processor"], told["peak"])
