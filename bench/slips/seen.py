"""Books and novels as checks look at them; facts of scenes, and what the pipeline said of them, are kept on disk
between runs: when only what is read off a scene changes, the slow part is not done again.

The folder is outside the repository (`AFTERDRAFT_BENCH_KEPT`, else the system's temporary folder): it holds texts of
the corpus.
"""

import gzip
import os
from collections.abc import Callable, Iterator, Sequence

from afterdraft import wiring
from afterdraft.engine.pipeline import MODEL
from afterdraft.manuscript.naming import shortened
from afterdraft.questions.of_draft import seen_of
from afterdraft.questions.seen import Seen
from afterdraft.reading.analysed import Analysed
from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.keeping import key, packed, unpacked
from afterdraft.reading.scene import scene_facts
from bench.corpus import Novel
from bench.reading.kept import FOLDER, analysed
from bench.slips.books import Book

Read = Callable[[Sequence[str]], Sequence[Analysed]]


def of_book(book: Book) -> Seen:
    """Divided by the program, as a writer's file would be."""
    return seen_of(wiring.read([(f"{book.file.split('/')[0]}.txt", book.text())]), facts)


def of_novel(novel: Novel) -> Seen:
    """With its true divisions."""
    scenes = tuple(scene for chapter in novel.chapters for scene in chapter.scenes if scene)
    titles = tuple(shortened(scene[0]) for scene in scenes)
    return Seen(texts=scenes, facts=tuple(facts(scenes)), titles=titles)


def facts(scenes: Sequence[Sequence[str]], read: Read = analysed) -> Iterator[SceneFacts]:
    """One value a scene, in order, from the folder where it has them; else from what `read` gives of its paragraphs."""
    for paragraphs in scenes:
        path = FOLDER / f"facts-{key(paragraphs, model=MODEL)}.json.gz"
        if not path.exists():
            path.parent.mkdir(parents=True, exist_ok=True)
            made = gzip.compress(packed(scene_facts(read(paragraphs))).encode(), compresslevel=2)
            partly = path.with_suffix(f".{os.getpid()}")
            partly.write_bytes(made)
            partly.replace(path)  # several processes may read and write here
        yield unpacked(gzip.decompress(path.read_bytes()).decode())
