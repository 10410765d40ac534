"""Offcuts of all earlier drafts of a book: gathered in the background, once for each newest draft, and kept at hand.

A page waits a moment for them, and says that they are being gathered where that is not enough.
"""

from collections.abc import Hashable, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from threading import Event, Lock, Thread

from afterdraft.comparison.compare import compare
from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.earlier import Earlier, offcuts_of_all
from afterdraft.comparison.told import Told, ToldScene
from afterdraft.errors import AfterdraftError
from afterdraft.manuscript.naming import chapter_name, scene_name
from afterdraft.web.comparing import Comparing
from afterdraft.web.view import BookView
from afterdraft.work.compared import Side, side
from afterdraft.work.ports import Book, DraftFacts

MOMENT = 0.06  # seconds that a page waits


@dataclass(frozen=True, slots=True)
class Source:
    """An earlier draft that offcuts are of."""

    id: str
    number: int | None  # None: it gave way to the same draft brought in again
    scenes: tuple[tuple[str, str, str], ...]  # code, name, chapter of each; one of no name where it gave way
    paragraphs: tuple[int, ...]  # number in the file of each story paragraph


@dataclass(frozen=True, slots=True)
class Offcuts:
    passages: tuple[Earlier[Source], ...]  # the youngest draft first; within each in its order


@dataclass
class _Work:
    stands: Hashable
    ready: Event = field(default_factory=Event)
    found: Offcuts | None = None


class Gathering:
    """One for the server; from any thread."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._works: dict[str, _Work] = {}  # by book

    def offcuts(self, seen: BookView, comparing: Comparing) -> Offcuts | None:
        """None while they are being gathered. Asking begins it."""
        earlier = [one.id for one in seen.book.all_drafts() if one.id != seen.draft.id]
        stands = (tuple(earlier), seen.draft.id, seen.division)
        with self._lock:
            work = self._works.get(seen.book.id)
            if work is None or work.stands != stands:
                work = self._works[seen.book.id] = _Work(stands)
                Thread(target=self._gather, args=(work, seen, earlier, comparing), daemon=True).start()
        work.ready.wait(MOMENT)
        return work.found

    def end(self, book: str) -> None:
        """Nothing of the book of this id is remembered."""
        with self._lock:
            self._works.pop(book, None)

    def _gather(self, work: _Work, seen: BookView, earlier: Sequence[str], comparing: Comparing) -> None:
        try:
            with suppress(AfterdraftError):  # the book was closed meanwhile, or is in trouble that its pages tell of
                work.found = gathered(seen.book, earlier, seen.draft, comparing)
        finally:
            if work.found is None:
                self._forget(seen.book.id, work)
            work.ready.set()

    def _forget(self, book: str, work: _Work) -> None:
        """The next who asks begins anew."""
        with self._lock:
            if self._works.get(book) is work:
                del self._works[book]


def gathered(book: Book, earlier: Sequence[str], newest: DraftFacts, comparing: Comparing) -> Offcuts:
    """Of drafts `earlier` (ids, oldest first) against the newest. Raises `Missing`, `BookTrouble`."""
    states = {one.id: one for one in book.all_drafts()}
    found: list[tuple[Source, Comparison]] = []
    for draft in earlier:
        if states[draft].number is None:
            found.append(_gave_way(book, draft, newest))
        else:
            compared = comparing.compared(book, draft, newest)
            found.append((_source(compared.old, states[draft].number), compared.found))
    places = {source.id: place for place, (source, _) in enumerate(found)}
    return Offcuts(tuple(sorted(offcuts_of_all(found), key=lambda one: -places[one.draft.id])))


def _gave_way(book: Book, draft: str, newest: DraftFacts) -> tuple[Source, Comparison]:
    """Its scenes are those of the draft that took its place: it is told as one."""
    texts = book.texts(draft)
    numbers = tuple(n for n, role in enumerate(book.division(draft).roles) if role == "story")
    old = Told(tuple(texts[n] for n in numbers), (ToldScene(0, len(numbers), 0),))
    return Source(draft, None, (("", "", ""),), numbers), compare(old, side(book, newest.id).told)


def _source(old: Side, number: int | None) -> Source:
    chapters = [chapter_name(chapter) for chapter in old.division.chapters]
    paragraphs = old.told.paragraphs
    scenes = tuple(
        (
            scene.code,
            scene_name(scene, paragraphs[place.start] if place.start < place.end else ""),
            chapters[place.chapter],
        )
        for scene, place in zip(old.scenes, old.told.scenes, strict=True)
    )
    return Source(old.draft, number, scenes, old.paragraphs)
