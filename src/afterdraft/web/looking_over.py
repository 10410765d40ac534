"""A draft is looked over for questions: which checks look at something else than when they were run last, and what
those find. Loaded when first wanted: the checks know all that reading knows.
"""

import json
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace

from afterdraft import apart
from afterdraft.engine.pipeline import MODEL
from afterdraft.errors import CannotWrite, TooLarge
from afterdraft.questions.asking import ask, key
from afterdraft.questions.catalogue import CHECKS
from afterdraft.questions.check import Check
from afterdraft.questions.findings_form import findings_form, findings_of
from afterdraft.questions.question import Finding, Question
from afterdraft.questions.seen import READ, Seen
from afterdraft.whole.speakers_kept import SPEAKERS
from afterdraft.whole.task import is_read
from afterdraft.work.cast.to_read import to_read
from afterdraft.work.ports import Book, DraftFacts
from afterdraft.work.questions.to_ask import to_ask

Found = dict[str, tuple[Finding, ...]]  # by key of what a check looked at
Find = Callable[[Sequence[str], Seen, Sequence[str]], Found]  # as `apart.findings`


@dataclass(frozen=True, slots=True)
class LookedOver:
    questions: tuple[Question, ...]  # the sharpest first
    lacking: bool  # some checks have not looked yet, for want of facts, or have failed
    trouble: bool  # some have failed


def look_over(
    book: Book, draft: DraftFacts, kept: Found, *, find: Find, so_far: Callable[[tuple[Question, ...]], None]
) -> LookedOver:
    """`kept`: what checks found before; it is brought up to date, here and in the book. Where some take longer,
    `so_far` is told what is known without them. Raises `Missing`, `BookTrouble`."""
    task = to_read(book, draft.id, model=MODEL)
    speakers = book.kept_facts([SPEAKERS]).get(SPEAKERS, "")
    seen = replace(to_ask(book, draft.id, task), speakers=speakers)
    keys = {check.id: key(seen, check) for check in CHECKS}
    before = set(kept)
    new = [check for check in CHECKS if keys[check.id] not in kept]
    kept |= {keys[check.id]: tuple(check.find(seen)) for check in new if _is_quick(check)}
    english = is_read(draft.language)
    facts = _facts(book, task.keys) if english else ()
    slow = [check.id for check in new if not _is_quick(check) and (facts or not _needs_facts(check))]
    if slow:
        so_far(_questions(seen, keys, kept))
        kept |= {keys[check]: some for check, some in _found(find, slow, seen, facts).items()}
    for gone in set(kept) - set(keys.values()):
        kept.pop(gone)
    questions = _questions(seen, keys, kept)
    if set(kept) != before:
        asked = sorted(one.fingerprint for one in questions)  # what the counts of rounds are taken from
        form = {"found": findings_form(kept), "asked": asked}
        with suppress(CannotWrite):  # another time it takes longer, that is all
            book.keep_findings(draft.id, json.dumps(form, separators=(",", ":")))
    left = {check.id for check in CHECKS if keys[check.id] not in kept and (english or not _needs_facts(check))}
    return LookedOver(questions, bool(left), bool(left & set(slow)))


def kept_in(book: Book, draft: str) -> Found:
    """What checks found when they were run last."""
    form = book.kept_findings(draft)
    return findings_of(json.loads(form)["found"]) if form else {}


def _found(find: Find, checks: Sequence[str], seen: Seen, facts: Sequence[str]) -> Found:
    """By id. Nothing where the child has failed, which has written down why."""
    try:
        return find(checks, seen, facts)
    except (apart.ReadingFault, TooLarge):
        return {}


def _is_quick(check: Check) -> bool:
    """What she marked is asked about at once."""
    return "marks" in check.reads and not _needs_facts(check)


def _needs_facts(check: Check) -> bool:
    return bool(READ & set(check.reads))


def _questions(seen: Seen, keys: Mapping[str, str], kept: Found) -> tuple[Question, ...]:
    """Of checks whose findings are kept."""
    return ask(seen, checks=[check for check in CHECKS if keys[check.id] in kept], kept=kept)


def _facts(book: Book, keys: Sequence[str]) -> tuple[str, ...]:
    """Of all scenes; none where some are not read yet."""
    known = book.kept_facts(keys)
    return tuple(known[key] for key in keys) if set(keys) <= set(known) else ()
