"""`ask`: every check over a book, and its questions, the sharpest first."""

import json
from collections import Counter
from collections.abc import Iterable, Iterator, MutableMapping, Sequence
from hashlib import sha256

from afterdraft.questions.catalogue import CHECKS
from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Question, Span, fingerprint
from afterdraft.questions.seen import READ, Seen
from afterdraft.questions.wording import worded

SAME = (
    ("twice", "echo", "said twice"),
    ("name drift", "left over"),
)  # of those on the same passages the first is asked
Kept = MutableMapping[str, tuple[Finding, ...]]  # by `key`: what checks found


def ask(seen: Seen, *, checks: Sequence[Check] = CHECKS, kept: Kept | None = None) -> tuple[Question, ...]:
    """The sharpest first; those of one strength in telling order. `kept` holds what was found before: a check whose
    parts of the book are the same is not run again, and what is found anew is added. Where there are no facts, but
    their keys are known, checks that need them give what is kept."""
    found = [(check, finding) for check in checks for finding in _findings(seen, check, kept)]
    return tuple(sorted(_once(list(_questions(seen, found))), key=_sharpest))


def key(seen: Seen, check: Check) -> str:
    """Of what a check finds: the same parts of the book, looked at by the same recipe, have the same."""
    read = [check.id, check.recipe, *(seen.digest(part) for part in check.reads)]
    return sha256(json.dumps(read).encode()).hexdigest()


def _findings(seen: Seen, check: Check, kept: Kept | None) -> tuple[Finding, ...]:
    possible = seen.is_read or not READ & set(check.reads)
    if kept is None:
        return tuple(check.find(seen)) if possible else ()
    place = key(seen, check)
    if place not in kept and possible:
        kept[place] = tuple(check.find(seen))
    return kept.get(place, ())


def _questions(seen: Seen, found: Iterable[tuple[Check, Finding]]) -> Iterator[Question]:
    """Of two on the same thing and the same words the later counts as another."""
    times: Counter[str] = Counter()
    for check, one in sorted(found, key=lambda pair: (pair[0].id, pair[1].all_scenes, _first(pair[1].evidence))):
        same = fingerprint(check.id, one.subject, (span.quote for span in one.evidence))
        yield Question(
            check=check.id,
            asks=worded(check.id, one, seen.titles),
            scenes=one.all_scenes,
            people=one.people,
            strength=round(one.strength, 3),
            numbers=one.numbers,
            evidence=one.evidence,
            subject=one.subject,
            nth=times[same],
        )
        times[same] += 1


def _once(questions: Sequence[Question]) -> Iterator[Question]:
    """Without those that ask about what another asks about: a passage that stands twice, a name that drifts."""
    for one in questions:
        before = next((row[: row.index(one.check)] for row in SAME if one.check in row), ())
        if not any(_meet(one, other) for other in questions if other.check in before):
            yield one


def _meet(one: Question, other: Question) -> bool:
    """Whether all that the one shows overlaps with what the other shows."""
    return bool(one.evidence) and all(
        any(
            (span.scene, span.paragraph) == (shown.scene, shown.paragraph)
            and span.start < shown.end
            and shown.start < span.end
            for shown in other.evidence
        )
        for span in one.evidence
    )


def _first(evidence: Sequence[Span]) -> tuple[int, int, int]:
    return min(((one.scene, one.paragraph, one.start) for one in evidence), default=(-1, -1, -1))


def _sharpest(one: Question) -> tuple[float, tuple[int, ...], tuple[int, int, int], str, str]:
    return -one.strength, one.scenes, _first(one.evidence), one.check, one.subject
