"""Facts of scenes by the real model, each scene read once in a run of the tests: several look at the same books."""

import os
import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.keeping import key, packed, unpacked

Read = Callable[[Sequence[Sequence[str]]], Iterator[SceneFacts]]  # as `afterdraft.engine.reader.read_scenes`
_known: dict[str, str] = {}  # analyses of paragraphs, packed: a book with and without its faults shares most of them


def reader(folder: Path) -> Read:
    """One that keeps what it read in `folder`, where other processes of the run find it."""

    def read(scenes: Sequence[Sequence[str]]) -> Iterator[SceneFacts]:
        with _alone(folder):
            return iter([_facts(folder, paragraphs) for paragraphs in scenes])

    return read


def _facts(folder: Path, paragraphs: Sequence[str]) -> SceneFacts:
    from afterdraft.engine.pipeline import MODEL  # late: only slow tests need the language pipeline
    from afterdraft.engine.reader import read_again

    file = folder / f"{key(paragraphs, model=MODEL)}.json"
    if not file.exists():
        facts, made = read_again(paragraphs, _known)
        _known.update(made)
        partly = file.with_suffix(f".{os.getpid()}")
        partly.write_text(packed(facts), encoding="utf-8")
        partly.replace(file)
    return unpacked(file.read_text("utf-8"))


@contextmanager
def _alone(folder: Path) -> Iterator[None]:
    """Of all processes that read there, one at a time reads a book: the others then need no language pipeline. Where
    there are no such locks, each may read it, and writes the same."""
    if sys.platform == "win32":
        yield
        return
    import fcntl

    with (folder / "lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        yield
