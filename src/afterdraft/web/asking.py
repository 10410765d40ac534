"""Questions to each open book, as its pages show them: asked in the background, kept with the book.

One thread for all books looks drafts over (`looking_over`) when a page wants to know: what looks at her marks and no
facts at once, the rest in a process of its own (`afterdraft.apart`). As long as the draft is being read, checks that
need facts give what they found before, if anything.
"""

from dataclasses import dataclass, replace
from threading import Condition, Thread
from typing import TYPE_CHECKING

from afterdraft import apart
from afterdraft.errors import AfterdraftError
from afterdraft.faultlog import write_down
from afterdraft.manuscript.division import Division
from afterdraft.questions.question import Finding, Question
from afterdraft.work.ports import Book, DraftFacts, Edits

if TYPE_CHECKING:
    from afterdraft.web.looking_over import Find

PATIENCE = 0.02  # seconds that a page waits: where little has changed, the answer is there by then

Which = tuple[str, str]  # ids of book and draft
Stamp = tuple[Edits, str]  # latest edits, and when the book changed last


@dataclass(frozen=True, slots=True)
class Asked:
    """What is asked of a draft."""

    questions: tuple[Question, ...]  # the sharpest first
    division: Division  # as it was then: scenes of the evidence are counted in it
    stamp: Stamp | None  # None: more may come
    lacking: bool = False  # some checks have not looked yet, for want of facts
    trouble: bool = False  # some could not look

    @property
    def can_have_more(self) -> bool:
        """When all of the draft is read."""
        return self.lacking and not self.trouble


class Asking:
    """May be asked from any thread."""

    def __init__(self, *, find: "Find" = apart.findings) -> None:
        self._find = find
        self._asked: dict[Which, Asked] = {}
        self._kept: dict[Which, dict[str, tuple[Finding, ...]]] = {}
        self._wanted: dict[Which, tuple[Book, DraftFacts, Stamp]] = {}
        self._now: Which | None = None
        self._changed = Condition()
        self._thread: Thread | None = None

    def asked(
        self, book: Book, draft: DraftFacts, stamp: Stamp, *, read: bool = False, patience: float = PATIENCE
    ) -> Asked | None:
        """What is asked of the draft as it stands at `stamp`, or, where that takes longer, what was asked last; None
        where nothing was yet. `read`: all of it is read, so that checks that wanted facts can look."""
        which = (book.id, draft.id)
        with self._changed:
            if not self._is_fresh(which, stamp, read=read):
                self._begin(which, (book, draft, stamp))
                self._changed.wait_for(lambda: self._is_fresh(which, stamp, read=read), timeout=patience)
            return self._asked.get(which)

    def last(self, book: Book, draft: DraftFacts) -> Asked | None:
        """What was asked last; begins nothing."""
        with self._changed:
            return self._asked.get((book.id, draft.id))

    def still(self, book: Book, draft: DraftFacts, before: Stamp, after: Stamp) -> None:
        """What was asked at the one stamp is asked at the other as well: an answer changes nothing that is looked
        at."""
        which = (book.id, draft.id)
        with self._changed:
            if self._is_fresh(which, before, read=False):
                self._asked[which] = replace(self._asked[which], stamp=after)

    def busy(self, book: Book, draft: str) -> bool:
        """Whether there may soon be other questions."""
        with self._changed:
            return (book.id, draft) in (self._now, *self._wanted)

    def end(self, book: str) -> None:
        """The book of this id is closed: nothing of it is remembered."""
        with self._changed:
            for kept in (self._asked, self._kept, self._wanted):
                for which in [which for which in kept if which[0] == book]:
                    kept.pop(which)

    def _is_fresh(self, which: Which, stamp: Stamp, *, read: bool) -> bool:
        """Under the lock."""
        last = self._asked.get(which)
        return last is not None and last.stamp == stamp and not (read and last.can_have_more)

    def _begin(self, which: Which, wanted: tuple[Book, DraftFacts, Stamp]) -> None:
        """Under the lock."""
        self._wanted[which] = wanted
        if self._thread is None:
            self._thread = Thread(target=self._live, name="asking", daemon=True)
            self._thread.start()
        self._changed.notify_all()

    def _live(self) -> None:
        while True:
            with self._changed:
                self._now = None
                self._changed.notify_all()
                self._changed.wait_for(lambda: self._wanted)
                which, (book, draft, stamp) = self._wanted.popitem()
                self._now = which
            try:
                self._look_over(book, draft, stamp)
            except AfterdraftError:  # the book was closed meanwhile, or is in trouble that its pages tell of
                pass
            except Exception as fault:  # noqa: BLE001 — the last line of this thread
                write_down(fault)

    def _look_over(self, book: Book, draft: DraftFacts, stamp: Stamp) -> None:
        from afterdraft.web.looking_over import kept_in, look_over  # late: with it come all checks

        which = (book.id, draft.id)
        division = book.division(draft.id)
        if which not in self._kept:
            self._kept[which] = kept_in(book, draft.id)
        found = look_over(
            book,
            draft,
            self._kept[which],
            find=self._find,
            so_far=lambda questions: self._tell(which, Asked(questions, division, None)),
        )
        self._tell(which, Asked(found.questions, division, stamp, found.lacking, found.trouble))

    def _tell(self, which: Which, asked: Asked) -> None:
        with self._changed:
            self._asked[which] = asked
            self._changed.notify_all()
