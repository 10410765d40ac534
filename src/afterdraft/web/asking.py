"""Questions to each open book, as its pages show them: asked in the background, kept with the book.

One thread for all books. It finds out which checks look at something else than when they were run last, and runs those
alone: what looks at her marks and no facts at once, the rest in a process of its own (`afterdraft.apart`). As long as
the draft is being read, checks that need facts give what they found before, if anything.
"""

import json
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace
from threading import Condition, Thread

from afterdraft import apart
from afterdraft.engine.pipeline import MODEL
from afterdraft.errors import AfterdraftError, CannotWrite, TooLarge
from afterdraft.faultlog import write_down
from afterdraft.manuscript.division import Division
from afterdraft.questions.asking import ask, key
from afterdraft.questions.catalogue import CHECKS
from afterdraft.questions.check import Check
from afterdraft.questions.findings_form import findings_form, findings_of
from afterdraft.questions.question import Finding, Question
from afterdraft.questions.seen import READ, Seen
from afterdraft.whole.task import is_read
from afterdraft.work.ports import Book, DraftFacts, Edits
from afterdraft.work.to_ask import to_ask
from afterdraft.work.to_read import to_read

PATIENCE = 0.05  # seconds that a page waits: where little has changed, the answer is there by then

Find = Callable[[Sequence[str], Seen, Sequence[str]], dict[str, tuple[Finding, ...]]]
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

    def __init__(self, *, find: Find = apart.findings) -> None:
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
        which = (book.id, draft.id)
        division = book.division(draft.id)
        task = to_read(book, draft.id, model=MODEL)
        seen = to_ask(book, draft.id, task)
        keys = {check.id: key(seen, check) for check in CHECKS}
        kept = self._known(which, book)
        before = set(kept)
        new = [check for check in CHECKS if keys[check.id] not in kept]
        kept |= {keys[check.id]: tuple(check.find(seen)) for check in new if _is_quick(check)}
        english = is_read(draft.language)
        facts = _facts(book, task.keys) if english else ()
        slow = [check.id for check in new if not _is_quick(check) and (facts or not _needs_facts(check))]
        if slow:
            self._tell(which, Asked(_questions(seen, keys, kept), division, None))
            found = self._found(slow, seen, facts)
            kept |= {keys[check]: some for check, some in found.items()}
        for gone in set(kept) - set(keys.values()):
            kept.pop(gone)
        if set(kept) != before:
            with suppress(CannotWrite):  # another time it takes longer, that is all
                book.keep_findings(draft.id, json.dumps(findings_form(kept), separators=(",", ":")))
        left = {check.id for check in CHECKS if keys[check.id] not in kept and (english or not _needs_facts(check))}
        asked = Asked(_questions(seen, keys, kept), division, stamp, bool(left), bool(left & set(slow)))
        self._tell(which, asked)

    def _found(self, checks: Sequence[str], seen: Seen, facts: Sequence[str]) -> dict[str, tuple[Finding, ...]]:
        """Nothing where the child has failed, which has written down why."""
        try:
            return self._find(checks, seen, facts)
        except (apart.ReadingFault, TooLarge):
            return {}

    def _known(self, which: Which, book: Book) -> dict[str, tuple[Finding, ...]]:
        """What checks found before, by key."""
        if which not in self._kept:
            form = book.kept_findings(which[1])
            self._kept[which] = findings_of(json.loads(form)) if form else {}
        return self._kept[which]

    def _tell(self, which: Which, asked: Asked) -> None:
        with self._changed:
            self._asked[which] = asked
            self._changed.notify_all()


def _is_quick(check: Check) -> bool:
    """What she marked is asked about at once."""
    return "marks" in check.reads and not _needs_facts(check)


def _needs_facts(check: Check) -> bool:
    return bool(READ & set(check.reads))


def _questions(seen: Seen, keys: Mapping[str, str], kept: dict[str, tuple[Finding, ...]]) -> tuple[Question, ...]:
    """Of checks whose findings are kept."""
    return ask(seen, checks=[check for check in CHECKS if keys[check.id] in kept], kept=kept)


def _facts(book: Book, keys: Sequence[str]) -> tuple[str, ...]:
    """Of all scenes; none where some are not read yet."""
    known: Mapping[str, str] = book.kept_facts(keys)
    return tuple(known[key] for key in keys) if set(keys) <= set(known) else ()
