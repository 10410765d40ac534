"""The corpus folder's novels as scenes of paragraphs. Imports nothing of the program."""

from collections.abc import Iterator

from bench import corpus
from bench.faults.planted import Scenes
from bench.structure.halves import Half, half


def novels(which: Half) -> Iterator[tuple[str, Scenes]]:
    """Title and scenes, in the order of their files."""
    for path in corpus.paths():
        novel = corpus.novel(path)
        if half(novel.title) == which:
            yield novel.title, tuple(scene for chapter in novel.chapters for scene in chapter.scenes if scene)
