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
SIZES = (120_000, 400_000, 1_500_000)  # words
ROUNDS = 3  # runs, of which the quickest counts: others work on the machine too
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
print(json.dumps({"seconds": time.perf_counter() - before, "peak": usage.ru_maxrss / 1024}), flush=True)
os._exit(0)
"""


@dataclass(frozen=True, slots=True)
class Timed:
    name: str
    seconds: float  # comparing, both drafts in memory
    whole: float  # the process, from its start to its end
    peak: float  # MB
    others: dict[str, tuple[float, float]]  # seconds and MB of each that is installed


def timed(name: str, old: Scenes, new: Scenes, *, others: bool = True, rounds: int = ROUNDS) -> Timed:
    with tempfile.TemporaryDirectory() as folder:
        files = [_written(Path(folder) / side, draft) for side, draft in (("old.txt", old), ("new.txt", new))]
        ours = [_ours(files) for _ in range(rounds)]
        beside = {
            other: min(_other([*command, *files]) for _ in range(rounds))
            for other, command in OTHERS.items()
            if others and shutil.which(command[0])
        }
    best = min(ours)
    return Timed(name, *best, beside)


def pairs() -> list[tuple[str, Scenes, Scenes]]:
    """Revisions of each size, scenes moved, cut, split, joined and worked on."""
    return [(f"{size:,} words", *_revised(size)) for size in SIZES]


def worst() -> list[tuple[str, Scenes, Scenes]]:
    """What a comparison can stumble over, at 120,000 words."""
    old, new = _revised(SIZES[0])
    other = _book(SIZES[0], skip=SIZES[0] + 60_000)
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
    donor = [paragraph for scene in _book(200_000, skip=size) for paragraph in scene]
    made = revision(_book(size), donor, 0)
    return made.old, made.new


def _book(size: int, *, skip: int = 0) -> list[list[str]]:
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


def _ours(files: Sequence[str]) -> tuple[float, float, float]:
    before = time.perf_counter()
    told = _told([sys.executable, "-m", "bench.comparison.child", *files])
    return told["seconds"], time.perf_counter() - before, told["peak"]


def _other(command: Sequence[str]) -> tuple[float, float]:
    """Seconds and MB. A small process starts it, since a child's highest memory counts from that of its parent."""
    told = _told([sys.executable, "-c", LAUNCH, *command])
    return told["seconds"], told["peak"]


def _told(command: Sequence[str]) -> dict[str, float]:
    done = subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, check=True)
    told: dict[str, float] = json.loads(done.stdout)
    return told
