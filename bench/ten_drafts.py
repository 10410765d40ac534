"""Ten drafts of one book: its file, opening it, searching it, bringing the tenth in, and comparing.

120,000 words in 90 scenes, revised nine times by the generator of `bench.comparison`, each time from what the time
before left; notes, marks and cards on scenes of each draft.
"""

import os
import tempfile
import time
from collections.abc import Callable, Sequence
from contextlib import closing
from pathlib import Path
from statistics import median
from typing import TypeVar

from afterdraft import platform, wiring
from afterdraft.home import BooksFolder
from afterdraft.store.book import BookFile
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.ports import Book
from afterdraft.work.write_field import write_once
from bench.comparison.revise import revision
from bench.comparison.timing import SMALLEST
from bench.comparison.timing import book as lines
from bench.report import Figure, Section
from tests.server import home_variables

T = TypeVar("T")
Scenes = Sequence[Sequence[str]]
DRAFTS, SCENES_A_CHAPTER, MARKED = 10, 3, 3
SIZE, OPENING, SEARCH, PAGE = 12.0, 1.0, 100.0, 100.0  # times the text; seconds; milliseconds
TIMES = 15
ASKED = ("river", "the house", "letter from", "money")


def measure(*, full: bool) -> Section:
    """The same for a sample and in full."""
    del full
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder)
        before = dict(os.environ)
        os.environ.update(home_variables(home))
        try:
            return _section(home)
        finally:
            os.environ.clear()
            os.environ.update(before)


def _section(home: Path) -> Section:
    drafts = _drafts()
    path = wiring.begin([_file(drafts[0])], folder=BooksFolder(platform.folders()))
    bringing: list[float] = []
    with closing(wiring.open_book(path)) as book:
        for draft in drafts[1:]:
            _work(book)
            files = [_file(draft)]
            bringing.append(_timed(lambda files=files: wiring.next_draft(book, files))[0])  # type: ignore[misc]
    text = sum(len(content) for content in map(_bytes, drafts))
    originals = _originals(path)
    opening, opened = _timed(lambda: wiring.open_book(path))
    with closing(opened):
        searching = [_timed(lambda words=words: opened.search(words))[0] for words in ASKED for _ in range(TIMES)]  # type: ignore[misc]
        sound = not opened.check()
    return Section(
        title="Ten drafts of one book",
        corpus="120,000 words in 90 scenes of several novels, revised nine times by chance, with work on each draft.",
        figures=(
            Figure(
                "book file against the text of all drafts",
                (path.stat().st_size - originals) / text,
                unit="×",
                target=SIZE,
            ),
            Figure("opening it, every draft checked", opening, unit="s", target=OPENING),
            Figure("search, median", median(searching) * 1000, unit="ms", target=SEARCH),
            Figure("search, worst", max(searching) * 1000, unit="ms"),
            Figure("bringing the second draft in", bringing[0], unit="s"),
            Figure("bringing the tenth draft in", bringing[-1], unit="s"),
            Figure("the book is sound", float(sound), target=1.0, at_most=False),
        ),
    )


def _drafts() -> list[Scenes]:
    made: list[Scenes] = [lines(SMALLEST)]
    donor = [paragraph for scene in lines(SMALLEST // 4, skip=SMALLEST) for paragraph in scene]
    while len(made) < DRAFTS:
        made.append(revision(made[-1], donor, seed=len(made)).new)
    return made


def _work(book: Book) -> None:
    draft = book.drafts()[-1].id
    cards = book.cards(draft)
    for n, scene in enumerate(book.division(draft).scenes):
        write_once(book, "card", cards[scene.id].id, "summary", f"What happens in scene {n}, and what changes there.")
        if n % MARKED == 0:
            write_note(book, f"Too quick in scene {n}.", scene=scene.id)
            mark_presence(book, [scene.id], f"Person {n % 12}", "on page")


def _file(draft: Scenes) -> tuple[str, bytes]:
    return "draft.txt", _bytes(draft)


def _bytes(draft: Scenes) -> bytes:
    chapters = [draft[at : at + SCENES_A_CHAPTER] for at in range(0, len(draft), SCENES_A_CHAPTER)]
    told = (
        f"Chapter {n}\n\n" + "\n\n* * *\n\n".join("\n\n".join(scene) for scene in scenes)
        for n, scenes in enumerate(chapters, 1)
    )
    return "\n\n".join(told).encode()


def _originals(path: Path) -> int:
    """Bytes of the writer's files as they lie in the book."""
    with closing(wiring.look_at(path)) as book:
        assert isinstance(book, BookFile)
        with book._reading() as db:
            return int(db.execute("SELECT sum(length(bytes)) FROM text_file").fetchone()[0])


def _timed(act: Callable[[], T]) -> tuple[float, T]:
    before = time.perf_counter()
    made = act()
    return time.perf_counter() - before, made
