"""Facts of scenes by the real model, each scene read once in a run of the tests: several look at the same books."""

import os
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.keeping import key, packed, unpacked

Read = Callable[[Sequence[Sequence[str]]], Iterator[SceneFacts]]  # as `afterdraft.engine.reader.read_scenes`
_known: dict[str, str] = {}  # analyses of paragraphs, packed: a book with and without its faults shares most of them


def reader(folder: Path) -> Read:
    """One that keeps what it read in `folder`, where other processes of the run find it."""
    from afterdraft.engine.pipeline import MODEL  # late: only slow tests need the language pipeline
    from afterdraft.engine.reader import read_again

    def read(scenes: Sequence[Sequence[str]]) -> Iterator[SceneFacts]:
        for paragraphs in scenes:
            file = folder / f"{key(paragraphs, model=MODEL)}.json"
            if not file.exists():
                facts, made = read_again(paragraphs, _known)
                _known.update(made)
                partly = file.with_suffix(f".{os.getpid()}")
                partly.write_text(packed(facts), encoding="utf-8")
                partly.replace(file)
            yield unpacked(file.read_text("utf-8"))

    return read
