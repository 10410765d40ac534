"""Reading in the background: what is read of each open book, how far it is, and what it tells.

One thread for all books hands one draft at a time to a child (`afterdraft.alongside`). Whatever page is shown says
which draft is looked at; when something has changed since, the draft is looked over again, and only scenes whose words
were not read before are read. Pages show what was told last until there is something newer.
"""

import json
import os
from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from threading import Condition, Thread
from time import monotonic
from typing import Literal

from afterdraft.alongside import Reader, wanted
from afterdraft.engine.pipeline import MODEL
from afterdraft.errors import AfterdraftError
from afterdraft.faultlog import write_down
from afterdraft.manuscript.words import count
from afterdraft.web.told import NOTHING, Told, told_of
from afterdraft.whole.task import Task, is_read
from afterdraft.work.cast.to_read import to_read
from afterdraft.work.ports import Book, DraftFacts, Edits

SWITCH = "AFTERDRAFT_READING"  # "off" in the environment keeps reading from beginning
REST = 0.7  # seconds before a change is looked at: more often follow, and a page goes first
TRIES = 2  # a child that ends early is tried once more

State = Literal["off", "waiting", "reading", "stopped", "done", "trouble", "other language"]
Which = tuple[str, str]  # ids of book and draft


@dataclass(frozen=True, slots=True)
class Progress:
    """How far the reading of a draft is."""

    state: State
    scenes_done: int = 0
    scenes: int = 0
    words_done: int = 0
    words: int = 0
    seconds_left: float | None = None  # None as long as that cannot be told

    @property
    def running(self) -> bool:
        return self.state in ("waiting", "reading")


class Reading:
    """May be asked from any thread."""

    def __init__(self, *, on: bool | None = None, reader: Callable[[], Reader] = Reader, rest: float = REST) -> None:
        self._on = os.environ.get(SWITCH) != "off" if on is None else on
        self._new_reader = reader
        self._rest = rest
        self._progress: dict[Which, Progress] = {}
        self._told: dict[Which, Told] = {}
        self._stamps: dict[Which, tuple[Edits, str]] = {}
        self._wanted: dict[Which, Book] = {}
        self._stopped: set[Which] = set()
        self._now: tuple[Which, Reader] | None = None
        self._changed = Condition()
        self._thread: Thread | None = None

    def want(self, book: Book, draft: DraftFacts, stamp: tuple[Edits, str]) -> None:
        """A page shows this draft as it is now, after the edits and at the time of `stamp`: read what is new in it."""
        which = (book.id, draft.id)
        with self._changed:
            if not self._on or which in self._stopped or self._stamps.get(which) == stamp:
                return
            self._stamps[which] = stamp
            if not is_read(draft.language):
                self._progress[which] = Progress("other language")
                return
            self._begin(which, book)

    def progress(self, book: Book, draft: str) -> Progress:
        with self._changed:
            return self._progress.get((book.id, draft), Progress("waiting" if self._on else "off"))

    def told(self, book: Book, draft: str) -> Told:
        """What reading told last, perhaps of the draft before the latest edits; nothing where it was never read to its
        end."""
        which = (book.id, draft)
        with self._changed:
            known = self._told.get(which)
        if known is None and (kept := book.read_whole(draft)):
            known = told_of(json.loads(kept[1]))
            with self._changed:
                known = self._told.setdefault(which, known)
        return known or NOTHING

    def stop(self, book: Book, draft: str) -> None:
        """What was read stays."""
        which = (book.id, draft)
        with self._changed:
            self._stopped.add(which)
            self._wanted.pop(which, None)
            self._progress[which] = replace(self._progress.get(which, Progress("stopped")), state="stopped")
            if self._now and self._now[0] == which:
                self._now[1].stop()

    def go_on(self, book: Book, draft: DraftFacts) -> None:
        """Read on where it was stopped, or had trouble; also where reading is off otherwise."""
        which = (book.id, draft.id)
        with self._changed:
            self._stopped.discard(which)
            if is_read(draft.language):
                self._begin(which, book)

    def end(self, book: str | None = None) -> None:
        """The book of this id is closed, or all are: nothing of it is read any more, and nothing remembered."""
        with self._changed:
            if self._now and book in (None, self._now[0][0]):
                self._now[1].stop()
            for kept in (self._wanted, self._progress, self._told, self._stamps):
                for which in [which for which in kept if book in (None, which[0])]:
                    kept.pop(which)
            self._stopped = {which for which in self._stopped if book not in (None, which[0])}

    def _begin(self, which: Which, book: Book) -> None:
        """Under the lock."""
        self._wanted[which] = book
        self._progress.setdefault(which, Progress("waiting"))
        self._progress[which] = replace(self._progress[which], state="waiting", seconds_left=None)
        if self._thread is None:
            self._thread = Thread(target=self._live, name="reading", daemon=True)
            self._thread.start()
        self._changed.notify()

    def _live(self) -> None:
        while True:
            with self._changed:
                self._changed.wait_for(lambda: self._wanted)
                self._changed.wait_for(lambda: False, timeout=self._rest)
                if not self._wanted:
                    continue
                which, book = self._wanted.popitem()
            try:
                self._look_over(which, book)
            except AfterdraftError:  # the book was closed meanwhile, or is in trouble that its pages tell of
                self._set(which, Progress("waiting"))
            except Exception as fault:  # noqa: BLE001 — the last line of this thread; the page tells of it
                write_down(fault)
                self._set(which, Progress("trouble"))

    def _look_over(self, which: Which, book: Book) -> None:
        task = to_read(book, which[1], model=MODEL)
        words = dict(zip(task.keys, (sum(map(count, text)) for text in task.texts), strict=True))
        whole = Progress("done", len(task.keys), len(task.keys), sum(words.values()), sum(words.values()))
        kept = book.read_whole(which[1])
        if kept is None or kept[0] != task.key:
            kept = self._read(which, book, task, words)
        if kept is not None:
            told = told_of(json.loads(kept[1]))
            with self._changed:
                self._told[which] = told
            self._set(which, whole)

    def _read(self, which: Which, book: Book, task: Task, words: Mapping[str, int]) -> tuple[str, str] | None:
        """Key and form of what all of it tells; None where it was stopped, or could not be read."""
        for _ in range(TRIES):
            known = book.kept_facts(task.keys)
            known |= book.kept_facts(wanted(task, known))
            run = _Run(book, task, words, known, tell=lambda progress: self._set(which, progress))
            reader = self._new_reader()
            with self._changed:
                if which in self._stopped:
                    return None
                self._now = (which, reader)
            try:
                told = reader.run(task, known, on_scene=run.scene, keep=book.keep_read)
            finally:
                with self._changed:
                    self._now = None
            if told is not None:
                book.keep_whole(which[1], task.key, told)
                return task.key, told
            if reader.stopped:
                return None
        self._set(which, Progress("trouble"))
        return None

    def _set(self, which: Which, progress: Progress) -> None:
        with self._changed:
            if which not in self._stopped:
                self._progress[which] = progress


class _Run:
    """One reading of one draft: keeps what comes, and counts."""

    def __init__(
        self,
        book: Book,
        task: Task,
        words: Mapping[str, int],
        known: Mapping[str, str],
        *,
        tell: Callable[[Progress], None],
    ) -> None:
        self._book = book
        self._tell_on = tell
        self._words = words
        self._scenes = len(task.keys)
        self._times = Counter(task.keys)
        self._left = {key for key in words if key not in known}
        self._began = monotonic()
        self._first = sum(self._words[key] for key in self._left)
        self._tell()

    def scene(self, key: str, facts: str) -> None:
        self._book.keep_facts(key, facts)
        self._left.discard(key)
        self._tell()

    def _tell(self) -> None:
        left = sum(self._words[key] for key in self._left)
        read = self._first - left
        seconds = (monotonic() - self._began) / read * left if read and left else None
        words = sum(self._words.values())
        done = self._scenes - sum(self._times[key] for key in self._left)
        self._tell_on(Progress("reading", done, self._scenes, words - left, words, seconds))
