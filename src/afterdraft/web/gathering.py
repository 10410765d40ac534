"""What takes longer than a page may: offcuts of all earlier drafts, and counts of all rounds. Worked out in the
background, once for each newest draft, and kept at hand.

A page waits a moment for it, and says that it is being gathered where that is not enough.
"""

from collections.abc import Callable, Hashable, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from threading import Event, Lock, Thread
from typing import Any, TypeVar, cast

from afterdraft.comparison.compare import compare
from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.earlier import Earlier, offcuts_of_all
from afterdraft.comparison.round import RoundCounts, counts
from afterdraft.comparison.told import Told, ToldScene
from afterdraft.errors import AfterdraftError
from afterdraft.manuscript.naming import chapter_name, scene_name
from afterdraft.manuscript.words import count
from afterdraft.web.comparing import Comparing
from afterdraft.web.view import BookView
from afterdraft.work.drafts.compared import Side, side
from afterdraft.work.ports import Book, DraftFacts

MOMENT = 0.04  # seconds that a page waits
T = TypeVar("T")


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
    words: int  # of all of them


@dataclass
class _Work:
    stands: Hashable
    ready: Event = field(default_factory=Event)
    found: Any = None


class Gathering:
    """One for the server; from any thread."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._works: dict[tuple[str, str], _Work] = {}  # by book and what is gathered

    def offcuts(self, seen: BookView, comparing: Comparing) -> Offcuts | None:
        """None while they are being gathered. Asking begins it."""
        book, newest = seen.book, seen.draft
        earlier = [one.id for one in book.all_drafts() if one.id != newest.id]
        stands = (tuple(earlier), newest.id, seen.division)
        return self._at_hand(book.id, "offcuts", stands, lambda: gathered(book, earlier, newest, comparing))

    def rounds(self, seen: BookView, comparing: Comparing) -> tuple[RoundCounts, ...] | None:
        """Of each draft but the last to the next one; None while they are being counted. Asking begins it."""
        book = seen.book
        pairs = list(zip(known := book.drafts(), known[1:], strict=False))
        said = [book.said_of(old.id, new.id) for old, new in pairs]
        stands = (
            tuple((old.id, new.id, new.part_way) for old, new in pairs),
            seen.division,
            tuple((frozenset(one.became.items()), frozenset(one.lives_on.items())) for one in said),
        )

        def counted() -> tuple[RoundCounts, ...]:
            return tuple(counts(comparing.compared(book, old.id, new).found) for old, new in pairs)

        return self._at_hand(book.id, "rounds", stands, counted)

    def end(self, book: str) -> None:
        """Nothing of the book of this id is remembered."""
        with self._lock:
            self._works = {key: work for key, work in self._works.items() if key[0] != book}

    def _at_hand(self, book: str, what: str, stands: Hashable, make: Callable[[], T]) -> T | None:
        key = (book, what)
        with self._lock:
            work = self._works.get(key)
            if work is None or work.stands != stands:
                work = self._works[key] = _Work(stands)
                Thread(target=self._gather, args=(key, work, make), daemon=True).start()
        work.ready.wait(MOMENT)
        return cast(T | None, work.found)

    def _gather(self, key: tuple[str, str], work: _Work, make: Callable[[], object]) -> None:
        try:
            with suppress(AfterdraftError):  # the book was closed meanwhile, or is in trouble that its pages tell of
                work.found = make()
        finally:
            with self._lock:
                if work.found is None and self._works.get(key) is work:
                    del self._works[key]  # the next who asks begins anew
            work.ready.set()


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
    passages = sorted(offcuts_of_all(found), key=lambda one: -places[one.draft.id])
    return Offcuts(tuple(passages), sum(count(one.text) for one in passages))


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
